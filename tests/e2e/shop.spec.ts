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
