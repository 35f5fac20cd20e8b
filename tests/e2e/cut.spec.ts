import { expect, test } from 'vitest';
import { passGates } from '../every-screen.mjs';
import { storedRecords } from './support/answering';
import { accessibilityFaults } from './support/axe';
import { newProfile, openBrowser, phone } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

const piece = (page: import('playwright-core').Page, now: number) =>
  page.getByText(`piece ${now} of 5`, { exact: true }).waitFor();

test('no length before the cautions; then one number, by button, Space, arrows and Page keys', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/cut`);
  await page.getByText('checks left').waitFor();
  expect(await page.locator('.num').count()).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: /checks left/ }).click(); // a stray tap does not pass
  expect(await page.locator('.num').count()).toBe(0);
  expect(await passGates(page)).toBeGreaterThan(2);
  await piece(page, 1);
  const number = await page.locator('.num').boundingBox();
  expect(number!.height).toBeGreaterThan(100);
  expect(await page.getByText('metres', { exact: true }).count()).toBe(1);
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Cut, next' }).click();
  await piece(page, 2);
  await page.locator('h1').focus();
  await page.keyboard.press('Space');
  await piece(page, 3);
  await page.keyboard.press('PageDown');
  await piece(page, 4);
  await page.keyboard.press('ArrowLeft');
  await piece(page, 3);
  expect(complaints).toEqual([]);
});

test('after the battery died it returns to the same piece, cautions still read', async () => {
  const server = await serveBuilt();
  const profile = newProfile();
  const first = await openBrowser(phone, profile);
  const id = await withPlan(first.page, server.url, 'endFed');
  await openAt(first.page, `#/plan/${id}/cut`);
  await passGates(first.page);
  await piece(first.page, 1);
  await first.page.getByRole('button', { name: 'Cut, next' }).click();
  await piece(first.page, 2);
  const kept = async (): Promise<string> => JSON.stringify(await storedRecords(first.page, 'plans'));
  await expect.poll(kept, { timeout: 20_000 }).toContain('"cut":{"step":"coax"');
  await first.kill();
  const second = await openBrowser(phone, profile);
  await second.page.goto(server.url);
  await second.page.locator('h1').first().waitFor();
  await openAt(second.page, `#/plan/${id}/cut`);
  await piece(second.page, 2);
});

test('held, the screen answers to nothing but A and then B', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/cut`);
  await passGates(page);
  await page.getByRole('button', { name: 'Hold' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await page.keyboard.press('Escape');
  await page.keyboard.press('PageDown');
  await page.touchscreen.tap(180, 700);
  await dialog.getByRole('button', { name: 'B' }).click(); // B alone does nothing
  expect(await dialog.isVisible()).toBe(true);
  await dialog.getByRole('heading', { name: 'Wire' }).waitFor(); // a second person can tell what the number is of
  await dialog.getByRole('button', { name: 'A' }).click();
  await page.touchscreen.tap(180, 300); // a drop beside A and B: A is forgotten, keys still reach nothing
  await page.keyboard.press('Space');
  await dialog.getByRole('button', { name: 'B' }).click();
  const address = page.url();
  for (let brush = 0; brush < 2; brush++) await page.evaluate(() => history.back());
  expect([page.url(), await dialog.isVisible()]).toEqual([address, true]);
  expect(await accessibilityFaults(page)).toEqual([]);
  // A phone short of memory loads the page in the pocket anew.
  await page.reload();
  await dialog.waitFor();
  await page.evaluate(() => history.back());
  expect([page.url(), await dialog.isVisible()]).toEqual([address, true]);
  await dialog.getByRole('button', { name: 'A' }).click();
  await dialog.getByRole('button', { name: 'B' }).click();
  await dialog.waitFor({ state: 'detached' });
  await piece(page, 1);
  await page.reload();
  await piece(page, 1);
  expect(await dialog.isVisible()).toBe(false);
});
