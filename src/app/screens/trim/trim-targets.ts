/**
 * What can be trimmed on a plan: for each band with a dip of its own, the wire that makes it, its ends, and where its dip belongs. There is one
 * aim to a band, that of the plan and its cut list: on a wire for several bands it lies beside where one works, so that all dips come right with
 * one length.
 */
import { type Dimensions, dimensionsOf } from '../../../advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../../advice/facts';
import { LINK_M, linkedLegs } from '../../../advice/wire-links';
import type { Band } from '../../../catalog/band-ids';
import type { BandEdges } from '../../../catalog/bands';
import type { Answers } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { solvedIn } from '../../../plan/solved-in';

export interface TrimTarget {
  readonly band: Band;
  readonly aimMHz: number;
  /** Where the operator works in the band, MHz. */
  readonly workMHz: number;
  readonly edgesMHz: BandEdges;
  /** Wires are told apart by name: bands on one wire move together. */
  readonly wire: string;
  /** As planned, m: both legs together; of a linked wire the pieces that this band adds. */
  readonly plannedM: number;
  /** Wires that this one goes on from, the innermost first, and what the closed links between add, m: the band's dip is that of all together. */
  readonly inner: readonly string[];
  readonly linksM: number;
  /** It ends in a link, where its piece is folded. */
  readonly atLink: boolean;
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
  if (facts.system === 'linked-dipole') return linkedTargets(facts, dimensions);
  const { radiator, harmonics, feedFraction } = dimensions;
  const [lowest] = facts.bands;
  const bands = harmonics.length > 0 ? harmonics : [{ band: lowest.band, resonanceMHz: lowest.focusMHz }];
  const oneEnd = ['end-fed-half-wave', 'quarter-wave-vertical', 'inverted-l', 'full-wave-loop'].includes(facts.system);
  return bands.flatMap(({ band, resonanceMHz }) =>
    target(facts, band, {
      aimMHz: resonanceMHz,
      wire: 'wire',
      plannedM: radiator.metres,
      ...byItself,
      ends: oneEnd ? 1 : 2,
      shortShare: facts.system === 'off-centre-fed' ? feedFraction : null,
    }),
  );
}

/** A wire that goes on from no other. */
const byItself = { inner: [], linksM: 0, atLink: false } as const;
const wireOf = (band: Band): string => `wire-${band}`;

function pairTargets(facts: Facts, { pieces }: Dimensions): readonly TrimTarget[] {
  const pairs = pieces.filter(({ piece }) => piece === 'leg');
  return pairs.flatMap(({ band, length }) =>
    band === null
      ? []
      : target(facts, band, {
          wire: wireOf(band),
          plannedM: 2 * length.metres,
          ...byItself,
          ends: 2,
          shortShare: null,
        }),
  );
}

/** The highest band first, as they are trimmed: its piece is part of every lower band's wire. */
function linkedTargets(facts: Facts, { pieces }: Dimensions): readonly TrimTarget[] {
  const bands = linkedLegs({ pieces }).map(({ band }) => band);
  return bands.flatMap((band, index) => {
    const piece = pieces.find(({ piece: id, band: own }) => id === 'leg-piece' && own === band);
    return target(facts, band, {
      wire: wireOf(band),
      plannedM: 2 * (piece?.length.metres ?? 0),
      inner: bands.slice(0, index).map(wireOf),
      linksM: 2 * LINK_M * index,
      atLink: index < bands.length - 1,
      ends: 2,
      shortShare: null,
    });
  });
}

type Rest = Omit<TrimTarget, 'band' | 'aimMHz' | 'workMHz' | 'edgesMHz'> & { readonly aimMHz?: number };

function target(facts: Facts, band: Band, rest: Rest): TrimTarget[] {
  const at = facts.bands.find((each) => each.band === band);
  return at === undefined ? [] : [{ band, aimMHz: at.focusMHz, workMHz: at.focusMHz, edgesMHz: at.edgesMHz, ...rest }];
}
