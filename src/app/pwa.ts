/**
 * The page's side of the service worker: tells when everything is kept on the phone, when a newer version waits,
 * and swaps versions when the person says yes.
 *
 * Every tab that was controlled reloads when the new worker takes over, not only the one that asked: an old tab would
 * look for pieces that only the old build had. Nothing is lost, because each answer is stored when it is given.
 */
import { signal } from '@preact/signals';
import type { Workbox } from 'workbox-window';
import { trustedScriptUrl } from './trusted-types';

export const offlineReady = signal(false);
export const updateReady = signal(false);

/** Beside the page, wherever that is served. */
const workerUrl = 'service-worker.js';
let workbox: Workbox | undefined;
let asked = false;

export async function startPwa(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const container = navigator.serviceWorker;
  const wasControlled = container.controller !== null;
  let reloading = false;
  container.addEventListener('controllerchange', () => {
    if (!(wasControlled || asked) || reloading) return;
    reloading = true;
    location.reload();
  });

  // A worker already in charge has everything: nothing will be announced on this visit.
  if (wasControlled) offlineReady.value = true;
  addEventListener('vite:preloadError', reloadOnce);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void checkForUpdate();
  });
  // Not needed to show anything, so it comes after the first screen.
  const { Workbox } = await import('workbox-window');
  workbox = new Workbox(trustedScriptUrl('app-sw', workerUrl), { type: 'classic' });
  workbox.addEventListener('waiting', () => {
    updateReady.value = true;
  });
  workbox.addEventListener('activated', ({ isUpdate }) => {
    if (!isUpdate) offlineReady.value = true;
  });
  await workbox.register();
}

/** A piece of this build could not be had, most likely because a newer one took its place: start afresh, but never in a loop. */
function reloadOnce(): void {
  const key = 'reloaded-from-version';
  if (sessionStorage.getItem(key) === __APP_VERSION__) return;
  sessionStorage.setItem(key, __APP_VERSION__);
  location.reload();
}

/** Asks the server for a newer version; without a connection there is none, and that is no error. */
export async function checkForUpdate(): Promise<void> {
  if (!navigator.onLine) return;
  await workbox?.update().catch(() => undefined);
}

/** Lets the waiting version take over; the tabs reload when it has. */
export function applyUpdate(): void {
  asked = true;
  workbox?.messageSkipWaiting();
}
