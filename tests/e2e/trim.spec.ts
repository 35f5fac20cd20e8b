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
  await field.fill('6500');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByText('Did you mean kilohertz?').waitFor();
  expect(await field.inputValue()).toBe('6500');
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: '6.500 MHz' }).click();
  await page.getByRole('heading', { name: 'Too long for 40 m.' }).waitFor();
  await page.getByText('Fold back', { exact: true }).waitFor();
  await page.getByRole('heading', { name: 'What it does to all bands' }).waitFor();
  await page.getByText(/^40\sm at 7\.100\sMHz: fold back .*\u00a0m \(.*\) in all\.$/).waitFor();
  await page.getByText(/^40\sm: dip 6\.500\sMHz/).waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Done, measure again' }).click();
  // A fold that was a brush is taken back, and the instruction stands again.
  await page.getByText(/^It was .* when the dip was read\.$/).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Done, measure again' }).click();
  await page.getByLabel('Dip on 40 m, MHz').fill('6,7');
  await page.getByLabel(/^SWR at 7\.100\sMHz/).fill('1.9');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();
  await page.getByRole('heading', { name: /^Up 0\.200 MHz since/ }).waitFor();
  // What is seen is written behind it; a page that is gone before that has nothing to show.
  await expect
    .poll(async () => JSON.stringify(await storedRecords(page, 'plans')), { timeout: 10_000 })
    .toContain('"swr":1.9');
  await page.reload();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();
  await page.getByRole('button', { name: /^Remove: 40 m: dip 6\.700/ }).click();
  await page.getByText(/^Removed: 40\sm: dip 6\.700/).waitFor();
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();
  // How it hung is kept with the last reading and stands on the plan; what is written over it can be had back.
  const note = page.getByLabel('How it hung, weather');
  await note.fill('Over the oak fork, drizzle');
  await page.getByText('Over the oak fork, drizzle', { exact: true }).waitFor();
  await openAt(page, `#/plan/${id}`);
  await page.getByRole('heading', { name: 'Measured so far' }).waitFor();
  await page.getByText('Over the oak fork, drizzle', { exact: true }).waitFor();
  await openAt(page, `#/plan/${id}/sheet`);
  await page.locator('.sheet').getByText('Over the oak fork, drizzle', { exact: true }).waitFor();
  await openAt(page, `#/plan/${id}/trim`);
  await note.fill('Rain');
  await page.getByText('It said: Over the oak fork, drizzle').waitFor();
  await page.getByRole('button', { name: 'Undo' }).last().click();
  expect(await note.inputValue()).toBe('Over the oak fork, drizzle');
  await page.getByRole('button', { name: 'Trouble?' }).click();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.textContent), { timeout: 5000 })
    .toBe('When something is wrong');
  await page.getByRole('button', { name: 'Stop here' }).click();
  await page.getByRole('heading', { name: 'Trimming is over' }).waitFor();
  expect((await page.locator('.verdict-box b').boundingBox())?.height).toBeGreaterThanOrEqual(76);
  expect(await page.getByText(/^(Fold back|Let out)/).count()).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
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
