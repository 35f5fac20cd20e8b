/**
 * The heights that the ends of a drooping or sloping wire reach. A wire too short for the end height asked for ends higher, and a rope leads on.
 * Legs whose ends nobody told of droop by 45° at most, an apex of 90°: below it the legs cancel each other. Common practice.
 */
import type { Facts } from './facts';
import { hangsAs } from './hanging';

const USUAL_DROOP = Math.SQRT1_2;
/** Rise over length of the steepest slope laid out in space (geometry). */
export const STEEPEST = 0.9;

/** The end or both ends of an inverted V, the far end of a sloper; as told for every other wire, m. */
export function endReachedM({ answers, settled }: Facts, wholeM: number): number {
  const { fedAt, heightM, supportHeightM, endHeightM } = settled;
  const radiator = hangsAs(settled);
  if (radiator !== 'inverted-v' && radiator !== 'sloper') return endHeightM;
  const slantM = radiator === 'sloper' && fedAt === 'end' ? wholeM : wholeM / 2;
  const fromM = radiator === 'sloper' && fedAt !== 'end' ? heightM : Math.max(heightM, supportHeightM);
  const steepest = answers.endHeightM === undefined ? USUAL_DROOP : STEEPEST;
  return Math.max(endHeightM, fromM - steepest * slantM);
}

/** Lowest and highest point of a sloper, m. Fed along its length, the other end stands as far above the feed point as the slope asks. */
export function sloperSpanM(facts: Facts, wholeM: number): { readonly lowM: number; readonly highM: number } {
  const { fedAt, feedFraction, heightM, supportHeightM } = facts.settled;
  const farM = endReachedM(facts, wholeM);
  const shortPart = fedAt === 'off-centre' ? feedFraction : 0.5;
  const nearM = fedAt === 'end' ? heightM : heightM + ((heightM - farM) * shortPart) / (1 - shortPart);
  return { lowM: Math.min(nearM, farM), highM: Math.max(nearM, farM, supportHeightM) };
}
