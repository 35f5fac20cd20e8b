import { expect, test } from 'vitest';
import { passGates } from '../every-screen.mjs';
import { accessibilityFaults } from './support/axe';
import { openBrowser } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

const nextStep = (page: import('playwright-core').Page) => page.getByRole('button', { name: 'Done, next' }).click();

test('steps open one after the other, each behind its cautions, and the place is kept', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/raise`);
  await page.getByRole('heading', { name: 'Make the boxes', level: 1 }).waitFor();
  await page.getByRole('link', { name: 'Count the turns: 1:1 choke at the radio' }).waitFor();
  await nextStep(page);
  await page.getByRole('heading', { name: 'Pack', level: 1 }).waitFor();
  await page.locator('.item').filter({ hasText: '49:1 transformer' }).click();
  await page.getByText(/^1 packed/).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await nextStep(page);
  await page.getByRole('heading', { name: 'Walk the site: check first', level: 1 }).waitFor();
  expect(await page.locator('.do').count()).toBe(0);
  expect(await page.locator('.gate .check').count()).toBeLessThanOrEqual(3);
  const heights = await page.locator('.check').evaluateAll((list) => list.map((row) => row.clientHeight));
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(64);
  await page.locator('.gate input').first().check({ force: true });
  await page.getByText(/^Checked \d/).waitFor();
  await page.getByText('2 checks left').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.reload();
  await page.getByText('2 checks left').waitFor();
  await passGates(page);
  await page.getByRole('heading', { name: 'Walk the site', exact: true, level: 1 }).waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await openAt(page, `#/plan/${id}`);
  await page.locator('.answer').waitFor();
  await openAt(page, `#/plan/${id}/raise`);
  await page.getByRole('heading', { name: 'Walk the site', exact: true, level: 1 }).waitFor();
  expect(complaints).toEqual([]);
});

test('a link to a later step does not lead past its cautions', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/raise/raise`);
  await page.getByRole('heading', { name: 'Raise the wire: check first', level: 1 }).waitFor();
  expect(await page.locator('.do').count()).toBe(0);
});

test('the bag is empty again on the way back, ticks cleared by a slip come back, and at the end it is down', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/raise/pack`);
  await page.locator('.item').first().click();
  await page.getByText(/^1 packed/).waitFor();
  await page.getByRole('button', { name: 'Clear the ticks' }).click();
  await page.getByText(/^0 packed/).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText(/^1 packed/).waitFor();
  await openAt(page, `#/plan/${id}/raise/leave`);
  await passGates(page);
  await page.getByText(/^0 packed/).waitFor();
  await page.getByRole('button', { name: 'Done, that was all' }).click();
  await page.getByRole('heading', { name: 'It is down', level: 1 }).waitFor();
  await page.getByRole('link', { name: 'Start again' }).click();
  await page.getByRole('heading', { name: 'Make the boxes', level: 1 }).waitFor();
  expect(await page.getByText(/^Done \d/).count()).toBe(0);
});
