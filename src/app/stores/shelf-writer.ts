/** Writes what waits on the shelf, one plan after the other. */
import { StorageError } from '../../storage/storage-error';
import type { Save } from './saving';
import type { Shelf } from './shelf';

export function createShelfWriter(shelf: Shelf, save: Save, onWritten: (id: string) => void) {
  let writing: Promise<void> | null = null;

  async function writeAll(): Promise<void> {
    for (let next = shelf.nextWaiting(); next !== null; next = shelf.nextWaiting()) {
      const { id, base, edits } = next;
      const done = await save(async (to) => {
        if (base === undefined) throw new StorageError('other', 'no such plan');
        shelf.written(await to.edit(base, edits), edits.length);
      });
      if (!done) return; // kept waiting; the next edit or "try again" writes it
      onWritten(id);
    }
  }

  /** Resolves when nothing waits, or when a write failed. */
  return function flush(): Promise<void> {
    writing ??= writeAll().finally(() => {
      writing = null;
    });
    return writing;
  };
}
