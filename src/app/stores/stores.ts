/** The app's stores, made once and handed to every screen. */

import { signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { type Db, openStores } from '../../storage/open';
import { askToKeep, type Keeping, keepingOf } from '../../storage/persistence';
import { createRecords } from '../../storage/records';
import { type StorageError, StorageError as StorageFault, storageErrorOf } from '../../storage/storage-error';
import { joinTabs, type Written } from '../../storage/tabs';
import { createFieldStore } from './field-store';
import { createLibrary } from './library';
import { createPartsStore } from './parts-store';
import type { createPhotoStore, PhotoStore } from './photo-store';
import { createPlanner } from './planner';
import type { Planning } from './planning';
import { createSaveLight } from './save-light';
import { createSettingsStore } from './settings-store';

/** Set while another tab with an older version keeps the database from opening. */
export const blockedByOtherTab = signal(false);

/** What starts the planning workers, fetched after the first screen; once for the page. */
let planning: Planning | null = null;
export async function fetchPlanning(): Promise<Planning> {
  const { createPlanning } = await import('./planning');
  planning ??= createPlanning();
  return planning;
}

export async function createStores() {
  const light = createSaveLight(Date.now);
  const keeping = signal<Keeping>('cannot-tell');
  const opened = await openOrSay(light.fail);
  const records = opened === null ? null : createRecords(opened);
  const manager = navigator.storage as StorageManager | undefined;

  const tabs = joinTabs((written) => void reread(written));
  const shared = { records, light, now: Date.now, newId: () => crypto.randomUUID(), tell: tabs.tell };
  const library = createLibrary({
    ...shared,
    onFirstSave: () => {
      void askToKeep(manager).then((answer) => {
        keeping.value = answer;
      });
    },
  });
  const settings = createSettingsStore(shared);
  const parts = createPartsStore(shared);
  let photos: PhotoStore | null = null;
  const field = createFieldStore(async () => (await fetchPlanning()).startStudy);
  const planner = createPlanner(async () => (await fetchPlanning()).makePlan, field.factsOf);

  function reread({ store, id }: Written): Promise<void> {
    if (store === 'plans') return library.reread(id);
    if (store === 'photos') return photos?.reread(id) ?? Promise.resolve();
    return store === 'onHand' ? parts.reread() : settings.reread();
  }

  await Promise.all([library.load(), settings.load(), parts.load()]).catch((error: unknown) =>
    light.fail(storageErrorOf(error)),
  );
  void keepingOf(manager).then((answer) => {
    keeping.value = answer;
  });
  return {
    light,
    keeping,
    library,
    settings,
    parts,
    planner,
    field,
    storageWorks: records !== null,
    /** Made by the first screen that shows any, so that the app's first screen does without. */
    photosBy(create: typeof createPhotoStore): PhotoStore {
      photos ??= create(shared);
      return photos;
    },
  };
}

async function openOrSay(fail: (error: StorageError) => void): Promise<Db | null> {
  try {
    const db = await openStores({
      onBlocked: () => {
        blockedByOtherTab.value = true;
      },
      onTakenOver: () => fail(new StorageFault('taken-over')),
      onLost: () => fail(new StorageFault('other', 'the browser closed the database')),
    });
    blockedByOtherTab.value = false;
    return db;
  } catch (error) {
    const { failure, detail } = storageErrorOf(error);
    // Private windows of some browsers refuse to open a database, with an error of no agreed name.
    fail(new StorageFault(failure === 'other' ? 'not-allowed' : failure, detail));
    return null;
  }
}

export type Stores = Awaited<ReturnType<typeof createStores>>;
export const StoresContext = createContext<Stores | null>(null);

export function useStores(): Stores {
  const stores = useContext(StoresContext);
  if (stores === null) throw new Error('a screen stands outside of the stores');
  return stores;
}
