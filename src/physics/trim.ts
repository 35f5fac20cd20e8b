/**
 * From a measured dip to what is folded back or let out.
 *
 *   new length = old length · measured f / wanted f        so one per cent too low in frequency is one per cent too long
 *
 * Holds for any resonance of the same wire, since each goes as 1 / length; slope, height and nearness of the ends change little on a small
 * step. Half of what comes out is taken, then one measures again: the site makes the rule inexact, and wire once cut is short.
 * Source: handbook rule of proportion; the half step is common practice.
 */

/** Wire that brings the dip to the wanted frequency, m. */
export const lengthForDip = (wireM: number, measuredMHz: number, wantedMHz: number): number =>
  (wireM * measuredMHz) / wantedMHz;

/** Where a dip goes when the wire changes, MHz. */
export const dipForLength = (dipMHz: number, wireM: number, newWireM: number): number => (dipMHz * wireM) / newWireM;

export interface TrimStep {
  /** The whole correction worked out, m: below zero to shorten. */
  readonly wholeM: number;
  /** What to do now, m: half of it, or all of it where half could not be folded exactly. */
  readonly nowM: number;
  readonly newWireM: number;
  readonly dipAfterMHz: number;
}

/** Less than this, m, cannot be folded exactly: a knot takes as much. */
const LEAST_FOLD_M = 0.02;

export function trimStep(wireM: number, measuredMHz: number, wantedMHz: number): TrimStep {
  const wholeM = lengthForDip(wireM, measuredMHz, wantedMHz) - wireM;
  const nowM = Math.abs(wholeM) < 2 * LEAST_FOLD_M ? wholeM : wholeM / 2;
  const newWireM = wireM + nowM;
  return { wholeM, nowM, newWireM, dipAfterMHz: dipForLength(measuredMHz, wireM, newWireM) };
}

/** `stop`: nothing is gained by going on. `may-stop`: within what a site moves a dip anyway. */
export type TrimVerdict = 'stop' | 'may-stop' | 'go-on';

/** Dip this near to the wanted frequency, as part of it: done. The same rule stands in the cut list. */
const DONE = 0.01;
/** Within what weather, height and ground move a dip. Common practice. */
const SITE_MOVES = 0.03;
const GOOD_SWR = 2;

export interface Measured {
  readonly dipMHz: number;
  readonly wantedMHz: number;
  /** SWR at the wanted frequency, when it was read. */
  readonly swr?: number | undefined;
}

export function trimVerdict({ dipMHz, wantedMHz, swr }: Measured): TrimVerdict {
  const off = Math.abs(dipMHz / wantedMHz - 1);
  if (off <= DONE || (swr !== undefined && swr <= GOOD_SWR)) return 'stop';
  return off <= SITE_MOVES ? 'may-stop' : 'go-on';
}
