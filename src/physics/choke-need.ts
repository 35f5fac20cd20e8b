/** What is asked of a common-mode choke, and what a design of one answers. Numbers and codes only. */
import type { CoreId, Mix } from '../catalog/core-ids';
import type { CommonModeSource, ImpedanceBand } from './choke';
import type { Housing } from './core-heat';
import type { PowerByMode } from './mode-power';
import type { CoresOnHand } from './transformer-need';
import type { WindingMaterial } from './wound-conductor';

export interface ChokeNeed {
  /** Least |Z| on every band, and the least when it is mostly reactance. */
  readonly minimumOhm: number;
  readonly reactiveMinimumOhm: number;
  /** One for each band. `source` is what drives the outside of the cable there at the need's power; null when nobody has computed it. */
  readonly points: readonly { readonly hz: number; readonly source: CommonModeSource | null }[];
  /** Envelope peak through the cable, and the average while heating as part of it. */
  readonly powerW: number;
  readonly averageFactor: number;
  readonly housing: Housing;
  /** What may be wound, the one wished for first. */
  readonly conductors: readonly WindingMaterial[];
  readonly onHand: readonly CoresOnHand[];
  /** Leave out for every mix of the catalogue. */
  readonly mixes?: readonly Mix[];
}

/** One or two windings in series on the same cable, each on its own stack of the same core. */
export interface ChokeBuild {
  readonly core: CoreId;
  readonly count: number;
  readonly turns: readonly number[];
  readonly conductor: WindingMaterial;
}

export const chokeShortfalls = ['impedance', 'reactive', 'heat', 'cable-power', 'bend', 'does-not-fit'] as const;
export type ChokeShortfall = (typeof chokeShortfalls)[number];

export interface ChokePoint {
  readonly hz: number;
  readonly impedance: ImpedanceBand;
  readonly isReactive: boolean;
  /** What this band asks for, Ω: more when the choke is mostly reactance. */
  readonly neededOhm: number;
  /** Matched loss of the cable in it. */
  readonly lossDb: number;
  /** At the need's power: volts rms across, current through, heat on average. Null without a source. */
  readonly voltageV: number | null;
  readonly currentA: number | null;
  readonly heatW: number | null;
}

/** What heats a choke where it is hottest: its core, and a metre of the cable round it. */
export interface HottestPlace {
  /** Index of the need's point. */
  readonly point: number;
  readonly coreHeatW: number;
  readonly coreSurfaceM2: number;
  readonly cableHeatW: number;
  readonly cableSurfaceM2: number;
}

/** Impedance and duty of anything that chokes: wound cores, beads or a coil of coax. */
export interface ChokeResult {
  readonly points: readonly ChokePoint[];
  /** Least |Z| over the bands, and the least that the tolerances leave. */
  readonly leastOhm: number;
  readonly leastCertainOhm: number;
  /** Hottest core, hottest band; null without a source, and for a coil, which has no core. */
  readonly riseK: number | null;
  readonly continuousW: number | null;
  readonly safePowerW: number | null;
  readonly safePowerByMode: PowerByMode | null;
  readonly hottest: HottestPlace | null;
  readonly massKg: number;
  /** Length of cable in it, tails included, m. */
  readonly conductorLengthM: number;
  readonly shortfalls: readonly ChokeShortfall[];
  /** Largest part used of any limit; the need is met at 1 or below. */
  readonly excess: number;
}

export interface ChokeDesign extends ChokeBuild, ChokeResult {
  /** Rings in all. */
  readonly coreCount: number;
  /** Centre-line radius at the tightest place, m, and as part of the cable's least radius; null for wire. */
  readonly bendRadiusM: number;
  readonly bendPart: number | null;
  readonly turnsThatFit: number;
}

export interface ChokeChoice {
  readonly fewestCores: ChokeDesign | null;
  readonly lightest: ChokeDesign | null;
  readonly coolest: ChokeDesign | null;
  /** From the cores on hand, and from more rings of a kind on hand. */
  readonly fromParts: ChokeDesign | null;
  readonly moreOfOwn: ChokeDesign | null;
  /** The nearest miss when nothing in the catalogue meets the need. */
  readonly closest: ChokeDesign | null;
  /** For who has nothing but one mix: the fewest rings of it that meet the need, else the nearest miss. */
  readonly byMix: ReadonlyMap<Mix, ChokeDesign>;
}
