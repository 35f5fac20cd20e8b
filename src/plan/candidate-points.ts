/**
 * What a candidate's numbers count for when candidates are put in order.
 *
 *   points = mean dB towards useful heights (losses of ground, line and devices taken off), in whole dB
 *            − 1 for each band that needs a tuner, and 3 once where the tuner at hand does not reach
 *            − 1 for each band beyond the first that is set by hand at the wire
 *            − 1 for each 6 dB begun above 30 mA at the building entry
 *            − ½ for each kind of thing to buy
 *
 * 1 dB is about the least that ears tell apart; the rest is common practice, no source.
 */
import { GOAL_MA } from './field/choke-search';
import type { Plan } from './plan-schema';

export type Candidate = NonNullable<Plan['candidates']>[number];
export type Score = Candidate['score'];

const TUNER_POINTS = 1;
const OTHER_TUNER_POINTS = 3;
const HAND_POINTS = 1;
export const THING_POINTS = 0.5;
const ENTRY_STEP_DB = 6;

/** Points that tuning costs. */
export function tunerPoints({ bandsServed, bandsWithoutTuner, bandsBeyondTuner }: TunerBands): number {
  return TUNER_POINTS * (bandsServed - bandsWithoutTuner) + (bandsBeyondTuner > 0 ? OTHER_TUNER_POINTS : 0);
}
type TunerBands = Pick<Score, 'bandsServed' | 'bandsWithoutTuner' | 'bandsBeyondTuner'>;

/** Points that changing bands at the wire costs. */
export const handPoints = ({ bandsByHand }: Pick<Score, 'bandsByHand'>): number => HAND_POINTS * bandsByHand;

/** Points that the current at the house costs. */
export const entryPoints = (entryMa: number | null): number =>
  entryMa === null || entryMa <= GOAL_MA ? 0 : Math.ceil((20 * Math.log10(entryMa / GOAL_MA)) / ENTRY_STEP_DB);

/** In whole dB; by the rules alone, what the feed line keeps back. */
export const usefulPoints = ({ usefulDb, radiatedShare }: Pick<Score, 'usefulDb' | 'radiatedShare'>): number =>
  Math.round(usefulDb ?? 10 * Math.log10(Math.max(radiatedShare ?? 1, 1e-3)));

type Parts = Pick<
  Score,
  | 'usefulDb'
  | 'radiatedShare'
  | 'entryCurrentMa'
  | 'partsToBuy'
  | 'bandsServed'
  | 'bandsWithoutTuner'
  | 'bandsBeyondTuner'
  | 'bandsByHand'
>;

export const pointsOf = (parts: Parts): number =>
  usefulPoints(parts) -
  tunerPoints(parts) -
  handPoints(parts) -
  entryPoints(parts.entryCurrentMa) -
  THING_POINTS * parts.partsToBuy;
