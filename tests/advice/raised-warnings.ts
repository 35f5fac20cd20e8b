/** Warnings of answers without a plan, and the invented antennas that they are asked of. */
import { bandsOf } from '../../src/advice/bands';
import { dimensionsOf } from '../../src/advice/dimensions';
import { exposureOf } from '../../src/advice/exposure';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import type { Warning } from '../../src/advice/finding';
import { noSuchFeedPoint } from '../../src/advice/warnings/feed-point';
import { frequencyRefusals } from '../../src/advice/warnings/frequency';
import { warningsOf } from '../../src/advice/warnings/warnings-of';
import type { Answers } from '../../src/design/answers';
import { designedChain } from './designed-chain';
import { dipole } from './invented-antennas';
import { powerLineCaution } from './power-line-caution';

export function warningsFor(answers: Answers): Warning[] {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return [noSuchFeedPoint(facts)];
  const dimensions = dimensionsOf(facts);
  const chain = designedChain(facts, dimensions);
  const cautions = [powerLineCaution(facts, dimensions)];
  const bands = bandsOf(facts, dimensions, chain);
  // A frequency in no band has no limits either: the plan goes no further there.
  const exposure = frequencyRefusals(facts).length > 0 ? [] : exposureOf(facts, dimensions, bands);
  return warningsOf(facts, dimensions, chain, bands, { cautions, exposure });
}

export const offCentre: Answers = {
  ...dipole,
  bands: ['80m', '40m', '20m'],
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
};
export const endFed: Answers = { ...dipole, bands: ['80m', '40m', '20m'], fedAt: 'end' };
export const nonResonant: Answers = { ...endFed, lengthChoice: 'non-resonant', shackEnd: 'wide-tuner' };
export const doublet: Answers = {
  ...dipole,
  bands: ['80m', '40m', '20m'],
  feedLine: 'window-line',
  shackEnd: 'balanced-tuner',
};
export const vertical: Answers = { bands: ['20m'], radiator: 'vertical', fedAt: 'base', shackEnd: 'radio' };

/** Wordings that no case of one warning needs: an unknown feed point, and the other ratings of a line. */
export const otherWordings: readonly Answers[] = [
  { ...dipole, radiator: 'other', onHand: [{ part: 'transformer', ratio: 9, kind: 'voltage' }] },
  { ...dipole, lengthChoice: 'fixed', wireLengthM: 38, powerW: 3000, mode: 'data', feedLineLengthM: 30 },
  { ...doublet, lengthChoice: 'fixed', wireLengthM: 12, feedLine: 'twin-lead', powerW: 3000, mode: 'data' },
  { ...doublet, lengthChoice: 'fixed', wireLengthM: 12, feedLine: 'window-line', powerW: 3000, mode: 'data' },
];
