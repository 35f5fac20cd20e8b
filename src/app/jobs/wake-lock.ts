/** Keeps the screen lit while a screen is open, and lets go after. A browser without wake locks simply goes dark as always. */
import { useEffect } from 'preact/hooks';

export function useWakeLock(): void {
  useEffect(() => {
    const locks = (navigator as { wakeLock?: WakeLock }).wakeLock;
    if (locks === undefined) return undefined;
    let open = true;
    let held: WakeLockSentinel | null = null;
    // The browser drops the lock when the page is hidden; it is taken again when the page comes back.
    const take = (): void => {
      if (document.visibilityState !== 'visible' || (held !== null && !held.released)) return;
      locks.request('screen').then(
        (lock) => {
          if (open) held = lock;
          else void lock.release();
        },
        () => undefined, // low battery: the phone says no
      );
    };
    take();
    document.addEventListener('visibilitychange', take);
    return () => {
      open = false;
      document.removeEventListener('visibilitychange', take);
      void held?.release();
    };
  }, []);
}
