/** Points and directions in space. */
import type { Point } from './geometry';

export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const along = (from: Point, direction: Point, distance: number): Point => [
  from[0] + distance * direction[0],
  from[1] + distance * direction[1],
  from[2] + distance * direction[2],
];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const norm = (a: Point): number => Math.hypot(a[0], a[1], a[2]);
export const distance = (a: Point, b: Point): number => norm(minus(a, b));
export const scaled = (a: Point, factor: number): Point => [a[0] * factor, a[1] * factor, a[2] * factor];
/** The point seen in a mirror at z = 0. */
export const mirrored = (a: Point): Point => [a[0], a[1], -a[2]];

const clamp01 = (x: number): number => Math.min(1, Math.max(0, x));

/** Least distance from a point to the straight piece a–b. */
export function distanceToPiece(point: Point, a: Point, b: Point): number {
  const span = minus(b, a);
  const t = clamp01(dot(minus(point, a), span) / dot(span, span));
  return distance(point, along(a, span, t));
}

/** Least distance between the straight pieces a–b and c–d, and where on each (0…1). Source: Ericson, Real-Time Collision Detection, 5.1.9. */
export function nearestApproach(a: Point, b: Point, c: Point, d: Point): { distance: number; s: number; t: number } {
  const u = minus(b, a);
  const v = minus(d, c);
  const w = minus(a, c);
  const uu = dot(u, u);
  const vv = dot(v, v);
  const uv = dot(u, v);
  const uw = dot(u, w);
  const vw = dot(v, w);
  const determinant = uu * vv - uv * uv;
  let s = determinant > 1e-12 * uu * vv ? clamp01((uv * vw - vv * uw) / determinant) : 0;
  let t = (uv * s + vw) / vv;
  if (t < 0 || t > 1) {
    t = clamp01(t);
    s = clamp01((uv * t - uw) / uu);
  }
  return { distance: distance(along(a, u, s), along(c, v, t)), s, t };
}
