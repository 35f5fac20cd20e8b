/**
 * What is needed to lay an antenna out in space: answers and lengths, no rules. The feed point stands over the origin; the radiator runs
 * along x, coax that leaves at a right angle along +y. Metres, z up.
 *
 *        z                      arm to −x  ──── F ──── arm to +x
 *        │   y                                  │ coax: down to the run height,
 *        │  ╱                                   └───────┐ along, up to 1 m at the entry,
 *        │ ╱                                            entry ── radio at 1 m
 *        └──────── x
 */
import type { FeedPosition, HouseEarth, Radiator, ReturnPath } from '../design/choices';

export interface Conductor {
  readonly radiusM: number;
  readonly conductivitySPerM: number;
  readonly insulation: { readonly epsilonR: number; readonly thicknessM: number } | null;
}

export interface CoaxRun {
  readonly lengthM: number;
  /** Outside radius of the braid. */
  readonly shieldRadiusM: number;
  readonly route: 'square' | 'along';
  readonly runHeightM: number;
  /** Along the coax from the feed point to the building entry or the operating place. */
  readonly entryDistanceM: number;
  readonly houseEarth: HouseEarth;
}

/** A place in each leg where plugs join it or part it. */
export interface WireLink {
  /** Along the leg from the feed point, m. */
  readonly atM: number;
  /** Wire across it when closed, gap when open, m. */
  readonly lengthM: number;
  readonly open: boolean;
}

export interface Layout {
  readonly radiator: Radiator;
  readonly fedAt: FeedPosition;
  readonly heightM: number;
  readonly endHeightM: number;
  /** Rise over length at which a leg comes to its end, at most: one too short for that ends higher or lower. */
  readonly endSlope: number;
  readonly supportHeightM: number;
  /** Conductor length of the longest radiator: both legs, once round a loop, one wire of a folded dipole. */
  readonly radiatorM: number;
  /** Shorter arm as part of the whole; 0.5 in the middle. */
  readonly feedFraction: number;
  /** Upright part of an inverted-L. */
  readonly riseM: number;
  /** Whole lengths of further pairs of legs on the same feed point. */
  readonly furtherPairsM: readonly number[];
  /** Links in each leg, the innermost first; none in most wires. */
  readonly links: readonly WireLink[];
  readonly loopShape: 'square' | 'triangle';
  readonly loopPlane: 'upright' | 'flat';
  readonly wire: Conductor;
  readonly returnPath: ReturnPath;
  readonly radials: { readonly count: number; readonly lengthM: number } | null;
  readonly counterpoisesM: readonly number[];
  /** A voltage-type transformer holds the shield at the middle of the gap. */
  readonly shieldAtMidGap: boolean;
  readonly coax: CoaxRun | null;
}

export type Vector = readonly [number, number, number];
export const plus = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];
export const distance = (a: Vector, b: Vector): number => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);

/** Lowest height at which a wire is laid: over soil none may touch the ground surface. */
export const GROUND_WIRE_M = 0.05;
