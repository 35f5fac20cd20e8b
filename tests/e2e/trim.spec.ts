import { expect, test } from 'vitest';
import { storedRecords } from './support/answering';
import { accessibilityFaults } from './support/axe';
import { openBrowser } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test('one dip in, one fold out; a doubtful unit is asked; the log keeps it', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/trim`);
  const field = page.getByLabel('Dip on 40 m, MHz');
  await field.fill('6880');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByText('Did you mean kilohertz?').waitFor();
  expect(await field.inputValue()).toBe('6880');
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: '6.880 MHz' }).click();
  await page.getByRole('heading', { name: 'Too long for 40 m.' }).waitFor();
  await page.getByText('Fold back', { exact: true }).waitFor();
  await page.getByRole('heading', { name: 'What it does to all bands' }).waitFor();
  await page.getByText(/^40 m: dip 6\.880 MHz/).waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Done, measure again' }).click();
  await page.getByLabel('Dip on 40 m, MHz').fill('7,08');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();
  await page.getByRole('heading', { name: /^Up 0\.200 MHz since/ }).waitFor();
  // What is seen is written behind it; a page that is gone before that has nothing to show.
  await expect
    .poll(async () => JSON.stringify(await storedRecords(page, 'plans')), { timeout: 10_000 })
    .toContain('7.08');
  await page.reload();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();
  expect(complaints).toEqual([]);
});

test('no dip is told to be no length problem, and the touch test is kept', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/trim`);
  await page.getByRole('link', { name: 'There is no dip' }).click();
  await page.getByRole('heading', { name: 'No dip at all is not a length problem' }).waitFor();
  await page.getByRole('button', { name: 'It moves' }).click();
  await page.getByText('The coax is part of the antenna').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.reload();
  await page.getByText('The coax is part of the antenna').waitFor();
});
