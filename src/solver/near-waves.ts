/**
 * Waves of short sources at one point, straight or by way of the soil: what they add to A, to its curl and to the gradient of Φ, with the
 * constants still out. A short source of length dl stands at a place, has a direction u and carries I dl and I′ dl.
 */
import type { Point } from './geometry';
import type { GroundTable } from './ground-table';
import { emptyKernels, readReflected } from './reflected-kernels';

/** Sums in the making: A, its curl, the gradient of Φ, each x, y, z of re, then of im. */
export const SUMS = 18;
export const A = 0;
export const CURL = 6;
export const GRAD = 12;

/** Place, direction, I dl and I′ dl, re and im. */
const WIDTH = 10;

/** Sources two by two, number q of both side by side: kernels take two at a time. */
export class ShortSources {
  values = new Float64Array(64 * WIDTH);
  count = 0;

  clear(): void {
    this.count = 0;
  }

  add(
    x: number,
    y: number,
    z: number,
    ux: number,
    uy: number,
    uz: number,
    iRe: number,
    iIm: number,
    chargeRe: number,
    chargeIm: number,
  ): void {
    const at = placeOf(this.count++);
    if (at + 2 * WIDTH > this.values.length) this.grow();
    const { values } = this;
    values[at] = x;
    values[at + 2] = y;
    values[at + 4] = z;
    values[at + 6] = ux;
    values[at + 8] = uy;
    values[at + 10] = uz;
    values[at + 12] = iRe;
    values[at + 14] = iIm;
    values[at + 16] = chargeRe;
    values[at + 18] = chargeIm;
  }

  /** The sources, made even in number by one that carries nothing, a metre from the point. */
  inPairs([x, y, z]: Point): Float64Array {
    if (this.count % 2 === 1) this.add(x, y, z + 1, 0, 0, 0, 0, 0, 0, 0);
    return this.values.subarray(0, this.count * WIDTH);
  }

  private grow(): void {
    const { values } = this;
    this.values = new Float64Array(2 * values.length);
    this.values.set(values);
  }
}

const placeOf = (source: number): number => (source >> 1) * 2 * WIDTH + (source & 1);

/** Adds the waves of all sources at one point after another, until `end`. */
export interface NearAdder {
  add(sums: Float64Array, point: Point, direct: ShortSources, reflected: ShortSources): void;
  end(): void;
}

/** Ready for one frequency; the table is that of the soil, if there is soil. */
export type NearSums = (k0: number, table: GroundTable | undefined) => NearAdder;

export const plainNearSums: NearSums = (k0, table) => ({
  add(sums, point, direct, reflected) {
    for (let n = 0; n < direct.count; n++) addWave(sums, point, direct.values, placeOf(n), k0);
    if (table === undefined) return;
    for (let n = 0; n < reflected.count; n++) addReflected(sums, point, reflected.values, placeOf(n), k0, table);
  },
  end: () => undefined,
});

function addWave(sums: Float64Array, point: Point, source: Float64Array, s: number, k0: number): void {
  const x = point[0] - source[s];
  const y = point[1] - source[s + 2];
  const z = point[2] - source[s + 4];
  const squared = x * x + y * y + z * z;
  const distance = Math.sqrt(squared);
  const phase = k0 * distance;
  const gRe = Math.cos(phase) / distance;
  const gIm = -Math.sin(phase) / distance;
  const slopeRe = -(gRe - phase * gIm) / squared; // ∇G = slope · r
  const slopeIm = -(gIm + phase * gRe) / squared;
  const ux = source[s + 6];
  const uy = source[s + 8];
  const uz = source[s + 10];
  const iRe = source[s + 12];
  const iIm = source[s + 14];
  const waveRe = iRe * gRe - iIm * gIm;
  const waveIm = iRe * gIm + iIm * gRe;
  const currentRe = iRe * slopeRe - iIm * slopeIm;
  const currentIm = iRe * slopeIm + iIm * slopeRe;
  const chargeRe = source[s + 16] * slopeRe - source[s + 18] * slopeIm;
  const chargeIm = source[s + 16] * slopeIm + source[s + 18] * slopeRe;
  addVector(sums, A, ux, uy, uz, waveRe, waveIm);
  addVector(sums, CURL, y * uz - z * uy, z * ux - x * uz, x * uy - y * ux, currentRe, currentIm);
  addVector(sums, GRAD, x, y, z, chargeRe, chargeIm);
}

function addVector(sums: Float64Array, to: number, x: number, y: number, z: number, re: number, im: number): void {
  sums[to] += x * re;
  sums[to + 1] += y * re;
  sums[to + 2] += z * re;
  sums[to + 3] += x * im;
  sums[to + 4] += y * im;
  sums[to + 5] += z * im;
}

const kernels = emptyKernels();

function addReflected(
  sums: Float64Array,
  point: Point,
  source: Float64Array,
  s: number,
  k0: number,
  table: GroundTable,
): void {
  const dx = point[0] - source[s];
  const dy = point[1] - source[s + 2];
  const rho = Math.sqrt(dx * dx + dy * dy);
  readReflected(kernels, table, k0, rho, point[2] + source[s + 4]);
  const { value, byRho, byHeight } = kernels;
  const cx = rho > 0 ? dx / rho : 1;
  const cy = rho > 0 ? dy / rho : 0;
  const ux = source[s + 6];
  const uy = source[s + 8];
  const uz = source[s + 10];
  const iRe = source[s + 12];
  const iIm = source[s + 14];
  const level = ux * cx + uy * cy;
  const side = ux * cy - uy * cx; // level·ρ̂ turns as the azimuth does
  for (let part = 0; part < 2; part++) {
    const g = part;
    const k = 2 + part;
    const v = 4 + part;
    const q = 6 + part;
    const qOverRho = rho > 1e-9 ? value[q] / rho : byRho[q];
    // Slopes of Ax, Ay, Az for a unit source; see the kernels in ground-spectrum.
    const across = uz * cx * cy * (byRho[q] - qOverRho);
    const dAxDy = ux * cy * byRho[g] - across;
    const dAyDx = uy * cx * byRho[g] - across;
    const dAxDz = ux * byHeight[g] - uz * cx * byHeight[q];
    const dAyDz = uy * byHeight[g] - uz * cy * byHeight[q];
    const dAzDx = uz * cx * byRho[v] + cx * level * byRho[q] + cy * side * qOverRho;
    const dAzDy = uz * cy * byRho[v] + cy * level * byRho[q] - cx * side * qOverRho;
    // A real part of a kernel times re + j im of the source, an imaginary part times −im + j re.
    const toRe = part === 0 ? iRe : -iIm;
    const toIm = part === 0 ? iIm : iRe;
    const chargeRe = part === 0 ? source[s + 16] : -source[s + 18];
    const chargeIm = part === 0 ? source[s + 18] : source[s + 16];
    const ax = ux * value[g] - uz * cx * value[q];
    const ay = uy * value[g] - uz * cy * value[q];
    addVector(sums, A, ax, ay, uz * value[v] + level * value[q], toRe, toIm);
    addVector(sums, CURL, dAzDy - dAyDz, dAxDz - dAzDx, dAyDx - dAxDy, toRe, toIm);
    addVector(sums, GRAD, cx * byRho[k], cy * byRho[k], byHeight[k], chargeRe, chargeIm);
  }
}
