import { expect, test } from 'vitest';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, phone } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test.each([
  { size: 'phone', options: phone },
  { size: 'desktop', options: desktop },
])('with and without a choke, then both sides of what is disputed, $size', async ({ options }) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(options);
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/why/${id}`);
  await page.getByRole('heading', { name: /^Choke out/ }).waitFor();
  await page.getByRole('heading', { name: /^Choke in/ }).waitFor();
  await page.getByText('For: Pear orchard.').waitFor();
  await page.getByText('Does an end-fed need a counterpoise?').click();
  await page.locator('details[open] .house').first().waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
});

test('the figures are large enough for a stand: 76 px and more', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(desktop);
  await withPlan(page, url, 'endFed');
  await openAt(page, '#/why');
  await page.locator('.panel').nth(1).waitFor();
  const sizes = await page
    .locator('.panel h2 b')
    .evaluateAll((list) => list.map((each) => Number.parseFloat(getComputedStyle(each).fontSize)));
  expect(sizes.length).toBe(2);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(76);
});
