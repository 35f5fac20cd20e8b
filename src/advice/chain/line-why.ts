/** Why a piece of feed line is what it is, by where it lies in the chain. */
import type { Dimensions } from '../dimensions';
import type { Facts } from '../facts';
import type { Reason } from '../finding';
import { twinLeadMeetsCoax } from '../needs';
import { isEndFed } from './choke-minimum';
import { computed, practice } from './why-codes';

/** Where a piece of coax lies: above the antenna-end choke, on its way to the building, or inside it. */
export type CoaxPart = 'above-choke' | 'outdoors' | 'inside';

export function coaxWhy(facts: Facts, dimensions: Dimensions, lengthM: number, part: CoaxPart): readonly Reason[] {
  if (part === 'inside') return [practice('line-inside')];
  if (part === 'above-choke' && isEndFed(facts.system)) return [computed('line-is-counterpoise', { lengthM })];
  if (part === 'above-choke' && facts.system === 'off-centre-fed')
    return [computed('line-part-of-antenna', { lengthM })];
  return [
    practice('line-coax', { line: facts.settled.feedLine }),
    ...(facts.line?.z0Ohm.value === 75 ? [practice('line-75-ohm')] : []),
    ...(facts.system === 'open-wire-doublet' ? [practice('line-doublet-on-coax')] : []),
    ...routeWhy(facts, dimensions),
  ];
}

function routeWhy(facts: Facts, dimensions: Dimensions): readonly Reason[] {
  if (facts.settled.feedLineRoute === 'along') return [computed('line-under-wire')];
  if (!facts.balanced || facts.system === 'full-wave-loop') return [];
  return [computed('line-square', { legM: dimensions.radiator.metres / 2 })];
}

export function openWireWhy(facts: Facts, dimensions: Dimensions): readonly Reason[] {
  const { feedLine, shackEnd, feedLineLengthM } = facts.settled;
  if (shackEnd === 'feed-point-tuner') return [practice('line-open-after-tuner')];
  const { clearLine } = dimensions;
  const other =
    clearLine === null ? [] : [practice('line-clear-length', { lengthM: clearLine.metres, toldM: feedLineLengthM })];
  const first = twinLeadMeetsCoax(facts) ? 'line-twin-matched' : 'line-open-wire';
  return [practice(first, { line: feedLine }), ...other];
}
