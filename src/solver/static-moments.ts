/**
 * Static moments of a pair of straight elements, with linear shape functions s0 = 1 − t, s1 = t on each:
 *
 *   S_ij = ∬ s_i(l) s_j(l′) / R dl dl′,   R² = |r − r′|² + d²
 *
 * The inner integral is closed; the outer one is Gauss quadrature on panels that shrink toward the inner element. d² is the mean of
 * the squared radii (reduced kernel). Elements on one line with one radius use the kernel averaged round the wire instead,
 *
 *   1/R → (2/π) K(m) / √(ξ² + 4a²),   m = 4a² / (ξ² + 4a²),   ξ = distance along the line,
 *
 * whose logarithm at ξ = 0 is taken out by a cubic substitution.
 * Source: Harrington, Field Computation by Moment Methods (1968); Champagne, Johnson & Wilton, IEEE Trans. AP 40 (1992).
 */
import type { Point } from './geometry';
import { gaussRule } from './quadrature';
import { along, distanceToPiece, dot, minus, norm } from './vector';

export interface Piece {
  readonly start: Point;
  readonly direction: Point;
  readonly lengthM: number;
  readonly radiusM: number;
}

/** S00, S01, S10, S11; the first index belongs to `a`. */
export type Moments = [number, number, number, number];

const outerRule = gaussRule(6);
const lineRule = gaussRule(6);
const logRule = gaussRule(8);
const twoPoints = gaussRule(2);

export function staticMoments(a: Piece, b: Piece): Moments {
  const line = onOneLine(a, b);
  if (line) return lineMoments(a, b, line);
  if (a.lengthM <= b.lengthM) return skewMoments(a, b);
  const [m00, m10, m01, m11] = skewMoments(b, a);
  return [m00, m01, m10, m11];
}

/** Position of b's start along a, and whether b runs the same way; undefined unless both are on one line with one radius. */
function onOneLine(a: Piece, b: Piece): { startM: number; sense: 1 | -1 } | undefined {
  if (Math.abs(a.radiusM - b.radiusM) > 1e-9 * a.radiusM) return undefined;
  const cosine = dot(a.direction, b.direction);
  if (Math.abs(cosine) < 1 - 1e-9) return undefined;
  const toStart = minus(b.start, a.start);
  const startM = dot(toStart, a.direction);
  const offM = norm(minus(toStart, along([0, 0, 0], a.direction, startM)));
  return offM > 1e-3 * a.radiusM + 1e-9 ? undefined : { startM, sense: cosine > 0 ? 1 : -1 };
}

/** Outer integral over a, inner over b. */
function skewMoments(a: Piece, b: Piece): Moments {
  const offSquared = (a.radiusM ** 2 + b.radiusM ** 2) / 2;
  const sums: Moments = [0, 0, 0, 0];
  const bEnd = along(b.start, b.direction, b.lengthM);
  const add = (fromM: number, toM: number): void => {
    const spanM = toM - fromM;
    const middle = along(a.start, a.direction, (fromM + toM) / 2);
    const reachM = Math.sqrt(distanceToPiece(middle, b.start, bEnd) ** 2 + offSquared);
    if (spanM > 1.3 * reachM) {
      add(fromM, (fromM + toM) / 2);
      add((fromM + toM) / 2, toM);
      return;
    }
    for (let i = 0; i < outerRule.points.length; i++) {
      const atM = fromM + spanM * outerRule.points[i];
      const [inner0, inner1] = inverseDistanceMoments(along(a.start, a.direction, atM), b, offSquared);
      const weight = outerRule.weights[i] * spanM;
      const share = atM / a.lengthM;
      sums[0] += weight * (1 - share) * inner0;
      sums[1] += weight * (1 - share) * inner1;
      sums[2] += weight * share * inner0;
      sums[3] += weight * share * inner1;
    }
  };
  add(0, a.lengthM);
  return sums;
}

/** ∫ (1 − t) / R and ∫ t / R along b from a point, closed. */
function inverseDistanceMoments(point: Point, b: Piece, offSquared: number): [number, number] {
  const toPoint = minus(point, b.start);
  const foot = dot(toPoint, b.direction);
  const squared = Math.max(0, dot(toPoint, toPoint) - foot * foot) + offSquared;
  const beyond = b.lengthM - foot;
  const startR = Math.sqrt(foot * foot + squared);
  const endR = Math.sqrt(beyond * beyond + squared);
  const off = Math.sqrt(squared);
  const whole = Math.asinh(beyond / off) + Math.asinh(foot / off);
  const first = (endR - startR + foot * whole) / b.lengthM;
  return [whole - first, first];
}

function lineMoments(a: Piece, b: Piece, line: { startM: number; sense: 1 | -1 }): Moments {
  // b's low end along the line, and its shape functions exchanged if it runs backward.
  const lowM = line.sense > 0 ? line.startM : line.startM - b.lengthM;
  const sums: Moments = [0, 0, 0, 0];
  const addAt = (separation: number, weight: number): void => {
    // Overlap of a with b shifted by the separation; s_i s_j is a quadratic there, so two points are exact.
    const fromM = Math.max(0, lowM + separation);
    const spanM = Math.min(a.lengthM, lowM + b.lengthM + separation) - fromM;
    if (spanM <= 0) return;
    const kernel = weight * spanM * ringKernel(separation, a.radiusM);
    for (let i = 0; i < 2; i++) {
      const atM = fromM + spanM * twoPoints.points[i];
      const shareA = atM / a.lengthM;
      const shareLow = (atM - separation - lowM) / b.lengthM;
      const shareB = line.sense > 0 ? shareLow : 1 - shareLow;
      const value = kernel * twoPoints.weights[i];
      sums[0] += value * (1 - shareA) * (1 - shareB);
      sums[1] += value * (1 - shareA) * shareB;
      sums[2] += value * shareA * (1 - shareB);
      sums[3] += value * shareA * shareB;
    }
  };
  const breaks = [-lowM - b.lengthM, -lowM, a.lengthM - lowM - b.lengthM, a.lengthM - lowM].sort((x, y) => x - y);
  for (let i = 1; i < 4; i++) addInterval(breaks[i - 1], breaks[i], a.radiusM, addAt);
  return sums;
}

/** Quadrature over separations from low to high, cut at zero and refined toward it. */
function addInterval(low: number, high: number, radiusM: number, addAt: (x: number, weight: number) => void): void {
  const tiny = 1e-9 * radiusM;
  if (high - low <= tiny) return;
  if (low < -tiny && high > tiny) {
    addInterval(low, 0, radiusM, addAt);
    addInterval(0, high, radiusM, addAt);
    return;
  }
  const sense = high > tiny ? 1 : -1;
  let near = Math.min(Math.abs(low), Math.abs(high));
  const far = Math.max(Math.abs(low), Math.abs(high));
  if (near <= tiny) {
    const edge = Math.min(radiusM, far);
    for (let i = 0; i < logRule.points.length; i++) {
      const v = logRule.points[i];
      addAt(sense * edge * v ** 3, logRule.weights[i] * edge * 3 * v * v);
    }
    near = edge;
  }
  while (near < far - tiny) {
    const edge = Math.min(far, near + Math.max(near, radiusM));
    for (let i = 0; i < lineRule.points.length; i++) {
      addAt(sense * (near + (edge - near) * lineRule.points[i]), lineRule.weights[i] * (edge - near));
    }
    near = edge;
  }
}

/** (2/π) K(m) / √(ξ² + 4a²) = 1 / agm(√(ξ² + 4a²), |ξ|), by Gauss's arithmetic-geometric mean. */
function ringKernel(separation: number, radiusM: number): number {
  let mean = Math.sqrt(separation * separation + 4 * radiusM * radiusM);
  let other = Math.abs(separation);
  while (mean - other > 1e-9 * mean) {
    const next = (mean + other) / 2;
    other = Math.sqrt(mean * other);
    mean = next;
  }
  return 1 / mean;
}
