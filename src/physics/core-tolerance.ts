/**
 * How far a real core may lie from its maker's permeability table.
 *
 * Maker's usual: ±20 % on µ′ and µ″, ±25 % for manganese-zinc, by part and lot. A large manganese-zinc ring is a conducting body that resonates:
 * above 1 to 5 MHz it falls below the table, which was measured on an 18 mm ring. How far is our judgement, no source.
 */
import type { Core } from '../catalog/cores';
import { ferrites } from '../catalog/ferrites';

/** Part of the nominal value that a core may lie below and above it. */
export interface Tolerance {
  readonly below: number;
  readonly above: number;
}

const LARGE_RING_M = 0.04;

export function permeabilityTolerance({ mix, outsideDiameterM }: Pick<Core, 'mix' | 'outsideDiameterM'>): Tolerance {
  if (ferrites[mix].composition.value === 'NiZn') return { below: 0.2, above: 0.2 };
  return outsideDiameterM > LARGE_RING_M ? { below: 0.4, above: 0.25 } : { below: 0.25, above: 0.25 };
}
