/**
 * What the solver is given and what it gives back, as plain JSON. Metres, ohms, hertz in MHz at this edge only. z is up and the
 * ground surface is z = 0. Current counts positive from a wire's `from` to its `to`. Time is e^(+jωt).
 */
import type { Complex } from '../base/complex';

export type Point = readonly [number, number, number];

export type Ground =
  | { readonly kind: 'none' }
  | { readonly kind: 'perfect-conductor' }
  | { readonly kind: 'soil'; readonly epsilonR: number; readonly sigmaSPerM: number };

export interface Insulation {
  readonly epsilonR: number;
  readonly thicknessM: number;
}

export interface Wire {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly radiusM: number;
  /** null is a perfect conductor. */
  readonly conductivitySPerM?: number | null | undefined;
  readonly insulation?: Insulation | null | undefined;
}

/** A place on a wire: exactly one of the three ways to say where. */
export interface Place {
  readonly wire: string;
  readonly distanceM?: number | undefined;
  readonly fraction?: number | undefined;
  readonly at?: 'from' | 'to' | undefined;
}

export interface Impedance {
  readonly r: number;
  readonly x: number;
}

export type Load = Place & { readonly impedance: Impedance };
export type Probe = Place & { readonly id: string };
export type Gap = Place & { readonly volts: Complex };

export interface Geometry {
  readonly frequencyMHz: number;
  readonly ground: Ground;
  readonly wires: readonly Wire[];
  /** One gap of 1 V; or `sources`, several gaps with their volts. */
  readonly source?: Place | undefined;
  readonly sources?: readonly Gap[] | undefined;
  readonly loads?: readonly Load[] | undefined;
  readonly probes?: readonly Probe[] | undefined;
  readonly fieldPoints?: readonly Point[] | undefined;
  readonly powerW?: number | undefined;
}

export interface ProbeCurrent {
  readonly id: string;
  readonly re: number;
  readonly im: number;
  readonly magnitude: number;
}

export interface PowerShare {
  readonly radiated: number;
  readonly wire: number;
  readonly loads: number;
  readonly ground: number;
}

export interface FieldAtPoint {
  readonly point: Point;
  /** √(|Ex|² + |Ey|² + |Ez|²), rms, at `powerW` accepted. */
  readonly electricVPerM: number;
  readonly magneticAPerM: number;
}

/** Something that makes the answer less certain, without stopping it. */
export interface GeometryWarning {
  readonly code: 'wires-close' | 'segment-short' | 'segment-thick' | 'ground-close';
  readonly wire: string;
  readonly data: Readonly<Record<string, number | string>>;
}

export interface Solution {
  readonly impedance: Impedance;
  /** Currents relative to the feed current. */
  readonly probes: readonly ProbeCurrent[];
  readonly powerShare: PowerShare;
  readonly gainDbi: number;
  readonly gainThetaDeg: number;
  readonly gainPhiDeg: number;
  readonly fields: readonly FieldAtPoint[];
  readonly segments: number;
  /** Likely relative error of the impedance, from a second, coarser mesh. */
  readonly errorEstimate: number;
  readonly warnings: readonly GeometryWarning[];
  readonly millis: number;
}
