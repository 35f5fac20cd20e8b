/**
 * Common-mode impedance of chokes, beads and coils that an operator owns, over the bands wanted.
 *
 * Chokes and coils by the models of physics/, nominal values. Beads: no maker and no size is told, so 150 Ω each at 14 MHz, rising as
 * f^(2/3) and level above 28 MHz (common practice: 100 to 200 Ω at 14 MHz, less than half at 3.5 MHz).
 */
import { type Complex, complex, magnitude } from '../base/complex';
import type { Band } from '../catalog/bands';
import { type CoreId, coreOf } from '../catalog/cores';
import { muAt } from '../catalog/ferrites';
import { type CoaxId, coaxes } from '../catalog/lines';
import { closeWound, coilImpedance } from '../physics/air-coil';
import { chokeImpedance, isMostlyReactive } from '../physics/choke';
import { turnsThatFit } from '../physics/conductor-on-core';
import { coaxToWind } from '../physics/wound-conductor';
import type { BandFacts } from './facts';

export interface Impedance {
  readonly ohm: number;
  readonly band: Band;
  /** Resists by reactance more than by resistance. */
  readonly reactive: boolean;
  /** Above its own resonance. */
  readonly capacitive: boolean;
}

const BEAD_OHM = 150;
const BEAD_LEVEL_MHZ = 28;
const BEAD_REFERENCE_MHZ = 14;

/** Impedance at lower edge, focus and upper edge of every band wanted. */
function overBands(bands: readonly BandFacts[], zAt: (hz: number) => Complex): readonly Impedance[] {
  return bands.flatMap(({ band, focusMHz, edgesMHz: { lowMHz, highMHz } }) =>
    [lowMHz, focusMHz, highMHz].map((mhz) => {
      const z = zAt(mhz * 1e6);
      const reactive = isMostlyReactive(z.re, z.im);
      return { ohm: magnitude(z), band, reactive, capacitive: reactive && z.im < 0 };
    }),
  );
}

export const coaxTurnsThatFit = (core: CoreId, line: CoaxId): number =>
  turnsThatFit(coreOf(core), coaxes[line].outerDiameterM.value);

export function chokeOnHand(
  part: { readonly core: CoreId; readonly count: number; readonly turns: number; readonly line: CoaxId },
  bands: readonly BandFacts[],
): readonly Impedance[] {
  const ring = coreOf(part.core);
  const winding = { ring, count: part.count, turns: part.turns, conductor: coaxToWind(part.line) };
  return overBands(bands, (hz) => chokeImpedance(winding, muAt(ring.mix, hz), hz));
}

/** `diameterM`: of the form the coax is wound on. */
export function coilOnHand(
  part: { readonly turns: number; readonly diameterM: number; readonly line: CoaxId },
  bands: readonly BandFacts[],
): readonly Impedance[] {
  const coil = closeWound(part.turns, part.diameterM, coaxes[part.line].outerDiameterM.value);
  return overBands(bands, (hz) => coilImpedance(coil, hz));
}

export const beadsOnHand = (count: number, bands: readonly BandFacts[]): readonly Impedance[] =>
  overBands(bands, (hz) => {
    const mhz = Math.min(hz / 1e6, BEAD_LEVEL_MHZ);
    return complex(count * BEAD_OHM * (mhz / BEAD_REFERENCE_MHZ) ** (2 / 3), 0);
  });
