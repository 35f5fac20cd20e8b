/**
 * One shopping list for several plans. A row stands for what every plan needs of one thing, and keeps its ticks in the plans themselves: what is
 * ticked here is ticked in each plan's own list, whichever plans are shopped for together later. What is on hand serves one plan after the other
 * and nothing twice; of metres a plan gets all it needs or none, since nobody splices. What is used again is got once, for the plan that asks most.
 */
import type { SavedPlan } from '../../design/saved-plan';
import { shopScreen } from '../../words/en/shop-screen';
import type { Say } from '../say';
import { isBought, type PartRow, tickKey, usesText } from './part-rows';

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
    for (const row of rows) shares.set(row.id, [...(shares.get(row.id) ?? []), { saved, name, row }]);
  return [...shares.values()].flatMap(merged);
}

function merged(of: readonly Share[]): MergedRow[] {
  const [first] = of;
  if (first === undefined) return [];
  if (first.row.again) {
    const most = of.reduce((a, b) => (b.row.quantity > a.row.quantity ? b : a));
    return [{ ...most.row, shares: of }];
  }
  const given = handOut(of);
  const sum = (value: (row: PartRow) => number): number => given.reduce((total, { row }) => total + value(row), 0);
  return [{ ...first.row, quantity: sum(({ quantity }) => quantity), have: sum(({ have }) => have), shares: given }];
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

/** What a row is for: in one plan its uses, in several which of them takes how much of it. */
export function sharesText({ again, unit, shares }: MergedRow, isForSeveral: boolean, say: Say): string {
  if (!isForSeveral) return shares.map(({ row }) => usesText(row, say)).join('; ');
  if (again && shares.length > 1) return say(shopScreen.oneForAll);
  if (shares.length === 1) return shares.map(({ name, row }) => `${name}: ${usesText(row, say)}`).join('; ');
  const much = ({ quantity }: PartRow): string => (unit === 'metre' ? say.format.length(quantity) : String(quantity));
  return shares.map(({ name, row }) => say(shopScreen.share, { name, much: much(row) })).join('; ');
}

export const isMergedBought = ({ shares }: MergedRow): boolean =>
  shares.every(({ saved, row }) => isBought(saved, row));

export interface Tick {
  readonly planId: string;
  readonly key: string;
  readonly on: boolean;
}

/** A tick in every plan that the row is for; what stands there already is left as it is. */
export const ticksOf = ({ shares }: MergedRow, on: boolean): Tick[] =>
  shares
    .filter(({ saved, row }) => isBought(saved, row) !== on)
    .map(({ saved, row }) => ({ planId: saved.id, key: tickKey('shop', row), on }));

/** Kept with the plan that is shopped from: whether another is shopped for with it. */
export const withKey = (otherId: string): string => `with:${otherId}`;
