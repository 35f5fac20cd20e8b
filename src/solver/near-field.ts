/**
 * Electric and magnetic field of the solved currents at points in air, near or far:
 *
 *   E = −jωµ0 A/4π − ∇Φ/4πε0,   H = ∇ × A/4π,   A = ∫ G_A·u I dl,   Φ = ∫ K_Φ q dl,   q = (j/ω) dI/dl
 *
 * In free space and for the mirror image over perfect ground the gradient is closed: ∇(e^(−jkR)/R) = −(1 + jkR) e^(−jkR) R⃗/R³.
 * Over soil the reflected kernels come from the tables of the solver and are differentiated by their slopes in ρ and h (T = R e^(jkR) g
 * is smooth). An element is cut until no part is longer than its distance from the point.
 */
import { ETA0 } from '../base/constants';
import type { Currents } from './far-field';
import type { Point } from './geometry';
import { type GroundTable, readGroundTable } from './ground-table';
import type { PairPlan } from './pair-plan';
import { meshPieces } from './pair-plan';
import { gaussRule } from './quadrature';
import type { Piece } from './static-moments';
import { along, distanceToPiece, mirrored } from './vector';

/** Real and imaginary parts of Ex, Ey, Ez (V/m) and Hx, Hy, Hz (A/m). */
export interface FieldVector {
  readonly eRe: Float64Array;
  readonly eIm: Float64Array;
  readonly hRe: Float64Array;
  readonly hIm: Float64Array;
}

/** Sums in the making: A and its curl, and the gradient of Φ, with the constants still out. */
interface FieldSums {
  readonly aRe: Float64Array;
  readonly aIm: Float64Array;
  readonly curlRe: Float64Array;
  readonly curlIm: Float64Array;
  readonly gradRe: Float64Array;
  readonly gradIm: Float64Array;
}

/** A short source: where, which way, current times weight, and dI/dl times weight. */
interface Source {
  readonly at: Point;
  readonly u: Point;
  readonly iRe: number;
  readonly iIm: number;
  readonly slopeRe: number;
  readonly slopeIm: number;
}

const nearRule = gaussRule(4);
const farRule = gaussRule(2);

export function fieldAt(
  point: Point,
  plan: PairPlan,
  currents: Currents,
  k0: number,
  table: GroundTable | undefined,
): FieldVector {
  const three = () => new Float64Array(3);
  const sums: FieldSums = {
    aRe: three(),
    aIm: three(),
    curlRe: three(),
    curlIm: three(),
    gradRe: three(),
    gradIm: three(),
  };
  meshPieces(plan.mesh).forEach((piece, e) => {
    eachSource(piece, e, currents, point, (source) => addWave(sums, source, point, k0, 1));
    if (plan.groundKind === 'none') return;
    eachSource(piece, e, currents, mirrored(point), (source) => {
      if (plan.groundKind === 'perfect-conductor') addWave(sums, mirroredSource(source), point, k0, -1);
      else if (table) addReflected(sums, source, point, k0, table);
    });
  });
  return assembleField(sums, k0);
}

/** Cuts an element into sources short against their distance from the point. */
function eachSource(piece: Piece, e: number, currents: Currents, point: Point, use: (source: Source) => void): void {
  const end = along(piece.start, piece.direction, piece.lengthM);
  const cut = (fromM: number, toM: number): void => {
    const a = along(piece.start, piece.direction, fromM);
    const b = toM === piece.lengthM ? end : along(piece.start, piece.direction, toM);
    const awayM = distanceToPiece(point, a, b);
    if (toM - fromM > awayM && toM - fromM > 0.25 * piece.radiusM) {
      cut(fromM, (fromM + toM) / 2);
      cut((fromM + toM) / 2, toM);
      return;
    }
    const rule = awayM > 3 * (toM - fromM) ? farRule : nearRule;
    for (let i = 0; i < rule.points.length; i++) {
      const atM = fromM + (toM - fromM) * rule.points[i];
      const weight = rule.weights[i] * (toM - fromM);
      const share = atM / piece.lengthM;
      const slope = weight / piece.lengthM;
      use({
        at: along(piece.start, piece.direction, atM),
        u: piece.direction,
        iRe: weight * ((1 - share) * currents.re[2 * e] + share * currents.re[2 * e + 1]),
        iIm: weight * ((1 - share) * currents.im[2 * e] + share * currents.im[2 * e + 1]),
        slopeRe: slope * (currents.re[2 * e + 1] - currents.re[2 * e]),
        slopeIm: slope * (currents.im[2 * e + 1] - currents.im[2 * e]),
      });
    }
  };
  cut(0, piece.lengthM);
}

/** The image in perfect ground: level current and charge change sign, upright current does not. */
const mirroredSource = (source: Source): Source => ({
  ...source,
  at: mirrored(source.at),
  u: [-source.u[0], -source.u[1], source.u[2]],
});

function addWave(sums: FieldSums, source: Source, point: Point, k0: number, charge: 1 | -1): void {
  const { at, u, iRe, iIm } = source;
  const r = [point[0] - at[0], point[1] - at[1], point[2] - at[2]];
  const distance = Math.hypot(r[0], r[1], r[2]);
  const x = k0 * distance;
  const gRe = Math.cos(x) / distance;
  const gIm = -Math.sin(x) / distance;
  const slopeRe = -(gRe - x * gIm) / distance ** 2; // ∇G = slope · r
  const slopeIm = -(gIm + x * gRe) / distance ** 2;
  const currentRe = iRe * slopeRe - iIm * slopeIm;
  const currentIm = iRe * slopeIm + iIm * slopeRe;
  const chargeRe = charge * (source.slopeRe * slopeRe - source.slopeIm * slopeIm);
  const chargeIm = charge * (source.slopeRe * slopeIm + source.slopeIm * slopeRe);
  for (let axis = 0; axis < 3; axis++) {
    const [next, last] = [(axis + 1) % 3, (axis + 2) % 3];
    const turn = r[next] * u[last] - r[last] * u[next];
    sums.aRe[axis] += u[axis] * (iRe * gRe - iIm * gIm);
    sums.aIm[axis] += u[axis] * (iRe * gIm + iIm * gRe);
    sums.curlRe[axis] += turn * currentRe;
    sums.curlIm[axis] += turn * currentIm;
    sums.gradRe[axis] += r[axis] * chargeRe;
    sums.gradIm[axis] += r[axis] * chargeIm;
  }
}

/** Values and slopes of the four reflected kernels: g, ∂g/∂ρ, ∂g/∂h, each re and im of Gxx, K_Φ, Gzz, ∂Q/∂ρ. */
interface ReflectedKernels {
  readonly value: Float64Array;
  readonly byRho: Float64Array;
  readonly byHeight: Float64Array;
}

const kernels: ReflectedKernels = {
  value: new Float64Array(8),
  byRho: new Float64Array(8),
  byHeight: new Float64Array(8),
};
const before = new Float64Array(8);
const after = new Float64Array(8);

function readKernels(table: GroundTable, k0: number, rho: number, h: number): ReflectedKernels {
  const distance = Math.hypot(rho, h);
  const step = 0.02 * distance;
  readGroundTable(kernels.value, table, k0 * rho, k0 * h);
  readGroundTable(before, table, k0 * (rho - step), k0 * h);
  readGroundTable(after, table, k0 * (rho + step), k0 * h);
  for (let q = 0; q < 8; q++) kernels.byRho[q] = (after[q] - before[q]) / (2 * step);
  const rise = 0.05 * h;
  readGroundTable(before, table, k0 * rho, k0 * (h - rise));
  readGroundTable(after, table, k0 * rho, k0 * (h + rise));
  for (let q = 0; q < 8; q++) kernels.byHeight[q] = (after[q] - before[q]) / (2 * rise);
  // g = T w, w = e^(−jkR)/R, dw/dR = −(jk + 1/R) w.
  const wRe = Math.cos(k0 * distance) / distance;
  const wIm = -Math.sin(k0 * distance) / distance;
  for (let q = 0; q < 8; q += 2) {
    const tRe = kernels.value[q];
    const tIm = kernels.value[q + 1];
    const fallRe = -tRe / distance + k0 * tIm;
    const fallIm = -tIm / distance - k0 * tRe;
    timesInto(kernels.value, q, tRe, tIm, wRe, wIm);
    const rhoRe = kernels.byRho[q] + (fallRe * rho) / distance;
    const rhoIm = kernels.byRho[q + 1] + (fallIm * rho) / distance;
    timesInto(kernels.byRho, q, rhoRe, rhoIm, wRe, wIm);
    const heightRe = kernels.byHeight[q] + (fallRe * h) / distance;
    const heightIm = kernels.byHeight[q + 1] + (fallIm * h) / distance;
    timesInto(kernels.byHeight, q, heightRe, heightIm, wRe, wIm);
  }
  return kernels;
}

function timesInto(out: Float64Array, q: number, aRe: number, aIm: number, bRe: number, bIm: number): void {
  out[q] = aRe * bRe - aIm * bIm;
  out[q + 1] = aRe * bIm + aIm * bRe;
}

function addReflected(sums: FieldSums, source: Source, point: Point, k0: number, table: GroundTable): void {
  const { u } = source;
  const dx = point[0] - source.at[0];
  const dy = point[1] - source.at[1];
  const rho = Math.hypot(dx, dy);
  const { value, byRho, byHeight } = readKernels(table, k0, rho, point[2] + source.at[2]);
  const cx = rho > 0 ? dx / rho : 1;
  const cy = rho > 0 ? dy / rho : 0;
  const level = u[0] * cx + u[1] * cy;
  for (let part = 0; part < 2; part++) {
    const [g, k, v, q] = [part, 2 + part, 4 + part, 6 + part];
    const qOverRho = rho > 1e-9 ? value[q] / rho : byRho[q];
    // Slopes of Ax, Ay, Az for a unit source; see the kernels in ground-spectrum.
    const across = cx * cy * (byRho[q] - qOverRho);
    const dAxDy = u[0] * cy * byRho[g] - u[2] * across;
    const dAyDx = u[1] * cx * byRho[g] - u[2] * across;
    const dAxDz = u[0] * byHeight[g] - u[2] * cx * byHeight[q];
    const dAyDz = u[1] * byHeight[g] - u[2] * cy * byHeight[q];
    const side = u[0] * cy - u[1] * cx; // level·ρ̂ turns as the azimuth does
    const dAzDx = u[2] * cx * byRho[v] + cx * level * byRho[q] + cy * side * qOverRho;
    const dAzDy = u[2] * cy * byRho[v] + cy * level * byRho[q] - cx * side * qOverRho;
    const a = [
      u[0] * value[g] - u[2] * cx * value[q],
      u[1] * value[g] - u[2] * cy * value[q],
      u[2] * value[v] + level * value[q],
    ];
    const curl = [dAzDy - dAyDz, dAxDz - dAzDx, dAyDx - dAxDy];
    const grad = [cx * byRho[k], cy * byRho[k], byHeight[k]];
    addPart(sums.aRe, sums.aIm, a, source.iRe, source.iIm, part);
    addPart(sums.curlRe, sums.curlIm, curl, source.iRe, source.iIm, part);
    addPart(sums.gradRe, sums.gradIm, grad, source.slopeRe, source.slopeIm, part);
  }
}

/** Adds (re + j im)·values, the values being a real (part 0) or imaginary (part 1) part. */
function addPart(toRe: Float64Array, toIm: Float64Array, values: number[], re: number, im: number, part: number): void {
  for (let axis = 0; axis < 3; axis++) {
    toRe[axis] += part === 0 ? re * values[axis] : -im * values[axis];
    toIm[axis] += part === 0 ? im * values[axis] : re * values[axis];
  }
}

/** E = −(jη0/4π)[k0 A + ∇(∫ K I′ dl)/k0], since q/ε0 = (jη0/k0) I′; H = ∇ × A/4π. */
function assembleField(sums: FieldSums, k0: number): FieldVector {
  const factor = ETA0 / (4 * Math.PI);
  const eRe = new Float64Array(3);
  const eIm = new Float64Array(3);
  for (let axis = 0; axis < 3; axis++) {
    eRe[axis] = factor * (k0 * sums.aIm[axis] + sums.gradIm[axis] / k0);
    eIm[axis] = -factor * (k0 * sums.aRe[axis] + sums.gradRe[axis] / k0);
  }
  const over4Pi = (x: number): number => x / (4 * Math.PI);
  return { eRe, eIm, hRe: sums.curlRe.map(over4Pi), hIm: sums.curlIm.map(over4Pi) };
}
