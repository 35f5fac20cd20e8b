// `npm run shots`: pictures of the built app at phone size, into artefacts/; `npm run shots -- --readme` renews the few
// that README.md shows. Add a line to `shots` for another one.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { createStaticServer, listen } from '../src/cli/static-server.mjs';
import { findBrowser, openContext } from './browser.mjs';

/** @typedef {{ name: string, path: string, readme?: boolean, act?: (page: import('playwright-core').Page) => Promise<void> }} Shot */

/** @type {Shot[]} `act` brings the screen into the state to be shown. */
const shots = [
  { name: 'plans', path: '' },
  { name: 'ask', path: '#/new', readme: true },
];

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const built = resolve('node_modules/.cache/shots/app');
const forReadme = process.argv.includes('--readme');
const out = forReadme ? 'public/readme' : 'artefacts';
await build({ logLevel: 'error', build: { outDir: built } });
mkdirSync(out, { recursive: true });

const server = createStaticServer(built);
const url = `http://localhost:${await listen(server, 0)}/`;
const profile = mkdtempSync(join(tmpdir(), 'halyard-'));
const context = await openContext(await findBrowser(), profile, {
  viewport: { width: 360, height: 740 },
  deviceScaleFactor: 2,
});
const page = context.pages()[0] ?? (await context.newPage());
for (const { name, path, act } of shots.filter(({ readme }) => readme || !forReadme)) {
  await page.goto(url + path);
  await page.locator('h1').first().waitFor();
  await act?.(page);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.screenshot({ path: join(out, `${name}.png`) });
}
await context.close();
rmSync(profile, { recursive: true, force: true });
server.close();
server.closeAllConnections();
