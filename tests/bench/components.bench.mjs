// Part of what is worth watching but is no test: `node tests/bench/components.bench.mjs` prints how long the design searches take over the
// whole catalogue (median and slowest of 31 runs) and how far each family of published checks lies from print.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

const runs = 31;
const root = fileURLToPath(new URL('../..', import.meta.url));
const outDir = mkdtempSync(join(tmpdir(), 'halyard-bench-'));
await build({
  root,
  configFile: false,
  logLevel: 'error',
  publicDir: false,
  build: {
    ssr: 'tests/bench/components.ts',
    outDir,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'components.mjs' } },
  },
});
const { searches, errorsByFamily } = await import(pathToFileURL(join(outDir, 'components.mjs')).href);

const sorted = (/** @type {number[]} */ values) => values.toSorted((a, b) => a - b);
const middle = (/** @type {number[]} */ values) => sorted(values)[values.length >> 1] ?? Number.NaN;

for (const { what, run } of searches) {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  console.log(`${middle(times).toFixed(1).padStart(7)} ms, slowest ${Math.max(...times).toFixed(1)} ms  ${what}`);
}
for (const [family, errors] of errorsByFamily()) {
  const percent = (/** @type {number} */ part) => `${(100 * part).toFixed(2)} %`;
  console.log(
    `${family}: ${errors.length} checks, median ${percent(middle(errors))}, worst ${percent(Math.max(...errors))}`,
  );
}
rmSync(outDir, { recursive: true, force: true });
