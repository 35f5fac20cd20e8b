/** The field screens on the smallest phones, held sideways, and with text at twice its size: nothing leaves the screen, nothing is lost. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { passGates } from '../every-screen.mjs';
import { openBrowser } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

const places = (id: string): readonly string[] => [
  `#/plan/${id}`,
  `#/plan/${id}/shop`,
  `#/plan/${id}/cut`,
  `#/plan/${id}/raise`,
  `#/plan/${id}/trim`,
  `#/why/${id}`,
];

async function eachPlace(page: Page, id: string, look: (place: string) => Promise<void>): Promise<void> {
  for (const place of places(id)) {
    await openAt(page, place);
    await page.locator('main h1, header h1').first().waitFor();
    if (place.endsWith('/cut')) await passGates(page);
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('details')) each.open = true;
    });
    await look(place);
  }
}

test.each([
  { size: '320 px wide', width: 320, height: 568 },
  { size: '412 px wide', width: 412, height: 915 },
  { size: 'sideways', width: 740, height: 360 },
])('no screen is wider than its window, $size', async ({ width, height }) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ viewport: { width, height }, hasTouch: true });
  const id = await withPlan(page, url, 'endFed');
  await eachPlace(page, id, async (place) => expect([place, await overflow(page)]).toEqual([place, 0]));
});

/** Texts of the page's own part that stand outside the window, to the right. */
const lost = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.clientWidth + 1;
    return [...document.querySelectorAll('main *')]
      .filter((each) => each.closest('.vh, svg') === null && each.getBoundingClientRect().right > wide)
      .map((each) => `${each.className}: ${each.textContent?.slice(0, 30)}`);
  });

test('with text at 200 % every screen still fits its width', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ viewport: { width: 360, height: 740 } });
  const id = await withPlan(page, url, 'endFed');
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await eachPlace(page, id, async (place) => expect([place, await lost(page)]).toEqual([place, []]));
});
