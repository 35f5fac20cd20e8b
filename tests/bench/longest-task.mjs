// How long the page cannot answer a tap while a plan is open and its field is being worked out: the longest task of the main thread, over
// an invented antenna with chokes and coax on four bands, opened from the list of plans. In processor time, which does not hang on what else
// the machine is doing.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createStaticServer, listen } from '../../src/cli/static-server.mjs';
import { findBrowser, openContext } from '../browser.mjs';

const id = '33333333-3333-4333-8333-333333333333';
const answers = {
  name: 'Bench',
  bands: ['80m', '40m', '20m', '10m'],
  radiator: 'straight-wire',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
  station: 'home',
  heightM: 9,
  supportHeightM: 10,
  entryDistanceM: 12,
  feedLineLengthM: 25,
};
const record = {
  version: 1,
  id,
  createdAt: 1,
  updatedAt: 1,
  answers,
  answeredAt: {},
  unsure: {},
  typed: {},
  cautionsRead: {},
  ticks: {},
  progress: {},
  measurements: [],
};

/** Milliseconds of processor time of the longest task. @returns {Promise<number>} */
export async function longestTaskMs(/** @type {string} */ dir) {
  const server = createStaticServer(dir);
  const url = `http://localhost:${await listen(server, 0)}/`;
  const profile = mkdtempSync(join(tmpdir(), 'halyard-'));
  const context = await openContext(await findBrowser(), profile, { viewport: { width: 360, height: 740 } });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(url);
  await page.locator('h1').first().waitFor();
  await page.evaluate(
    (saved) =>
      new Promise((/** @type {(value?: undefined) => void} */ resolve) => {
        const opening = indexedDB.open('halyard');
        opening.onsuccess = () => {
          const tx = opening.result.transaction('plans', 'readwrite');
          tx.objectStore('plans').put(saved);
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    record,
  );
  await page.reload();
  await page.locator('main h2').first().waitFor();
  const devtools = await context.newCDPSession(page);
  await devtools.send('Tracing.start', { transferMode: 'ReturnAsStream', categories: 'devtools.timeline,toplevel' });
  await page.evaluate((address) => {
    location.hash = address;
  }, `#/plan/${id}`);
  await page.getByText('Worked out for this very antenna').waitFor({ timeout: 120_000 });
  const trace = await readTrace(devtools);
  await context.close();
  server.close();
  rmSync(profile, { recursive: true, force: true });
  return longestOnMain(trace);
}

/** @typedef {{ name: string, ph: string, pid: number, tid: number, tdur?: number, args: { name?: string } }} TraceEvent */

/** @returns {Promise<TraceEvent[]>} */
async function readTrace(/** @type {import('playwright-core').CDPSession} */ devtools) {
  /** @type {Promise<{ stream?: string }>} */
  const complete = new Promise((resolve) => devtools.once('Tracing.tracingComplete', resolve));
  await devtools.send('Tracing.end');
  const { stream = '' } = await complete;
  for (let text = ''; ; ) {
    const { data, eof } = await devtools.send('IO.read', { handle: stream });
    text += data;
    if (eof) return JSON.parse(text).traceEvents;
  }
}

/** Of the page's main thread, which is the one that lays out most. */
function longestOnMain(/** @type {TraceEvent[]} */ events) {
  const threadOf = (/** @type {TraceEvent} */ { pid, tid }) => `${pid} ${tid}`;
  const layouts = new Map();
  for (const event of events)
    if (event.name === 'Layout') layouts.set(threadOf(event), (layouts.get(threadOf(event)) ?? 0) + 1);
  const [main] = [...layouts].toSorted(([, a], [, b]) => b - a)[0] ?? [];
  const tasks = events.filter((event) => event.name.endsWith('RunTask') && threadOf(event) === main);
  return Math.max(...tasks.map(({ tdur }) => (tdur ?? 0) / 1000));
}
