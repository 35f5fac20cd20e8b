/**
 * One shopping list for several plans. A row stands for what every plan needs of one thing, and keeps its ticks in the plans themselves: what is
 * ticked here is ticked in each plan's own list, whichever plans are shopped for together later. What is on hand serves one plan after the other
 * and nothing twice; of metres a plan gets all it needs or none, since nobody splices.
 */
import type { SavedPlan } from '../../design/saved-plan';
import { isTicked, type PartRow, tickKey } from './part-rows';

export interface PlanRows {
  readonly saved: SavedPlan;
  readonly name: string;
  readonly rows: readonly PartRow[];
}

interface Share {
  readonly saved: SavedPlan;
  readonly name: string;
  readonly row: PartRow;
}

export interface MergedRow extends PartRow {
  readonly shares: readonly Share[];
}

export function mergedRows(lists: readonly PlanRows[]): MergedRow[] {
  const shares = new Map<string, Share[]>();
  for (const { saved, name, rows } of lists)
    for (const row of rows) shares.set(row.key, [...(shares.get(row.key) ?? []), { saved, name, row }]);
  return [...shares.values()].flatMap((of) => merged(of, lists.length > 1));
}

function merged(of: readonly Share[], isForSeveral: boolean): MergedRow[] {
  const [first] = of;
  if (first === undefined) return [];
  const given = handOut(of);
  const sum = (value: (row: PartRow) => number): number => given.reduce((total, { row }) => total + value(row), 0);
  return [
    {
      ...first.row,
      isSum: first.row.isSum || of.length > 1,
      quantity: sum(({ quantity }) => quantity),
      have: sum(({ have }) => have),
      for: isForSeveral ? of.map(({ name, row }) => `${name}: ${row.for}`).join('; ') : first.row.for,
      shares: given,
    },
  ];
}

/** What is on hand, to one plan after the other. */
function handOut(of: readonly Share[]): Share[] {
  let left = Math.max(...of.map(({ row }) => row.owned));
  return of.map(({ saved, name, row }) => {
    const have = row.unit === 'metre' && row.have > left ? 0 : Math.min(row.have, Math.max(left, 0));
    left -= have;
    return { saved, name, row: { ...row, have } };
  });
}

export const isMergedTicked = ({ shares }: MergedRow, list: 'shop' | 'pack'): boolean =>
  shares.every(({ saved, row }) => isTicked(saved, list, row));

export interface Tick {
  readonly planId: string;
  readonly key: string;
  readonly on: boolean;
}

/** A tick in every plan that the row is for; what stands there already is left as it is. */
export const ticksOf = ({ shares }: MergedRow, list: 'shop' | 'pack', on: boolean): Tick[] =>
  shares
    .filter(({ saved, row }) => isTicked(saved, list, row) !== on)
    .map(({ saved, row }) => ({ planId: saved.id, key: tickKey(list, row), on }));

/** Kept with the plan that is shopped from: whether another is shopped for with it. */
export const withKey = (otherId: string): string => `with:${otherId}`;
