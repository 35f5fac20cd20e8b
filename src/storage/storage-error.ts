/** Why a write did not happen, as a code that words/ turns into a sentence. */
export type StorageFailure = 'full' | 'not-allowed' | 'taken-over' | 'record-newer' | 'record-broken' | 'other';

export class StorageError extends Error {
  override readonly name = 'StorageError';
  constructor(
    readonly failure: StorageFailure,
    readonly detail = '',
  ) {
    super(`${failure} ${detail}`);
  }
}

/** What the browser's own error means. Names are those of the IndexedDB standard. */
export function storageErrorOf(error: unknown): StorageError {
  if (error instanceof StorageError) return error;
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  const detail = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  switch (name) {
    case 'QuotaExceededError':
      return new StorageError('full', detail);
    case 'SecurityError':
    case 'NotAllowedError':
      return new StorageError('not-allowed', detail);
    case 'InvalidStateError':
    case 'VersionError':
      return new StorageError('taken-over', detail);
    default:
      return new StorageError('other', detail);
  }
}

/** Does it; what fails is said as the fault it means. */
export async function inWords<T>(act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    throw storageErrorOf(error);
  }
}
