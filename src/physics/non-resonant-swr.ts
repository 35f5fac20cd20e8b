/**
 * SWR on 50 Ω to expect behind a 9:1 transformer when a non-resonant wire is near its first half-wave.
 *
 * Interpolated on a sweep of field solutions: bare inverted L, counterpoise wires of 4.2 and 9 m, choke at the box. The length at the peak is
 * 1.11 times the rule's half-wave, because the counterpoise lengthens the system. Limits: one site; ± 30 % elsewhere. Used as a warning.
 * Source: own field solutions (sources.ts, non-resonant-sweep).
 */
import { derived } from '../catalog/sourced';

/** Length over L1 = 149.9 · 0.95 · kw / f, and the SWR there. */
export const swrSweep = derived(
  [
    [0.71, 5.0],
    [0.86, 6.4],
    [0.94, 8.1],
    [1.02, 9.9],
    [1.11, 10.8],
    [1.18, 10.0],
    [1.25, 7.4],
    [1.33, 4.3],
    [1.41, 2.2],
    [1.49, 1.2],
  ] as const,
  'non-resonant-sweep',
);

/** How far from its first half-wave a wire is out of reach of a small tuner, as part of it. */
export const firstHalfWaveRange = { share: 0.3, source: 'non-resonant-sweep' } as const;

/** SWR at one ratio; held at the ends of the sweep beyond them. */
export function swrAtRatio(ratio: number): number {
  const points = swrSweep.value;
  const above = points.findIndex(([r]) => r >= ratio);
  const [from, to] = [points[above - 1], points[above]];
  if (above === 0) return points[0][1];
  if (from === undefined || to === undefined) return points[points.length - 1]?.[1] ?? 1;
  return from[1] + ((ratio - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
}

/** Highest SWR between two ratios (the two edges of a band), and where; of equals the ratio nearest to the half-wave. */
export function expectedSwr(lowRatio: number, highRatio: number): { readonly ratio: number; readonly swr: number } {
  const ratios = [lowRatio, highRatio, ...swrSweep.value.map(([r]) => r).filter((r) => r > lowRatio && r < highRatio)];
  const all = ratios
    .map((ratio) => ({ ratio, swr: swrAtRatio(ratio) }))
    .sort((a, b) => Math.abs(a.ratio - 1) - Math.abs(b.ratio - 1));
  return all.reduce((worst, each) => (each.swr > worst.swr ? each : worst));
}
