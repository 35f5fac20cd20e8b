/** The database and the steps it has gone through. Records are kept as `unknown`: what comes out is parsed, always. */
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB, type StoreNames } from 'idb';

export interface Stores extends DBSchema {
  plans: { key: string; value: { id: string } };
  onHand: { key: string; value: { id: string } };
  /** One record, under the key `settings`. */
  settings: { key: string; value: object };
  /** Pictures stand apart from their plans, so that the list of plans is read without them. */
  photos: { key: string; value: { id: string; planId: string }; indexes: { 'by-plan': string } };
}
export type Db = IDBPDatabase<Stores>;
export type UpgradeTx = IDBPTransaction<Stores, StoreNames<Stores>[], 'versionchange'>;

export const databaseName = 'halyard';

/** Append only. The database's version is the number of steps, so it cannot be forgotten. */
export const steps: readonly ((db: Db, tx: UpgradeTx) => void)[] = [
  (db) => {
    db.createObjectStore('plans', { keyPath: 'id' });
    db.createObjectStore('onHand', { keyPath: 'id' });
    db.createObjectStore('settings');
  },
  (db) => void db.createObjectStore('photos', { keyPath: 'id' }).createIndex('by-plan', 'planId'),
];

export interface OpenEvents {
  /** An older version of the app is open in another tab and keeps the database. */
  onBlocked(): void;
  /** A newer version in another tab has asked for the database: this tab can no longer write. */
  onTakenOver(): void;
  /** The browser closed the database by itself. */
  onLost(): void;
}

export const openStores = (events: OpenEvents, name: string = databaseName): Promise<Db> =>
  openDB<Stores>(name, steps.length, {
    upgrade(db, oldVersion, _newVersion, tx) {
      for (const step of steps.slice(oldVersion)) step(db, tx); // await nothing else, or the transaction closes
    },
    blocked: () => events.onBlocked(),
    blocking: (_now, _next, event) => {
      (event.target as IDBDatabase).close(); // let the newer tab through
      events.onTakenOver();
    },
    terminated: () => events.onLost(),
  });
