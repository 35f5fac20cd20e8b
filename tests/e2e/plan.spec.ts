import { expect, test } from 'vitest';
import { roughly } from '../../src/advice/field-figures';
import { directInstrument } from '../../src/cli/field-instrument';
import type { Answers } from '../../src/design/answers';
import { studyField } from '../../src/plan/field-study';
import { makePlan } from '../../src/plan/make-plan';
import { plainKernels } from '../../src/solver/kernels';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, phone, untilKeptOffline } from './support/browser';
import { antennas, openAt, overflow, withPlan } from './support/invented-plan';
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
    expect(await page.getByRole('heading', { name: part, level: 2 }).count(), part).toBe(1);
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
  await page.getByText('How these lengths were found').click();
  await page.locator('#cuts').locator('xpath=ancestor::section').locator('.show-working summary').first().click();
  await page.locator('.working b', { hasText: '= ' }).first().waitFor();
});

test('what stops a plan says why, and a way out leads to the question', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'tooLong');
  await openAt(page, `#/plan/${id}`);
  const stop = page.locator('section.stop').filter({ hasText: 'does not fit' });
  await stop.waitFor();
  expect(await stop.getByRole('link').or(stop.getByRole('button')).count()).toBeGreaterThanOrEqual(2);
  await stop.getByRole('link', { name: 'Change: room' }).click();
  await page.waitForURL(/#\/ask\/.*spanM/);
});

test('a way out that is a changed answer is one tap: what changed is in sight with the focus, and undone by one more', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed', { feedLineRoute: 'along', spanM: 9, nearestPersonM: 0.3 });
  await openAt(page, `#/plan/${id}`);
  const warning = page.locator('.note').filter({ hasText: 'under or beside the wire' });
  await warning.locator('summary').first().click();
  const way = warning.getByRole('button', { name: /Way of the coax: Away at a right angle/ });
  expect((await way.boundingBox())!.height).toBeGreaterThanOrEqual(48);
  await way.click();
  const strip = page.locator('.changed');
  await strip.getByText('Way of the coax').waitFor();
  await warning.waitFor({ state: 'detached' });
  expect(await page.evaluate(() => document.activeElement?.contains(document.querySelector('.changed')))).toBe(true);
  await expect.poll(async () => (await strip.boundingBox())!.y).toBeLessThan(600);
  expect((await strip.boundingBox())!.y).toBeGreaterThanOrEqual(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await strip.getByRole('button', { name: 'Undo' }).click();
  await warning.waitFor();
  await strip.waitFor({ state: 'detached' });
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
  await page.locator('dialog').waitFor({ state: 'detached' });
});

test('the jump list puts the focus on the heading it names', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('On this page').click();
  await page.getByRole('button', { name: 'Bands', exact: true }).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('bands');
  await page.getByRole('button', { name: 'People near the antenna' }).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('people');
  expect(await page.locator('table.people').first().isVisible()).toBe(true);
});

test('a phone shows the plan in seven screens: each part folded under its one result, nothing dangerous with it', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('Worked out for this very antenna').waitFor({ timeout: 60_000 });
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(7.2 * 740);
  expect(await page.locator('#people .result').textContent()).toMatch(
    /^Nearest person: stay [\d.]+\u00a0m \(\d+\u00a0ft.*\) away$/,
  );
  expect(await page.locator('table.people').first().isVisible()).toBe(false);
  for (const part of ['.danger', '#chain', '#cuts']) expect(await page.locator(part).isVisible(), part).toBe(true);
});

test('what harms people stands open, not folded', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed', { nearestPersonM: 0.2, nearestPowerLineM: 5 });
  await openAt(page, `#/plan/${id}`);
  await page.locator('.answer').waitFor();
  for (const words of ['People are too near', 'Do not put it up here']) {
    const panel = page.locator('section.stop').filter({ hasText: words });
    expect(await panel.isVisible(), words).toBe(true);
    expect((await panel.boundingBox())!.y).toBeLessThan((await page.locator('.answer').boundingBox())!.y);
  }
});

test('a fold stays as it was left, through other screens and a reload; by key as by tap', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  const table = page.locator('table.people').first();
  await page.locator('#people').focus();
  await page.keyboard.press('Enter');
  await table.waitFor({ state: 'visible' });
  await openAt(page, `#/plan/${id}/shop`);
  await page.locator('.item').first().waitFor();
  await openAt(page, `#/plan/${id}`);
  await table.waitFor({ state: 'visible' });
  await page.reload();
  await table.waitFor({ state: 'visible' });
  await page.locator('#people').click();
  await table.waitFor({ state: 'hidden' });
  await page.reload();
  await page.locator('.answer').waitFor();
  expect(await table.isVisible()).toBe(false);
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
  expect(await page.locator('table.people').first().isVisible()).toBe(true);
  expect(await page.locator('.moment p').first().isVisible()).toBe(true);
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(255, 255, 255)');
  const pages = (await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? [];
  expect(pages.length).toBeLessThanOrEqual(9);
});

test('when the antenna is solved the plan says once what moved, and nothing on the screen leaps', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('working it out').first().waitFor();
  const note = page.locator('.study');
  const before = await note.boundingBox();
  const heading = page.locator('#chain');
  await heading.scrollIntoViewIfNeeded();
  const stood = await heading.boundingBox();
  await note.getByText('numbers moved').waitFor({ timeout: 60_000 });
  expect((await heading.boundingBox())!.y).toBeCloseTo(stood!.y, 0);
  expect((await note.boundingBox())!.height).toBeCloseTo(before!.height, 0);
  expect(await page.getByText('working it out').count()).toBe(0);
  await openAt(page, '#/');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('Worked out for this very antenna').waitFor();
  expect(await note.getByText('What moved').count()).toBe(0);
});

test('a solved plan tells the current on the coax, where it sends and the SWR of each band', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('Worked out for this very antenna').waitFor({ timeout: 60_000 });
  await page
    .getByText(/^SWR \d/)
    .first()
    .click();
  expect(await page.getByRole('img', { name: /^40 m, 7 to .*SWR (under 2:1|is nowhere)/ }).count()).toBe(1);
  await page.locator('#outside').click();
  const outside = page.locator('#outside').locator('xpath=ancestor::details');
  const rows = await outside.locator('tbody').first().getByRole('row').all();
  const told = await Promise.all(rows.map((row) => row.getByRole('cell').allInnerTexts()));
  // The same antenna, solved here: without chokes and as planned, to the digit and a half that are shown.
  const answers: Answers = { ...antennas.endFed, bands: [...antennas.endFed.bands] };
  const field = await studyField(answers, directInstrument(plainKernels));
  const solved = makePlan(answers, { field: field! }).fieldStudy!.bands;
  expect(told.map((row) => row.map(Number.parseFloat))).toEqual(
    solved.map(({ noChoke, planned }) => [noChoke, planned].map((state) => roughly(state!.entryMa))),
  );
  await page.locator('#sends').click();
  const sends = page.locator('#sends').locator('xpath=ancestor::details');
  await sends.getByText('20 m', { exact: true }).click();
  expect(
    await sends
      .getByRole('img', { name: /^From the side\./ })
      .first()
      .isVisible(),
  ).toBe(true);
}, 300_000);

test('other rings are planned with at a tap, and undone', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('How to make it').nth(1).click();
  await page.getByText('What if I only have other rings?').nth(1).click();
  await page.getByRole('button', { name: 'Plan with these: Only mix 43' }).first().click();
  await page
    .locator('.changed')
    .getByText(/61\smm ring, mix 43/)
    .first()
    .waitFor();
  const rings = page.locator('.other-rings').nth(1);
  await rings
    .locator('li')
    .filter({ has: page.locator('.chip'), hasText: 'Only mix 43' })
    .waitFor();
  await page.locator('.changed').getByRole('button', { name: 'Undo' }).click();
  await page.locator('.changed').waitFor({ state: 'detached' });
});
