/** One line of the shopping list, and what is left of the parts the operator owns. */
import type { PartOnHand } from '../design/answers';
import type { Data, Part, Said } from './finding';

export const say = (code: string, data: Data = {}): Said => ({ code, data });

interface Line {
  readonly item: Said;
  readonly quantity: number;
  readonly unit?: Part['unit'];
  readonly have?: number;
  /** Where it is more than `have`. */
  readonly owned?: number;
  readonly for: Said;
  readonly or?: Said;
  readonly again?: boolean;
  readonly where: Part['where'];
}

/** `wire pvc-1.5mm2`, `capacitor 68 1`: the code of the item and what tells it from others of its kind. A weight does not. */
const idOf = ({ code, data: { weightKg: _how, ...what } }: Said): string =>
  [code, ...Object.values(what).filter((value) => value !== 0)].join(' ');

/** Metres are rounded up to whole ones, as they are sold; a part can never be had more often than it is asked for. */
export function partLine({
  item,
  quantity,
  unit = 'piece',
  have = 0,
  owned = have,
  for: place,
  or = say('no-substitute'),
  again = false,
  where,
}: Line): Part {
  const asked = Math.ceil(quantity - 1e-9);
  return {
    id: idOf(item),
    item,
    quantity: asked,
    unit,
    have: Math.min(asked, Math.floor(have + 1e-9)),
    owned: Math.floor(owned + 1e-9),
    for: place,
    substitute: or,
    again,
    where,
  };
}

/** What the operator owns, handed out once. */
export interface Drawer {
  /** Rings of this trade code, as many as are left and wanted. */
  takeRings(core: string, wanted: number): number;
  /** All rings of this trade code, taken or not. */
  rings(core: string): number;
  /** Metres of this wire, from all its drums together. */
  wireM(wire: string): number;
  /** The longest single piece of this line, m. */
  lineM(line: string): number;
}

export function drawerOf(onHand: readonly PartOnHand[]): Drawer {
  const rings = new Map<string, number>();
  for (const part of onHand) if (part.part === 'core') rings.set(part.core, (rings.get(part.core) ?? 0) + part.count);
  return {
    takeRings(core, wanted) {
      const taken = Math.min(wanted, rings.get(core) ?? 0);
      rings.set(core, (rings.get(core) ?? 0) - taken);
      return taken;
    },
    rings: (core) =>
      onHand.reduce((sum, part) => sum + (part.part === 'core' && part.core === core ? part.count : 0), 0),
    wireM: (wire) =>
      onHand.reduce((sum, part) => sum + (part.part === 'wire' && part.wire === wire ? part.lengthM : 0), 0),
    lineM: (line) =>
      Math.max(0, ...onHand.map((part) => (part.part === 'line' && part.line === line ? part.lengthM : 0))),
  };
}
