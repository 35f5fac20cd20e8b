/** Pictures of how antennas hung, read when a plan that may have some is opened. The last one taken away can be put back. */
import { computed, signal } from '@preact/signals';
import type { Photo } from '../../design/photo';
import type { Records } from '../../storage/records';
import type { Written } from '../../storage/tabs';
import type { SaveLight } from './save-light';
import { savingTo } from './saving';

interface PhotoOptions {
  readonly records: Records | null;
  readonly light: SaveLight;
  readonly tell: (written: Written) => void;
}

export function createPhotoStore({ records, light, tell }: PhotoOptions) {
  const found = signal<ReadonlyMap<string, readonly Photo[]>>(new Map());
  const save = savingTo(records, light);

  async function load(planId: string): Promise<void> {
    if (records !== null) found.value = new Map(found.value).set(planId, await records.photosOf(planId));
  }

  /** Shown only once it is on disk. */
  async function write(photo: Photo, act: (to: Records) => Promise<void>): Promise<boolean> {
    if (!(await save(act))) return false;
    await load(photo.planId);
    tell({ store: 'photos', id: photo.planId });
    return true;
  }

  return {
    of: (planId: string): readonly Photo[] => found.value.get(planId) ?? [],
    load,
    reread: async (planId: string): Promise<void> => {
      if (found.value.has(planId)) await load(planId);
    },
    removed: computed(() => removed.value),
    add: (photo: Photo): Promise<boolean> => write(photo, (to) => to.putPhoto(photo)),
    async remove(photo: Photo): Promise<void> {
      if (await write(photo, (to) => to.removePhoto(photo.id))) removed.value = photo;
    },
    async putBack(): Promise<void> {
      const photo = removed.value;
      if (photo !== null && (await write(photo, (to) => to.putPhoto(photo)))) removed.value = null;
    },
  };
}
