/**
 * People nearer than the exposure result allows, and more power than any amateur licence known to us gives.
 *
 * 1500 W peak in the United States (200 W on 30 m), 2250 W in Canada, less nearly everywhere else: from memory, the licence decides.
 */
import { usThirtyMetrePepW } from '../../catalog/bands';
import type { Exposure } from '../finding';
import { listed, type Rule, warn } from './warning';

type Inside = Exposure & { readonly publicM: number; readonly powerAtNearestPersonW: number };

const isInside = (entry: Exposure): entry is Inside =>
  entry.nearestPersonOk === false && entry.publicM !== null && entry.powerAtNearestPersonW !== null;

/** Less than this is no way out. */
const LEAST_W = 1;

export const peopleTooNear: Rule = ({ facts, exposure = [] }) => {
  const { nearestPersonM, ruleSet } = facts.settled;
  const inside = exposure.filter(isInside);
  if (nearestPersonM === null || inside.length === 0) return [];
  const keepM = Math.max(...inside.map(({ publicM }) => publicM));
  const mostW = Math.min(...inside.map(({ powerAtNearestPersonW }) => powerAtNearestPersonW));
  const data = { bands: listed(inside.map(({ band }) => band)), nearestM: nearestPersonM, keepM, ruleSet };
  return [
    warn('people-too-near', data, [
      ...(mostW >= LEAST_W && mostW < facts.settled.powerW ? ([['less-power', { mostW }]] as const) : []),
      'move-it',
      'keep-away',
    ]),
  ];
};

const MOST_W = 1500;
const MOST_CANADA_W = 2250;

export const powerAboveLicence: Rule = ({ facts: { settled, bands } }) => {
  const { powerW, country } = settled;
  const mostW = country === 'CA' ? MOST_CANADA_W : MOST_W;
  if (powerW > mostW) return [warn('power-above-licence', { powerW, mostW }, ['less-power', 'permit'])];
  const onThirtyW = usThirtyMetrePepW.value;
  if (country !== 'US' || powerW <= onThirtyW || !bands.some(({ band }) => band === '30m')) return [];
  return [warn('power-above-licence', { powerW, mostW: onThirtyW, band: '30m' }, ['less-power', 'permit'])];
};
