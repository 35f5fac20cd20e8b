/**
 * Reading and writing kept records. Every write is one transaction that reads what stands there, changes it and puts it back, and counts as
 * done only when the browser says it is on disk.
 */
import type { StoreNames } from 'idb';
import type { OwnedPart } from '../design/owned-part';
import type { Photo } from '../design/photo';
import { applyEdit, type PlanEdit } from '../design/plan-edit';
import { SavedPlan, savedPlanVersion } from '../design/saved-plan';
import { noSettings, type Settings } from '../design/settings';
import { readOwnedPart, readSettings } from './histories';
import type { Db, Stores } from './open';
import { type ReadRecord, readRecord, versionOf } from './read-record';
import { inWords, StorageError } from './storage-error';

const strict = { durability: 'strict' } as const;
const settingsKey = 'settings';
type StoreName = StoreNames<Stores>;

/** A plan as it was found, with its key. */
export interface FoundPlan {
  readonly id: string;
  readonly read: ReadRecord<SavedPlan>;
}

export interface FoundPart {
  readonly id: string;
  readonly read: ReadRecord<OwnedPart>;
}

/** Pictures of a plan, the oldest first. */
export interface FoundPhotos {
  readonly photos: readonly Photo[];
  /** So many more are of a newer version or broken; they stay as they are. */
  readonly unreadable: number;
}

export interface Records {
  plans(): Promise<FoundPlan[]>;
  plan(id: string): Promise<FoundPlan | undefined>;
  /** Applies edits to what is stored now, starting from `fresh` when nothing is. Resolves with the record once it is on disk. */
  edit(fresh: SavedPlan, edits: readonly PlanEdit[]): Promise<SavedPlan>;
  /** Puts whole new records; refuses an id that is taken. */
  add(plans: readonly SavedPlan[]): Promise<void>;
  /** Removes a plan and its pictures for good. */
  destroy(id: string): Promise<void>;
  parts(): Promise<FoundPart[]>;
  putPart(part: OwnedPart): Promise<void>;
  removePart(id: string): Promise<void>;
  settings(): Promise<ReadRecord<Settings>>;
  putSettings(settings: Settings): Promise<void>;
  photosOf(planId: string): Promise<FoundPhotos>;
  putPhoto(photo: Photo): Promise<void>;
  removePhoto(id: string): Promise<void>;
}

export function createRecords(db: Db): Records {
  return {
    plans: async () => {
      const found = await db.getAll('plans');
      const read = await planReader(found);
      return found.map((raw) => ({ id: raw.id, read: read(raw) }));
    },
    plan: async (id) => {
      const raw = await db.get('plans', id);
      return raw === undefined ? undefined : { id, read: (await planReader([raw]))(raw) };
    },
    edit: (fresh, edits) => inWords(() => editPlan(db, fresh, edits)),
    add: (plans) => inWords(() => addPlans(db, plans)),
    destroy: (id) => inWords(() => destroyPlan(db, id)),
    parts: async () => (await db.getAll('onHand')).map((raw) => ({ id: raw.id, read: readOwnedPart(raw) })),
    putPart: (part) => inWords(() => write(db, 'onHand', (store) => store.put(part))),
    removePart: (id) => inWords(() => write(db, 'onHand', (store) => store.delete(id))),
    settings: async () => {
      const raw = await db.get('settings', settingsKey);
      return raw === undefined ? { kind: 'good', record: noSettings } : readSettings(raw);
    },
    putSettings: (settings) => inWords(() => write(db, 'settings', (store) => store.put(settings, settingsKey))),
    photosOf: async (planId) => {
      const { readPhoto } = await import('./photo-history');
      const found = (await db.getAllFromIndex('photos', 'by-plan', planId)).map(readPhoto);
      const photos = found.flatMap((read) => (read.kind === 'good' ? [read.record] : []));
      return { photos: photos.sort((a, b) => a.at - b.at), unreadable: found.length - photos.length };
    },
    putPhoto: (photo) => inWords(() => write(db, 'photos', (store) => store.put(photo))),
    removePhoto: (id) => inWords(() => write(db, 'photos', (store) => store.delete(id))),
  };
}

type PlanReader = (raw: unknown) => ReadRecord<SavedPlan>;
const readNewPlan: PlanReader = (raw) => readRecord(raw, SavedPlan, [], savedPlanVersion);
const isOldPlan = (raw: unknown): boolean => (versionOf(raw) ?? savedPlanVersion) < savedPlanVersion;

/** Reads these plans; what older ones are brought up with is fetched when there is one. */
async function planReader(plans: readonly unknown[]): Promise<PlanReader> {
  return plans.some(isOldPlan) ? (await import('./plan-history')).readSavedPlan : readNewPlan;
}

async function editPlan(
  db: Db,
  fresh: SavedPlan,
  edits: readonly PlanEdit[],
  readPlan: PlanReader = readNewPlan,
): Promise<SavedPlan> {
  const tx = db.transaction('plans', 'readwrite', strict);
  const raw = await tx.store.get(fresh.id);
  const isUnread = readPlan === readNewPlan && isOldPlan(raw);
  const read = raw === undefined ? undefined : readPlan(raw);
  if (read !== undefined && read.kind !== 'good') {
    tx.abort();
    await tx.done.catch(() => undefined);
    // Fetched between two transactions: waiting for it within one would end it.
    if (isUnread) return editPlan(db, fresh, edits, await planReader([raw]));
    throw new StorageError(read.kind === 'newer' ? 'record-newer' : 'record-broken');
  }
  const plan = edits.reduce(applyEdit, read?.record ?? fresh);
  await tx.store.put(plan);
  await tx.done;
  return plan;
}

async function addPlans(db: Db, plans: readonly SavedPlan[]): Promise<void> {
  const tx = db.transaction('plans', 'readwrite', strict);
  await Promise.all([...plans.map((plan) => tx.store.add(plan)), tx.done]);
}

async function destroyPlan(db: Db, id: string): Promise<void> {
  const tx = db.transaction(['plans', 'photos'], 'readwrite', strict);
  const photos = await tx.objectStore('photos').index('by-plan').getAllKeys(id);
  await Promise.all([
    tx.objectStore('plans').delete(id),
    ...photos.map((photo) => tx.objectStore('photos').delete(photo)),
    tx.done,
  ]);
}

/** One write in a transaction of its own. */
async function write<S extends StoreName>(
  db: Db,
  name: S,
  act: (store: ReturnType<typeof openStore<S>>) => Promise<unknown>,
): Promise<void> {
  const store = openStore(db, name);
  await act(store);
  await store.transaction.done;
}

const openStore = <S extends StoreName>(db: Db, name: S) => db.transaction(name, 'readwrite', strict).objectStore(name);
