/**
 * A part of a screen that is fetched when it is first shown, or before: after the first paint all of them are fetched (main.tsx), so that none
 * is waited for later. Until it is there, nothing stands in its place.
 */
import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';

const parts: (() => Promise<void>)[] = [];

/** One after the other, so that a tap in between never waits for long. */
export async function fetchParts(): Promise<void> {
  for (const fetch of parts) await fetch();
}

export function later<P extends object>(fetch: () => Promise<ComponentType<P>>): ComponentType<P> {
  const found = signal<ComponentType<P> | null>(null);
  const bring = async (): Promise<void> => {
    // Not to be had now: it is asked for again when it is next shown, and the screen does without it.
    found.value ??= await fetch().catch(() => null);
  };
  parts.push(bring);
  return (props: P) => {
    useEffect(() => void bring(), []);
    const Found = found.value;
    return Found === null ? null : <Found {...props} />;
  };
}
