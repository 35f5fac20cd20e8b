import { expect, test } from 'vitest';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, phone, untilKeptOffline } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test.each([
  { size: 'phone', options: phone },
  { size: 'desktop', options: desktop },
])('danger stands first, every part is there, axe finds nothing, $size', async ({ options }) => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser(options);
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByRole('heading', { name: 'Pear orchard', level: 1 }).waitFor();
  const danger = await page.getByRole('heading', { name: 'Danger' }).boundingBox();
  const answer = await page.locator('.answer').boundingBox();
  expect(danger!.y).toBeLessThan(answer!.y);
  for (const part of ['From wire to radio', 'Cut', 'Bands', 'Not needed', 'People near the antenna', 'Assumed']) {
    expect(await page.getByRole('heading', { name: part, level: 2 }).count()).toBe(1);
  }
  expect(await page.getByRole('img').count()).toBeGreaterThan(0);
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
  });
  await page.getByText('= 2.11').first().waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a working is evaluated with the server gone', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, server.url, 'endFed');
  await untilKeptOffline(page);
  await server.stop();
  await page.reload();
  await openAt(page, `#/plan/${id}`);
  await page.locator('.cuts summary').first().click();
  await page.locator('.working b', { hasText: '= ' }).first().waitFor();
});

test('what stops a plan says why, and a way out leads to the question', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'tooLong');
  await openAt(page, `#/plan/${id}`);
  const stop = page.locator('section.stop').filter({ hasText: 'does not fit' });
  await stop.waitFor();
  expect(await stop.getByRole('link').count()).toBeGreaterThanOrEqual(2);
  await stop.getByRole('link', { name: 'Change: room' }).click();
  await page.waitForURL(/#\/ask\/.*spanM/);
});

test('a length opens as a call-out and closes by its button', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByRole('button', { name: /^Wire: / }).click();
  const large = page.locator('dialog .num');
  await large.waitFor();
  expect((await large.boundingBox())!.height).toBeGreaterThan(76);
  await page.getByRole('button', { name: 'Close' }).click();
  expect(await page.locator('dialog').count()).toBe(0);
});

test('the jump list puts the focus on the heading it names', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('On this page').click();
  await page.getByRole('button', { name: 'Bands', exact: true }).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('bands');
});

test('on paper: no bars and buttons, both units, danger on the first page', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(desktop);
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.locator('.answer').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('nav.bar').isVisible()).toBe(false);
  expect(await page.locator('.plan-page .btn').first().isVisible()).toBe(false);
  expect(await page.locator('.danger').first().isVisible()).toBe(true);
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)');
});
