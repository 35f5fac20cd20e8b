/**
 * The solved currents as a tree of straight pieces, so that a field point far from a stretch of wire meets few sources and a near one many.
 *
 * A piece of length l about its middle c, with current I(s) and charge slope I′(s), acts as two points at c ± l/(2√3) (Gauss) that carry
 *
 *   ½ m0 ± m1/(2g),   m0 = ∫ f ds,  m1 = ∫ f (s − c) ds,  g = l/(2√3),     f = I, then I′
 *
 * which keeps both moments exact. Where no part is longer than 0.4 of its distance the field is good to some 1e-4.
 */
import type { Currents } from './far-field';
import type { Mesh } from './mesh';

export interface CurrentTree {
  readonly mesh: Mesh;
  readonly currents: Currents;
  readonly roots: readonly number[];
  /** Children of a branch, or −1; a leaf is one element. */
  readonly left: Int32Array;
  readonly right: Int32Array;
  readonly element: Int32Array;
  /** To a node: x, y, z of its middle, its direction, its length. */
  readonly place: Float64Array;
  /** To a node: ∫I, ∫I(s − c), ∫I′, ∫I′(s − c), each re and im. */
  readonly moment: Float64Array;
}

export const PLACE = 7;
export const MOMENT = 8;

export function currentTree(mesh: Mesh, currents: Currents): CurrentTree {
  const most = 2 * mesh.elementCount;
  const tree: CurrentTree = {
    mesh,
    currents,
    roots: [],
    left: new Int32Array(most).fill(-1),
    right: new Int32Array(most).fill(-1),
    element: new Int32Array(most).fill(-1),
    place: new Float64Array(PLACE * most),
    moment: new Float64Array(MOMENT * most),
  };
  let count = 0;
  const build = (from: number, to: number): number => {
    const node = count++;
    if (to - from === 1) {
      leaf(tree, node, from);
      return node;
    }
    const split = middleByLength(mesh, from, to);
    tree.left[node] = build(from, split);
    tree.right[node] = build(split, to);
    join(tree, node);
    return node;
  };
  const roots: number[] = [];
  for (let from = 0; from < mesh.elementCount; ) {
    let to = from + 1;
    while (to < mesh.elementCount && continues(mesh, to)) to++;
    roots.push(build(from, to));
    from = to;
  }
  return { ...tree, roots };
}

/** Element e runs straight on from the one before it. */
function continues(mesh: Mesh, e: number): boolean {
  if (mesh.wire[e] !== mesh.wire[e - 1]) return false;
  const gap = [0, 1, 2].map(
    (axis) =>
      mesh.start[3 * e + axis] - mesh.start[3 * e - 3 + axis] - mesh.lengthM[e - 1] * mesh.direction[3 * e - 3 + axis],
  );
  return Math.hypot(...gap) < 1e-9;
}

/** Number of the element that begins nearest to the middle of the stretch, inside it. */
function middleByLength({ lengthM }: Mesh, from: number, to: number): number {
  let whole = 0;
  for (let e = from; e < to; e++) whole += lengthM[e];
  let sum = 0;
  let best = from + 1;
  let missed = Infinity;
  for (let e = from; e < to - 1; e++) {
    sum += lengthM[e];
    if (Math.abs(sum - whole / 2) < missed) {
      missed = Math.abs(sum - whole / 2);
      best = e + 1;
    }
  }
  return best;
}

function leaf(tree: CurrentTree, node: number, e: number): void {
  const { mesh, currents, place, moment } = tree;
  tree.element[node] = e;
  const length = mesh.lengthM[e];
  for (let axis = 0; axis < 3; axis++) {
    place[PLACE * node + axis] = mesh.start[3 * e + axis] + (length / 2) * mesh.direction[3 * e + axis];
    place[PLACE * node + 3 + axis] = mesh.direction[3 * e + axis];
  }
  place[PLACE * node + 6] = length;
  linearMoments(moment, MOMENT * node, length, currents.re[2 * e], currents.re[2 * e + 1], 0);
  linearMoments(moment, MOMENT * node, length, currents.im[2 * e], currents.im[2 * e + 1], 1);
}

/** Moments of a current that goes evenly from a to b; `part` 0 writes the real parts, 1 the imaginary ones. */
export function linearMoments(to: Float64Array, at: number, length: number, a: number, b: number, part: number): void {
  to[at + part] = (length * (a + b)) / 2;
  to[at + 2 + part] = (length * length * (b - a)) / 12;
  to[at + 4 + part] = b - a;
  to[at + 6 + part] = 0;
}

/** Moments about the middle of two neighbours together. */
function join({ left, right, place, moment }: CurrentTree, node: number): void {
  const [a, b] = [left[node], right[node]];
  const [lengthA, lengthB] = [place[PLACE * a + 6], place[PLACE * b + 6]];
  for (let axis = 0; axis < 3; axis++) {
    place[PLACE * node + axis] = place[PLACE * a + axis] + (lengthB / 2) * place[PLACE * a + 3 + axis];
    place[PLACE * node + 3 + axis] = place[PLACE * a + 3 + axis];
  }
  place[PLACE * node + 6] = lengthA + lengthB;
  for (let q = 0; q < MOMENT; q++) {
    const sum = moment[MOMENT * a + q] + moment[MOMENT * b + q];
    const isFirst = (q & 2) !== 0;
    // The middles of a and b lie half the other's length away from the middle of both.
    const turned = isFirst ? (lengthA * moment[MOMENT * b + q - 2] - lengthB * moment[MOMENT * a + q - 2]) / 2 : 0;
    moment[MOMENT * node + q] = sum + turned;
  }
}
