/** Forced colours and reduced motion: the system's palette wins, and every sign is kept by a shape. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openScreen } from '../every-screen.mjs';
import { openBrowser, phone } from './support/browser';
import { eachScreen } from './support/each-screen';
import { serveBuilt } from './support/serve';

/** What is painted in the colour of what lies behind it: the ground of the element, or an earlier shape of the same picture. */
const unseen = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const shapes = 'svg :is(path, circle, rect, line, polyline, polygon, text)';
    const colours = (shape: Element): string[] => {
      const { stroke, fill } = getComputedStyle(shape);
      return [stroke, fill].filter((colour) => colour !== 'none');
    };
    const groundOf = (element: Element | null): string => {
      const colour = element === null ? 'rgb(255, 255, 255)' : getComputedStyle(element).backgroundColor;
      return element !== null && colour === 'rgba(0, 0, 0, 0)' ? groundOf(element.parentElement) : colour;
    };
    const found = new Set<string>();
    for (const shape of document.querySelectorAll(shapes)) {
      // Squared paper and what only covers the line behind it may vanish: neither tells anything. A code is black on white for the camera.
      if (!shape.checkVisibility({ visibilityProperty: true }) || shape.closest('defs, .q, .pp, .halo, .qr') !== null)
        continue;
      const svg = shape.closest('svg');
      const before = [...(svg?.querySelectorAll(shapes) ?? [])];
      const behind = [groundOf(svg), ...before.slice(0, before.indexOf(shape)).flatMap(colours)];
      const paints = colours(shape);
      if (!paints.some((colour) => behind.some((other) => other !== colour))) found.add(shape.outerHTML.slice(0, 120));
    }
    return [...found];
  });

test('in forced colours every stroke is seen, stripes are a double border, tags are square, what is chosen has a bold edge', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ ...phone, forcedColors: 'active' });
  const seen = { danger: 0, tags: 0, chosen: 0, places: 0 };
  await eachScreen(page, url, async (name) => {
    expect([name, await unseen(page)]).toEqual([name, []]);
    const shapes = await page.evaluate(() => {
      const styles = (selector: string) =>
        [...document.querySelectorAll(selector)]
          .filter((each) => each.checkVisibility())
          .map((each) => getComputedStyle(each));
      const chosen = styles('.choice:has(:checked), .seg:has(:checked), .seg.on, .btn[aria-pressed="true"]');
      return {
        danger: styles('.danger').map((style) => `${style.borderTopStyle} ${style.borderTopWidth}`),
        tags: styles('.tag').map((style) => `${style.clipPath} ${style.borderTopStyle} ${style.borderTopWidth}`),
        chosen: chosen.map((style) => Number.parseFloat(style.borderTopWidth)),
        places: styles('.bar a[aria-current]').map((style) => [style.borderTopColor, style.backgroundColor]),
      };
    });
    for (const border of shapes.danger) expect([name, border]).toEqual([name, 'double 8px']);
    for (const tag of shapes.tags) expect([name, tag]).toEqual([name, 'none solid 2px']);
    for (const width of shapes.chosen) expect(width, name).toBeGreaterThanOrEqual(5);
    for (const [edge, ground] of shapes.places) expect(edge, name).not.toBe(ground);
    seen.danger += shapes.danger.length;
    seen.tags += shapes.tags.length;
    seen.chosen += shapes.chosen.length;
    seen.places += shapes.places.length;
  });
  for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(3);
});

test('nothing moves: no transition and no animation anywhere, and with reduced motion no press either', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ ...phone, reducedMotion: 'reduce' });
  await eachScreen(page, url, async (name) => {
    const moving = await page.evaluate(() => {
      const found = [...document.querySelectorAll('*')].flatMap((each) => {
        const { transitionDuration, animationName } = getComputedStyle(each);
        const still = transitionDuration.split(', ').every((time) => time === '0s') && animationName === 'none';
        return still ? [] : [each.outerHTML.slice(0, 80)];
      });
      return { found, animations: document.getAnimations().length };
    });
    expect([name, moving]).toEqual([name, { found: [], animations: 0 }]);
  });
  await openScreen(page, url, '#/');
  const button = page.locator('.act .btn').first();
  await button.hover();
  await page.mouse.down();
  expect(await button.evaluate((each) => [each.matches(':active'), getComputedStyle(each).translate])).toEqual([
    true,
    'none',
  ]);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  expect(await button.evaluate((each) => getComputedStyle(each).translate)).toBe('0px 2px');
  await page.mouse.up();
});
