/**
 * Impedances between the ends of every pair of elements at one frequency. For shape functions s_i, s_j of two elements,
 *
 *   Z_ij = (jη0/4π) [ k0 ∬ s_i s_j u·G_A·u′ − (±1)(±1)/(k0 L L′) ∬ K_Φ ]
 *
 * by two Gauss points on each element. Near pairs have 1/R taken out and put back as a static moment; the same is done with the
 * static image over ground. Over soil the reflected kernels come from tables.
 *
 * Output: eight numbers to a pair, re and im of Z00, Z01, Z10, Z11 (first index: element e of pair (e, f), f ≤ e).
 */
import { ETA0 } from '../base/constants';
import { type GroundTable, readGroundTable } from './ground-table';
import { type PairPlan, pairCount } from './pair-plan';
import { gaussRule } from './quadrature';

export const ENDS_WIDTH = 8;

/** Running sums of one pair: moments A00 A01 A10 A11 and the charge integral Φ, as re, im. */
type Sums = Float64Array;

export function fillPairs(plan: PairPlan, k0: number, table: GroundTable | undefined): Float64Array {
  const count = plan.mesh.elementCount;
  const out = new Float64Array(ENDS_WIDTH * pairCount(count));
  const sums: Sums = new Float64Array(10);
  for (let e = 0, pair = 0; e < count; e++) {
    for (let f = 0; f <= e; f++, pair++) {
      if (plan.copyOf[pair] >= 0) {
        const from = ENDS_WIDTH * plan.copyOf[pair];
        out.copyWithin(ENDS_WIDTH * pair, from, from + ENDS_WIDTH);
        continue;
      }
      sums.fill(0);
      addDirect(sums, plan, k0, e, f, pair);
      if (plan.groundKind === 'perfect-conductor') addMirror(sums, plan, k0, e, f, pair);
      else if (table) addSoil(sums, plan, k0, e, f, pair, table);
      finish(out, ENDS_WIDTH * pair, sums, k0, plan.mesh.lengthM[e], plan.mesh.lengthM[f]);
    }
  }
  return out;
}

function finish(out: Float64Array, o: number, sums: Sums, k0: number, lengthE: number, lengthF: number): void {
  const factor = ETA0 / (4 * Math.PI);
  const charge = 1 / (k0 * lengthE * lengthF);
  for (let n = 0; n < 4; n++) {
    const sign = n === 0 || n === 3 ? charge : -charge;
    const re = k0 * sums[2 * n] - sign * sums[8];
    const im = k0 * sums[2 * n + 1] - sign * sums[9];
    out[o + 2 * n] = -factor * im;
    out[o + 2 * n + 1] = factor * re;
  }
}

const at = gaussRule(2).points;

/** Adds one quadrature point: vector kernel a, charge kernel c, at shares s and t along the two elements. */
function addPoint(
  sums: Sums,
  weight: number,
  s: number,
  t: number,
  aRe: number,
  aIm: number,
  cRe: number,
  cIm: number,
) {
  const w00 = weight * (1 - s) * (1 - t);
  const w01 = weight * (1 - s) * t;
  const w10 = weight * s * (1 - t);
  const w11 = weight * s * t;
  sums[0] += w00 * aRe;
  sums[1] += w00 * aIm;
  sums[2] += w01 * aRe;
  sums[3] += w01 * aIm;
  sums[4] += w10 * aRe;
  sums[5] += w10 * aIm;
  sums[6] += w11 * aRe;
  sums[7] += w11 * aIm;
  sums[8] += weight * cRe;
  sums[9] += weight * cIm;
}

/** Adds static moments, times real vector and charge factors. */
function addStatic(sums: Sums, statics: Float64Array, row: number, aRe: number, aIm: number, cRe: number, cIm: number) {
  let whole = 0;
  for (let n = 0; n < 4; n++) {
    const moment = statics[4 * row + n];
    sums[2 * n] += aRe * moment;
    sums[2 * n + 1] += aIm * moment;
    whole += moment;
  }
  sums[8] += cRe * whole;
  sums[9] += cIm * whole;
}

function directionDot(plan: PairPlan, e: number, f: number): { across: number; up: number } {
  const d = plan.mesh.direction;
  return {
    across: d[3 * e] * d[3 * f] + d[3 * e + 1] * d[3 * f + 1],
    up: d[3 * e + 2] * d[3 * f + 2],
  };
}

const meanRadiusSquared = (plan: PairPlan, e: number, f: number): number =>
  (plan.mesh.radiusM[e] ** 2 + plan.mesh.radiusM[f] ** 2) / 2;

/** The wave from element to element, or from the mirrored element (`turn` −1), with factors for the vector and the charge part. */
function addWave(
  sums: Sums,
  plan: PairPlan,
  k0: number,
  e: number,
  f: number,
  row: number,
  turn: 1 | -1,
  a: number,
  c: number,
) {
  const p = plan.points;
  const offSquared = meanRadiusSquared(plan, e, f);
  const weight = (plan.mesh.lengthM[e] * plan.mesh.lengthM[f]) / 4;
  for (let i = 0; i < 2; i++) {
    const n = 6 * e + 3 * i;
    for (let j = 0; j < 2; j++) {
      const m = 6 * f + 3 * j;
      const dx = p[n] - p[m];
      const dy = p[n + 1] - p[m + 1];
      const dz = p[n + 2] - turn * p[m + 2];
      const r = Math.sqrt(dx * dx + dy * dy + dz * dz + offSquared);
      const inverse = 1 / r;
      const re = (row >= 0 ? Math.cos(k0 * r) - 1 : Math.cos(k0 * r)) * inverse;
      const im = -Math.sin(k0 * r) * inverse;
      addPoint(sums, weight, at[i], at[j], a * re, a * im, c * re, c * im);
    }
  }
  if (row >= 0) addStatic(sums, plan.statics, row, a, 0, c, 0);
}

function addDirect(sums: Sums, plan: PairPlan, k0: number, e: number, f: number, pair: number): void {
  const { across, up } = directionDot(plan, e, f);
  addWave(sums, plan, k0, e, f, plan.direct[pair], 1, across + up, 1);
}

/** Perfect ground: charges and level currents of opposite sign in the mirror, upright currents of the same sign. */
function addMirror(sums: Sums, plan: PairPlan, k0: number, e: number, f: number, pair: number): void {
  const { across, up } = directionDot(plan, e, f);
  addWave(sums, plan, k0, e, f, plan.image[pair], -1, up - across, -1);
}

const kernel = new Float64Array(8);

function addSoil(sums: Sums, plan: PairPlan, k0: number, e: number, f: number, pair: number, table: GroundTable): void {
  const { start, direction, lengthM } = plan.mesh;
  const { across, up } = directionDot(plan, e, f);
  const offSquared = meanRadiusSquared(plan, e, f);
  const row = plan.image[pair];
  const rule = gaussRule(plan.order[pair]);
  const kappa = table.kappa;
  const imageRe = row >= 0 ? kappa.re : 0;
  const imageIm = row >= 0 ? kappa.im : 0;
  for (let i = 0; i < rule.points.length; i++) {
    const le = rule.points[i] * lengthM[e];
    for (let j = 0; j < rule.points.length; j++) {
      const lf = rule.points[j] * lengthM[f];
      const dx = start[3 * e] + le * direction[3 * e] - start[3 * f] - lf * direction[3 * f];
      const dy = start[3 * e + 1] + le * direction[3 * e + 1] - start[3 * f + 1] - lf * direction[3 * f + 1];
      const h = start[3 * e + 2] + le * direction[3 * e + 2] + start[3 * f + 2] + lf * direction[3 * f + 2];
      const rho = Math.sqrt(dx * dx + dy * dy);
      const inverse = 1 / Math.sqrt(rho * rho + h * h + offSquared);
      readGroundTable(kernel, table, k0 * rho, k0 * h);
      const phase = k0 / inverse;
      const cos = Math.cos(phase) * inverse;
      const sin = -Math.sin(phase) * inverse;
      let turn = 0;
      if (rho > 0) {
        const towardF = (direction[3 * f] * dx + direction[3 * f + 1] * dy) / rho;
        const towardE = (direction[3 * e] * dx + direction[3 * e + 1] * dy) / rho;
        turn = direction[3 * e + 2] * towardF - direction[3 * f + 2] * towardE;
      }
      const tRe = across * kernel[0] + up * kernel[4] + turn * kernel[6];
      const tIm = across * kernel[1] + up * kernel[5] + turn * kernel[7];
      const aRe = tRe * cos - tIm * sin - 2 * up * imageRe * inverse;
      const aIm = tRe * sin + tIm * cos - 2 * up * imageIm * inverse;
      const cRe = kernel[2] * cos - kernel[3] * sin + imageRe * inverse;
      const cIm = kernel[2] * sin + kernel[3] * cos + imageIm * inverse;
      const weight = lengthM[e] * lengthM[f] * rule.weights[i] * rule.weights[j];
      addPoint(sums, weight, rule.points[i], rule.points[j], aRe, aIm, cRe, cIm);
    }
  }
  if (row >= 0) addStatic(sums, plan.statics, row, 2 * up * kappa.re, 2 * up * kappa.im, -kappa.re, -kappa.im);
}
