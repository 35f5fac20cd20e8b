/**
 * Ropes from heights and spans.
 *
 *   halyard   2 · height + reach + 3 m     up, over, down again, and enough to tie off and to let the end come to the ground
 *   tie       height + 3 m                 from a low end to a stake or a post
 *   guy       √((0.65 h)² + (0.41 h)²) + 1 m   of a pole of height h, tied at 0.65 h, staked at 0.41 h from its foot
 *   throw line  2 · highest + 6 m          over the branch and back to the hand
 *
 * Common practice, no source. Longer never hurts: stretch and trees take some.
 */
import type { Dimension } from '../base/working';
import { dimension, metresOf } from './dimension';
import type { Dimensions } from './dimensions';
import { endsReachedM, spanOf } from './end-height';
import type { Facts } from './facts';
import type { Cut } from './finding';
import { hangsAs } from './hanging';
import { highestPointM } from './site-run';

const TO_TIE_M = 3;
const THROW_SPARE_M = 6;
const GUY_AT = 0.65;
const STAKE_AT = 0.41;
const GUY_SPARE_M = 1;
const INDOOR_CORD_M = 2;
const TOLERANCE_M = 0.5;
/** From here up a rope goes over its support with a thrown line. */
const THROW_FROM_M = 3;

interface Rope {
  readonly piece: 'halyard' | 'tie' | 'guy' | 'throw-line' | 'cord';
  readonly count: number;
  readonly length: Dimension;
}

export function ropesOf(facts: Facts, dimensions: Dimensions): Cut[] {
  if (facts.settled.indoors) return [asCut({ piece: 'cord', count: 2, length: fixedCord })];
  const highestM = highestPointM(facts, dimensions);
  const thrown = facts.settled.radiator !== 'vertical' && highestM >= THROW_FROM_M;
  return [...holdingRopes(facts, dimensions, highestM), ...(thrown ? [throwLine(highestM)] : [])].map(asCut);
}

function holdingRopes(facts: Facts, dimensions: Dimensions, highestM: number): Rope[] {
  const { loopShape, loopPlane } = facts.settled;
  const reachM = reachOf(facts, dimensions.runM);
  switch (hangsAs(facts.settled)) {
    case 'vertical':
      return [{ piece: 'guy', count: 3, length: guy(highestM) }];
    case 'inverted-v':
      return [halyard(1, highestM, 0), tie(2, highestEndM(facts, dimensions))];
    case 'sloper':
      return [halyard(1, highestM, reachM), tie(1, spanOf(facts, dimensions.radiator.metres).lowM)];
    case 'inverted-l':
      return [halyard(2, highestM, reachM)];
    case 'loop':
      if (loopPlane === 'flat') return [halyard(loopShape === 'square' ? 4 : 3, highestM, 0)];
      return [halyard(loopShape === 'square' ? 2 : 1, highestM, 0), tie(2, Math.max(highestM - dimensions.riseM, 0))];
    default:
      return [halyard(2, highestM, reachM)];
  }
}

/** From each end of the wire to its support, when the span is told. */
const reachOf = ({ settled: { spanM } }: Facts, runM: number): number =>
  spanM === null ? 0 : Math.max(spanM - runM, 0) / 2;

const halyard = (count: number, heightM: number, reachM: number): Rope => ({
  piece: 'halyard',
  count,
  length: dimension(
    2 * heightM + reachM + TO_TIE_M,
    '2 * height + reach + spare',
    { height: metresOf(heightM, 'solved'), reach: metresOf(reachM, 'solved'), spare: metresOf(TO_TIE_M, 'assumed') },
    'house-practice',
  ),
});

const highestEndM = (facts: Facts, { radiator }: Dimensions): number => {
  const { farM, shortM } = endsReachedM(facts, radiator.metres);
  return Math.max(farM, shortM);
};

const tie = (count: number, heightM: number): Rope => ({
  piece: 'tie',
  count,
  length: dimension(
    heightM + TO_TIE_M,
    'height + spare',
    { height: metresOf(heightM, 'solved'), spare: metresOf(TO_TIE_M, 'assumed') },
    'house-practice',
  ),
});

const guy = (poleM: number): Dimension =>
  dimension(
    Math.hypot(GUY_AT * poleM, STAKE_AT * poleM) + GUY_SPARE_M,
    'sqrt((up * pole)^2 + (out * pole)^2) + spare',
    {
      up: { value: GUY_AT, unit: '', from: 'assumed' },
      out: { value: STAKE_AT, unit: '', from: 'assumed' },
      pole: metresOf(poleM, 'solved'),
      spare: metresOf(GUY_SPARE_M, 'assumed'),
    },
    'house-practice',
  );

const throwLine = (highestM: number): Rope => ({
  piece: 'throw-line',
  count: 1,
  length: dimension(
    2 * highestM + THROW_SPARE_M,
    '2 * height + spare',
    { height: metresOf(highestM, 'solved'), spare: metresOf(THROW_SPARE_M, 'assumed') },
    'house-practice',
  ),
});

const fixedCord = dimension(INDOOR_CORD_M, 'cord', { cord: metresOf(INDOOR_CORD_M, 'assumed') }, 'house-practice');

const asCut = ({ piece, count, length }: Rope): Cut => ({
  piece,
  count,
  finishedM: length.metres,
  cutM: length.metres,
  toleranceM: TOLERANCE_M,
  marksM: [],
  note: { code: `rope-${piece}`, data: {} },
  stopRule: { code: 'rope-longer', data: {} },
  working: length.working,
});
