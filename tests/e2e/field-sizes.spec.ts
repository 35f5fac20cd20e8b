/** Every screen on small and large phones, held upright and sideways, at a desk, and with text at twice its size: nothing leaves the screen, nothing is lost, and a glove finds its target. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { keepPlan, links, openScreen, passGates } from '../every-screen.mjs';
import { desktop, openBrowser, phone } from './support/browser';
import { eachScreen } from './support/each-screen';
import { overflow } from './support/invented-plan';
import { serveBuilt } from './support/serve';

/** Demand 10: 48 px and more for any target, 64 px for what is pressed in the field, 8 px between two. Links inside a sentence are none. */
const poorTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const nearest = 8;
    const found: string[] = [];
    const words = (each: Element): string =>
      `${each.tagName.toLowerCase()}.${each.className} "${(each.textContent ?? '').trim().slice(0, 30)}"`;
    const targets = [
      ...document.querySelectorAll('a[href], button, summary, select, textarea, input, label:has(input)'),
    ].filter((each) => each.checkVisibility({ visibilityProperty: true }) && !each.matches('.skip, label input, p a'));
    const boxes = targets.map((each) => ({
      each,
      box: each.getBoundingClientRect(),
      row: each.closest('.act, .bar, .top'),
    }));
    for (const { each, box } of boxes) {
      // A question is answered at a table too: where its window is low the whole pad in sight counts for more than 64 px.
      const isTight = each.matches('.ask .key') && innerHeight < 608;
      const least = each.matches('.btn.go, .btn.tall, .check, .item, .key') && !isTight ? 64 : 48;
      if (box.height < least - 0.5 || box.width < 47.5)
        found.push(`${Math.round(box.width)} by ${Math.round(box.height)}: ${words(each)}`);
    }
    boxes.forEach(({ each, box: a, row }, index) => {
      for (const { each: other, box: b, row: otherRow } of boxes.slice(index + 1)) {
        // A row that stays while the page moves below it is beside nothing.
        if (row !== otherRow || each.contains(other) || other.contains(each)) continue;
        const across = Math.max(a.left - b.right, b.left - a.right);
        const down = Math.max(a.top - b.bottom, b.top - a.bottom);
        if (Math.max(across, down) < nearest - 0.5)
          found.push(`${Math.max(across, down).toFixed(1)} between ${words(each)} and ${words(other)}`);
      }
    });
    return found;
  });

/** Texts of the page's own part that stand outside the window, to the right. */
const lost = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.clientWidth + 1;
    return [...document.querySelectorAll('main *')]
      .filter((each) => each.closest('.vh, svg') === null && each.getBoundingClientRect().right > wide)
      .map((each) => `${each.className}: ${each.textContent?.slice(0, 30)}`);
  });

/** Numbers whose unit stands on another line, and codes of cores and cables parted at their hyphen. */
const parted = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const whole = /[\d½]+\s(?:[kmc]?m|k?W|[kM]?Hz|k?V|m?A|k?Ω|dB|ft|%)(?![\p{L}\d])|(?:T\d+|RG)\u2060?-\u2060?\d+/gu;
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      if (node.parentElement?.closest('.vh, svg, option') !== null) continue;
      for (const { 0: words, index } of (node.nodeValue ?? '').matchAll(whole)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + words.length);
        const tops = [...range.getClientRects()].map(({ top }) => top);
        if (Math.max(...tops) - Math.min(...tops) > 8) found.push(words);
      }
    }
    return found;
  });

test('the check sees targets that are small and targets that are near', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openScreen(page, url, '#/');
  expect(await poorTargets(page)).toEqual([]);
  await page.evaluate(() => {
    const button = document.createElement('button');
    button.textContent = 'Too small';
    const second = button.cloneNode(true) as HTMLElement;
    second.style.marginInlineStart = '4px';
    const row = document.createElement('div');
    row.append(button, second);
    document.querySelector('main')?.append(row);
  });
  const faults = await poorTargets(page);
  expect(faults).toContainEqual(expect.stringMatching(/^\d+ by \d+: button\. "Too small"$/));
  expect(faults).toContainEqual(expect.stringMatching(/between button/));
});

test('the check sees a unit and a code that are parted', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openScreen(page, url, '#/');
  expect(await parted(page)).toEqual([]);
  await page.evaluate(() => {
    const narrow = document.createElement('p');
    narrow.style.width = '1px';
    narrow.textContent = '40 m and FT240-31, 40\u00a0m';
    document.querySelector('main')?.append(narrow);
  });
  expect(await parted(page)).toEqual(['40 m', 'T240-31']);
});

/** Every screen is opened once and then turned and stretched, as a phone or a window is. */
test.each([
  {
    on: 'a phone',
    options: phone,
    sizes: [
      { width: 320, height: 568 },
      { width: 360, height: 740 },
      { width: 412, height: 915 },
      { width: 740, height: 360 },
    ],
  },
  { on: 'a desk', options: desktop, sizes: [{ width: 1280, height: 800 }] },
])(
  'no screen is wider than its window, no unit leaves its number, and every target is for gloves: $on',
  async ({ options, sizes }) => {
    const { url } = await serveBuilt();
    const { page } = await openBrowser(options);
    const faults: string[] = [];
    await eachScreen(page, url, async (name) => {
      for (const size of sizes) {
        await page.setViewportSize(size);
        const seen = `${name}, ${size.width} by ${size.height}`;
        if ((await overflow(page)) !== 0) faults.push(`${seen} is wider than its window`);
        faults.push(...(await poorTargets(page)).map((fault) => `${seen}: ${fault}`));
        faults.push(...(await parted(page)).map((fault) => `${seen} parts ${fault}`));
      }
    });
    expect(faults).toEqual([]);
  },
  240_000,
);

/** Texts that letters twice as large leave as they were, or nearly. What is larger than a page's title is legible as it is. */
const notEnlarged = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const holders = new Set<Element>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const holder = node.parentElement;
      const isShown = holder?.checkVisibility() === true && holder.closest('.vh, svg, option') === null;
      if (isShown && node.nodeValue?.trim() !== '') holders.add(holder);
    }
    const size = (each: Element): number => Number.parseFloat(getComputedStyle(each).fontSize);
    const before = [...holders].map((each) => ({ each, px: size(each) }));
    const { style } = document.documentElement;
    style.fontSize = '200%';
    const found = before.flatMap(({ each, px }) => {
      const large = size(each);
      const isEnlarged = large >= px * 1.95 || large > 32;
      return isEnlarged ? [] : [`${px} to ${large} px: ${each.className}: ${each.textContent?.slice(0, 30)}`];
    });
    style.fontSize = '';
    return found;
  });

test('with text at 200 % every text is larger, and every screen still fits its width', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ viewport: { width: 360, height: 740 } });
  const faults: string[] = [];
  await eachScreen(page, url, async (name) => {
    faults.push(...(await notEnlarged(page)).map((fault) => `${name}: ${fault}`));
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    faults.push(...(await lost(page)).map((fault) => `${name}: ${fault}`));
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '';
    });
  });
  expect(faults).toEqual([]);
});

test('sideways, the whole number to cut stands above the action, and the action on the screen', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ ...phone, viewport: { width: 740, height: 360 } });
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, `#/plan/${id}/cut`);
  await passGates(page);
  const [number, feet, action] = await Promise.all(
    ['.call .num', '.call .feet', '.act .btn.go'].map((each) => page.locator(each).boundingBox()),
  );
  if (!number || !feet || !action) throw new Error('a part of the screen is not there');
  expect(feet.y + feet.height).toBeLessThanOrEqual(action.y);
  expect(action.y + action.height).toBeLessThanOrEqual(360);
  expect(number.height).toBeGreaterThanOrEqual(76); // demand 9: the one result of a screen, 8 mm
});

test.each(['left', 'right'] as const)('the main action is under the %s thumb', async (hand) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, '#/settings');
  await page.getByRole('radio', { name: hand === 'left' ? 'Left' : 'Right' }).check();
  if (hand === 'left') await page.locator('html[data-hand="left"]').waitFor({ state: 'attached' });
  for (const place of [`#/ask/${id}/fedAt`, `#/plan/${id}/cut`, `#/plan/${id}/raise`]) {
    await openScreen(page, url, place);
    const main = await page.locator('.act .btn').last().boundingBox();
    const other = await page.locator('.act .btn').first().boundingBox();
    if (!main || !other) throw new Error('no row of actions');
    expect(hand === 'left' ? main.x < other.x : main.x > other.x, place).toBe(true);
  }
  // The units change sides; figures stand in the order of every number pad.
  await openScreen(page, url, `#/ask/${id}/heightM`);
  const xOf = async (key: string): Promise<number> =>
    (await page.locator('.keys').getByRole('button', { name: key, exact: true }).boundingBox())?.x ?? Number.NaN;
  const [one, two, three, metres] = await Promise.all(['1', '2', '3', 'm'].map(xOf));
  expect([one < two, two < three]).toEqual([true, true]);
  expect(hand === 'left' ? metres < one : metres > three).toBe(true);
});
