// The page that times the field solver. Imports carry their extension here, so that Vite can hand this file to node as it is.
import { defineConfig } from 'vite';
import { assemblyscript } from '../../src/asm/vite-plugin.ts';

export default defineConfig({
  publicDir: false,
  plugins: [assemblyscript()],
  worker: { format: 'es', plugins: () => [assemblyscript()] },
  build: {
    target: 'es2022',
    rolldownOptions: { input: 'tests/bench/solver-page.ts', output: { entryFileNames: 'page.js' } },
  },
});
