/** A part of a screen that is fetched when it is first shown. Until it is there, nothing stands in its place. */
import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';

export function later<P extends object>(fetch: () => Promise<ComponentType<P>>): ComponentType<P> {
  const found = signal<ComponentType<P> | null>(null);
  return (props: P) => {
    useEffect(() => {
      if (found.value !== null) return;
      fetch().then(
        (component) => {
          found.value = component;
        },
        // Not to be had now: it is asked for again when it is next shown, and the screen does without it.
        () => undefined,
      );
    }, []);
    const Found = found.value;
    return Found === null ? null : <Found {...props} />;
  };
}
