import { expect, test } from 'vitest';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, phone } from './support/browser';
import { serveBuilt } from './support/serve';

test.each([
  { size: 'phone', options: phone },
  { size: 'desktop', options: desktop },
])('the first screen has no fault that axe finds, $size', async ({ options }) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(options);
  await page.goto(url);
  await page.locator('h1').first().waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
});

test('axe sees a fault when there is one', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.goto(url);
  await page.locator('h1').first().waitFor();
  await page.evaluate(() => document.body.append(document.createElement('button')));
  expect((await accessibilityFaults(page)).some((fault) => fault.startsWith('button-name'))).toBe(true);
});
