import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openBrowser, untilKeptOffline } from './support/browser';
import { serveBuilt } from './support/serve';
import { buildVersion, letUpdateTakeOver, untilUpdateWaits, untilVersion, versionOf } from './support/versions';

test('a newer version waits for a yes, then takes over every tab and leaves nothing of the old one', async () => {
  const newer = buildVersion('9.9.9');
  const server = await serveBuilt();
  const { context, page: first } = await openBrowser();
  await first.goto(server.url);
  await untilKeptOffline(first);
  const second = await context.newPage();
  for (const page of [first, second]) await page.goto(server.url);
  const old = await versionOf(first);

  await server.stop();
  await server.start(newer);
  await untilUpdateWaits(first);
  // Nobody said yes: a reload, a visit and the other tab all stay on the version they had.
  await first.reload();
  await second.goto(`${server.url}#/on-hand`);
  expect([await versionOf(first), await versionOf(second)]).toEqual([old, old]);

  await letUpdateTakeOver(first);
  for (const page of [first, second]) await untilVersion(page, '9.9.9');

  await server.stop();
  await first.reload();
  expect(await versionOf(first)).toBe('9.9.9');
  const kept = await first.evaluate(async () => {
    const stores = await Promise.all((await caches.keys()).map((key) => caches.open(key)));
    const requests = await Promise.all(stores.map((cache) => cache.keys()));
    return requests.flat().map(({ url }) => new URL(url).pathname);
  });
  const built = new Set(readdirSync(join(newer, 'assets')).map((name) => `/assets/${name}`));
  expect(kept.filter((path) => path.startsWith('/assets/')).filter((path) => !built.has(path))).toEqual([]);
});

test('a first visit is not disturbed by a reload when the worker takes charge', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  let loads = 0;
  page.on('load', () => {
    loads += 1;
  });
  await page.goto(server.url);
  await untilKeptOffline(page);
  await page.evaluate(() => fetch('/robots.txt'));
  expect(loads).toBe(1);
});
