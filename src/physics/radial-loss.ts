/**
 * Ground loss of a quarter-wave vertical by the number and length of its radials on the ground.
 *
 *   measured field, dB below perfect ground, at 3 MHz        Rg = 36.6 Ω · (10^(dB/10) − 1)
 *   2 radials 4.2 · 15 radials 2.3 (0.14 λ), 2.1 (0.27 λ) · 60 radials 2.1 (0.14 λ), 0.8 (0.27 λ), 0.5 (0.41 λ)
 *
 * Between the points: straight lines over the logarithm of the number and over the length; the end values outside. One soil, one frequency:
 * elsewhere read it as an order of size. No radials at all is taken as 6 dB, a cautious value without a source.
 * Source: Brown, Lewis, Epstein, Ground systems as a factor in antenna efficiency, Proc. IRE 25 (1937) 753, as tabulated in public notes.
 */
export const QUARTER_WAVE_OHM = 36.6;

const NO_RADIALS_DB = 6;
type Point = readonly [number, number];
const rows: readonly (readonly [number, readonly Point[]])[] = [
  [2, [[0.14, 4.2]]],
  [
    15,
    [
      [0.14, 2.3],
      [0.27, 2.1],
    ],
  ],
  [
    60,
    [
      [0.14, 2.1],
      [0.27, 0.8],
      [0.41, 0.5],
    ],
  ],
];

/** Straight lines between points in ascending order, end values outside. */
function between(points: readonly Point[], x: number): number {
  const after = points.findIndex(([at]) => at >= x);
  const [x1, y1] = points[after < 0 ? points.length - 1 : after] as Point;
  if (after <= 0) return y1;
  const [x0, y0] = points[after - 1] as Point;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** dB below perfect ground for `count` radials of `lengthWaves` wavelengths. Radials under 0.14 λ count as their length's share of them. */
export function radialLossDb(count: number, lengthWaves: number): number {
  if (count < 1) return NO_RADIALS_DB;
  const share = Math.min(1, lengthWaves / 0.14);
  const known = rows.map(([n, points]): Point => [Math.log(n), between(points, lengthWaves)]);
  const full = count < 2 ? (NO_RADIALS_DB + 4.2) / 2 : between(known, Math.log(count));
  return NO_RADIALS_DB + (full - NO_RADIALS_DB) * share;
}

export const radialLossOhm = (count: number, lengthWaves: number): number =>
  QUARTER_WAVE_OHM * (10 ** (radialLossDb(count, lengthWaves) / 10) - 1);
