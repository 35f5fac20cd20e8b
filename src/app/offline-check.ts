/**
 * Whether the app really opens with no signal: the service worker names every file of its build and what it must be, the page reads each of
 * them from the caches and compares it byte for byte (SHA-256), and a record is written and read back.
 */
export interface OfflineCheck {
  /** Null when this browser keeps no app at all. */
  readonly files: {
    readonly count: number;
    readonly missing: readonly KeptFile[];
    readonly damaged: readonly KeptFile[];
  } | null;
  readonly wrote: boolean;
}

interface KeptFile {
  /** Under which the cache holds it. */
  readonly key: string;
  /** As it stands on the server, from the worker's scope. */
  readonly url: string;
  readonly sha256: string;
}

export async function checkOffline(): Promise<OfflineCheck> {
  const [files, wrote] = await Promise.all([keptFiles(), canWrite()]);
  return { files, wrote };
}

async function keptFiles(): Promise<OfflineCheck['files']> {
  const registration = await navigator.serviceWorker?.getRegistration();
  const worker = registration?.active;
  if (worker === undefined || worker === null) return null;
  const files = await filesOf(worker);
  const states = await Promise.all(files.map(stateOf));
  const inState = (wanted: State) => files.filter((_, index) => states[index] === wanted);
  return { count: files.length, missing: inState('missing'), damaged: inState('damaged') };
}

function filesOf(worker: ServiceWorker): Promise<readonly KeptFile[]> {
  const { port1, port2 } = new MessageChannel();
  const answer = new Promise<readonly KeptFile[]>((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<readonly KeptFile[]>) => {
      port1.close();
      resolve(data);
    };
  });
  worker.postMessage({ type: 'WHICH_FILES' }, [port2]);
  return answer;
}

type State = 'whole' | 'missing' | 'damaged';

async function stateOf({ key, sha256 }: KeptFile): Promise<State> {
  const response = await caches.match(key);
  if (response === undefined) return 'missing';
  return (await digestOf(response)) === sha256 ? 'whole' : 'damaged';
}

async function digestOf(response: Response): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', await response.arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Brings files that are missing or damaged from the server again, past every cache of the browser. A file that does not come, or comes other
 * than this build made it, is left as it was: the next check tells.
 */
export async function fetchAgain(files: readonly KeptFile[]): Promise<void> {
  const names = await caches.keys();
  const name = names.find((each) => each.includes('precache'));
  if (name === undefined) return;
  const cache = await caches.open(name);
  for (const { key, url, sha256 } of files) {
    // An address of its own, which the worker does not answer from its cache.
    const response = await fetch(`${url}?again`, { cache: 'reload' }).catch(() => null);
    if (response?.ok && (await digestOf(response.clone())) === sha256) await cache.put(key, response);
  }
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
