/**
 * What to test, and in which order, when something is wrong on the air: at each step one thing to do, and what its outcome means. Codes and
 * numbers; words/en/look-ups.ts says them. The order is that of trade practice, with what field solutions of coax and chokes changed in it:
 * of single chokes the one at the entry does most for the radio, and noise asks for both.
 */
import type { SourceId } from '../catalog/sources';
import { COUNTERPOISE_WAVES } from './choke-distance';
import type { Facts } from './facts';
import { roughly } from './field-figures';
import type { Data, Place, Reason } from './finding';

export const lookUpIds = ['radio-upset', 'noise', 'folds-back', 'conducting-pole'] as const;
export type LookUpId = (typeof lookUpIds)[number];

export interface LookUp {
  readonly id: LookUpId;
  readonly steps: readonly Reason[];
}

/** A choke of the plan: where it sits, and how far along the line from the feed point, m. */
export interface ChokeSpot {
  readonly at: Place;
  readonly distanceM: number | null;
}

const LITTLE_W = 10;

const step = (code: string, data: Data = {}, source: SourceId = 'house-practice'): Reason => ({ code, data, source });
const solved = (code: string, data: Data = {}): Reason => step(code, data, 'own-field-solutions');

export const lookUpsOf = (facts: Facts, chokes: readonly ChokeSpot[]): readonly LookUp[] => [
  { id: 'radio-upset', steps: radioUpset(facts, chokes) },
  { id: 'noise', steps: noise(facts) },
  { id: 'folds-back', steps: foldsBack(facts) },
  ...(facts.settled.indoors ? [] : [{ id: 'conducting-pole', steps: conductingPole(facts) } as const]),
];

/** Little enough to be harmless, and less than what caused the trouble. */
const littleW = ({ settled }: Facts): number => roughly(Math.min(LITTLE_W, settled.powerW / 2));

function radioUpset(facts: Facts, chokes: readonly ChokeSpot[]): readonly Reason[] {
  const isPortable = facts.settled.station === 'portable';
  const entry = chokes.some(({ at }) => at === 'building-entry' || at === 'radio');
  const antenna = chokes.find(({ at }) => at === 'feed-point' || at === 'along-line');
  return [
    step('upset-little-power', { watts: littleW(facts) }),
    ...(facts.lineKind === 'coax' ? [step('upset-move-coax')] : []),
    ...(entry ? [solved('upset-entry-choke', { isPortable })] : []),
    ...(antenna === undefined ? [] : [solved('upset-antenna-choke', { metres: antenna.distanceM ?? 0 })]),
    ...counterpoise(facts),
    step('upset-leads'),
  ];
}

function counterpoise({ system, settled, bands: [lowest] }: Facts): readonly Reason[] {
  if (system !== 'end-fed-half-wave' && system !== 'non-resonant-end-fed') return [];
  if (settled.returnPath === 'counterpoise-wire') return [step('upset-counterpoise-there')];
  const isTuner = settled.shackEnd === 'feed-point-tuner';
  return [step('upset-counterpoise-try', { metres: COUNTERPOISE_WAVES * lowest.wavelengthM, isTuner })];
}

function noise({ settled, lineKind }: Facts): readonly Reason[] {
  const isHome = settled.station === 'home';
  return [
    step('noise-note'),
    step('noise-unplug'),
    ...(lineKind === 'coax' ? [step('noise-wire-off')] : []),
    step(isHome ? 'noise-house-off' : 'noise-things-off'),
    ...(lineKind === 'coax' && isHome ? [solved('noise-chokes', { isAlong: settled.feedLineRoute === 'along' })] : []),
  ];
}

const foldsBack = (facts: Facts): readonly Reason[] => [
  step('folds-at-radio'),
  ...(facts.lineKind === 'coax' ? [step('folds-case')] : []),
  step('folds-little-power', { watts: littleW(facts) }),
  step('folds-up'),
  step('folds-sweep-again'),
];

const upright: readonly Facts['settled']['radiator'][] = ['vertical', 'inverted-l'];

const conductingPole = ({ settled }: Facts): readonly Reason[] => [
  step('pole-conducts'),
  step(upright.includes(settled.radiator) ? 'pole-along-upright' : 'pole-along'),
  step('pole-top'),
  step('pole-dip'),
];
