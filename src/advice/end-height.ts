/**
 * The straight stretches of a wire between its feed point and its ends, as geometry/radiator-wires.ts lays them out. A stretch too short for
 * the height asked of its end ends as near to it as its slope allows, and a rope leads on.
 * Legs whose ends nobody told of droop by 45° at most, an apex of 90°: below it the legs cancel each other. Common practice.
 */
import { goesOverSupport, reachedM, STEEPEST } from '../design/wire-slope';
import type { Facts } from './facts';
import { hangsAs } from './hanging';

const USUAL_DROOP = Math.SQRT1_2;
const stretched: readonly string[] = ['straight-wire', 'parallel-wires', 'inverted-v', 'sloper'];

interface Stretch {
  readonly fromM: number;
  readonly toM: number;
  readonly lengthM: number;
}

/** Rise over length at which a stretch comes to its end, at most. */
export const endSlopeOf = ({ answers }: Facts): number => (answers.endHeightM === undefined ? USUAL_DROOP : STEEPEST);

/** From the feed point outwards, the longer leg first; none for a radiator that has no free ends or stands upright. */
export function stretchesOf(facts: Facts, wholeM: number): readonly Stretch[] {
  const { settled } = facts;
  const { fedAt, feedFraction, heightM, supportHeightM, endHeightM } = settled;
  const shape = hangsAs(settled);
  if (!stretched.includes(shape)) return [];
  const to = (wantedM: number, fromM: number, lengthM: number, steepest = STEEPEST): Stretch => ({
    fromM,
    toM: reachedM({ fromM, lengthM, wantedM, steepest }),
    lengthM,
  });
  const toEnd = (fromM: number, lengthM: number): Stretch => to(endHeightM, fromM, lengthM, endSlopeOf(facts));
  if (fedAt === 'end') {
    if (shape !== 'inverted-v' || !goesOverSupport(settled)) return [toEnd(heightM, wholeM)];
    const up = to(supportHeightM, heightM, wholeM / 2);
    return [up, toEnd(up.toM, wholeM / 2)];
  }
  const shortM = wholeM * (fedAt === 'off-centre' ? feedFraction : 0.5);
  const long = toEnd(heightM, wholeM - shortM);
  if (shape !== 'sloper') return [long, toEnd(heightM, shortM)];
  const onM = heightM + ((heightM - long.toM) * shortM) / long.lengthM;
  return [long, to(Math.max(supportHeightM, onM), heightM, shortM)];
}

/** Heights of the far end, that of the longer leg, and of the other leg's end, m: as told for a radiator without stretches. */
export function endsReachedM(facts: Facts, wholeM: number): { readonly farM: number; readonly shortM: number } {
  const { fedAt, endHeightM } = facts.settled;
  const [long, last] = stretchesOf(facts, wholeM);
  if (long === undefined) return { farM: endHeightM, shortM: endHeightM };
  const end = last ?? long;
  return fedAt === 'end' ? { farM: end.toM, shortM: end.toM } : { farM: long.toM, shortM: end.toM };
}

/** Lowest and highest point of a wire that has stretches, m. */
export function spanOf(facts: Facts, wholeM: number): { readonly lowM: number; readonly highM: number } {
  const heights = stretchesOf(facts, wholeM).flatMap(({ fromM, toM }) => [fromM, toM]);
  return { lowM: Math.min(...heights), highM: Math.max(...heights) };
}
