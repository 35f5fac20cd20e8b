/**
 * What the phone hands to the installed app: a file opened with it, or a link or file sent to it by another app's share sheet. Both end on
 * the Receive screen; neither needs a signal. The service worker keeps what was shared until that screen takes it, once.
 */
import { signal } from '@preact/signals';
import { go } from './router';
import { to } from './routes';

/** A file the phone opened with the app, until Receive has read it. */
export const openedFile = signal<File | null>(null);

interface LaunchQueue {
  setConsumer(consumer: (launch: { readonly files?: readonly FileSystemFileHandle[] }) => void): void;
}

export function takeOpenedFiles(): void {
  (globalThis as { launchQueue?: LaunchQueue }).launchQueue?.setConsumer(({ files }) => {
    void files?.[0]?.getFile().then((file) => {
      openedFile.value = file;
      go(to.receive());
    });
  });
}

/** The place in the caches, and the code of the Receive address, that sw/service-worker.ts uses. */
export const handedIn = 'handed-in';

/** What was shared to the app; null when it was taken already. */
export async function takeHandedIn(): Promise<string | null> {
  const cache = await caches.open(handedIn);
  const kept = await cache.match(handedIn);
  await cache.delete(handedIn);
  return kept === undefined ? null : kept.text();
}
