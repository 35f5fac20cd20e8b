/**
 * Electric and magnetic field of the solved currents at points in air, near or far:
 *
 *   E = −jωµ0 A/4π − ∇Φ/4πε0,   H = ∇ × A/4π,   A = ∫ G_A·u I dl,   Φ = ∫ K_Φ q dl,   q = (j/ω) dI/dl
 *
 * In free space and for the mirror image over perfect ground the gradient is closed: ∇(e^(−jkR)/R) = −(1 + jkR) e^(−jkR) R⃗/R³.
 * Over soil the reflected kernels and their slopes come from the tables of the solver. Currents come as a tree of pieces, so a thousand points
 * cost about a tenth of a second.
 */
import { ETA0 } from '../base/constants';
import { type CurrentTree, linearMoments, MOMENT, PLACE } from './current-tree';
import type { Ground, Point } from './geometry';
import type { GroundTable } from './ground-table';
import { emptyKernels, readReflected } from './reflected-kernels';

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

// Sums in the making, x, y, z of re then im: A, its curl, the gradient of Φ, with the constants still out.
const A = 0;
const CURL = 6;
const GRAD = 12;
const sums = new Float64Array(18);
// A short source: x, y, z; direction; I dl and I′ dl, re and im.
const source = new Float64Array(10);
const cutMoment = new Float64Array(MOMENT);
const kernels = emptyKernels();

export function fieldAt(point: Point, tree: CurrentTree, surroundings: Surroundings): FieldVector {
  sums.fill(0);
  for (const root of tree.roots) {
    visit(tree, root, point, surroundings, false);
    if (surroundings.ground !== 'none') visit(tree, root, point, surroundings, true);
  }
  return assembleField(surroundings.k0);
}

/** Direct waves (`back` false), or those by way of the ground: distances are then to the mirrored piece. */
function visit(tree: CurrentTree, node: number, point: Point, surroundings: Surroundings, back: boolean): void {
  const { place, moment, left, right, element } = tree;
  const o = PLACE * node;
  const length = place[o + 6];
  const away = distanceTo(place, o, length, point, back);
  if (length <= LONGEST * away && length * surroundings.k0 <= LONGEST_RADIANS) {
    emit(place, o, length, place[o], place[o + 1], place[o + 2], moment, MOMENT * node, point, surroundings, back);
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
  emit(place, o, length, at[0], at[1], at[2], cutMoment, 0, point, surroundings, back);
}

const shifted = new Float64Array(PLACE);

function cutPlace(place: Float64Array, o: number, shift: number): Float64Array {
  for (let axis = 0; axis < 3; axis++) {
    shifted[axis] = place[o + axis] + shift * place[o + 3 + axis];
    shifted[3 + axis] = place[o + 3 + axis];
  }
  return shifted;
}

/** The two points that stand for a piece. */
function emit(
  place: Float64Array,
  o: number,
  length: number,
  cx: number,
  cy: number,
  cz: number,
  moment: Float64Array,
  m: number,
  point: Point,
  { k0, ground, table }: Surroundings,
  back: boolean,
): void {
  const reach = GAUSS * length;
  for (let side = -1; side <= 1; side += 2) {
    const step = side * reach;
    source[0] = cx + step * place[o + 3];
    source[1] = cy + step * place[o + 4];
    source[2] = cz + step * place[o + 5];
    source[3] = place[o + 3];
    source[4] = place[o + 4];
    source[5] = place[o + 5];
    for (let part = 0; part < 2; part++) {
      source[6 + part] = 0.5 * (moment[m + part] + moment[m + 2 + part] / step);
      source[8 + part] = 0.5 * (moment[m + 4 + part] + moment[m + 6 + part] / step);
    }
    if (!back) addWave(point, k0, 1);
    else if (ground === 'soil' && table) addReflected(point, k0, table);
    else addImage(point, k0);
  }
}

/** The image in perfect ground: level current and charge change sign, upright current does not. */
function addImage(point: Point, k0: number): void {
  source[2] = -source[2];
  source[3] = -source[3];
  source[4] = -source[4];
  addWave(point, k0, -1);
}

function addWave(point: Point, k0: number, charge: 1 | -1): void {
  const x = point[0] - source[0];
  const y = point[1] - source[1];
  const z = point[2] - source[2];
  const squared = x * x + y * y + z * z;
  const distance = Math.sqrt(squared);
  const phase = k0 * distance;
  const gRe = Math.cos(phase) / distance;
  const gIm = -Math.sin(phase) / distance;
  const slopeRe = -(gRe - phase * gIm) / squared; // ∇G = slope · r
  const slopeIm = -(gIm + phase * gRe) / squared;
  const iRe = source[6];
  const iIm = source[7];
  const waveRe = iRe * gRe - iIm * gIm;
  const waveIm = iRe * gIm + iIm * gRe;
  const currentRe = iRe * slopeRe - iIm * slopeIm;
  const currentIm = iRe * slopeIm + iIm * slopeRe;
  const chargeRe = charge * (source[8] * slopeRe - source[9] * slopeIm);
  const chargeIm = charge * (source[8] * slopeIm + source[9] * slopeRe);
  const ux = source[3];
  const uy = source[4];
  const uz = source[5];
  addVector(A, ux, uy, uz, waveRe, waveIm);
  addVector(CURL, y * uz - z * uy, z * ux - x * uz, x * uy - y * ux, currentRe, currentIm);
  addVector(GRAD, x, y, z, chargeRe, chargeIm);
}

function addVector(to: number, x: number, y: number, z: number, re: number, im: number): void {
  sums[to] += x * re;
  sums[to + 1] += y * re;
  sums[to + 2] += z * re;
  sums[to + 3] += x * im;
  sums[to + 4] += y * im;
  sums[to + 5] += z * im;
}

function addReflected(point: Point, k0: number, table: GroundTable): void {
  const dx = point[0] - source[0];
  const dy = point[1] - source[1];
  const rho = Math.sqrt(dx * dx + dy * dy);
  readReflected(kernels, table, k0, rho, point[2] + source[2]);
  const { value, byRho, byHeight } = kernels;
  const cx = rho > 0 ? dx / rho : 1;
  const cy = rho > 0 ? dy / rho : 0;
  const ux = source[3];
  const uy = source[4];
  const uz = source[5];
  const iRe = source[6];
  const iIm = source[7];
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
    const chargeRe = part === 0 ? source[8] : -source[9];
    const chargeIm = part === 0 ? source[9] : source[8];
    const ax = ux * value[g] - uz * cx * value[q];
    const ay = uy * value[g] - uz * cy * value[q];
    addVector(A, ax, ay, uz * value[v] + level * value[q], toRe, toIm);
    addVector(CURL, dAzDy - dAyDz, dAxDz - dAzDx, dAyDx - dAxDy, toRe, toIm);
    addVector(GRAD, cx * byRho[k], cy * byRho[k], byHeight[k], chargeRe, chargeIm);
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
