/** For an operator who has not chosen an antenna: "Not sure" leads to a comparison, and any of it opens as the plan, with a way back. */
import { expect, test } from 'vitest';
import { heading, next, openApp, planId, storedRecords } from './support/answering';
import { openBrowser } from './support/browser';
import { serveBuilt } from './support/serve';

test('"Not sure" at the radiator leads to a ranked list; an antenna opens as the plan and can be taken back', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  await openApp(page, url);
  await page.getByRole('link', { name: 'New plan' }).click();
  await page.getByRole('checkbox', { name: '40 m', exact: true }).check();
  await page.getByRole('checkbox', { name: '20 m', exact: true }).check();
  await next(page);
  await heading(page, 'What is the radiator?');
  await page.getByRole('link', { name: 'Not sure' }).click();
  await page.getByRole('button', { name: 'Take that for now' }).waitFor();
  await page.getByRole('link', { name: 'Compare antennas for me' }).click();

  await heading(page, 'How much room is there in a straight line?');
  // 66 is the feet of a half-wave for 40 m: asked before there is a plan to tell it from.
  await page.getByRole('textbox', { name: 'Room' }).fill('66');
  await next(page);
  await page.getByText('Is another unit meant?').waitFor();
  await page.getByRole('textbox', { name: 'Room' }).fill('9 m');
  await next(page);
  await heading(page, 'How high is the highest support?');
  await page.getByRole('button', { name: 'Not sure' }).click();
  await heading(page, 'What is at the radio end?');
  await page.getByRole('radio', { name: 'Radio alone' }).check();
  await next(page);

  await heading(page, 'Which antenna?');
  const rows = page.locator('.candidate');
  await rows.first().waitFor();
  const texts = (await rows.allTextContents()).map((text) => text.replaceAll('\u00a0', ' '));
  expect(texts.length).toBeGreaterThanOrEqual(8);
  // A half-wave for 40 m is 20 m long: in 9 m of room what stands upright comes before it.
  expect(texts[0]).not.toContain('longer than your span');
  expect(texts.findIndex((text) => text.includes('vertical'))).toBeLessThan(
    texts.findIndex((text) => text.includes('centre-fed half-wave')),
  );

  const order = await page.locator('.candidate h2').allTextContents();
  const name = (await rows.first().getByRole('heading', { level: 2 }).textContent()) ?? '';
  await page.getByRole('button', { name: `Open as a plan: ${name}`, exact: true }).click();
  await page.waitForURL(/#\/plan\/[0-9a-f-]+$/);
  const id = planId(page);
  const answers = async () => {
    const records = (await storedRecords(page, 'plans')) as { id: string; answers: Record<string, unknown> }[];
    return records.find((record) => record.id === id)?.answers;
  };
  expect(await answers()).toMatchObject({ bands: ['40m', '20m'], spanM: 9, shackEnd: 'radio' });
  expect((await answers())?.radiator).toBeDefined();

  // What the antenna that was opened answers (its height, say) binds none of the others.
  await page.goBack();
  await heading(page, 'Which antenna?');
  await rows.first().waitFor();
  expect(await page.locator('.candidate h2').allTextContents()).toEqual(order);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => (await answers())?.radiator).toBeUndefined();
  expect(await answers()).toMatchObject({ spanM: 9 });
  expect(complaints).toEqual([]);
});

test('the fields of all that can be built come in while the list stands; it can be stopped, and sorted when they are there', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  await openApp(page, url);
  await page.getByRole('link', { name: 'New plan' }).click();
  await page.getByRole('checkbox', { name: '20 m', exact: true }).check();
  await next(page);
  await heading(page, 'What is the radiator?');
  await page.getByRole('link', { name: 'Not sure' }).click();
  await page.getByRole('link', { name: 'Compare antennas for me' }).click();
  for (const title of ['How much room is there in a straight line?', 'How high is the highest support?']) {
    await heading(page, title);
    await page.getByRole('button', { name: 'Not sure' }).click();
  }
  await heading(page, 'What is at the radio end?');
  await page.getByRole('button', { name: 'Not sure' }).click();
  await heading(page, 'Which antenna?');
  await page.getByRole('button', { name: 'Stop working it out' }).click();
  await page.getByRole('button', { name: 'Go on working it out' }).click();
  const names = page.locator('.candidate h2');
  const order = await names.allTextContents();
  const heights = () =>
    page.locator('section > ol > .candidate').evaluateAll((rows) => rows.map((row) => row.clientHeight));
  const before = await heights();
  const sort = page.getByRole('button', { name: /^(Put them in order by the fields|Bring the reasons up to date)$/ });
  await sort.waitFor({ timeout: 120_000 });
  expect(await names.allTextContents()).toEqual(order);
  expect(await heights()).toEqual(before);
  const buildable = page.locator('.candidate', { has: page.getByText('Radiated', { exact: true }) });
  expect(await buildable.count()).toBeGreaterThanOrEqual(8);
  expect(await buildable.getByText('…').count()).toBe(0);
  await sort.click();
  await page.getByText('In order by the fields at your place.').waitFor();
  expect([...(await names.allTextContents())].sort()).toEqual([...order].sort());
  expect(complaints).toEqual([]);
});
