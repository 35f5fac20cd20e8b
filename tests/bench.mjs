// `npm run bench`: what is worth watching but is no test, because it depends on the machine. Sizes of a fresh build, the
// time from opening the app to its first screen on a slow phone with no server, and the headless commands in process.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createStaticServer, listen } from '../src/cli/static-server.mjs';
import { longestTaskMs } from './bench/longest-task.mjs';
import { searchTimes } from './bench/search-times.mjs';
import { findBrowser, openContext } from './browser.mjs';
import { firstScreenFiles, sentBytes, sizes } from './sizes.mjs';

/** @typedef {import('../src/cli/command.ts').CommandIo} CommandIo */

const root = fileURLToPath(new URL('..', import.meta.url));
const slowdown = 4; // of the processor, as the usual stand-in for a cheap phone

function build(/** @type {string} */ mode) {
  const dir = join(root, 'node_modules/.cache/bench', mode);
  const env = { ...process.env, NODE_ENV: 'production', HALYARD_OUT_DIR: dir };
  const args = ['node_modules/vite/bin/vite.js', 'build', '--mode', mode, '--logLevel', 'error'];
  const { status } = spawnSync(process.execPath, args, { cwd: root, env, stdio: ['ignore', 'ignore', 2] });
  if (status !== 0) process.exit(1);
  return dir;
}

function row(/** @type {string} */ what, /** @type {number} */ value, /** @type {string} */ unit) {
  console.log(`${value.toFixed(1).padStart(9)} ${unit.padEnd(3)} ${what}`);
}

const median = (/** @type {number[]} */ values) => values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** Milliseconds from the start of a navigation to the first heading, everything from the phone's own cache. */
async function openingMs(/** @type {string} */ dir) {
  const server = createStaticServer(dir);
  const url = `http://localhost:${await listen(server, 0)}/#/new`;
  const profile = mkdtempSync(join(tmpdir(), 'halyard-'));
  const context = await openContext(await findBrowser(), profile, {
    viewport: { width: 360, height: 740 },
    deviceScaleFactor: 2,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(url);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  server.close();
  server.closeAllConnections();
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  const times = [];
  for (let run = 0; run < 7; run++) {
    await page.reload({ waitUntil: 'commit' });
    await page.locator('h1').first().waitFor();
    times.push(await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0));
  }
  await context.close();
  rmSync(profile, { recursive: true, force: true });
  return median(times);
}

/** Milliseconds for one run of a headless command, in process and warmed up. */
async function commandMs(
  /** @type {(args: readonly string[], io: CommandIo) => Promise<number>} */ main,
  /** @type {string[]} */ args,
  /** @type {string} */ input,
  /** @type {number} */ runs,
) {
  const times = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    const code = await main([...args, '-'], {
      readStdin: async () => input,
      readFile: async () => input,
      out: () => undefined,
      err: (text) => process.stderr.write(text),
    });
    if (code !== 0) throw new Error(`${args.join(' ')} ended with ${code}`);
    times.push(performance.now() - start);
  }
  return median(times);
}

const app = build('production');
const { firstScreenBytes, precacheBytes } = sizes(app);
for (const file of firstScreenFiles(app)) row(`  ${file}`, sentBytes(join(app, file)) / 1000, 'kB');
row('JavaScript and CSS before the first screen, brotli', firstScreenBytes / 1000, 'kB');
row('kept for offline use, brotli', precacheBytes / 1000, 'kB');
row(`from opening to the first screen, no server, processor slowed ${slowdown}×`, await openingMs(app), 'ms');
const longestMs = await longestTaskMs(app);
row('longest task of the main thread while a plan is open and its field is worked out (aim 50)', longestMs, 'ms');
row(`the same, processor slowed ${slowdown}×`, slowdown * longestMs, 'ms');
const { ruleMs, threeMs, allMs } = await searchTimes(app);
row('which antenna: the list by the rules', ruleMs, 'ms');
row('which antenna: three of it worked out from their fields (aim 2000)', threeMs, 'ms');
row('which antenna: all of it (aim 15000)', allMs, 'ms');

const { main } = await import(pathToFileURL(join(build('cli'), 'main.mjs')).href);
const inputs = join(root, 'tests/fixtures/bench'); // invented stations, one file each, named <command>-<what>.json
for (const file of readdirSync(inputs).sort()) {
  const [command = ''] = file.split('-');
  const input = readFileSync(join(inputs, file), 'utf8');
  if (command === 'plan')
    row(`${file}, without the solver`, await commandMs(main, ['plan', '--fast'], input, 101), 'ms');
  row(file, await commandMs(main, [command], input, 5), 'ms');
}

/** Each in a process of its own, so that none finds the other's caches warm. */
for (const part of ['components', 'solver']) {
  const { status } = spawnSync(process.execPath, [join(root, `tests/bench/${part}.bench.mjs`)], { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
