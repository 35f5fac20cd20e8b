/**
 * How far every overhead line must be.
 *
 *   D = 2 · (support + free wire) + 6 m, rounded up to 1 m
 *
 * Twice the mast and antenna is the rule printed with antennas; 6 m more is what is asked where the line's voltage is not known, and nobody
 * with a plan in hand knows it. Free wire: the longest piece not tied at both ends while raising, at its cut length. Legs that go up joined
 * at their middle count as one piece; under an inverted V, whose middle is tied to the support, each leg swings alone.
 */
import type { Dimension } from '../base/working';
import { dimension, metresOf } from './dimension';
import type { Dimensions } from './dimensions';
import type { Facts } from './facts';
import type { Caution, Cut } from './finding';
import { hangsAs } from './hanging';
import { highestPointM } from './site-run';

const UNKNOWN_VOLTAGE_M = 6;

/** Pieces that are hoisted; the rest lies on the ground or is tied off as it is laid. */
const hoisted = /^(wire|leg|short-leg|long-leg|vertical|folded-conductor|radial)(-|$)/;
/** Pieces that links join to one leg. */
const joinedByLinks = /^leg-piece-/;

export function freeWireM(facts: Facts, dimensions: Dimensions, cuts: readonly Cut[]): number {
  const pieces = cuts.filter(({ piece }) => hoisted.test(piece));
  if (pieces.length === 0) return dimensions.radiator.metres; // the antenna is there: its whole length
  const legM = cuts.filter(({ piece }) => joinedByLinks.test(piece)).reduce((sum, { cutM }) => sum + cutM, 0);
  const longestM = Math.max(legM, ...pieces.map(({ cutM }) => cutM));
  return Math.max(longestM, joinedM(facts, cuts, legM));
}

/** Both legs of the longest pair, where they go up as one wire. */
function joinedM({ settled }: Facts, cuts: readonly Cut[], linkedLegM: number): number {
  if (hangsAs(settled) === 'inverted-v') return 0;
  const legs = cuts.filter(({ piece }) => /leg/.test(piece));
  const pairs = legs.filter(({ count }) => count === 2).map(({ cutM }) => 2 * cutM);
  const halves = legs.filter(({ count }) => count === 1).map(({ cutM }) => cutM);
  return Math.max(2 * linkedLegM, ...pairs, halves.length === 2 ? halves.reduce((sum, cutM) => sum + cutM, 0) : 0);
}

export function powerLineDistance(facts: Facts, dimensions: Dimensions, cuts: readonly Cut[]): Dimension {
  const supportM = highestPointM(facts, dimensions);
  const wireM = freeWireM(facts, dimensions, cuts);
  return dimension(
    Math.ceil(2 * (supportM + wireM) + UNKNOWN_VOLTAGE_M - 1e-9),
    'ceil((2 * (support + freeWire) + unknownVoltage) / (1 m)) * 1 m',
    {
      support: metresOf(supportM, facts.answers.supportHeightM === undefined ? 'assumed' : 'answer'),
      freeWire: metresOf(wireM, 'solved'),
      unknownVoltage: metresOf(UNKNOWN_VOLTAGE_M, 'catalogue'),
    },
    'line-distance-rule',
  );
}

export type PowerLineVerdict = 'not-told' | 'clear' | 'stop' | 'ask-operator';

/** What the nearest overhead line means. `distanceM` is the one the cautions state; null in a plan with nothing outdoors. */
export function powerLineVerdict(
  { settled }: Facts,
  cautions: readonly Caution[],
): { readonly verdict: PowerLineVerdict; readonly distanceM: number | null; readonly nearestM: number | null } {
  const distanceM =
    cautions.find(({ id, distanceM: stated }) => id === 'fall-path' && stated !== null)?.distanceM ?? null;
  const nearestM = settled.nearestPowerLineM;
  if (distanceM === null || nearestM === null) return { verdict: 'not-told', distanceM, nearestM };
  if (nearestM >= distanceM) return { verdict: 'clear', distanceM, nearestM };
  return { verdict: settled.station === 'portable' ? 'stop' : 'ask-operator', distanceM, nearestM };
}
