/** What component physics says of one device: how to make it, what it does band by band, and what other rings would do instead. */
import type { Complex } from '../base/complex';
import type { Working } from '../base/working';
import type { Band } from '../catalog/band-ids';
import type { Mix } from '../catalog/core-ids';
import type { Mode } from '../catalog/modes';
import type { CoreLot } from '../physics/component-curve';
import type { Housing } from '../physics/core-heat';
import type { BuildFinding, Said } from './finding';

/** What the catalogue's values give, and the least and most that tolerances allow. */
export interface Spread {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

export interface Ohms {
  readonly r: number;
  readonly x: number;
}

/** One wanted band. What does not apply to the device, or is not known, is null. */
export interface DeviceBand {
  readonly band: Band;
  readonly atMHz: number;
  /** Into what really hangs on it; a choke's is the matched loss of the cable in it. */
  readonly lossDb: number;
  /** Of a transformer: the same with what the core's tolerance allows. */
  readonly lossSpreadDb: Spread | null;
  readonly heatW: number | null;
  readonly riseK: number | null;
  /** Of a transformer: what the line sees, and its SWR there. */
  readonly input: Ohms | null;
  readonly swr: number | null;
  /** Of a choke. */
  readonly rOhm: Spread | null;
  readonly xOhm: Spread | null;
  readonly ohm: Spread | null;
  readonly neededOhm: number | null;
  readonly isReactive: boolean | null;
  readonly voltageV: number | null;
  readonly currentA: number | null;
}

/** One point of a plot over the wanted range. */
export interface DeviceCurvePoint {
  readonly atMHz: number;
  readonly lossDb: Spread | null;
  readonly swr: number | null;
  readonly rOhm: Spread | null;
  readonly xOhm: Spread | null;
  readonly ohm: Spread | null;
}

/** What a device comes to over all wanted bands. Powers are envelope peaks. */
export interface DeviceSummary {
  /** Every limit is kept at the plan's power and mode. */
  readonly isEnough: boolean;
  readonly shortfalls: readonly Said[];
  readonly worstLossDb: number;
  readonly heatW: number | null;
  readonly riseK: number | null;
  /** Most power in the plan's mode, and in each mode, without pause. */
  readonly mostW: number | null;
  readonly powerByModeW: Readonly<Record<Mode, number>> | null;
  /** Of a choke: on its weakest band. */
  readonly leastOhm: Spread | null;
  readonly rings: number;
  readonly massKg: number;
}

/** Beside the numbers of the same name; null where the number is. */
export interface DeviceWorkings {
  readonly riseKWorking: Working | null;
  readonly riseWorstKWorking: Working | null;
  readonly mostWWorking: Working | null;
  readonly peakVWorking: Working | null;
}

/** A transformer tried out with a resistor in place of the antenna. */
export interface ResistorTest {
  readonly resistorOhm: number;
  /** Up to here a box of this kind is well made. */
  readonly goodSwr: number;
  /** What the designed box shows. */
  readonly bands: readonly { readonly band: Band; readonly swr: number }[];
}

export interface DeviceFigures extends DeviceSummary, DeviceWorkings {
  readonly powerW: number;
  readonly mode: Mode | null;
  readonly housing: Housing;
  readonly limitK: number;
  /** For a core at the lossy end of its tolerance. */
  readonly riseWorstK: number | null;
  /** Across the antenna side of a transformer. */
  readonly peakV: number | null;
  readonly bands: readonly DeviceBand[];
  readonly curve: readonly DeviceCurvePoint[];
  /** Of a transformer: what it shows of a load at any frequency. Null of a choke, and where the antenna's side is the low one. */
  readonly inputAt: ((hz: number, load: Complex) => Complex) | null;
  /** Of a choke: its common-mode impedance at any frequency, with a core from anywhere in its tolerance. Null of a transformer. */
  readonly impedanceAt: ((hz: number, lot: CoreLot) => Complex) | null;
  /** Null of a choke. */
  readonly test: ResistorTest | null;
  /** In words: what to expect, how sure that is, and what limits it. */
  readonly notes: readonly Said[];
}

/** Another way to make the device, and what changes with it. */
export interface DeviceAlternative extends DeviceSummary {
  readonly id: AlternativeId;
  readonly mix: Mix;
  /** It is the one of the plan. */
  readonly isPlanned: boolean;
  readonly build: BuildFinding;
  readonly changes: Said;
}

export type AlternativeId = 'on-hand' | 'fewest-rings' | 'lightest' | 'coolest' | `mix-${Mix}`;

export interface DeviceFinding {
  readonly build: BuildFinding;
  readonly figures: DeviceFigures;
  readonly alternatives: readonly DeviceAlternative[];
}
