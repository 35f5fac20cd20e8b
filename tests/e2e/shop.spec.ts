import { expect, test } from 'vitest';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, phone } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test.each([
  { size: 'phone', options: phone },
  { size: 'desktop', options: desktop },
])('ticking a row moves nothing, counts it, is kept and can be undone, $size', async ({ options }) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(options);
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/shop`);
  const rows = page.locator('.item');
  await rows.first().waitFor();
  const before = await rows.evaluateAll((list) => list.map((row) => row.getBoundingClientRect().top + window.scrollY));
  const total = await page.locator('.sum p').textContent();
  await rows.nth(1).click();
  await page.getByText(/^1 have/).waitFor();
  expect(await rows.evaluateAll((list) => list.map((row) => row.getBoundingClientRect().top + window.scrollY))).toEqual(
    before,
  );
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.reload();
  await page.getByText(/^1 have/).waitFor();
  await rows.nth(1).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText(/^1 have/).waitFor();
  expect(total).toMatch(/^0 have/);
});

test('every row is at least 64 px tall', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/shop`);
  await page.locator('.item').first().waitFor();
  const heights = await page.locator('.item').evaluateAll((list) => list.map((row) => row.clientHeight));
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(64);
});

test('one list for several plans: like parts added up, ticks kept in each plan, sent as one text', async () => {
  const { url } = await serveBuilt();
  const { page, context } = await openBrowser();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const other = await withPlan(page, url, 'tooLong', { spanM: 60 });
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/shop`);
  const insulators = page.locator('.item').filter({ hasText: 'end insulator' });
  await insulators.waitFor();
  const quantity = async (): Promise<number> =>
    Number.parseInt((await insulators.locator('.qty').textContent()) ?? '', 10);
  const alone = await quantity();
  await page.getByText('Shop for other plans too').click();
  await page.getByRole('checkbox', { name: 'Small garden' }).check();
  await insulators.getByText(/Small garden, \d/).waitFor();
  expect(await quantity()).toBe(2 * alone);
  const thrown = page.locator('.item').filter({ hasText: 'throw weight' });
  expect(await thrown.textContent()).toMatch(/1 ×.*all of them, one after the other/);
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await insulators.click();
  await page.getByText(/^1 have/).waitFor();
  await page.getByRole('button', { name: 'Copy as text' }).click();
  await page.getByText('Copied.').first().waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  expect(text).toMatch(/^Pear orchard, Small garden: /);
  expect(text).toMatch(new RegExp(`have.*${2 * alone}.*end insulator`, 'i'));
  await page.reload();
  await insulators.getByText(/Small garden, \d/).waitFor();
  await page.getByText(/^1 have/).waitFor();
  await openAt(page, `#/plan/${other}/shop`);
  await page.getByText(/^1 have/).waitFor();
  expect(await insulators.getByRole('checkbox').isChecked()).toBe(true);
  await openAt(page, `#/plan/${id}/shop`);
  await page.getByText('Shopped for with it: 1 other plan').click();
  await page.getByRole('checkbox', { name: 'Small garden', exact: true }).uncheck();
  await insulators.getByText(/Small garden, \d/).waitFor({ state: 'detached' });
  expect(await quantity()).toBe(alone);
  await page.getByText(/^1 have/).waitFor();
});
