import { describe, expect, test } from 'vitest';
import { createPhotoStore } from '../../../src/app/stores/photo-store';
import { createSaveLight } from '../../../src/app/stores/save-light';
import type { FoundPhotos, Records } from '../../../src/storage/records';
import { StorageError } from '../../../src/storage/storage-error';

function setUp(photosOf: () => Promise<FoundPhotos>) {
  const light = createSaveLight(() => 1);
  const records = { photosOf } as unknown as Records;
  return { light, photos: createPhotoStore({ records, light, now: () => 1, tell: () => undefined }) };
}

describe('pictures of a plan', () => {
  test('that could not be read are counted', async () => {
    const { light, photos } = setUp(async () => ({ photos: [], unreadable: 3 }));
    expect(photos.of('hill')).toEqual({ photos: [], unreadable: 0 });
    await photos.load('hill');
    expect(photos.of('hill').unreadable).toBe(3);
    expect(light.state.value.kind).toBe('idle');
  });

  test('tell it like other storage errors when the storage cannot be read at all', async () => {
    const { light, photos } = setUp(() => Promise.reject(new StorageError('taken-over')));
    await photos.load('hill');
    expect(light.state.value).toMatchObject({ kind: 'failed', error: { failure: 'taken-over' } });
  });
});
