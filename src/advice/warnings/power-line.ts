/**
 * An overhead line within reach of mast, wire or rope. Away from home the antenna does not go up; at home it waits for the line's operator.
 * Judged against the distance that the cautions of this very plan state.
 */
import { powerLineVerdict } from '../power-line';
import { type Rule, warn } from './warning';

export const powerLineTooNear: Rule = ({ facts, cautions = [] }) => {
  const { verdict, distanceM, nearestM } = powerLineVerdict(facts, cautions);
  if (distanceM === null || nearestM === null || verdict === 'clear' || verdict === 'not-told') return [];
  const data = { distanceM, nearestM };
  return verdict === 'stop'
    ? [warn('power-line-too-near', data, ['other-place', 'shorter-and-lower'])]
    : [warn('power-line-too-near', data, ['ask-operator', 'other-place', 'shorter-and-lower'], 'power-line-ask')];
};
