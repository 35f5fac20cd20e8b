/** What stands at the shack end: tuner and radio, and the arrester where a line comes into a building. */
import type { Dimension } from '../../base/working';
import type { System } from '../../design/choices';
import type { Facts } from '../facts';
import type { Link, Reason, Said } from '../finding';
import { twinLeadMeetsCoax } from '../needs';
import { emptyLink } from './links';
import { practice, type WhyCode } from './why-codes';

/** Systems whose impedance wanders far outside what a tuner inside a radio reaches. */
export const wideTunerSystems: readonly System[] = [
  'non-resonant-end-fed',
  'non-resonant-vertical',
  'open-wire-doublet',
];

export const needsWideTuner = (facts: Facts): boolean =>
  wideTunerSystems.includes(facts.system) || (facts.lineKind === 'open-wire' && !twinLeadMeetsCoax(facts));

/** The tuner at the shack end; null when there is none and none is missing. One at the feed point is feedPointTuner's. */
export function shackTuner(facts: Facts, distanceM: number): Link | null {
  const found = tunerOf(facts);
  if (found === null) return null;
  const [code, buy] = found;
  const buySaid: Said = { code: buy, data: { powerW: facts.settled.powerW } };
  return { ...emptyLink('tuner', 'radio', distanceM), why: [practice(code)], buy: buySaid };
}

function tunerOf(facts: Facts): readonly [WhyCode, string] | null {
  const openWire = facts.lineKind === 'open-wire';
  switch (facts.settled.shackEnd) {
    case 'radio':
      return needsWideTuner(facts) ? ['tuner-missing', 'buy-wide-tuner'] : null;
    case 'radio-tuner':
      return needsWideTuner(facts)
        ? ['tuner-inside-too-narrow', 'buy-wide-tuner']
        : ['tuner-inside-radio', 'buy-nothing'];
    case 'wide-tuner':
      return ['tuner-wide', 'buy-nothing'];
    case 'wide-tuner-4to1':
      return ['tuner-wide-skip-4to1', 'buy-nothing'];
    case 'balanced-tuner':
      return [openWire ? 'tuner-balanced' : 'tuner-balanced-on-coax', 'buy-nothing'];
    case 'feed-point-tuner':
      return null;
  }
}

export const feedPointTuner = (): Link => ({
  ...emptyLink('tuner', 'feed-point', 0),
  why: [practice('tuner-feed-point')],
});

export const radioLink = (distanceM: number): Link => ({
  ...emptyLink('radio', 'radio', distanceM),
  why: [practice('radio-50-ohm')],
});

/** Arrester and bond, just before the last choke: what comes down the line goes to earth outside. Portable stations have none. */
export function arresterLink(facts: Facts, distanceM: number, place: Dimension | null): Link | null {
  if (facts.settled.station === 'portable' || facts.lineKind === 'none') return null;
  const open = facts.lineKind === 'open-wire';
  const why: Reason[] = [
    { code: open ? 'arrester-open-wire' : 'arrester-bond', data: {}, source: 'antenna-wire-code' },
    ...(facts.settled.indoors ? [practice('arrester-indoors')] : []),
  ];
  return {
    ...emptyLink('arrester', 'building-entry', distanceM),
    distanceMWorking: place?.working ?? null,
    why,
    buy: { code: open ? 'buy-arrester-open-wire' : 'buy-arrester', data: { powerW: facts.settled.powerW } },
  };
}
