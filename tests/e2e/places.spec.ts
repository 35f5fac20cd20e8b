import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { answerFirstFour, goTo, heading, openApp, saved } from './support/answering';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, untilKeptOffline } from './support/browser';
import { openAt, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test('questions and places are clean to axe at a desk, contrast 7:1 included', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(desktop);
  await openApp(page, url);
  expect(await accessibilityFaults(page, { enhancedContrast: true })).toEqual([]);
  const id = await answerFirstFour(page);
  const ask = (question: string): string => `#/ask/${id}/${question}`;
  for (const [address, title] of [
    [ask('bands'), 'Which bands?'],
    [ask('radiator'), 'What is the radiator?'],
    [ask('fedAt'), 'Where is it fed?'],
    [`${ask('fedAt')}/not-sure`, 'Where is it fed?'],
    [ask('heightM'), 'How high is the feed point?'],
    [ask('focusMHz'), 'Which frequency shall it fit best?'],
    [ask('feedLine'), 'What line goes to the wire?'],
    [ask('country'), 'Which country?'],
    [ask('onHand'), 'Which of your parts may be used?'],
    [ask('name'), 'What do you call it?'],
    [ask('feedImpedance'), 'What does an analyser read?'],
    [`#/plan/${id}/surer`, 'Make it surer'],
    ['#/on-hand', 'On hand'],
    ['#/settings', 'Settings'],
    ['#/receive', 'Receive'],
    ['#/', 'Plans'],
    ['#/ask/00000000-0000-4000-8000-000000000000/bands', 'This plan is not on this phone.'],
  ] as const) {
    await goTo(page, address, title);
    expect(await accessibilityFaults(page, { enhancedContrast: true }), address).toEqual([]);
  }
});

test('feet first changes which unit stands first, and no length, typed digits included', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/heightM`, 'How high is the feed point?');
  await page.getByRole('textbox').fill('10 m');
  await page.getByRole('button', { name: 'Done' }).click();
  await heading(page, 'Make it surer');
  await goTo(page, `#/ask/${id}/endHeightM`, 'How high are the wire ends?');
  await page.getByRole('textbox').fill('2.5');
  await goTo(page, '#/settings', 'Settings');
  await page.getByRole('radio', { name: 'Feet first' }).check();
  await saved(page);
  await goTo(page, `#/ask/${id}/endHeightM`, 'How high are the wire ends?');
  expect(await page.getByRole('textbox').inputValue()).toBe('2.5 m');
  await goTo(page, `#/plan/${id}/surer`, 'Make it surer');
  await page.getByText(/Height of the feed point: 32\sft\s10\sin \(10\.0\sm\)/).waitFor();
  await page.reload();
  await page.getByText(/Height of the feed point: 32\sft\s10\sin \(10\.0\sm\)/).waitFor();
});

test('a plan made in feet is read in feet where the phone has no order of its own, in its sentences and its lengths alike', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed', { units: 'imperial' });
  await openAt(page, `#/plan/${id}`);
  const length = page.locator('main .len').first();
  await length.waitFor({ state: 'attached' });
  const feetFirst = /^\d+\sft.*\(\d.*m\)$/;
  await expect.poll(() => length.textContent()).toMatch(feetFirst);
  expect(await page.locator('main').textContent()).toMatch(/nearer than \d+\sft[^(]*\([\d.]+\sm\)/);
  await goTo(page, '#/settings', 'Settings');
  await page.getByRole('radio', { name: 'Metres first' }).check();
  await saved(page);
  await openAt(page, `#/plan/${id}`);
  await length.waitFor({ state: 'attached' });
  await expect.poll(() => length.textContent()).toMatch(/^\d.*m \(\d+\sft.*\)$/);
});

test('night and the left thumb are kept', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, `${url}#/settings`);
  await page.getByRole('radio', { name: 'Night' }).check();
  await page.getByRole('radio', { name: 'Left' }).check();
  await saved(page);
  await page.reload();
  await heading(page, 'Settings');
  const root = page.locator('html');
  expect([await root.getAttribute('data-light'), await root.getAttribute('data-hand')]).toEqual(['night', 'left']);
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(0, 0, 0)');
});

/** One file of the app goes from what the browser keeps. */
const loseOneFile = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    const cache = await caches.open(name);
    const file = (await cache.keys()).find(({ url: address }) => address.endsWith('.woff2'));
    if (file === undefined) throw new Error('no font is kept');
    await cache.delete(file);
  });

test('the check for no signal reads every file, tells which is gone or changed, and brings it back', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  await openApp(page, url);
  await untilKeptOffline(page);
  await page.reload();
  await page.getByText('Works with no signal').waitFor();
  await goTo(page, '#/settings', 'Settings');
  await page.getByRole('button', { name: 'Check now' }).click();
  await page.getByText(/^All \d+ parts of the app are on this phone/).waitFor();
  await page.getByText('A test record was written and read back.').waitFor();
  await loseOneFile(page);
  await page.getByRole('button', { name: 'Check now' }).click();
  await page.getByText(/^1 of \d+ parts of the app are not on this phone/).waitFor();

  // There, of the same length, but with one byte changed.
  await page.evaluate(async () => {
    const [name = ''] = await caches.keys();
    const cache = await caches.open(name);
    const sheet = (await cache.keys()).find(({ url: address }) => address.includes('.css'));
    const kept = sheet && (await cache.match(sheet));
    if (!sheet || !kept) throw new Error('no style sheet is kept');
    const bytes = new Uint8Array(await kept.arrayBuffer());
    bytes[bytes.length - 1] = 32;
    await cache.put(sheet, new Response(bytes, { headers: kept.headers }));
  });
  await page.getByRole('button', { name: 'Check now' }).click();
  await page.getByText(/^1 of \d+ parts of the app are on this phone but not as they were made/).waitFor();
  await page.getByText(/^1 of \d+ parts of the app are not on this phone/).waitFor();
  await page.getByRole('button', { name: 'Fetch them again' }).click();
  await page.getByText(/^All \d+ parts of the app are on this phone/).waitFor();
  expect(complaints).toEqual([]);
});

test('files that cannot be fetched again stay as they are, and the check says so', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, server.url);
  await untilKeptOffline(page);
  await page.reload();
  await goTo(page, '#/settings', 'Settings');
  await loseOneFile(page);
  await server.stop();
  await page.getByRole('button', { name: 'Check now' }).click();
  await page.getByRole('button', { name: 'Fetch them again' }).click();
  await page.getByText(/^1 of \d+ parts of the app are not on this phone/).waitFor();
});

test('a part on hand is checked as it is typed, kept, offered to a plan, and its removal can be undone', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, `${url}#/on-hand`);
  await page.getByRole('button', { name: 'Add a part' }).click();
  await page.getByRole('button', { name: 'Choke wound on a ring' }).click();
  await page.getByLabel('Rings stacked').fill('1');
  await page.getByLabel('Turns').fill('twelve');
  await page.getByRole('button', { name: 'Put it on the list' }).click();
  await page.getByText(/is not a number/).waitFor();
  expect(await page.getByLabel('Turns').inputValue()).toBe('twelve');
  await page.getByLabel('Turns').fill('12');
  await page.getByRole('button', { name: 'Put it on the list' }).click();
  const name = /1:1 choke, 12 turns of 5\smm coax/;
  await page.getByText(name).waitFor();
  await page.getByRole('button', { name: /^Remove/ }).click();
  await page.getByText(/^Removed/).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await saved(page);
  await page.reload();
  await page.getByText(name).waitFor();
  await goTo(page, '#/', 'Plans');
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/onHand`, 'Which of your parts may be used?');
  expect(await page.getByRole('checkbox', { name }).isChecked()).toBe(true);
});
