/** One write to storage, with the light that tells of it; where storage cannot be used, a failed one. */
import type { Records } from '../../storage/records';
import { StorageError } from '../../storage/storage-error';
import type { SaveLight } from './save-light';

/** True when it is on disk. */
export type Save = (write: (to: Records) => Promise<void>) => Promise<boolean>;

export const savingTo =
  (records: Records | null, light: SaveLight): Save =>
  (write) =>
    light.during(async () => {
      if (records === null) throw new StorageError('not-allowed');
      await write(records);
    });
