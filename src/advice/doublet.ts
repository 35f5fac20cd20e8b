/**
 * Doublet on open-wire line. What the tuner sees repeats every half-wave of one leg plus line (electrical length of the line): near a
 * multiple of λ/2 it is thousands of ohms, and hard to match. Wire: at least 0.3 λ of the lowest band, both legs together.
 * Source: common practice (handbook advice on tuned lines). Limit: the end effect of the wire is taken as 5 %.
 */
import type { Dimension } from '../base/working';
import { legPlusLineM, wavesFromHalfWave } from '../physics/lengths';
import { answered, dimension, focusOf, metresOf } from './dimension';
import type { Facts } from './facts';

const SHORTEST = 0.3;
const LONGEST = 0.5;
/** Distance from a half-wave multiple, in wavelengths: below it hard to tune, and what is aimed at. */
const HARD_TO_TUNE = 0.05;
const COMFORTABLE = 0.1;
const STEP_M = 0.1;
/** How much line may be added to move away, m. */
const MOST_ADDED_M = 4;

/** Distance of one leg plus line from the nearest half-wave multiple, in wavelengths; the smallest over the wanted bands. */
export function legPlusLineClearance(facts: Facts, radiatorM: number, lineM: number): number {
  const velocityFactor = facts.line?.velocityFactor.value ?? 1;
  const electricalM = legPlusLineM(radiatorM / 2, lineM, velocityFactor);
  return Math.min(...facts.bands.map(({ focusMHz }) => wavesFromHalfWave(electricalM, focusMHz)));
}

const lineLengthOf = (facts: Facts): number => (facts.lineKind === 'open-wire' ? facts.settled.feedLineLengthM : 0);

/** Both legs together, m. */
export const shortestDoubletM = ({ bands: [lowest] }: Facts): number => SHORTEST * lowest.wavelengthM;

/** Longest doublet within the span that is comfortably clear on every band; where none is, the clearest. */
export function doubletLength(facts: Facts): Dimension {
  const [lowest] = facts.bands;
  const shortestM = shortestDoubletM(facts);
  const longestM = Math.min(LONGEST * lowest.wavelengthM, facts.settled.spanM ?? Number.POSITIVE_INFINITY);
  const lineM = lineLengthOf(facts);
  let best = { metres: longestM, clearance: legPlusLineClearance(facts, longestM, lineM) };
  for (let metres = longestM; metres >= shortestM && best.clearance < COMFORTABLE; metres -= STEP_M) {
    const clearance = legPlusLineClearance(facts, metres, lineM);
    if (clearance > best.clearance) best = { metres, clearance };
  }
  return dimension(
    best.metres,
    'share * 299.8 m MHz / f',
    {
      share: { value: (best.metres * lowest.focusMHz) / 299.8, unit: '', from: 'solved' },
      f: { ...focusOf(facts, lowest), unit: 'MHz' },
    },
    'house-practice',
  );
}

/** A line up to 4 m longer than told that keeps leg plus line away from half-wave multiples; null when none is needed or found. */
export function clearLineOf(facts: Facts, radiatorM: number): Dimension | null {
  if (facts.system !== 'open-wire-doublet' || facts.lineKind !== 'open-wire') return null;
  const toldM = facts.settled.feedLineLengthM;
  if (legPlusLineClearance(facts, radiatorM, toldM) >= HARD_TO_TUNE) return null;
  for (let addedM = STEP_M; addedM <= MOST_ADDED_M; addedM += STEP_M) {
    if (legPlusLineClearance(facts, radiatorM, toldM + addedM) < HARD_TO_TUNE) continue;
    return dimension(
      toldM + addedM,
      'line + added',
      { line: { ...answered(facts, 'feedLineLengthM', toldM), unit: 'm' }, added: metresOf(addedM, 'solved') },
      'house-practice',
    );
  }
  return null;
}
