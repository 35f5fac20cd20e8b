/**
 * Common-mode impedance of chokes, beads and coils that an operator owns, over the bands wanted.
 *
 * Chokes and coils by the models of physics/, nominal values. Beads: no maker and no size is told, so 150 Ω each at 14 MHz, rising as
 * f^(2/3) and level above 28 MHz (common practice: 100 to 200 Ω at 14 MHz, less than half at 3.5 MHz).
 */
import { type Complex, complex, magnitude } from '../base/complex';
import type { Band } from '../catalog/band-ids';
import type { CoreId } from '../catalog/core-ids';
import { coreOf } from '../catalog/cores';
import { muAt } from '../catalog/ferrites';
import { type CoaxId, isCoax } from '../catalog/line-ids';
import { coaxes } from '../catalog/lines';
import type { PartOnHand } from '../design/answers';
import { closeWound, coilImpedance } from '../physics/air-coil';
import { chokeImpedance, isMostlyReactive } from '../physics/choke';
import { turnsThatFit } from '../physics/conductor-on-core';
import { coaxToWind } from '../physics/wound-conductor';
import type { BandFacts } from './facts';

/** Over frequency, Hz. */
export type ImpedanceAt = (hz: number) => Complex;

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
function overBands(bands: readonly BandFacts[], zAt: ImpedanceAt): readonly Impedance[] {
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

interface ChokePart {
  readonly core: CoreId;
  readonly count: number;
  readonly turns: number;
  readonly line: CoaxId;
}

interface CoilPart {
  readonly turns: number;
  /** Of the form the coax is wound on. */
  readonly diameterM: number;
  readonly line: CoaxId;
}

export function chokeImpedanceAt(part: ChokePart): ImpedanceAt {
  const ring = coreOf(part.core);
  const winding = { ring, count: part.count, turns: part.turns, conductor: coaxToWind(part.line) };
  return (hz) => chokeImpedance(winding, muAt(ring.mix, hz), hz);
}

export function coilImpedanceAt(part: CoilPart): ImpedanceAt {
  const coil = closeWound(part.turns, part.diameterM, coaxes[part.line].outerDiameterM.value);
  return (hz) => coilImpedance(coil, hz);
}

export const beadsImpedanceAt =
  (count: number): ImpedanceAt =>
  (hz) => {
    const mhz = Math.min(hz / 1e6, BEAD_LEVEL_MHZ);
    return complex(count * BEAD_OHM * (mhz / BEAD_REFERENCE_MHZ) ** (2 / 3), 0);
  };

export const chokeOnHand = (part: ChokePart, bands: readonly BandFacts[]): readonly Impedance[] =>
  overBands(bands, chokeImpedanceAt(part));

export const coilOnHand = (part: CoilPart, bands: readonly BandFacts[]): readonly Impedance[] =>
  overBands(bands, coilImpedanceAt(part));

export const beadsOnHand = (count: number, bands: readonly BandFacts[]): readonly Impedance[] =>
  overBands(bands, beadsImpedanceAt(count));

/** Impedance of anything owned that chokes; null for what is none, or is wound of something that is no coax or does not fit. */
export function partImpedanceAt(part: PartOnHand): ImpedanceAt | null {
  if (part.part === 'beads') return beadsImpedanceAt(part.count);
  if ((part.part !== 'choke' && part.part !== 'coil') || !isCoax(part.line)) return null;
  if (part.part === 'coil') return coilImpedanceAt({ ...part, line: part.line });
  return part.turns > coaxTurnsThatFit(part.core, part.line) ? null : chokeImpedanceAt({ ...part, line: part.line });
}
