import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { heading, storedRecords } from './support/answering';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { pagesOf } from './support/pages-of';
import { serveBuilt } from './support/serve';

const recordTitle = 'Record of an exposure evaluation';
const cardTitle = 'Cautions: Pear orchard';

/** The day by the phone's own clock, as people write it in files. */
const today = (page: Page): Promise<string> => page.evaluate(() => new Date().toLocaleDateString('sv-SE'));

test('the record is reached from the plan by keyboard, dated by the phone, and kept as a file', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.locator('summary#people').focus();
  await page.keyboard.press('Enter');
  const link = page.getByRole('link', { name: 'Exposure record to keep' });
  await link.focus();
  await page.keyboard.press('Enter');
  await heading(page, recordTitle);
  const day = await today(page);
  const paper = page.locator('article');
  await paper.getByText(`Made on ${day}, for: Pear orchard`).waitFor();
  const headings = await paper.getByRole('heading', { level: 2 }).allTextContents();
  expect(headings).toEqual(expect.arrayContaining(['Antenna and station', 'Method']));
  expect(headings.length).toBeGreaterThanOrEqual(4);
  expect(await paper.textContent()).not.toMatch(/\b(safe|undefined|NaN|null)\b/i);

  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Keep a copy' }).focus();
  await page.keyboard.press('Enter');
  const download = await coming;
  expect(download.suggestedFilename()).toBe(`pear-orchard-exposure-record-${day}.txt`);
  const text = readFileSync(await download.path(), 'utf8');
  expect(text).toContain(`Made on ${day}, for: Pear orchard`);
  expect(text).toMatch(/^LIMITS: /m);
  // Everything on the screen is in the file; there numbers and units, and the halves of a code, may stand apart.
  const plain = (words: string): string => words.replaceAll('\u00a0', ' ').replaceAll('\u2060', '');
  for (const line of await paper.locator('p, li, caption, th, td').allTextContents())
    expect(plain(text)).toContain(plain(line));

  await page.getByText(`A copy was kept on ${day}`).waitFor();
  await page.reload();
  await page.getByText(`A copy was kept on ${day}`).waitFor();
  expect(JSON.stringify(await storedRecords(page, 'plans'))).toContain('record:kept');
  expect(complaints).toEqual([]);
});

test('a copy older than an answer says so', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/record`);
  await heading(page, recordTitle);
  await page.getByRole('button', { name: 'Keep a copy' }).click();
  await page.getByText('A copy was kept on').waitFor();
  expect(await page.getByText('Answers have changed since then').count()).toBe(0);
  await openAt(page, `#/ask/${id}/powerW`);
  await page.locator('input[inputmode]').first().fill('50');
  await page.getByRole('button', { name: /^(Done|Next)$/ }).click();
  await openAt(page, `#/plan/${id}/record`);
  await page.getByText('Answers have changed since then').waitFor();
  await page.locator('article').getByText('Power 50 W').waitFor();
});

test.each(['A4', 'Letter'] as const)('the caution card stands on one page, %s', async (format) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ ...desktop, colorScheme: 'dark' });
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.locator('summary#people').click();
  await page.getByRole('link', { name: 'Cautions on one page' }).click();
  await heading(page, cardTitle);
  expect(pagesOf(await page.pdf({ format }))).toBe(1);
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
  expect(await page.locator('article').evaluate((paper) => getComputedStyle(paper).color)).toBe('rgb(0, 0, 0)');
  // 9 points, the size of a newspaper's text (common practice, no source).
  const sizePx = await page
    .locator('article li')
    .first()
    .evaluate((line) => Number.parseFloat(getComputedStyle(line).fontSize));
  expect(sizePx).toBeGreaterThanOrEqual(12);
});

test('the ground that must be free of overhead lines is drawn beside the first caution of the site', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/raise/walk-site`);
  await heading(page, 'Walk the site: check first');
  const drawing = page.getByRole('img', { name: /striped ground reaches/ });
  // The distance of the drawing is the one that the caution states.
  await openAt(page, `#/plan/${id}/card`);
  await heading(page, cardTitle);
  const told =
    /overhead line is nearer than (.+?)\./.exec((await page.locator('article').textContent()) ?? '')?.[1] ?? '';
  expect(told).toMatch(/^\d/);
  await openAt(page, `#/plan/${id}/raise/walk-site`);
  await drawing.waitFor();
  expect(await drawing.getAttribute('aria-label')).toContain(told);
  expect(await accessibilityFaults(page, { enhancedContrast: true })).toEqual([]);
  expect(await overflow(page)).toBe(0);
  expect(complaints).toEqual([]);
});
