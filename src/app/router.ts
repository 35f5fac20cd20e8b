/** Where the app is. Links are plain links; the browser's own back, forward and reload do what they say. */
import { computed, signal } from '@preact/signals';
import { parseRoute } from './routes';

const isAddress = (hash: string): boolean => hash === '' || hash.startsWith('#/');

const hash = signal(isAddress(location.hash) ? location.hash : '');
/** How many times the address changed: a screen that is opened again is a new visit. */
export const visits = signal(0);
export const route = computed(() => parseRoute(hash.value));

export function startRouter(): void {
  const follow = (): void => {
    if (!isAddress(location.hash) || location.hash === hash.value) return;
    hash.value = location.hash;
    visits.value += 1;
  };
  addEventListener('hashchange', follow);
  follow(); // the address may have changed while the stores were opened
}

/** Goes to an address as if its link had been followed. */
export function go(address: string): void {
  location.hash = address;
}

/** Takes the place of the present address, so that "back" does not return to it. */
export function goInstead(address: string): void {
  history.replaceState(history.state, '', address);
  hash.value = address;
  visits.value += 1;
}
