/** By how much a plan may change when a true answer replaces an assumed one. Orders the questions that make a plan surer. */
import type { AnswerKey } from '../design/answers';

export type Effect = 'large' | 'middle' | 'small';

const large: readonly AnswerKey[] = [
  'lengthChoice',
  'wireLengthM',
  'feedImpedance',
  'balanced',
  'nearestPowerLineM',
  'spanM',
  'heightM',
  'mode',
  'powerW',
  'feedLineRoute',
  'returnPath',
  'feedFraction',
  'nearestPersonM',
];
const middle: readonly AnswerKey[] = [
  'station',
  'feedLine',
  'feedLineLengthM',
  'wire',
  'endHeightM',
  'supportHeightM',
  'ground',
  'region',
  'focusMHz',
  'radialCount',
  'houseEarth',
  'entryDistanceM',
  'ruleSet',
];

/** Within one class, earlier in the list means more. */
export const byEffect: readonly AnswerKey[] = [...large, ...middle];

export const effectOf = (key: AnswerKey): Effect =>
  large.includes(key) ? 'large' : middle.includes(key) ? 'middle' : 'small';

/** Sorts by effect, keeping the given order among equals. */
export const compareEffect = (a: AnswerKey, b: AnswerKey): number => rank(a) - rank(b);
const rank = (key: AnswerKey): number => (byEffect.includes(key) ? byEffect.indexOf(key) : byEffect.length);
