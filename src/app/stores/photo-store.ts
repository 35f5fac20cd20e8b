/** Pictures of how antennas hung, read when a plan that may have some is opened. One taken away stays on disk until it is deleted for good. */
import { signal } from '@preact/signals';
import type { Photo } from '../../design/photo';
import type { FoundPhotos, Records } from '../../storage/records';
import { storageErrorOf } from '../../storage/storage-error';
import type { Written } from '../../storage/tabs';
import type { SaveLight } from './save-light';
import { savingTo } from './saving';

interface PhotoOptions {
  readonly records: Records | null;
  readonly light: SaveLight;
  readonly now: () => number;
  readonly tell: (written: Written) => void;
}

const none: FoundPhotos = { photos: [], unreadable: 0 };

export function createPhotoStore({ records, light, now, tell }: PhotoOptions) {
  const found = signal<ReadonlyMap<string, FoundPhotos>>(new Map());
  const save = savingTo(records, light);

  async function load(planId: string): Promise<void> {
    if (records === null) return;
    try {
      const photos = await records.photosOf(planId);
      found.value = new Map(found.value).set(planId, photos);
    } catch (error) {
      light.fail(storageErrorOf(error));
    }
  }

  /** Shown only once it is on disk. */
  async function write(photo: Photo, act: (to: Records) => Promise<void>): Promise<boolean> {
    if (!(await save(act))) return false;
    await load(photo.planId);
    tell({ store: 'photos', id: photo.planId });
    return true;
  }

  const put = (photo: Photo): Promise<boolean> => write(photo, (to) => to.putPhoto(photo));

  return {
    /** Those taken away too. */
    of: (planId: string): FoundPhotos => found.value.get(planId) ?? none,
    load,
    reread: async (planId: string): Promise<void> => {
      if (found.value.has(planId)) await load(planId);
    },
    add: put,
    takeAway: (photo: Photo): Promise<boolean> => put({ ...photo, takenAwayAt: now() }),
    putBack: (photo: Photo): Promise<boolean> => put({ ...photo, takenAwayAt: null }),
    deleteForGood: (photo: Photo): Promise<boolean> => write(photo, (to) => to.removePhoto(photo.id)),
  };
}

export type PhotoStore = ReturnType<typeof createPhotoStore>;
