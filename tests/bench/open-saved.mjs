// A build in the browser at the size of a phone, with one saved plan in its list.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createStaticServer, listen } from '../../src/cli/static-server.mjs';
import { findBrowser, openContext } from '../browser.mjs';
import { emptyRecord } from '../empty-record.mjs';

export async function openSaved(
  /** @type {string} */ dir,
  /** @type {string} */ id,
  /** @type {Record<string, unknown>} */ answers,
) {
  const record = { ...emptyRecord, id, answers };
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
  const close = async () => {
    await context.close();
    server.close();
    rmSync(profile, { recursive: true, force: true });
  };
  return { context, page, close };
}
