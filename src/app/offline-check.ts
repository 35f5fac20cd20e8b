/**
 * Whether the app really opens with no signal: the service worker names every file of its build, the page looks each of them up in the
 * caches and opens it, and a record is written and read back.
 */
export interface OfflineCheck {
  /** Null when this browser keeps no app at all. */
  readonly files: { readonly count: number; readonly missing: number } | null;
  readonly wrote: boolean;
}

export async function checkOffline(): Promise<OfflineCheck> {
  const [files, wrote] = await Promise.all([keptFiles(), canWrite()]);
  return { files, wrote };
}

async function keptFiles(): Promise<OfflineCheck['files']> {
  const registration = await navigator.serviceWorker?.getRegistration();
  const worker = registration?.active;
  if (worker === undefined || worker === null) return null;
  const keys = await filesOf(worker);
  const kept = await Promise.all(keys.map(isKept));
  return { count: keys.length, missing: kept.filter((each) => !each).length };
}

function filesOf(worker: ServiceWorker): Promise<readonly string[]> {
  const { port1, port2 } = new MessageChannel();
  const answer = new Promise<readonly string[]>((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<readonly string[]>) => resolve(data);
  });
  worker.postMessage({ type: 'WHICH_FILES' }, [port2]);
  return answer;
}

/** An entry without a body is no file. */
async function isKept(key: string): Promise<boolean> {
  const response = await caches.match(key);
  return response !== undefined && (await response.arrayBuffer()).byteLength > 0;
}

const trial = 'halyard-trial';

async function canWrite(): Promise<boolean> {
  try {
    const db = await openTrial();
    const tx = db.transaction('records', 'readwrite', { durability: 'strict' });
    tx.objectStore('records').put('written', 'trial');
    await new Promise<void>((resolve, reject) => {
      tx.oncomplete = () => resolve();
      tx.onabort = () => reject(tx.error);
    });
    const read = await new Promise((resolve, reject) => {
      const request = db.transaction('records').objectStore('records').get('trial');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    db.close();
    indexedDB.deleteDatabase(trial);
    return read === 'written';
  } catch {
    return false; // no storage at all is an answer, not a fault
  }
}

const openTrial = (): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open(trial, 1);
    request.onupgradeneeded = () => request.result.createObjectStore('records');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
