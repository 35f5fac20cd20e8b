/**
 * The shopping list as people count it: kinds of things to get, not lines of the list. What hangs on another thing (plugs on coax, posts and
 * winding wire on a box, weights on a rope) is no kind of its own, and what every drawer holds is none at all.
 */
import { isOpenWireLine } from '../catalog/line-ids';
import type { Plan } from './plan-schema';

type Part = Plan['parts'][number];

export type Thing =
  | 'wire'
  | 'insulators'
  | 'plugs'
  | 'coax'
  | 'open-wire'
  | 'transformer'
  | 'choke'
  | 'rings'
  | 'boxes'
  | 'tuner'
  | 'arrester'
  | 'rope'
  | 'pole';

const thingOf: Readonly<Record<string, Thing>> = {
  wire: 'wire',
  'end-insulator': 'insulators',
  'centre-insulator': 'insulators',
  spacer: 'insulators',
  'link-insulator': 'insulators',
  'link-plug': 'plugs',
  'device-transformer': 'transformer',
  'device-choke': 'choke',
  'device-tuner': 'tuner',
  ring: 'rings',
  box: 'boxes',
  'arrester-coax': 'arrester',
  'arrester-open-wire': 'arrester',
  rope: 'rope',
  'throw-line': 'rope',
  pole: 'pole',
};

/** Sold by the piece and told by number. */
const counted: readonly Thing[] = ['rings', 'boxes'];

export interface ToBuy {
  readonly thing: Thing;
  /** Null for what is told without a number. */
  readonly count: number | null;
}

export function thingsToBuy(plan: Pick<Plan, 'parts' | 'chain'>): readonly ToBuy[] {
  const found = new Map<Thing, number>();
  for (const part of plan.parts) {
    const thing = kindOf(part, plan);
    const missing = part.quantity - part.have;
    if (thing !== undefined && missing > 0) found.set(thing, (found.get(thing) ?? 0) + missing);
  }
  return [...found].map(([thing, missing]) => ({ thing, count: counted.includes(thing) ? missing : null }));
}

const kindOf = ({ kind }: Part, { chain }: Pick<Plan, 'chain'>): Thing | undefined => {
  if (kind !== 'line') return thingOf[kind];
  return chain.some(({ line }) => isOpenWireLine(line)) ? 'open-wire' : 'coax';
};
