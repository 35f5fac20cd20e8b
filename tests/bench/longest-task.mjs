// How long the page cannot answer a tap while a plan is open and its field is being worked out: the longest task of the main thread, over
// an invented antenna with chokes and coax on four bands, opened from the list of plans.
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

/** Milliseconds: the longest of the tasks, 0 when none reached the 50 ms from which a browser counts them. @returns {Promise<number>} */
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
  await page.evaluate(() => {
    const seen = /** @type {{ tasks?: number[] }} */ (globalThis);
    seen.tasks = [];
    new PerformanceObserver((list) => seen.tasks?.push(...list.getEntries().map(({ duration }) => duration))).observe({
      entryTypes: ['longtask'],
    });
  });
  await page.evaluate((address) => {
    location.hash = address;
  }, `#/plan/${id}`);
  await page.getByText('Worked out for this very antenna').waitFor({ timeout: 120_000 });
  const tasks = await page.evaluate(() => /** @type {{ tasks?: number[] }} */ (globalThis).tasks ?? []);
  await context.close();
  server.close();
  rmSync(profile, { recursive: true, force: true });
  return Math.max(0, ...tasks);
}
