/**
 * Cable or wire wound on a stack of ring cores: how much of it, how often it fits, how tightly it bends.
 *
 *   one turn = 2 (stack height + ring width) + π d       d over the jacket: the centre line keeps d/2 from the core, corners rounded
 *   turns    = floor(π (ID − d) / d · 330/360)           one layer, touching in the hole, 30° left open between start and end
 *   bend     = (smaller side of the section + d) / 2     centre-line radius of the tightest half turn
 *
 * Limits: geometry only. Real cable bulges, so cut by these lengths plus the tails; the 30° gap is common practice.
 */
import { InputError } from '../base/input-error';
import type { RingSize } from '../catalog/cores';

/** Part of the hole's circumference that may be wound. */
const WOUND_PART = 330 / 360;

export interface WoundConductor {
  /** Diameter over everything, m. */
  readonly outerM: number;
  /** Diameter of the outside of the metal, m: shield or wire. */
  readonly metalM: number;
  /** Relative permittivity between the two. */
  readonly epsilonR: number;
}

export const turnLengthM = (ring: RingSize, count: number, outerM: number): number =>
  2 * (count * ring.heightM + (ring.outsideDiameterM - ring.insideDiameterM) / 2) + Math.PI * outerM;

/** Conductor to cut for a winding with a tail at each end, m. */
export const conductorLengthM = (ring: RingSize, count: number, turns: number, outerM: number, tailM: number): number =>
  turns * turnLengthM(ring, count, outerM) + 2 * tailM;

/** Turns that fit through the hole in one layer; 0 when the conductor does not pass. */
export function turnsThatFit(ring: RingSize, outerM: number): number {
  if (!(outerM > 0)) throw new InputError('diameter-not-positive', { outerM });
  return Math.max(0, Math.floor((Math.PI * (ring.insideDiameterM - outerM) * WOUND_PART) / outerM));
}

/** Radius to the centre line that the conductor takes around the core, m. */
export const bendRadiusM = (ring: RingSize, count: number, outerM: number): number =>
  (Math.min(count * ring.heightM, (ring.outsideDiameterM - ring.insideDiameterM) / 2) + outerM) / 2;
