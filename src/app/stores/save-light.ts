/** Tells whether the last answers are on disk. "Saved" is said only after the browser has confirmed the write. */
import { computed, signal } from '@preact/signals';
import { type StorageError, storageErrorOf } from '../../storage/storage-error';

export type SaveState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'writing' }
  | { readonly kind: 'saved'; readonly at: number }
  | { readonly kind: 'failed'; readonly error: StorageError };

export function createSaveLight(now: () => number) {
  const state = signal<SaveState>({ kind: 'idle' });
  return {
    state: computed(() => state.value),
    /** Runs one write. True when it is on disk. */
    async during(write: () => Promise<void>): Promise<boolean> {
      state.value = { kind: 'writing' };
      try {
        await write();
        state.value = { kind: 'saved', at: now() };
        return true;
      } catch (error) {
        state.value = { kind: 'failed', error: storageErrorOf(error) };
        return false;
      }
    },
    fail(error: StorageError): void {
      state.value = { kind: 'failed', error };
    },
  };
}
export type SaveLight = ReturnType<typeof createSaveLight>;
