/** Parts of a plan as rows of a list: like parts for several devices together, grouped by where one buys them, in an order that never changes. */
import type { SavedPlan } from '../../design/saved-plan';
import type { Plan } from '../../plan/plan-schema';

type Part = Plan['parts'][number];

export interface PartRow extends Part {
  /** Stays the same when a length in the text changes with an answer. */
  readonly key: string;
}

export const shelves = ['wire-and-rope', 'electrical', 'radio', 'hardware', 'made'] as const;

/** Names of ticks are at most 200 long. */
const MOST = 150;

const keyOf = ({ item, where }: Part): string =>
  `${where} ${item.replace(/,? \u2066?[\d.,]+\u00a0(?:m|ft|in)\b.*$/, '')}`.slice(0, MOST);

export function partRows({ parts }: Plan): PartRow[] {
  const rows = new Map<string, PartRow>();
  for (const part of parts) {
    const key = `${keyOf(part)} ${part.unit}`;
    const known = rows.get(key);
    rows.set(key, known === undefined ? { ...part, key } : together(known, part));
  }
  return [...rows.values()];
}

/** Two lengths of one thing are told by their sum; the text of the first then loses its own length. */
function together(row: PartRow, part: Part): PartRow {
  const uses = row.for.split('; ');
  return {
    ...row,
    quantity: row.quantity + part.quantity,
    have: row.have + part.have,
    for: uses.includes(part.for) ? row.for : [...uses, part.for].join('; '),
  };
}

export const tickKey = (list: 'shop' | 'pack', row: PartRow): string => `${list}:${row.key}`;

/** Ticked by hand; else counted from the parts on hand (shopping only). */
export function isTicked(saved: SavedPlan, list: 'shop' | 'pack', row: PartRow): boolean {
  const mark = saved.ticks[tickKey(list, row)];
  if (mark !== undefined) return mark.on;
  return list === 'shop' && row.have >= row.quantity;
}
