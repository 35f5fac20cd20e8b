/** The transformer: its ratio, its type, what it joins, and why. */

import { C0 } from '../../base/constants';
import { coaxes } from '../../catalog/lines';
import type { Ohms } from '../../design/answers';
import type { Facts } from '../facts';
import type { Link, Reason } from '../finding';
import { keyedAverageW, speechRatingW } from '../heating-power';
import { lineOhm, swrBehind } from '../needs';
import type { ComponentDesigns } from './component-designs';
import { designedAs, emptyLink } from './links';
import { computed, practice } from './why-codes';
import { balancedIn, windingOf } from './winding-kind';

export function transformerLink(
  facts: Facts,
  ratio: number,
  place: Pick<Link, 'at' | 'distanceM'>,
  designs: ComponentDesigns,
  solved: Ohms | null,
): Link {
  const balanced = balancedIn(facts);
  return {
    ...emptyLink('transformer', place.at, place.distanceM),
    ratio,
    kind: 'voltage',
    ports: { in: balanced ? 'balanced' : 'unbalanced', out: 'unbalanced' },
    why: [...ratioWhy(facts, ratio, solved), ...typeWhy(facts, ratio, balanced)],
    ...designedAs(designs.transformer),
    buy: { code: 'buy-transformer', data: { ratio, kind: 'voltage', balanced, ratingW: speechRatingW(facts) } },
  };
}

function ratioWhy(facts: Facts, ratio: number, solved: Ohms | null): readonly Reason[] {
  const ohm = 50 * ratio;
  switch (facts.system) {
    case 'off-centre-fed':
      return [practice('ratio-off-centre', { ratio, ohm })];
    case 'end-fed-half-wave':
      return [
        practice('ratio-end-fed', { ratio, ohm, powerW: facts.settled.powerW, peakV: peakV(facts, ohm, solved) }),
      ];
    case 'non-resonant-end-fed':
      return [practice('ratio-non-resonant', { ratio })];
    case 'non-resonant-vertical':
      return [practice('ratio-non-resonant-vertical', { ratio })];
    case 'full-wave-loop':
      return loopWhy(facts, ratio);
    case 'folded-dipole':
      return [practice(ratio === 6 ? 'ratio-twin-lead-end' : 'ratio-folded-dipole', { ratio })];
    case 'inverted-l':
      return impedanceWhy('ratio-computed', facts, ratio, solved);
    default:
      return impedanceWhy('ratio-told', facts, ratio, facts.settled.feedImpedance);
  }
}

/** At the box: what the ratio is made for, or more where the antenna as solved shows more on its lowest band. */
function peakV({ settled }: Facts, ohm: number, solved: Ohms | null): number {
  const shown = solved === null || solved.r <= 0 ? 0 : Math.hypot(solved.r, solved.x) ** 2 / solved.r;
  return Math.sqrt(2 * settled.powerW * Math.max(ohm, shown));
}

function loopWhy(facts: Facts, ratio: number): readonly Reason[] {
  if (facts.bands.length > 1) return [practice('ratio-loop-bands', { ratio })];
  const quarterM = (coaxes['rg-6'].velocityFactor.value * C0) / (4e6 * facts.bands[0].focusMHz);
  return [practice('ratio-loop-one-band', { ratio }), practice('loop-quarter-wave-section', { lengthM: quarterM })];
}

function impedanceWhy(
  code: 'ratio-computed' | 'ratio-told',
  facts: Facts,
  ratio: number,
  load: Ohms | null,
): readonly Reason[] {
  if (load === null) return [];
  const z0Ohm = lineOhm(facts);
  const data = { ratio, r: load.r, x: load.x, swr: swrBehind(load, ratio, z0Ohm), without: swrBehind(load, 1, z0Ohm) };
  return [code === 'ratio-computed' ? computed(code, data) : practice(code, data)];
}

function typeWhy(facts: Facts, ratio: number, balanced: boolean): readonly Reason[] {
  const heatW = keyedAverageW(facts);
  const type = facts.balanced
    ? [practice('either-type-balanced')]
    : facts.system === 'off-centre-fed'
      ? [computed('voltage-type-off-centre', { averageW: heatW })]
      : [];
  return windingOf(ratio, balanced) === 'transformer-two-windings' ? type : [...type, practice('drains-static')];
}
