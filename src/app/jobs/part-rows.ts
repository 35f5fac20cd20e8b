/** Parts of a plan as rows of a list: like parts for several devices together, grouped by where one buys them, in an order that never changes. */
import type { SavedPlan } from '../../design/saved-plan';
import type { Plan } from '../../plan/plan-schema';
import type { Format } from '../../words/format';

type Part = Plan['parts'][number];

export interface PartRow extends Part {
  /** Stays the same when a length in the text changes with an answer. */
  readonly key: string;
  /** Several lengths of one thing: told by their sum. */
  readonly isSum: boolean;
}

export const shelves = ['wire-and-rope', 'electrical', 'radio', 'hardware', 'made'] as const;

/** Names of ticks are at most 200 long. */
const MOST = 150;

/** A length in an item's text, with its other unit. */
const lengthInText = /,? [\d.,]+\u00a0(?:m|ft|in)\b.*$/;

const keyOf = ({ item, where, unit }: Part): string =>
  `${`${where} ${item.replace(lengthInText, '')}`.slice(0, MOST)} ${unit}`;

export function partRows({ parts }: Pick<Plan, 'parts'>): PartRow[] {
  const rows = new Map<string, PartRow>();
  for (const part of parts) {
    const key = keyOf(part);
    const known = rows.get(key);
    rows.set(key, known === undefined ? { ...part, key, isSum: false } : together(known, part));
  }
  return [...rows.values()];
}

function together(row: PartRow, part: Part): PartRow {
  const uses = row.for.split('; ');
  return {
    ...row,
    isSum: row.isSum || lengthInText.test(row.item),
    quantity: row.quantity + part.quantity,
    have: row.have + part.have,
    owned: Math.max(row.owned, part.owned),
    for: uses.includes(part.for) ? row.for : [...uses, part.for].join('; '),
  };
}

/** What the row is called; the text of one length does for no sum. */
export const itemText = ({ item, isSum, unit, quantity }: PartRow, format: Format): string =>
  isSum && unit === 'metre' ? `${item.replace(lengthInText, '')}, ${format.length(quantity)}` : item;

export const tickKey = (list: 'shop' | 'pack', row: PartRow): string => `${list}:${row.key}`;

/** Ticked by hand; else counted from the parts on hand (shopping only). */
export function isTicked(saved: SavedPlan, list: 'shop' | 'pack', row: PartRow): boolean {
  const mark = saved.ticks[tickKey(list, row)];
  if (mark !== undefined) return mark.on;
  return list === 'shop' && row.have >= row.quantity;
}
