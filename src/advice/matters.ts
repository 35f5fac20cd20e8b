/** Which answers can change the plan of this system. Used for the route (no question that cannot matter) and for what is listed as assumed. */
import { isOpenWireLine } from '../catalog/line-ids';
import type { DraftAnswers } from '../design/answers';
import type { System } from '../design/choices';
import { needsReturnPath } from './return-path';
import type { Settled } from './settle';

export function mattersFor(system: System, answers: DraftAnswers, key: keyof Settled): boolean {
  const coax = answers.feedLine === undefined || (answers.feedLine !== 'none' && !isOpenWireLine(answers.feedLine));
  const upright = answers.radiator === 'vertical' || answers.radiator === 'inverted-l';
  switch (key) {
    case 'feedFraction':
      return system === 'off-centre-fed';
    case 'lengthChoice':
      return system !== 'other' && system !== 'linked-dipole';
    case 'loopShape':
    case 'loopPlane':
      return system === 'full-wave-loop';
    case 'feedImpedance':
    case 'balanced':
      return system === 'other';
    case 'returnPath':
    case 'counterpoiseM':
      return needsReturnPath(system);
    case 'radialCount':
    case 'radialLengthM':
      return system === 'quarter-wave-vertical' || system === 'non-resonant-vertical' || system === 'inverted-l';
    case 'endHeightM':
      return !(answers.radiator === 'vertical' || answers.radiator === 'loop');
    case 'spanM':
      return !upright || answers.radiator === 'inverted-l';
    case 'feedLineLengthM':
      return answers.feedLine !== 'none';
    case 'feedLineRoute':
    case 'runHeightM':
    case 'entryDistanceM':
    case 'houseEarth':
      return coax;
    default:
      return true;
  }
}
