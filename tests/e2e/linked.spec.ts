import { expect, test } from 'vitest';
import { answerBands, heading, next, openApp, planId, saved } from './support/answering';
import { accessibilityFaults } from './support/axe';
import { openBrowser } from './support/browser';
import { openAt, overflow } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test('a wire with links, from the question to the last band trimmed', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  await openApp(page, url);
  await answerBands(page);
  await page.getByRole('radio', { name: 'One wire with links for each band' }).check();
  await next(page);
  await heading(page, 'What is at the radio end?'); // it is fed in its middle: nothing to ask
  await page.getByRole('radio', { name: 'Radio alone' }).check();
  await saved(page);
  const id = planId(page);

  await openAt(page, `#/plan/${id}`);
  await page.getByRole('rowheader', { name: /^Piece of the leg for 20 m/ }).waitFor();
  await page.getByText('of leg from the feed point to its outer end').first().waitFor();
  expect(await overflow(page)).toBe(0);

  await openAt(page, `#/plan/${id}/raise/change-links`);
  await heading(page, 'Change the band: check first');

  await openAt(page, `#/plan/${id}/trim`);
  await page.getByText('Links for 20 m, both legs alike: all open.').waitFor();
  await page.getByLabel('Dip on 20 m, MHz').fill('13,6');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByRole('heading', { name: 'Too long for 20 m.' }).waitFor();
  await page.getByText('Fold back at the 20 m link, in each leg', { exact: true }).waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);

  await page.getByRole('link', { name: /^40 m/ }).click();
  await page.getByText('Links for 40 m, both legs alike: all closed.').waitFor();
  await page.getByRole('link', { name: 'Trim 20 m first: its piece is part of 40 m' }).click();
  await page.getByRole('button', { name: 'Done, measure again' }).click();
  await page.getByLabel('Dip on 20 m, MHz').fill('14,17');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();

  await page.getByRole('link', { name: /^40 m/ }).click();
  await page.getByLabel('Dip on 40 m, MHz').fill('6,8');
  expect(await page.getByText('Trim 20 m first').count()).toBe(0);
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByText('Fold back at each end', { exact: true }).waitFor();

  // A fold on the higher band would now move the lower one too.
  await page.getByRole('link', { name: /^20 m/ }).click();
  await page.getByText('This piece is part of every lower band').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
});
