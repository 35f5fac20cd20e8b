/**
 * What people would expect at this antenna and this feed point does not need, each with its reason. Source: common practice where nothing
 * else is named.
 */
import type { SourceId } from '../catalog/sources';
import { isEndFed, isUpright } from './chain/choke-minimum';
import { COUNTERPOISE_WAVES } from './choke-distance';
import type { Facts } from './facts';
import type { Data, DeviceKind, Link, NotNeeded } from './finding';

export const notNeededCodes = [
  'transformer-centre',
  'transformer-quarter-wave',
  'transformer-inverted-l',
  'transformer-on-open-wire',
  'transformer-feed-point-tuner',
  'transformer-near-50',
  'transformer-unknown',
  'transformer-49-on-non-resonant',
  'transformer-9-on-half-wave',
  'built-in-4to1',
  'choke-at-open-wire-feed-point',
  'choke-before-balanced-tuner',
  'choke-without-line',
  'choke-at-radio',
  'choke-second-portable',
  'counterpoise-balanced',
  'counterpoise-off-centre',
  'counterpoise-wire-end-fed',
  'rf-earth',
  'tuner-resonant',
  'tuner-second',
  'arrester-portable',
  'longer-coax',
] as const;
export type NotNeededCode = (typeof notNeededCodes)[number];

type Entry = readonly [device: string, code: NotNeededCode, data?: Data, source?: SourceId];

export function notNeededOf(facts: Facts, chain: readonly Link[]): readonly NotNeeded[] {
  return [
    ...transformers(facts, chain),
    ...chokes(facts, chain),
    ...counterpoises(facts),
    ...station(facts, chain),
  ].map(([device, code, data = {}, source = 'house-practice']) => ({ device, code, data, source }));
}

const has = (chain: readonly Link[], device: DeviceKind): boolean => chain.some((link) => link.device === device);

function transformers(facts: Facts, chain: readonly Link[]): readonly Entry[] {
  const builtIn: Entry[] = facts.settled.shackEnd === 'wide-tuner-4to1' ? [['4to1-in-tuner', 'built-in-4to1']] : [];
  if (facts.settled.shackEnd === 'feed-point-tuner') return [['transformer', 'transformer-feed-point-tuner']];
  if (has(chain, 'transformer')) return [...otherRatio(facts), ...builtIn];
  if (facts.lineKind === 'open-wire')
    return [['4to1-transformer', 'transformer-on-open-wire', {}, 'own-field-solutions'], ...builtIn];
  return [...withoutTransformer(facts), ...builtIn];
}

/** The ratio that is sold for "end-fed wires" of the other kind. */
function otherRatio({ system, balanced }: Facts): readonly Entry[] {
  if (balanced) return [];
  if (system === 'non-resonant-end-fed') return [['49to1-transformer', 'transformer-49-on-non-resonant']];
  return system === 'end-fed-half-wave' ? [['9to1-transformer', 'transformer-9-on-half-wave']] : [];
}

function withoutTransformer({ system, settled }: Facts): readonly Entry[] {
  switch (system) {
    case 'quarter-wave-vertical':
      return [['transformer', 'transformer-quarter-wave']];
    case 'inverted-l':
      return [['transformer', 'transformer-inverted-l']];
    case 'other':
      return [['transformer', settled.feedImpedance === null ? 'transformer-unknown' : 'transformer-near-50']];
    case 'open-wire-doublet':
      return [['4to1-transformer', 'transformer-on-open-wire', {}, 'own-field-solutions']];
    default:
      return [['transformer', 'transformer-centre']];
  }
}

function chokes(facts: Facts, chain: readonly Link[]): readonly Entry[] {
  const { lineKind, settled } = facts;
  if (lineKind === 'none') return has(chain, 'choke') ? [] : [['choke', 'choke-without-line']];
  if (lineKind === 'open-wire') {
    const feedPoint: Entry = ['choke-at-feed-point', 'choke-at-open-wire-feed-point'];
    return has(chain, 'choke') ? [feedPoint] : [feedPoint, ['choke', 'choke-before-balanced-tuner']];
  }
  if (settled.station === 'portable') return [['choke-at-entry', 'choke-second-portable']];
  return settled.rfInShack || isEndFed(facts.system) ? [] : [['choke-at-radio', 'choke-at-radio']];
}

function counterpoises(facts: Facts): readonly Entry[] {
  if (facts.balanced) return [['counterpoise', 'counterpoise-balanced']];
  if (facts.system === 'off-centre-fed') return [['counterpoise', 'counterpoise-off-centre']];
  const lengthM = COUNTERPOISE_WAVES * facts.bands[0].wavelengthM;
  const { returnPath, feedLineLengthM } = facts.settled;
  const isShield = facts.system === 'end-fed-half-wave' && returnPath === 'coax-shield' && facts.lineKind === 'coax';
  return isShield && feedLineLengthM > lengthM
    ? [['counterpoise-wire', 'counterpoise-wire-end-fed', { lengthM }, 'own-field-solutions']]
    : [];
}

function station(facts: Facts, chain: readonly Link[]): readonly Entry[] {
  const { settled, lineKind } = facts;
  const entries: Entry[] = [['rf-earth', 'rf-earth', { upright: isUpright(facts.system) }]];
  if (settled.shackEnd === 'feed-point-tuner') entries.push(['tuner-at-radio', 'tuner-second']);
  else if (!has(chain, 'tuner') && facts.bands.length === 1) entries.push(['tuner', 'tuner-resonant']);
  if (settled.station === 'portable') entries.push(['arrester', 'arrester-portable', {}, 'lightning-advice']);
  if (lineKind === 'coax') entries.push(['coax-length', 'longer-coax', {}, 'own-field-solutions']);
  return entries;
}
