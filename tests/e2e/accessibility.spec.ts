import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { everyScreen, keepPlan, links, openScreen, passGates } from '../every-screen.mjs';
import { accessibilityFaults } from './support/axe';
import { desktop, openBrowser, phone } from './support/browser';
import { eachScreen } from './support/each-screen';
import { openAt } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test('no screen has a fault that axe finds by day, nor colours at fault by night, contrast of 7:1 included, foldouts open', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser(phone);
  const faults: string[] = [];
  const look = async (name: string): Promise<void> => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const asked = { enhancedContrast: true, coloursOnly: colorScheme === 'dark' };
      const found = await accessibilityFaults(page, asked);
      faults.push(...found.map((fault) => `${name}, ${colorScheme}: ${fault}`));
    }
  };
  const kindsOfQuestion = (id: string) =>
    ['bands', 'feedLine', 'country', 'feedImpedance'].map((question) => ({
      name: `ask-${question}`,
      path: `#/ask/${id}/${question}`,
    }));
  const missing = { name: 'no such plan', path: '#/ask/00000000-0000-4000-8000-000000000000/bands' };
  await eachScreen(page, url, look, (id) => [...kindsOfQuestion(id), missing]);
  expect(faults).toEqual([]);
  expect(complaints).toEqual([]);
}, 900_000);

test('axe sees a fault when there is one, and by night also one of colour alone', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto(url);
  await page.locator('h1').first().waitFor();
  await page.evaluate(() => {
    const pale = document.createElement('p');
    pale.textContent = 'Pale words';
    pale.style.cssText = 'color: #888; background: #000'; // 5.9:1
    document.querySelector('main')?.append(document.createElement('button'), pale);
  });
  const rulesOf = (faults: readonly string[]) => faults.map((fault) => fault.split(':')[0]);
  expect(rulesOf(await accessibilityFaults(page))).toEqual(['button-name']);
  const colours = await accessibilityFaults(page, { enhancedContrast: true, coloursOnly: true });
  expect(rulesOf(colours)).toEqual(['color-contrast-enhanced']);
});

/** Where the focus is, in a word: lost means on nothing at all. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (at === null || at === document.body || at === document.documentElement) return 'lost';
    return at.matches('h1, h2, [data-focus]') ? 'heading' : at.tagName.toLowerCase();
  });

test('the focus goes to the heading of every screen that is opened, and is never lost', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, '#/');
  for (const { name, path } of everyScreen(id).slice(1)) {
    await openAt(page, path);
    await page.waitForFunction((hash) => location.hash === hash && document.querySelector('h1') !== null, path);
    await expect
      .poll(() => focused(page), { message: name })
      .toMatch(name.startsWith('ask') ? /heading|input/ : 'heading');
  }
});

test('a plan that is opened before plans can be made has the focus on its heading all the same', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, '#/settings');
  await openAt(page, `#/plan/${id}`);
  await page.getByRole('heading', { level: 1, name: 'Sloper from the pole' }).waitFor();
  await expect.poll(() => focused(page)).toBe('heading');
});

test('the focus is never lost by what is done on a screen', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(desktop);
  const id = await keepPlan(page, url, links.sloper);
  const after = async (what: string, act: () => Promise<unknown>): Promise<void> => {
    await act();
    await page.evaluate(() => new Promise(requestAnimationFrame));
    await expect.poll(() => focused(page), { message: `after ${what}` }).not.toBe('lost');
  };
  const press = (name: string | RegExp) => async (): Promise<void> => {
    const named = { name, exact: typeof name === 'string' };
    const button = page.getByRole('button', named).or(page.getByRole('link', named)).first();
    await button.focus();
    await page.keyboard.press('Enter');
  };
  await openScreen(page, url, `#/plan/${id}/cut`);
  await passGates(page);
  await after('passing the cautions', () => page.locator('.call').waitFor());
  await after('the next piece', press('Cut, next'));
  await after('the piece before', press('Back'));
  await after('hold', press('Hold'));
  await after('letting go, A', press('A'));
  await after('letting go, B', press('B'));
  await openScreen(page, url, `#/plan/${id}/shop`);
  const tick = page.locator('.item input').first();
  await after('a tick', async () => {
    await tick.focus();
    await page.keyboard.press('Space');
  });
  await after('undo', press('Undo'));
  await openScreen(page, url, `#/plan/${id}`);
  await after('a length opened', async () => {
    await page.locator('button.len-key').first().focus();
    await page.keyboard.press('Enter');
  });
  await after('a length closed', () => page.keyboard.press('Escape'));
  await openScreen(page, url, '#/');
  await page.locator('details > summary').first().click();
  await after('deleting a plan', press(/^Delete/));
});

test('every stop of the Tab key shows where it is, and no row that stays covers it', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ viewport: { width: 360, height: 640 } });
  const id = await keepPlan(page, url, links.sloper);
  const faults: string[] = [];
  for (const path of [
    '#/',
    `#/ask/${id}/radiator`,
    `#/plan/${id}`,
    `#/plan/${id}/shop`,
    `#/plan/${id}/trim`,
    '#/settings',
  ]) {
    await openScreen(page, url, path);
    for (let stops = 0; stops < 200; stops++) {
      await page.keyboard.press('Tab');
      const seen = await page.evaluate(() => {
        const at = document.activeElement;
        if (at === null || at === document.body) return null;
        const ring = [at, at.closest('label')].some(
          (each) => each !== null && Number.parseFloat(getComputedStyle(each).outlineWidth) >= 3,
        );
        const { left, right, top, bottom } = (at.closest('label') ?? at).getBoundingClientRect();
        const there = document.elementFromPoint((left + right) / 2, Math.min((top + bottom) / 2, innerHeight - 1));
        const covered = there?.closest('.act, .bar') !== at.closest('.act, .bar');
        return { ring, covered, words: `${at.tagName} ${(at.textContent ?? '').slice(0, 30)}` };
      });
      if (seen === null) break;
      if (!seen.ring) faults.push(`${path}: no ring on ${seen.words}`);
      if (seen.covered) faults.push(`${path}: covered: ${seen.words}`);
    }
  }
  expect(faults).toEqual([]);
});
