/** What can be trimmed on a plan: for each band with a dip of its own, the wire that makes it, its ends, and which half-wave multiple it is. */
import { type Dimensions, dimensionsOf } from '../../../advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../../advice/facts';
import type { Band } from '../../../catalog/band-ids';
import type { BandEdges } from '../../../catalog/bands';
import type { Answers } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { solvedIn } from '../../../plan/solved-in';

export interface TrimTarget {
  readonly band: Band;
  readonly aimMHz: number;
  /** Where the plan lets the dip fall: off the aim where one wire serves several bands. */
  readonly plannedMHz: number;
  readonly edgesMHz: BandEdges;
  /** Half-waves on the wire; 1 where the wire is a quarter-wave or a loop. */
  readonly n: number;
  /** Wires are told apart by name: bands on one wire move together. */
  readonly wire: string;
  /** As planned, m: both legs together. */
  readonly plannedM: number;
  /** Ends that are folded alike; legs of unequal length share the step by `shortShare`. */
  readonly ends: 1 | 2;
  /** The short leg's part of the whole, for a wire fed off its centre. */
  readonly shortShare: number | null;
}

/** Empty when nothing is cut for a dip. */
export function trimTargets(answers: Answers, plan: Plan): readonly TrimTarget[] {
  if (answers.radiator === undefined || answers.fedAt === undefined) return [];
  if (!plan.steps.some(({ id }) => id === 'trim')) return [];
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return [];
  const dimensions = dimensionsOf(facts, solvedIn(plan));
  if (facts.system === 'parallel-dipoles') return pairTargets(facts, dimensions);
  const { radiator, harmonics, feedFraction } = dimensions;
  const [lowest] = facts.bands;
  const bands = harmonics.length > 0 ? harmonics : [{ band: lowest.band, n: 1, resonanceMHz: lowest.focusMHz }];
  const oneEnd = ['end-fed-half-wave', 'quarter-wave-vertical', 'inverted-l', 'full-wave-loop'].includes(facts.system);
  return bands.flatMap(({ band, n, resonanceMHz }) =>
    target(facts, band, {
      n,
      plannedMHz: resonanceMHz,
      wire: 'wire',
      plannedM: radiator.metres,
      ends: oneEnd ? 1 : 2,
      shortShare: facts.system === 'off-centre-fed' ? feedFraction : null,
    }),
  );
}

function pairTargets(facts: Facts, { pieces }: Dimensions): readonly TrimTarget[] {
  const pairs = pieces.filter(({ piece }) => piece === 'leg');
  return pairs.flatMap(({ band, length }) =>
    band === null
      ? []
      : target(facts, band, { n: 1, wire: `wire-${band}`, plannedM: 2 * length.metres, ends: 2, shortShare: null }),
  );
}

type Rest = Omit<TrimTarget, 'band' | 'aimMHz' | 'edgesMHz' | 'plannedMHz'> & { readonly plannedMHz?: number };

function target(facts: Facts, band: Band, rest: Rest): TrimTarget[] {
  const at = facts.bands.find((each) => each.band === band);
  return at === undefined
    ? []
    : [{ band, aimMHz: at.focusMHz, plannedMHz: at.focusMHz, edgesMHz: at.edgesMHz, ...rest }];
}
