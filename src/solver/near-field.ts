/**
 * Electric and magnetic field of the solved currents at points in air, near or far:
 *
 *   E = −jωµ0 A/4π − ∇Φ/4πε0,   H = ∇ × A/4π,   A = ∫ G_A·u I dl,   Φ = ∫ K_Φ q dl,   q = (j/ω) dI/dl
 *
 * In free space and for the mirror image over perfect ground the gradient is closed: ∇(e^(−jkR)/R) = −(1 + jkR) e^(−jkR) R⃗/R³.
 * Over soil the reflected kernels and their slopes come from the tables of the solver. Currents come as a tree of pieces, so a thousand points
 * cost some hundredths of a second.
 */
import { ETA0 } from '../base/constants';
import { type CurrentTree, linearMoments, MOMENT, PLACE } from './current-tree';
import type { Ground, Point } from './geometry';
import type { GroundTable } from './ground-table';
import { A, CURL, GRAD, type NearSums, plainNearSums, ShortSources, SUMS } from './near-waves';

/** Real and imaginary parts of Ex, Ey, Ez (V/m) and Hx, Hy, Hz (A/m). */
export interface FieldVector {
  readonly eRe: Float64Array;
  readonly eIm: Float64Array;
  readonly hRe: Float64Array;
  readonly hIm: Float64Array;
}

/** What the waves go through: free space, a mirror, or soil with its table. */
export interface Surroundings {
  readonly k0: number;
  readonly ground: Ground['kind'];
  readonly table: GroundTable | undefined;
}

/** Longest piece as part of its distance, and in radians of phase: there the currents' own shape matters too. */
const LONGEST = 0.4;
const LONGEST_RADIANS = 1;
/** Gauss points from the middle, as part of the length: 1/(2√3). */
const GAUSS = 0.5 / Math.sqrt(3);
/** Closer than this part of the radius to the axis a piece is cut no further. */
const LEAST_RADII = 0.25;

const cutMoment = new Float64Array(MOMENT);
const sums = new Float64Array(SUMS);
const direct = new ShortSources();
const reflected = new ShortSources();

/** The fields at each point, in their order. */
export function fieldVectors(
  points: readonly Point[],
  tree: CurrentTree,
  surroundings: Surroundings,
  nearSums: NearSums = plainNearSums,
): FieldVector[] {
  const { k0, ground, table } = surroundings;
  const adder = nearSums(k0, table);
  const fields = points.map((point) => {
    direct.clear();
    reflected.clear();
    sums.fill(0);
    for (const root of tree.roots) {
      visit(tree, root, point, surroundings, false);
      if (ground !== 'none') visit(tree, root, point, surroundings, true);
    }
    adder.add(sums, point, direct, reflected);
    return assembleField(k0);
  });
  adder.end();
  return fields;
}

/** Direct waves (`back` false), or those by way of the ground: distances are then to the mirrored piece. */
function visit(tree: CurrentTree, node: number, point: Point, surroundings: Surroundings, back: boolean): void {
  const { place, moment, left, right, element } = tree;
  const o = PLACE * node;
  const length = place[o + 6];
  const away = distanceTo(place, o, length, point, back);
  if (length <= LONGEST * away && length * surroundings.k0 <= LONGEST_RADIANS) {
    emit(place, o, length, place[o], place[o + 1], place[o + 2], moment, MOMENT * node, surroundings, back);
    return;
  }
  if (left[node] >= 0) {
    visit(tree, left[node], point, surroundings, back);
    visit(tree, right[node], point, surroundings, back);
    return;
  }
  cut(tree, o, element[node], 0, 1, point, surroundings, back);
}

/** From the point to the piece whose middle, direction and length stand at `o`. */
function distanceTo(place: Float64Array, o: number, length: number, point: Point, back: boolean): number {
  const x = point[0] - place[o];
  const y = point[1] - place[o + 1];
  const z = (back ? -point[2] : point[2]) - place[o + 2];
  const along = x * place[o + 3] + y * place[o + 4] + z * place[o + 5];
  const beyond = Math.max(Math.abs(along) - length / 2, 0);
  return Math.sqrt(Math.max(x * x + y * y + z * z - along * along, 0) + beyond * beyond);
}

/** The part `from` to `to` (0 to 1) of one element, halved until it is short against its distance. */
function cut(
  tree: CurrentTree,
  o: number,
  e: number,
  from: number,
  to: number,
  point: Point,
  surroundings: Surroundings,
  back: boolean,
): void {
  const { place, mesh, currents } = tree;
  const length = (to - from) * place[o + 6];
  const shift = ((from + to - 1) / 2) * place[o + 6];
  const at = cutPlace(place, o, shift);
  const away = distanceTo(at, 0, length, point, back);
  const isShort = length <= LONGEST * away && length * surroundings.k0 <= LONGEST_RADIANS;
  if (!isShort && length > LEAST_RADII * mesh.radiusM[e]) {
    cut(tree, o, e, from, (from + to) / 2, point, surroundings, back);
    cut(tree, o, e, (from + to) / 2, to, point, surroundings, back);
    return;
  }
  const between = (values: Float64Array, share: number): number =>
    (1 - share) * values[2 * e] + share * values[2 * e + 1];
  linearMoments(cutMoment, 0, length, between(currents.re, from), between(currents.re, to), 0);
  linearMoments(cutMoment, 0, length, between(currents.im, from), between(currents.im, to), 1);
  emit(place, o, length, at[0], at[1], at[2], cutMoment, 0, surroundings, back);
}

const shifted = new Float64Array(PLACE);

function cutPlace(place: Float64Array, o: number, shift: number): Float64Array {
  for (let axis = 0; axis < 3; axis++) {
    shifted[axis] = place[o + axis] + shift * place[o + 3 + axis];
    shifted[3 + axis] = place[o + 3 + axis];
  }
  return shifted;
}

/** The two points that stand for a piece. The image in perfect ground: level current and charge change sign, upright current does not. */
function emit(
  place: Float64Array,
  o: number,
  length: number,
  cx: number,
  cy: number,
  cz: number,
  moment: Float64Array,
  m: number,
  { ground }: Surroundings,
  back: boolean,
): void {
  const isImage = back && ground !== 'soil';
  const list = back && ground === 'soil' ? reflected : direct;
  const ux = place[o + 3];
  const uy = place[o + 4];
  const uz = place[o + 5];
  const reach = GAUSS * length;
  const charge = isImage ? -0.5 : 0.5;
  const turn = isImage ? -1 : 1;
  for (let side = -1; side <= 1; side += 2) {
    const step = side * reach;
    list.add(
      cx + step * ux,
      cy + step * uy,
      turn * (cz + step * uz),
      turn * ux,
      turn * uy,
      uz,
      0.5 * (moment[m] + moment[m + 2] / step),
      0.5 * (moment[m + 1] + moment[m + 3] / step),
      charge * (moment[m + 4] + moment[m + 6] / step),
      charge * (moment[m + 5] + moment[m + 7] / step),
    );
  }
}

/** E = −(jη0/4π)[k0 A + ∇(∫ K I′ dl)/k0], since q/ε0 = (jη0/k0) I′; H = ∇ × A/4π. */
function assembleField(k0: number): FieldVector {
  const factor = ETA0 / (4 * Math.PI);
  const eRe = new Float64Array(3);
  const eIm = new Float64Array(3);
  for (let axis = 0; axis < 3; axis++) {
    eRe[axis] = factor * (k0 * sums[A + 3 + axis] + sums[GRAD + 3 + axis] / k0);
    eIm[axis] = -factor * (k0 * sums[A + axis] + sums[GRAD + axis] / k0);
  }
  const over4Pi = (x: number): number => x / (4 * Math.PI);
  return { eRe, eIm, hRe: sums.slice(CURL, CURL + 3).map(over4Pi), hIm: sums.slice(CURL + 3, CURL + 6).map(over4Pi) };
}
