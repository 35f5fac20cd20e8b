import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The built app in a real browser: one file after another, since each drives a browser and a server of its own. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/e2e/**/*.spec.ts'],
    globalSetup: ['tests/e2e/support/build-once.ts'],
    fileParallelism: false,
    testTimeout: 90_000,
    hookTimeout: 90_000,
    // A failed claim is a failed run: nothing is tried again until it passes.
    retry: 0,
  },
});
