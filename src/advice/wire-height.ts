/** How high and how bent the wire hangs, and the resistance of an inverted-L, for the closed forms of feed-impedance. */
import { QUARTER_WAVE_OHM } from '../physics/radial-loss';
import { centreFedRadiationOhm } from '../physics/wire-radiation';
import type { Dimensions } from './dimensions';
import { endReachedM, sloperSpanM } from './end-height';
import type { Facts } from './facts';
import { hangsAs } from './hanging';

/**
 * Exponent of the cosine of the droop: resistance of a half-wave at 120° and 90° apex against flat, 61 and 49 of 76 Ω in our own field
 * solutions.
 */
const DROOP_EXPONENT = 1.4;

/** Height at which the wire's current flows, on average, m. */
export function heightOf(facts: Facts, wholeM: number): number {
  const { fedAt, heightM, endHeightM, supportHeightM } = facts.settled;
  switch (hangsAs(facts.settled)) {
    case 'vertical':
      return heightM;
    case 'inverted-l':
      return Math.max(heightM, supportHeightM, endHeightM);
    case 'inverted-v': {
      const endM = endReachedM(facts, wholeM);
      return fedAt === 'end'
        ? (Math.max(heightM, supportHeightM) + (heightM + endM) / 2) / 2
        : heightM - (heightM - endM) / 3;
    }
    case 'sloper': {
      const { lowM, highM } = sloperSpanM(facts, wholeM);
      return fedAt === 'end' ? (lowM + highM) / 2 : heightM;
    }
    case 'loop':
      return loopHeightM(facts, wholeM);
    default:
      return fedAt === 'end' ? (heightM + endHeightM) / 2 : heightM - (heightM - endHeightM) / 3;
  }
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
  const sine = Math.min(Math.abs(facts.settled.heightM - endReachedM(facts, wholeM)) / (wholeM / 2), 0.95);
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
