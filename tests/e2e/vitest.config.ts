import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The built app in a real browser. Each file has a browser, a profile and a server of its own, so that two go on at once. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/e2e/**/*.spec.ts'],
    globalSetup: ['tests/e2e/support/build-once.ts'],
    maxWorkers: 2,
    // Long, for a machine that has more to do: what is waited for on a page has its own, shorter time.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    // A failed claim is a failed run: nothing is tried again until it passes.
    retry: 0,
  },
});
