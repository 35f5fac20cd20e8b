/** Parts of a plan as rows of a list: like parts for several devices together, grouped by where one buys them, in an order that never changes. */
import type { SavedPlan } from '../../design/saved-plan';
import type { Plan } from '../../plan/plan-schema';
import { shopScreen } from '../../words/en/shop-screen';
import type { Say } from '../say';

type Part = Plan['parts'][number];

/** What a row is for, and the places of that: a choke along the line and one at the radio are one use in two places. */
interface Use {
  readonly use: string;
  readonly places: readonly string[];
}

export const shelves = ['wire-and-rope', 'electrical', 'radio', 'hardware', 'made', 'tools'] as const;

/** One thing to tick, and how much of it. */
export interface ListRow extends Pick<Part, 'id' | 'name' | 'quantity' | 'unit'> {
  readonly where: (typeof shelves)[number];
}

export interface PartRow extends Omit<Part, 'item' | 'for' | 'use'> {
  readonly uses: readonly Use[];
}

export function partRows({ parts }: Pick<Plan, 'parts'>): PartRow[] {
  const rows = new Map<string, PartRow>();
  for (const { item: _withLength, for: place, use, ...part } of parts) {
    const row = { ...part, uses: [{ use, places: [place] }] };
    const known = rows.get(part.id);
    rows.set(part.id, known === undefined ? row : together(known, row));
  }
  return [...rows.values()];
}

const together = (row: PartRow, more: PartRow): PartRow => ({
  ...row,
  quantity: row.quantity + more.quantity,
  have: row.have + more.have,
  owned: Math.max(row.owned, more.owned),
  uses: more.uses.reduce(withUse, row.uses),
});

function withUse(uses: readonly Use[], { use, places }: Use): readonly Use[] {
  const known = uses.find((each) => each.use === use);
  if (known === undefined) return [...uses, { use, places }];
  return uses.map((each) => (each === known ? { use, places: [...new Set([...known.places, ...places])] } : each));
}

/** "49:1 transformer, 2 × 1:1 choke". */
export const usesText = ({ uses }: PartRow, say: Say): string =>
  uses.map(({ use, places }) => say(shopScreen.useOf, { use, count: places.length })).join(', ');

/** Lists that are ticked: bought, in the bag, back in the bag. */
export type TickList = 'shop' | 'pack' | 'leave';

export const tickKey = (list: TickList, { id }: ListRow): string => `${list}:${id}`;

export const isPacked = (saved: SavedPlan, list: TickList, row: ListRow): boolean =>
  saved.ticks[tickKey(list, row)]?.on === true;

/** Ticked by hand; else counted from the parts on hand. */
export const isBought = (saved: SavedPlan, row: PartRow): boolean =>
  saved.ticks[tickKey('shop', row)]?.on ?? row.have >= row.quantity;
