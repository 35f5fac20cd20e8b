import { expect, test } from 'vitest';
import { answerFirstFour, done, goTo, heading, next, openApp, planId, saved } from './support/answering';
import { desktop, newProfile, openBrowser, phone } from './support/browser';
import { serveBuilt } from './support/serve';

test('a provisional answer stands at the third question, with the power lines before its length', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  await openApp(page, url);
  await page.getByRole('link', { name: 'New plan' }).click();
  await page.getByRole('checkbox', { name: '40 m', exact: true }).check();
  await next(page);
  await page.getByRole('radio', { name: 'Straight wire between two supports' }).check();
  await next(page);
  await heading(page, 'Where is it fed?');
  await page.getByText('Provisional').waitFor();
  const text = ((await page.locator('main').textContent()) ?? '').replaceAll('\u00a0', ' ');
  expect(text).toMatch(/So far: about [\d.]+ m \(\d+ ft.*\) of wire/);
  const firstLength = text.search(/\d+(\.\d+)? m \(/);
  expect(text.indexOf('Power lines:')).toBeGreaterThanOrEqual(0);
  expect(text.indexOf('Power lines:')).toBeLessThan(firstLength);
  expect(complaints).toEqual([]);
});

test('four answers lead to a plan, and back and forward lead through them as they were given', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  await answerFirstFour(page);
  await page.getByRole('heading', { name: 'The plan so far' }).waitFor();
  expect(await page.getByText('Provisional').count()).toBe(0);
  await page.goBack();
  await heading(page, 'Where is it fed?');
  expect(await page.getByRole('radio', { name: 'In the middle' }).isChecked()).toBe(true);
  await page.goBack();
  await heading(page, 'What is the radiator?');
  expect(await page.getByRole('radio', { name: 'Wire over one support, both ends low' }).isChecked()).toBe(true);
  await page.goForward();
  await heading(page, 'Where is it fed?');
  await page.reload();
  await heading(page, 'Where is it fed?');
  expect(await page.getByRole('radio', { name: 'In the middle' }).isChecked()).toBe(true);
});

test('a browser killed after an answer comes back to the same question with the same values, typed text included', async () => {
  const { url } = await serveBuilt();
  const profile = newProfile();
  const first = await openBrowser(phone, profile);
  await openApp(first.page, url);
  const id = await answerFirstFour(first.page);
  await goTo(first.page, `#/ask/${id}/heightM`, 'How high is the feed point?');
  await first.page.getByRole('textbox', { name: 'Height of the feed point' }).fill('13 ft 2');
  await saved(first.page);
  await first.page.waitForFunction(() => document.querySelector('.saved')?.textContent?.startsWith('Saved'));
  const address = first.page.url();
  await first.kill();

  const second = await openBrowser(phone, profile);
  await second.page.goto(address);
  await heading(second.page, 'How high is the feed point?');
  expect(await second.page.getByRole('textbox', { name: 'Height of the feed point' }).inputValue()).toBe('13 ft 2');
  await goTo(second.page, `#/ask/${id}/fedAt`, 'Where is it fed?');
  expect(await second.page.getByRole('radio', { name: 'In the middle' }).isChecked()).toBe(true);
});

test('what cannot be read says so beside the field with ways out, and keeps the text and all other answers', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/spanM`, 'How much room is there in a straight line?');
  const field = page.getByRole('textbox', { name: 'Room' });
  for (const [typed, says] of [
    ['', 'Nothing is typed yet.'],
    ['-4', 'below zero'],
    ['0', 'is zero'],
    ['about twenty', 'not a number'],
    ['20 yd', 'does not know the unit'],
    ['1,250', 'can be read in two ways'],
    ['9000', 'unusual here'],
    ['99999', 'more than Halyard can plan with'],
  ]) {
    await field.fill(typed ?? '');
    await done(page);
    const stop = page.locator('main .stop');
    await stop.getByText(says ?? '').waitFor();
    expect(await stop.getByRole('button').count(), typed).toBeGreaterThanOrEqual(2);
    expect(await field.inputValue()).toBe(typed);
    expect(await field.getAttribute('aria-invalid')).toBe('true');
  }
  await goTo(page, `#/ask/${id}/bands`, 'Which bands?');
  expect(await page.getByRole('checkbox', { name: '40 m', exact: true }).isChecked()).toBe(true);
});

test('a doubt about the unit is asked: 66 metres where 66 feet would fit', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/spanM`, 'How much room is there in a straight line?');
  await page.getByRole('textbox', { name: 'Room' }).fill('66');
  await done(page);
  await page.getByRole('button', { name: /I mean 20\.1\sm \(66\sft\)/ }).click();
  await heading(page, 'Make it surer');
  await goTo(page, `#/ask/${id}/spanM`, 'How much room is there in a straight line?');
  expect(await page.getByRole('textbox', { name: 'Room' }).inputValue()).toBe('20.1 m');
});

test('7100 typed for megahertz is asked about', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/focusMHz`, 'Which frequency shall it fit best?');
  await page.getByRole('textbox', { name: '40 m' }).fill('7100');
  await done(page);
  await page.getByRole('button', { name: 'I mean 7.1 MHz' }).click();
  await heading(page, 'Make it surer');
  await page.getByText('Frequency: 40 m: 7.1 MHz').waitFor();
});

test('the number pad writes what the field reads, by thumb alone', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/heightM`, 'How high is the feed point?');
  const pad = page.getByRole('region', { name: 'Number keys' });
  for (const key of ['3', '3', 'ft']) await pad.getByRole('button', { name: key, exact: true }).click();
  expect(await page.getByRole('textbox').inputValue()).toBe('33 ft ');
  for (const button of await pad.getByRole('button').all()) {
    const box = await button.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(64);
  }
  await done(page);
  await page.getByText('Height of the feed point: 10.1').waitFor();
});

test('changing an answer points out what changed in the plan, and Undo brings it back', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/bands`, 'Which bands?');
  await page.getByRole('checkbox', { name: '80 m', exact: true }).check();
  const strip = page.locator('.changed');
  await strip.getByText('Changed: Bands').waitFor();
  expect(await strip.locator('s').count()).toBeGreaterThan(1);
  await page.reload();
  await strip.getByText('Changed: Bands').waitFor();
  await strip.getByRole('button', { name: 'Undo' }).click();
  await strip.waitFor({ state: 'detached' });
  expect(await page.getByRole('checkbox', { name: '80 m', exact: true }).isChecked()).toBe(false);
});

test('"Not sure" says how to find out and goes on with a stand-in', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  await page.getByRole('link', { name: 'New plan' }).click();
  await heading(page, 'Which bands?');
  await page.getByRole('link', { name: 'Not sure' }).click();
  await page.getByText('Until you know, Halyard takes: 40 and 20 m.').waitFor();
  await page.getByRole('button', { name: 'Take that for now' }).click();
  await heading(page, 'What is the radiator?');
  await page.getByRole('link', { name: 'Not sure' }).click();
  await page.getByRole('heading', { name: 'How to find out' }).waitFor();
  await page.waitForFunction(() => document.activeElement?.textContent === 'How to find out');
  await page.getByRole('link', { name: 'Back to the question' }).waitFor();
  await page.getByRole('button', { name: 'Take that for now' }).click();
  await heading(page, 'Where is it fed?');
  await page.getByRole('link', { name: 'Not sure' }).click();
  await page.getByText('Until you know, Halyard takes: In the middle.').waitFor();
  await goTo(page, `#/ask/${planId(page)}/radiator`, 'What is the radiator?');
  expect(await page.getByRole('radio', { name: 'Wire over one support, both ends low' }).isChecked()).toBe(true);
});

test('an answer that no longer matters is kept and shown as not used', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/ask/${id}/endHeightM`, 'How high are the wire ends?');
  await page.getByRole('textbox').fill('2.5 m');
  await done(page);
  await goTo(page, `#/ask/${id}/radiator`, 'What is the radiator?');
  await page.getByRole('radio', { name: 'Upright wire or rod' }).check();
  await next(page);
  await page.getByRole('radio', { name: 'At the foot, against ground wires' }).check();
  await goTo(page, `#/plan/${id}/surer`, 'Make it surer');
  await page.getByRole('heading', { name: 'Kept, but not used now' }).waitFor();
  await page.getByText(/Height of the ends: 2\.50/).waitFor();
});

test('the questions can be answered with the keyboard alone', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(desktop);
  await openApp(page, url);
  await page.getByRole('link', { name: 'New plan' }).focus();
  await page.keyboard.press('Enter');
  await heading(page, 'Which bands?');
  const focused = () => page.evaluate(() => document.activeElement?.tagName);
  await page.waitForFunction(() => document.activeElement?.tagName === 'H1');
  await page.keyboard.press('Tab');
  expect(await focused()).toBe('INPUT');
  await page.keyboard.press('Space');
  await saved(page);
  await page.getByRole('button', { name: 'Next', exact: true }).focus();
  await page.keyboard.press('Enter');
  await heading(page, 'What is the radiator?');
  await page.waitForFunction(() => document.activeElement?.tagName === 'H1');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  expect(await page.getByRole('radio').first().isChecked()).toBe(true);
});

test('text at twice its size stays inside a phone and nothing is cut off', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  for (const [address, title] of [
    [`#/ask/${id}/bands`, 'Which bands?'],
    [`#/ask/${id}/radiator`, 'What is the radiator?'],
    [`#/ask/${id}/heightM`, 'How high is the feed point?'],
    [`#/plan/${id}/surer`, 'Make it surer'],
    ['#/settings', 'Settings'],
    ['#/on-hand', 'On hand'],
    ['#/', 'Plans'],
  ] as const) {
    await goTo(page, address, title);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '32px';
    });
    const [inside, wide] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(inside, address).toBeLessThanOrEqual(wide ?? 0);
  }
});
