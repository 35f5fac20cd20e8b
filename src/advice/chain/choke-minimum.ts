/**
 * How many ohms the antenna-end choke needs.
 *
 * Centre-fed and verticals 1 kΩ; off-centre, end-fed and non-resonant 5 kΩ, where the shield stands at a high voltage and a smaller choke
 * would get hot. Before the entry 5 kΩ, at the radio 1 kΩ. A mostly reactive choke can resonate with the cable: at least 5 kΩ for end-feds,
 * 2 kΩ elsewhere. Source: own field solutions; house positions.
 */
import type { System } from '../../design/choices';
import type { Facts } from '../facts';

const LOW_OHM = 1000;
export const HIGH_OHM = 5000;
const REACTIVE_ELSEWHERE_OHM = 2000;

export const isEndFed = (system: System): boolean =>
  system === 'end-fed-half-wave' || system === 'non-resonant-end-fed';

export const isUpright = (system: System): boolean =>
  system === 'quarter-wave-vertical' || system === 'non-resonant-vertical' || system === 'inverted-l';

/** Whether radials carry the return current of an upright wire. */
export const hasRadials = ({ settled }: Facts): boolean =>
  (settled.returnPath === 'ground-radials' || settled.returnPath === 'elevated-radials') && settled.radialCount > 0;

export function antennaChokeOhm(facts: Facts): number {
  const { system } = facts;
  if (facts.settled.rfInShack || isEndFed(system)) return HIGH_OHM;
  if (isUpright(system)) return system === 'non-resonant-vertical' && !hasRadials(facts) ? HIGH_OHM : LOW_OHM;
  // A doublet of any length on coax meets hundreds or thousands of ohms.
  if (system === 'off-centre-fed' || system === 'open-wire-doublet') return HIGH_OHM;
  return facts.balanced ? LOW_OHM : HIGH_OHM;
}

export const radioChokeOhm = ({ settled }: Facts): number => (settled.rfInShack ? HIGH_OHM : LOW_OHM);

export const reactiveMinimumOhm = ({ system }: Facts): number => (isEndFed(system) ? HIGH_OHM : REACTIVE_ELSEWHERE_OHM);
