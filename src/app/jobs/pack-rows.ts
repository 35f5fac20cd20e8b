/** What goes into the bag and comes back in it: not parts of boxes but the boxes that were made of them, and the tools of the day. */
import type { Plan } from '../../plan/plan-schema';
import { packedTools } from '../../words/en/raise-screen';
import { type ListRow, partRows } from './part-rows';

/** Kinds of parts that are in a box or on a cable by then. */
const builtIn: readonly string[] = [
  'ring',
  'winding-coax',
  'winding-wire',
  'capacitor',
  'box',
  'coax-socket',
  'wire-post',
  'coax-plug',
];

export function packRows(plan: Pick<Plan, 'parts' | 'chain'>): readonly ListRow[] {
  const loose = partRows(plan).filter(({ kind }) => !builtIn.includes(kind));
  return [...loose, ...made(plan), ...tools(plan)];
}

function made({ chain }: Pick<Plan, 'chain'>): readonly ListRow[] {
  const rows = new Map<string, ListRow>();
  for (const { device, ratio, name, build } of chain) {
    if (build === null) continue;
    const id = ['made', device, ...(ratio === null ? [] : [ratio])].join(' ');
    rows.set(id, { id, name, quantity: (rows.get(id)?.quantity ?? 0) + 1, unit: 'piece', where: 'made' });
  }
  return [...rows.values()];
}

/** Head and eyes are at risk where a line is thrown. */
const tools = ({ parts }: Pick<Plan, 'parts'>): readonly ListRow[] =>
  Object.entries(packedTools).flatMap(([tool, name]) =>
    tool === 'headgear' && !parts.some(({ kind }) => kind === 'throw-line')
      ? []
      : [{ id: `tool ${tool}`, name, quantity: 1, unit: 'piece', where: 'tools' }],
  );
