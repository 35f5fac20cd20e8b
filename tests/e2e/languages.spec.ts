import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { everyScreen, keepPlan, links, openScreen } from '../every-screen.mjs';
import { openBrowser, phone } from './support/browser';
import { serveBuilt } from './support/serve';

/** The app in words two fifths longer than English. */
const longer = resolve('node_modules/.cache/e2e', `longer-words-${process.pid}`);

beforeAll(() => {
  const { status, stderr, stdout } = spawnSync(process.execPath, ['tests/longer-words.mjs', longer], {
    env: { ...process.env, NODE_ENV: 'production' },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the app does not build in longer words:\n${stdout}\n${stderr}`);
});
afterAll(() => rmSync(longer, { recursive: true, force: true }));

/**
 * Words that stick out of the window sideways, or are cut off by the box they stand in. What is there for screen readers alone, and the
 * drawings, whose words do not come from the catalogue, are left out.
 */
function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const wide = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > wide)
      found.add(`the page is ${document.documentElement.scrollWidth} wide`);
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
      const holder = text.parentElement;
      if (holder === null || text.nodeValue?.trim() === '' || holder.closest('.vh, .skip, svg, option') !== null)
        continue;
      if (!holder.checkVisibility()) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const { left, right, top, bottom } = range.getBoundingClientRect();
      const words = (text.nodeValue ?? '').trim().slice(0, 60);
      if (left < -1 || right > wide + 1) found.add(`out of the window: ${words}`);
      for (let box: Element | null = holder; box !== null && box !== document.body; box = box.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(box);
        const control = box.matches('button, .btn, .seg, .bar, .bar a');
        const edge = box.getBoundingClientRect();
        const beside = left < edge.left - 1 || right > edge.right + 1;
        const beyond = top < edge.top - 2 || bottom > edge.bottom + 2;
        const out =
          (beside && (control || overflowX !== 'visible')) || (beyond && (control || overflowY !== 'visible'));
        if (out) found.add(`out of its ${box.tagName.toLowerCase()} ${box.className}: ${words}`);
      }
    }
    return [...found];
  });
}

test('the check sees words that do not fit', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openScreen(page, url, '#/');
  expect(await misfits(page)).toEqual([]);
  await page.evaluate(() => {
    const button = document.createElement('button');
    button.textContent = 'Incomprehensibilities';
    button.style.width = '40px';
    document.querySelector('main')?.append(button);
  });
  expect(await misfits(page)).toEqual([expect.stringContaining('Incomprehensibilities')]);
});

test.each([
  { writing: 'ltr', width: 360 },
  { writing: 'ltr', width: 320 },
  { writing: 'rtl', width: 360 },
])('every screen holds words two fifths longer, $width px wide, written $writing', async ({ writing, width }) => {
  const { url } = await serveBuilt(longer);
  const { page } = await openBrowser({ ...phone, viewport: { width, height: 740 } });
  const id = await keepPlan(page, url, links.sloper);
  const faults: string[] = [];
  let read = '';
  for (const { name, path } of everyScreen(id)) {
    await openScreen(page, url, path);
    await page.evaluate((direction) => {
      document.documentElement.dir = direction;
      for (const foldout of document.querySelectorAll('details')) foldout.open = true;
    }, writing);
    read += await page.locator('h1').first().textContent();
    faults.push(...(await misfits(page)).map((fault) => `${name}: ${fault}`));
  }
  // The words are really the longer ones.
  expect(read).toContain('Handha it overov');
  expect(faults).toEqual([]);
});
