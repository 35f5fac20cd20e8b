// `npm run shots`: pictures of every screen of the built app, by day and by night, at four widths and lying down, into artefacts/.
// `npm run shots -- --readme` renews the few that README.md shows; `npm run shots -- plan cut` makes those screens alone.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { createStaticServer, listen } from '../src/cli/static-server.mjs';
import { findBrowser, openContext } from './browser.mjs';
import { everyScreen, goToScreen, keepPlan, links, openScreen, passGates, untilSolved } from './every-screen.mjs';

/** @typedef {{ width: number, height: number }} Size */

/** @type {readonly Size[]} Small, common and large phones, a phone lying down, a desk. */
const sizes = [
  { width: 320, height: 568 },
  { width: 360, height: 740 },
  { width: 412, height: 915 },
  { width: 740, height: 360 },
  { width: 1280, height: 800 },
];
/** @type {readonly ('light' | 'dark')[]} */
const lights = ['light', 'dark'];
const inReadme = ['ask', 'plan', 'cut'];

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const built = resolve('node_modules/.cache/shots/app');
const forReadme = process.argv.includes('--readme');
const asked = process.argv.slice(2).filter((name) => !name.startsWith('--'));
const wanted = (/** @type {string} */ name) =>
  forReadme ? inReadme.includes(name) : asked.length === 0 || asked.includes(name);
process.env.HALYARD_OUT_DIR = built;
await build({ logLevel: 'error' });

const server = createStaticServer(built);
const url = `http://localhost:${await listen(server, 0)}/`;
const browser = await findBrowser();

/**
 * All wanted screens at one size in one light.
 * @param {Size} viewport
 * @param {'light' | 'dark'} colorScheme
 * @param {string} folder
 */
async function shoot(viewport, colorScheme, folder) {
  mkdirSync(folder, { recursive: true });
  const profile = mkdtempSync(join(tmpdir(), 'halyard-'));
  const touch = viewport.width < 1000;
  const context = await openContext(browser, profile, {
    viewport,
    colorScheme,
    deviceScaleFactor: forReadme ? 2 : 1,
    hasTouch: touch,
    isMobile: touch,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const id = await keepPlan(page, url, links.sloper);
  const keep = (/** @type {string} */ name) =>
    page.screenshot({ path: join(folder, `${name}.png`), fullPage: !forReadme });
  for (const [index, { name, path }] of everyScreen(id)
    .filter((screen) => wanted(screen.name))
    .entries()) {
    await (index === 0 ? openScreen(page, url, path) : goToScreen(page, path));
    if (name === 'cut' || name === 'raise') {
      if (!forReadme) await keep(`${name}-cautions`);
      await passGates(page);
    }
    if (name === 'plan') await untilSolved(page);
    await keep(name);
  }
  await context.close();
  rmSync(profile, { recursive: true, force: true });
}

if (forReadme) {
  await shoot({ width: 360, height: 740 }, 'light', 'tests/pictures');
} else {
  for (const size of sizes) {
    for (const light of lights) await shoot(size, light, join('artefacts', `${size.width}x${size.height}-${light}`));
  }
}
server.close();
server.closeAllConnections();
