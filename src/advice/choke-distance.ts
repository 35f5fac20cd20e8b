/**
 * Where the chokes stand, along the coax from the feed point.
 *
 * Centre-fed, vertical, loop and non-resonant with its own wire: at the feed point. Off-centre: 1 m (0.3 to 1 m differ by less than 3 dB).
 * End-fed: 0.05 λ of the lowest band, so that the coax above the choke is the counterpoise. The last choke stands just outside the entry, or
 * before the operating place. Sources: common practice; own field solutions.
 */
import type { Dimension } from '../base/working';
import { partOfWave } from '../physics/lengths';
import { answered, dimension, focusOf, metresOf } from './dimension';
import type { Facts } from './facts';

const OFF_CENTRE_M = 1;
/** Part of the longest wave that an end-fed's counterpoise takes at least, be it coax or wire. */
export const COUNTERPOISE_WAVES = 0.05;
/** Left between the last choke and the wall, so that the choke stays outside. */
const BEFORE_ENTRY_M = 0.3;

const atFeedPoint: Dimension = dimension(0, 'atBox', { atBox: metresOf(0, 'assumed') }, 'house-practice');

/** Whether the coax itself, down to the choke, is what the wire works against. */
export const coaxIsCounterpoise = ({ system, settled: { returnPath } }: Facts): boolean =>
  system === 'end-fed-half-wave' ||
  (system === 'non-resonant-end-fed' && (returnPath === 'coax-shield' || returnPath === 'none'));

export function chokeAtOf(facts: Facts): Dimension | null {
  if (facts.lineKind !== 'coax') return null;
  if (coaxIsCounterpoise(facts)) return endFedChoke(facts);
  if (facts.system !== 'off-centre-fed') return atFeedPoint;
  const wanted = dimension(OFF_CENTRE_M, 'below', { below: metresOf(OFF_CENTRE_M, 'assumed') }, 'own-field-solutions');
  return withinLine(facts, wanted);
}

/**
 * A line too short for 0.05 λ cannot be the counterpoise: with a wire on the ground terminal the choke then moves to the box, without one it
 * stands at the far end, where it does the least harm.
 */
function endFedChoke(facts: Facts): Dimension {
  const [lowest] = facts.bands;
  const wanted = partOfWave(COUNTERPOISE_WAVES, focusOf(facts, lowest), 'own-field-solutions');
  const tooShort = facts.settled.feedLineLengthM < wanted.metres;
  return tooShort && facts.settled.returnPath === 'counterpoise-wire' ? atFeedPoint : withinLine(facts, wanted);
}

function withinLine(facts: Facts, wanted: Dimension): Dimension {
  const { feedLineLengthM } = facts.settled;
  if (wanted.metres <= feedLineLengthM) return wanted;
  const line = { ...answered(facts, 'feedLineLengthM', feedLineLengthM), unit: 'm' };
  return dimension(feedLineLengthM, 'line', { line }, 'house-practice');
}

export function entryChokeAtOf(facts: Facts, chokeAt: Dimension | null): Dimension | null {
  if (chokeAt === null) return null;
  const { entryDistanceM, feedLineLengthM } = facts.settled;
  const entryM = Math.min(entryDistanceM, feedLineLengthM);
  return dimension(
    Math.max(entryM - BEFORE_ENTRY_M, chokeAt.metres),
    'max(entry - before, first)',
    {
      entry: { ...answered(facts, 'entryDistanceM', entryM), unit: 'm' },
      before: metresOf(BEFORE_ENTRY_M, 'assumed'),
      first: metresOf(chokeAt.metres, 'solved'),
    },
    'own-field-solutions',
  );
}
