/** The parts the operator owns. */
import { computed, signal } from '@preact/signals';
import type { PartOnHand } from '../../design/answers';
import { type OwnedPart, ownedPartVersion } from '../../design/owned-part';
import type { FoundPart, Records } from '../../storage/records';
import type { Written } from '../../storage/tabs';
import type { SaveLight } from './save-light';
import { savingTo } from './saving';

export interface PartsOptions {
  readonly records: Records | null;
  readonly light: SaveLight;
  readonly now: () => number;
  readonly newId: () => string;
  readonly tell: (written: Written) => void;
}

export function createPartsStore({ records, light, now, newId, tell }: PartsOptions) {
  const found = signal<readonly FoundPart[]>([]);
  const save = savingTo(records, light);

  async function load(): Promise<void> {
    if (records !== null) found.value = await records.parts();
  }

  async function put(owned: OwnedPart): Promise<void> {
    found.value = [
      ...found.value.filter(({ id }) => id !== owned.id),
      { id: owned.id, read: { kind: 'good', record: owned } },
    ];
    await save((to) => to.putPart(owned));
    tell({ store: 'onHand', id: owned.id });
  }

  return {
    /** In the order they were added. */
    parts: computed(() =>
      found.value
        .flatMap(({ read }) => (read.kind === 'good' ? [read.record] : []))
        .sort((a, b) => a.addedAt - b.addedAt),
    ),
    unreadable: computed(() => found.value.filter(({ read }) => read.kind !== 'good')),
    load,
    reread: load,
    put,
    add: (part: PartOnHand): Promise<void> => put({ version: ownedPartVersion, id: newId(), addedAt: now(), part }),

    async remove(id: string): Promise<void> {
      found.value = found.value.filter((each) => each.id !== id);
      await save((to) => to.removePart(id));
      tell({ store: 'onHand', id });
    },
  };
}
