// Part of what is worth watching but is no test: `node tests/bench/solver.bench.mjs` prints the field solver's standard jobs in headless
// Chromium, each in a fresh worker and again in the same one, and yardsticks of the same run: WebAssembly kernels against plain ones,
// the factorisation against a LAPACK if python3 with numpy is there, and where the time of the wide sweep goes.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync } from 'node:zlib';
import { build } from 'vite';
import { findBrowser, openContext } from '../browser.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const dir = mkdtempSync(join(tmpdir(), 'halyard-bench-'));
await build({
  root,
  configFile: join(root, 'tests/bench/solver.vite.config.ts'),
  logLevel: 'error',
  build: { outDir: dir, emptyOutDir: true },
});
writeFileSync(join(dir, 'index.html'), '<!doctype html><script type="module" src="/page.js"></script>');
const types = { '.js': 'text/javascript', '.html': 'text/html', '.wasm': 'application/wasm' };
const server = createServer((request, response) => {
  const path = request.url === '/' ? '/index.html' : (request.url ?? '');
  try {
    // An isolated page has a clock of 5 µs instead of 100.
    response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
    response.setHeader('Cross-Origin-Embedder-Policy', 'require-corp');
    response.setHeader('Content-Type', types[/** @type {keyof typeof types} */ (extname(path))] ?? 'text/plain');
    response.end(readFileSync(join(dir, path)));
  } catch {
    response.statusCode = 404;
    response.end();
  }
});
await new Promise((resolve) => server.listen(0, () => resolve(undefined)));
const { port } = /** @type {import('node:net').AddressInfo} */ (server.address());
const profile = mkdtempSync(join(tmpdir(), 'halyard-'));
const context = await openContext(await findBrowser(), profile, {});
const page = await context.newPage();
await page.goto(`http://localhost:${port}/`);
await page.waitForFunction(() => 'runJobs' in globalThis);
const jobs = await page.evaluate(() => /** @type {any} */ (globalThis).runJobs());
const yard = await page.evaluate(() => /** @type {any} */ (globalThis).runYardsticks());
await context.close();
server.close();

const say = (/** @type {string} */ line) => console.log(line);
const ms = (/** @type {number} */ value) => `${value.toFixed(1).padStart(7)} ms`;
const aims = {
  a: 'one frequency, half-wave with coax (aim 30)',
  b: 'one band, 100 points (aim 150)',
  c: 'off-centre wire with coax, 1000 points 3 to 30 MHz (aim 600, with tables 250)',
  d: 'the same with another choke (aim 20)',
  e: 'height stepped by 0.5 m, one band (aim 100)',
};
say('job   fresh worker   same worker');
for (const [key, what] of Object.entries(aims))
  say(`${key}   ${ms(jobs[key].coldMs)}     ${ms(jobs[key].warmMs)}     ${what}`);
say(
  `job c: ${jobs.segments} segments, ${jobs.solves} solutions, largest misprediction ${jobs.fitError.toExponential(1)}`,
);

const { fast, plain } = yard;
say(`\nkernels ${fast.name} against plain, ${fast.unknowns} unknowns`);
say(`fill   ${ms(fast.fillMs)}  plain ${ms(plain.fillMs)}  × ${(plain.fillMs / fast.fillMs).toFixed(1)}`);
say(`table  ${ms(fast.tableMs)}  plain ${ms(plain.tableMs)}  × ${(plain.tableMs / fast.tableMs).toFixed(1)}`);
const lapack = lapackMs(fast.factor.map((/** @type {{ size: number }} */ { size }) => size));
fast.factor.forEach((/** @type {{ size: number, ms: number, gflops: number }} */ one, /** @type {number} */ i) => {
  const ratio = (plain.factor[i].ms / one.ms).toFixed(1);
  const against = lapack
    ? `zgesv, one thread ${ms(lapack[i])}, ${(((8 / 3) * one.size ** 3) / lapack[i] / 1e6).toFixed(1)} GFLOP/s: ${Math.round((100 * lapack[i]) / one.ms)} % of its speed`
    : 'no LAPACK here (python3 with numpy)';
  say(
    `LDLᵀ ${one.size}  ${ms(one.ms)}  ${one.gflops.toFixed(1)} GFLOP/s  plain ${ms(plain.factor[i].ms)}  × ${ratio}  ${against}`,
  );
});
const total = Object.values(yard.shares).reduce((a, b) => a + b, 0);
say('\nwhere the wide sweep spends its time, tables timed apart');
for (const [name, value] of Object.entries(yard.shares))
  say(`${ms(value)}  ${Math.round((100 * value) / total)} %  ${name}`);
say(`\nmemory of the kernels with ${yard.large.unknowns} unknowns: ${(yard.large.moduleBytes / 1e6).toFixed(1)} MB`);
for (const file of readdirSync(join(dir, 'assets'))) {
  if (!/solver-worker/.test(file)) continue;
  const bytes = readFileSync(join(dir, 'assets', file));
  say(
    `worker with kernels: ${(bytes.length / 1000).toFixed(1)} kB, brotli ${(brotliCompressSync(bytes).length / 1000).toFixed(1)} kB`,
  );
}
for (const file of readdirSync(join(root, 'src/wasm')).sort()) {
  say(`${file}: ${(readFileSync(join(root, 'src/wasm', file)).length / 1000).toFixed(1)} kB`);
}
rmSync(dir, { recursive: true, force: true });
rmSync(profile, { recursive: true, force: true });

/** Least milliseconds of numpy's solve (zgesv) for each size, one thread; undefined without numpy. */
function lapackMs(/** @type {number[]} */ sizes) {
  const script = `
import json, time, numpy
out = []
for n in ${JSON.stringify(sizes)}:
    a = numpy.random.default_rng(1).normal(size=(n, n)) + 1j * numpy.random.default_rng(2).normal(size=(n, n)) + 40 * numpy.eye(n)
    b = numpy.ones((n, 1), complex)
    best = 1e9
    for _ in range(60 if n < 300 else 15):
        t = time.perf_counter(); numpy.linalg.solve(a, b); best = min(best, time.perf_counter() - t)
    out.append(best * 1e3)
print(json.dumps(out))`;
  const env = { ...process.env, OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1' };
  const { status, stdout } = spawnSync('python3', ['-c', script], { encoding: 'utf8', env });
  return status === 0 ? /** @type {number[]} */ (JSON.parse(stdout)) : undefined;
}
