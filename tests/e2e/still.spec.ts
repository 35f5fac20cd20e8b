/** Demand 24: a page that nobody touches does nothing at all: no timer, no frame, no request, no change. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { keepPlan, links, openScreen, passGates } from '../every-screen.mjs';
import { openBrowser, untilKeptOffline } from './support/browser';
import { serveBuilt } from './support/serve';

/** How long a still page is watched. What repeats less often than that would not be seen, and would hardly cost a battery either. */
const WATCHED_MS = 6000;

/** Counts what the page sets going, from its first script on. */
function watch(): void {
  const counts: Record<string, number> = {};
  const counted = (name: string): void => {
    counts[name] = (counts[name] ?? 0) + 1;
  };
  for (const name of ['setTimeout', 'setInterval', 'requestAnimationFrame', 'requestIdleCallback', 'fetch'] as const) {
    const real = Reflect.get(globalThis, name) as (...given: unknown[]) => unknown;
    Reflect.set(globalThis, name, (...given: unknown[]) => {
      counted(name);
      return real.apply(globalThis, given);
    });
  }
  const transaction = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...given) {
    counted('storage');
    return transaction.apply(this, given);
  };
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (...given: unknown[]) {
    counted('worker');
    return Reflect.apply(post, this, given);
  };
  addEventListener('DOMContentLoaded', () => {
    new MutationObserver(() => counted('change')).observe(document, {
      subtree: true,
      childList: true,
      attributes: true,
      characterData: true,
    });
  });
  Object.assign(globalThis, {
    stillness: () => ({ ...counts, animations: document.getAnimations().length }),
  });
}
const doings = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(() => (globalThis as unknown as { stillness(): Record<string, number> }).stillness());

/** Resolves when two seconds went by in which nothing was set going: whatever the opening began has ended. */
async function untilSettled(page: Page): Promise<void> {
  for (let before = await doings(page); ; ) {
    await page.waitForTimeout(2000);
    const now = await doings(page);
    if (JSON.stringify(now) === JSON.stringify(before)) return;
    before = now;
  }
}

test('the watch sees a timer, a frame, a request and a change', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.addInitScript(watch);
  await openScreen(page, url, '#/');
  const before = await doings(page);
  await page.evaluate(() => {
    setTimeout(() => undefined, 0);
    requestAnimationFrame(() => undefined);
    void fetch('robots.txt');
    document.title += '.';
  });
  const after = await doings(page);
  for (const what of ['setTimeout', 'requestAnimationFrame', 'fetch', 'change'])
    expect(after[what] ?? 0, what).toBeGreaterThan(before[what] ?? 0);
});

/** Opens a screen of a plan in a browser of its own and says what it did while it was watched. */
async function leftAlone(url: string, screen: string) {
  const { page, context } = await openBrowser();
  await page.addInitScript(watch);
  const id = await keepPlan(page, url, links.meadow);
  await untilKeptOffline(page);
  await openScreen(page, url, `#/plan/${id}${screen}`);
  if (screen === '/cut' || screen === '/raise') await passGates(page);
  await untilSettled(page);
  const requests: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  const before = await doings(page);
  await page.waitForTimeout(WATCHED_MS);
  return { screen, before, after: await doings(page), requests };
}

test('a page left alone does nothing', async () => {
  const { url } = await serveBuilt();
  // Waiting keeps no processor busy: all are watched at once.
  const watched = await Promise.all(
    ['', '/shop', '/cut', '/raise', '/trim', '/share'].map((screen) => leftAlone(url, screen)),
  );
  for (const { screen, before, after, requests } of watched) {
    expect({ screen, ...after, requests }).toEqual({ screen, ...before, requests: [] });
    expect(before.setInterval ?? 0, screen).toBe(0);
    expect(before.animations, screen).toBe(0);
  }
}, 240_000);
