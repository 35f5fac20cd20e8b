/** What is asked of a wide-band transformer, and what a design of one answers. Numbers and codes only. */
import type { Complex } from '../base/complex';
import type { CoreId, Mix } from '../catalog/core-ids';
import type { WireId } from '../catalog/wire-ids';
import type { Housing } from './core-heat';
import type { PowerByMode } from './mode-power';

/** `auto`: the high side continues the low side's winding. `isolated`: two windings with no connection. */
export const windingKinds = ['auto', 'isolated'] as const;
export type WindingKind = (typeof windingKinds)[number];

export interface CoresOnHand {
  readonly core: CoreId;
  readonly count: number;
}

export interface TransformerNeed {
  /** Impedance ratio, 49 for 49:1. */
  readonly ratio: number;
  readonly winding: WindingKind;
  /** One for each band: frequency and the impedance that the high side really meets there. */
  readonly points: readonly { readonly hz: number; readonly load: Complex }[];
  /** Impedance of the coax on the low side. */
  readonly lineOhm: number;
  /** Envelope peak, and the average while heating as part of it. */
  readonly powerW: number;
  readonly averageFactor: number;
  readonly housing: Housing;
  readonly onHand: readonly CoresOnHand[];
  /** Leave out for the nickel-zinc mixes: large manganese-zinc rings conduct, resonate and spread too far to carry power. */
  readonly mixes?: readonly Mix[];
}

/** A build, before it is judged. */
export interface TransformerBuild {
  readonly core: CoreId;
  readonly count: number;
  readonly primaryTurns: number;
  readonly secondaryTurns: number;
}

/** Where a build falls short of the need. */
export const transformerShortfalls = ['loss', 'swr', 'heat', 'flux', 'winding-too-long', 'does-not-fit'] as const;
export type TransformerShortfall = (typeof transformerShortfalls)[number];

export interface TransformerPoint {
  readonly hz: number;
  readonly input: Complex;
  /** On the line's impedance, into the real load and into the load that the ratio is made for. */
  readonly swr: number;
  readonly swrNominal: number;
  readonly lossDb: number;
  /** Into the nominal load: what the part itself costs, whatever hangs on it. */
  readonly lossNominalDb: number;
  /** Average heat at the need's power, W. */
  readonly coreHeatW: number;
  readonly copperHeatW: number;
  readonly riseK: number;
  /** Envelope peak. */
  readonly fluxDensityT: number;
  readonly lowPeakV: number;
  readonly highPeakV: number;
  readonly capacitorA: number;
  /** Length of the high side in wavelengths of free space: the lumped model holds below a tenth. */
  readonly windingWavelengths: number;
}

export interface TransformerDesign extends TransformerBuild {
  /** What the turns really give. */
  readonly ratio: number;
  readonly winding: WindingKind;
  /** Wires wound side by side as one: two for 4:1, three for 9:1. */
  readonly strands: number;
  readonly conductor: WireId;
  readonly primaryLengthM: number;
  readonly secondaryLengthM: number;
  /** To cut, tails included, all windings. */
  readonly conductorLengthM: number;
  /** Across the low side; 0 when it is better left out. */
  readonly capacitorPf: number;
  readonly leakageH: number;
  /** Factor by which the leakage may be larger or smaller. */
  readonly leakageFactor: number;
  readonly points: readonly TransformerPoint[];
  /** Hottest band. */
  readonly heatW: number;
  readonly riseK: number;
  /** The same for a core at the lossy end of its tolerance. */
  readonly riseWorstK: number;
  /** Steady power that brings the hottest band to the rise limit, W. */
  readonly continuousW: number;
  /** Envelope peak that heat and flux allow, W: in the need's mode, and in each. */
  readonly safePowerW: number;
  readonly safePowerByMode: PowerByMode;
  /** Envelope peak at which the flux reaches what is allowed, W. */
  readonly fluxLimitW: number;
  /** Bare surface of the stack. */
  readonly surfaceM2: number;
  readonly highPeakV: number;
  readonly peakVPerTurn: number;
  readonly massKg: number;
  readonly shortfalls: readonly TransformerShortfall[];
  /** Largest part used of any limit; the need is met at 1 or below. */
  readonly excess: number;
}

export interface TransformerChoice {
  readonly fewestCores: TransformerDesign | null;
  readonly lightest: TransformerDesign | null;
  readonly coolest: TransformerDesign | null;
  /** From the cores on hand, and from more rings of a kind on hand. */
  readonly fromParts: TransformerDesign | null;
  readonly moreOfOwn: TransformerDesign | null;
  /** The nearest miss when nothing in the catalogue meets the need. */
  readonly closest: TransformerDesign | null;
  /** For who has nothing but one mix: the fewest rings of it that meet the need, else the nearest miss. */
  readonly byMix: ReadonlyMap<Mix, TransformerDesign>;
}
