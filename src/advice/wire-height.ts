/** How high and how bent the wire hangs, and the resistance of an inverted-L, for the closed forms of feed-impedance. */
import { QUARTER_WAVE_OHM } from '../physics/radial-loss';
import { centreFedRadiationOhm } from '../physics/wire-radiation';
import type { Dimensions } from './dimensions';
import { endsReachedM, stretchesOf } from './end-height';
import type { Facts } from './facts';
import { hangsAs } from './hanging';

/**
 * Exponent of the cosine of the droop: resistance of a half-wave at 120° and 90° apex against flat, 61 and 49 of 76 Ω in our own field
 * solutions.
 */
const DROOP_EXPONENT = 1.4;

/** Height at which the wire's current flows, on average, m. */
export function heightOf(facts: Facts, wholeM: number): number {
  const { heightM, endHeightM, supportHeightM } = facts.settled;
  switch (hangsAs(facts.settled)) {
    case 'vertical':
      return heightM;
    case 'inverted-l':
      return Math.max(heightM, supportHeightM, endHeightM);
    case 'loop':
      return loopHeightM(facts, wholeM);
    case 'folded-wire':
    case 'other':
      return heightM;
    default:
      return meanHeightM(facts, wholeM);
  }
}

/** Of a straight wire its middle; of two stretches most current flows near the joint: a third of the way from there to their ends. */
function meanHeightM(facts: Facts, wholeM: number): number {
  const [first, second] = stretchesOf(facts, wholeM);
  if (first === undefined) return facts.settled.heightM;
  if (second === undefined) return (first.fromM + first.toM) / 2;
  const jointM = second.fromM;
  const firstEndM = facts.settled.fedAt === 'end' ? first.fromM : first.toM;
  const reckoned = (endM: number, lengthM: number): number => (lengthM / wholeM) * (jointM + (endM - jointM) / 3);
  return reckoned(firstEndM, first.lengthM) + reckoned(second.toM, second.lengthM);
}

/** Middle of an upright loop, fed at its foot unless a higher support is told. */
function loopHeightM({ settled }: Facts, roundM: number): number {
  const { heightM, supportHeightM, loopPlane, loopShape } = settled;
  if (loopPlane === 'flat') return heightM;
  const riseM = loopShape === 'square' ? roundM / 4 : (roundM / 3) * Math.sqrt(0.75);
  return supportHeightM > heightM ? Math.max(supportHeightM - riseM / 2, heightM) : heightM + riseM / 2;
}

/** Factor on the resistance of a wire whose legs fall from the middle. */
export function bentFactor(facts: Facts, wholeM: number): number {
  if (hangsAs(facts.settled) !== 'inverted-v') return 1;
  const sine = Math.min(Math.abs(facts.settled.heightM - endsReachedM(facts, wholeM).farM) / (wholeM / 2), 0.95);
  return Math.sqrt(1 - sine ** 2) ** DROOP_EXPONENT;
}

/**
 * Inverted-L at its current maximum: the upright part from its effective height, 36.6 (cos(θ − φ) − cos θ)² Ω with φ the upright part of θ,
 * and the share of the part that runs along, over the ground below it. Source: effective height of top-loaded verticals, Jordan and Balmain,
 * Electromagnetic Waves and Radiating Systems, 2nd ed. (memory); within 10 % of the quarter-wave's own value.
 */
export function invertedLOhm(dimensions: Dimensions, ground: number, theta: number): number {
  const share = Math.min(1, dimensions.riseM / dimensions.radiator.metres);
  const upright = QUARTER_WAVE_OHM * (Math.cos(theta * (1 - share)) - Math.cos(theta)) ** 2;
  const along = (centreFedRadiationOhm(2 * theta) / 2) * ground * (1 - share) ** 2;
  return upright + along;
}
