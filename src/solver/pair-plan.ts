/**
 * Everything about pairs of elements that does not depend on frequency: two Gauss points on each element, and for near pairs (direct,
 * and of one element with the mirrored other) the static moments and how many points the reflected kernels need.
 *
 * Pair (e, f) with f ≤ e has the number e(e + 1)/2 + f.
 */
import type { Ground, Point } from './geometry';
import type { Mesh } from './mesh';
import { gaussRule } from './quadrature';
import { type Piece, staticMoments } from './static-moments';
import { along, mirrored } from './vector';

export interface PairPlan {
  readonly mesh: Mesh;
  readonly groundKind: Ground['kind'];
  /** x, y, z of the two Gauss points of each element. */
  readonly points: Float64Array;
  /**
   * Number of an earlier pair with the same integrals, or −1: on the even part of a straight wire, in free space or level over ground,
   * (e, f) is (e − 1, f − 1) moved along.
   */
  readonly copyOf: Int32Array;
  /** Row of `statics` for each pair, or −1 where plain quadrature does. */
  readonly direct: Int32Array;
  readonly image: Int32Array;
  /** Four static moments to a row. */
  readonly statics: Float64Array;
  /** Gauss points on each element for the reflected kernels of a pair. */
  readonly order: Uint8Array;
}

export const pairCount = (elements: number): number => (elements * (elements + 1)) / 2;

/** Two Gauss points hold 1/R to 3e-4 when the middles are this many summed lengths apart. */
const NEAR = 2;

export function planPairs(mesh: Mesh, groundKind: Ground['kind']): PairPlan {
  const pieces = meshPieces(mesh);
  const middles = Float64Array.from(pieces.flatMap((p) => along(p.start, p.direction, p.lengthM / 2)));
  const count = pairCount(mesh.elementCount);
  const copyOf = new Int32Array(count).fill(-1);
  const direct = new Int32Array(count).fill(-1);
  const image = new Int32Array(count).fill(-1);
  const order = new Uint8Array(count).fill(2);
  const rows: number[] = [];
  for (let e = 0, pair = 0; e < pieces.length; e++) {
    for (let f = 0; f <= e; f++, pair++) {
      const before = pair - e - 1; // (e − 1, f − 1)
      const isMoved = f > 0 && isMovedAlong(mesh, e, f);
      if (isMoved && (groundKind === 'none' || Math.abs(mesh.direction[3 * e + 2]) < 1e-12)) {
        copyOf[pair] = copyOf[before] >= 0 ? copyOf[before] : before;
        continue;
      }
      const reach = NEAR * (mesh.lengthM[e] + mesh.lengthM[f]);
      const across = squared(middles[3 * e] - middles[3 * f]) + squared(middles[3 * e + 1] - middles[3 * f + 1]);
      const isNear = across + squared(middles[3 * e + 2] - middles[3 * f + 2]) < reach * reach;
      if (isMoved) direct[pair] = direct[before];
      else if (isNear) direct[pair] = addRow(rows, pieces[e], pieces[f]);
      if (groundKind === 'none') continue;
      const imageSquared = across + squared(middles[3 * e + 2] + middles[3 * f + 2]);
      if (imageSquared >= reach * reach) continue;
      image[pair] = addRow(rows, pieces[e], mirroredPiece(pieces[f]));
      order[pair] = reflectedOrder(pieces[e], pieces[f], Math.sqrt(imageSquared));
    }
  }
  const statics = Float64Array.from(rows);
  return { mesh, groundKind, points: gaussPoints(mesh), copyOf, direct, image, statics, order };
}

const squared = (x: number): number => x * x;

/** True if elements e and f and the ones before them are four equal parts of one straight wire. */
function isMovedAlong({ wire, lengthM }: Mesh, e: number, f: number): boolean {
  if (wire[e] !== wire[f - 1]) return false;
  const same = (other: number): boolean => Math.abs(lengthM[other] - lengthM[e]) < 1e-9 * lengthM[e];
  return same(e - 1) && same(f) && same(f - 1);
}

export function meshPieces(mesh: Mesh): Piece[] {
  return Array.from({ length: mesh.elementCount }, (_, e) => ({
    start: [mesh.start[3 * e], mesh.start[3 * e + 1], mesh.start[3 * e + 2]] as Point,
    direction: [mesh.direction[3 * e], mesh.direction[3 * e + 1], mesh.direction[3 * e + 2]] as Point,
    lengthM: mesh.lengthM[e],
    radiusM: mesh.radiusM[e],
  }));
}

const mirroredPiece = (piece: Piece): Piece => ({
  ...piece,
  start: mirrored(piece.start),
  direction: mirrored(piece.direction),
});

/** Adds the moments of a pair and gives their row. */
function addRow(rows: number[], a: Piece, b: Piece): number {
  rows.push(...staticMoments(a, b));
  return rows.length / 4 - 1;
}

/** More points where the reflected field changes within an element: its length against its distance from the image. */
function reflectedOrder(a: Piece, b: Piece, middlesM: number): number {
  const low = (piece: Piece): number => Math.min(piece.start[2], piece.start[2] + piece.lengthM * piece.direction[2]);
  const apartM = Math.max(low(a) + low(b), middlesM - (a.lengthM + b.lengthM) / 2);
  const ratio = Math.max(a.lengthM, b.lengthM) / apartM;
  return ratio < 1 ? 2 : ratio < 3 ? 4 : ratio < 10 ? 6 : 10;
}

function gaussPoints(mesh: Mesh): Float64Array {
  const rule = gaussRule(2);
  const points = new Float64Array(6 * mesh.elementCount);
  for (let e = 0; e < mesh.elementCount; e++) {
    for (let p = 0; p < 2; p++) {
      for (let axis = 0; axis < 3; axis++) {
        const atM = rule.points[p] * mesh.lengthM[e];
        points[6 * e + 3 * p + axis] = mesh.start[3 * e + axis] + atM * mesh.direction[3 * e + axis];
      }
    }
  }
  return points;
}
