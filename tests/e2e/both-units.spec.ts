/** Demand 5: no length stands on any screen in one unit alone. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openScreen } from '../every-screen.mjs';
import { openBrowser } from './support/browser';
import { eachScreen } from './support/each-screen';
import { serveBuilt } from './support/serve';

/**
 * Lengths of the page whose row, sentence or drawing does not name the other unit. A number with a point and "m" is a length; a whole number
 * with "m" is a band or a count of metres told in words, and feet are always a length. Workings are in SI, as their formulas are.
 */
const inOneUnit = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const metres = /\d[.,]\d+\sm(?![\p{L}\d²³/])/u;
    const feet = /\d½?\s(ft|in)(?!\p{L})/u;
    const found: string[] = [];
    const words = document.createTreeWalker(document.querySelector('main') ?? document.body, NodeFilter.SHOW_TEXT);
    while (words.nextNode()) {
      const node = words.currentNode;
      const text = node.textContent ?? '';
      const wants = metres.test(text) ? feet : feet.test(text) ? metres : null;
      const holder = node.parentElement;
      if (wants === null || holder === null || holder.closest('.working, script, style') !== null) continue;
      // The other unit may be the next object of the same row: bold metres, feet below, labels of one mark, a number over its unit as a word.
      const around = [holder, holder.parentElement, holder.parentElement?.parentElement];
      const other = wants === feet ? feet : /\d\s?m(etres)?(?!\p{L})/u;
      if (!around.some((each) => each && other.test(each.textContent ?? ''))) found.push(text.trim().slice(0, 80));
    }
    return [...new Set(found)];
  });

test('the check sees a length in one unit', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openScreen(page, url, '#/');
  await page.evaluate(() => {
    const lengths = ['Cut 20.1\u00a0m.', 'Cut 66\u00a0ft.', 'Cut 20.1\u00a0m (66\u00a0ft).', 'Works on 40 m.'];
    const rows = lengths.map((each) => {
      const words = document.createElement('p');
      words.textContent = each;
      const row = document.createElement('div');
      row.append(document.createElement('div'));
      row.firstElementChild?.append(words);
      return row;
    });
    document.querySelector('main')?.replaceChildren(...rows);
  });
  expect(await inOneUnit(page)).toEqual(['Cut 20.1\u00a0m.', 'Cut 66\u00a0ft.']);
});

test('every length of every screen stands in metres and in feet', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const faults: string[] = [];
  await eachScreen(page, url, async (name) => {
    faults.push(...(await inOneUnit(page)).map((fault) => `${name}: ${fault}`));
  });
  expect(faults).toEqual([]);
}, 240_000);
