/**
 * Nearness to half-wave multiples. The n-th resonance of a wire lies at 149.9 (n − 0.05) kw / f metres, kw the wire factor alone.
 * Source: handbook end-effect rule; n-th resonance as in the trade's end-fed lengths (common practice).
 */
import { bandCentreMHz } from '../catalog/bands';
import type { Wire } from '../catalog/wires';
import type { Answers } from '../design/answers';
import { nthHalfWaveM } from '../physics/lengths';

/** |L − Ln| / Ln for the nearest n ≥ 1, with its sign (positive: the wire is longer), and that n. */
export function nearestHalfWave(
  wireM: number,
  frequencyMHz: number,
  wireFactor: number,
): { n: number; offset: number } {
  const halfWaves = wireM / nthHalfWaveM(1, frequencyMHz, wireFactor);
  let best = { n: 1, offset: Number.POSITIVE_INFINITY };
  for (let n = 1; n <= Math.ceil(halfWaves) + 1; n++) {
    const resonantM = nthHalfWaveM(n, frequencyMHz, wireFactor);
    const offset = (wireM - resonantM) / resonantM;
    if (Math.abs(offset) < Math.abs(best.offset)) best = { n, offset };
  }
  return best;
}

/** Whether the wire is within 5 % of a half-wave multiple at the focus of every wanted band. */
export const isHalfWaveOnAll = (wireM: number, answers: Answers, wire: Wire): boolean =>
  answers.bands.every((band) => {
    const focusMHz = answers.focusMHz?.[band] ?? bandCentreMHz(band, answers.region ?? 1, answers.country);
    return Math.abs(nearestHalfWave(wireM, focusMHz, wire.velocityFactor.value).offset) <= 0.05;
  });
