/** Demand 24: a page that nobody touches does nothing at all: no timer, no frame, no request, no message, no change. */
import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { everyScreen, keepPlan, links, openScreen, passGates } from '../every-screen.mjs';
import { openBrowser, untilKeptOffline } from './support/browser';
import { serveBuilt } from './support/serve';

/** How long a still page is watched. */
const WATCHED_MS = 60_000;
/** A page has settled when it did nothing for so long: its workers tell of their progress more often. */
const SETTLED_MS = 5000;

/** The scan looks through the camera again and again, and the comparison works for as long as it is looked at. */
const atWork: readonly string[] = ['scan', 'which'];
/** One question of a kind is enough, a link received is a plan, and the card is a paper like the record. */
const like: readonly string[] = [
  'ask',
  'ask-fedAt',
  'ask-shackEnd',
  'ask-onHand',
  'ask-focusMHz',
  'ask-name',
  'received',
  'card',
];
/** Their gates are passed before other pages of the same plan stand open. */
const gated: readonly string[] = ['cut', 'raise'];

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
  for (const sender of [Worker, MessagePort, BroadcastChannel]) {
    const post = sender.prototype.postMessage as (...given: unknown[]) => void;
    Reflect.set(sender.prototype, 'postMessage', function (this: EventTarget, ...given: unknown[]) {
      counted(sender.name);
      return Reflect.apply(post, this, given);
    });
  }
  const Real = Worker;
  Reflect.set(
    globalThis,
    'Worker',
    class extends Real {
      constructor(...given: ConstructorParameters<typeof Worker>) {
        super(...given);
        this.addEventListener('message', () => counted('told by a worker'));
      }
    },
  );
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

/** Resolves when whatever the opening began has ended. */
async function untilSettled(page: Page): Promise<void> {
  for (let before = await doings(page); ; ) {
    await page.waitForTimeout(SETTLED_MS);
    const now = await doings(page);
    if (JSON.stringify(now) === JSON.stringify(before)) return;
    before = now;
  }
}

test('the watch sees a timer, a frame, a request, a message and a change', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.addInitScript(watch);
  await openScreen(page, url, '#/');
  const before = await doings(page);
  await page.evaluate(() => {
    setTimeout(() => undefined, 0);
    requestAnimationFrame(() => undefined);
    void fetch('robots.txt');
    new MessageChannel().port1.postMessage(0);
    new BroadcastChannel('any').postMessage(0);
    document.title += '.';
  });
  const after = await doings(page);
  for (const what of ['setTimeout', 'requestAnimationFrame', 'fetch', 'MessagePort', 'BroadcastChannel', 'change'])
    expect(after[what] ?? 0, what).toBeGreaterThan(before[what] ?? 0);
});

test('a page behind others goes on as the one in front does, and is seen to', async () => {
  const { url } = await serveBuilt();
  const { page, context } = await openBrowser();
  await page.addInitScript(watch);
  await openScreen(page, url, '#/');
  const inFront = await context.newPage();
  await openScreen(inFront, url, '#/');
  await inFront.bringToFront();
  const before = await doings(page);
  await page.evaluate(() => {
    const again = (): void => void setTimeout(again, 50);
    const nextFrame = (): void => void requestAnimationFrame(nextFrame);
    again();
    nextFrame();
  });
  for (const what of ['setTimeout', 'requestAnimationFrame'])
    await expect
      .poll(async () => (await doings(page))[what] ?? 0, { timeout: 30_000, message: what })
      .toBeGreaterThan((before[what] ?? 0) + 10);
});

/** Opens a screen in a page of its own. */
async function open(context: BrowserContext, url: string, { name, path }: { name: string; path: string }) {
  const page = await context.newPage();
  await openScreen(page, url, path);
  if (gated.includes(name)) await passGates(page);
  return { name, page };
}

test('a page left alone does nothing', async () => {
  const { url } = await serveBuilt();
  const { page, context } = await openBrowser();
  await context.addInitScript(watch);
  const id = await keepPlan(page, url, links.meadow);
  await untilKeptOffline(page);
  const screens = everyScreen(id)
    .filter(({ name }) => !atWork.includes(name) && !like.includes(name))
    .sort((one, other) => Number(gated.includes(other.name)) - Number(gated.includes(one.name)));
  const opened: Awaited<ReturnType<typeof open>>[] = [];
  for (const screen of screens) opened.push(await open(context, url, screen));
  await page.close();

  // Waiting keeps no processor busy: all are watched at once.
  await Promise.all(opened.map((each) => untilSettled(each.page)));
  const requests: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  const before = await Promise.all(opened.map((each) => doings(each.page)));
  await opened[0]?.page.waitForTimeout(WATCHED_MS);
  const after = await Promise.all(opened.map((each) => doings(each.page)));

  expect(requests).toEqual([]);
  for (const [index, { name }] of opened.entries()) {
    expect({ name, ...after[index] }).toEqual({ name, ...before[index] });
    expect(before[index]?.setInterval ?? 0, name).toBe(0);
    expect(before[index]?.animations, name).toBe(0);
  }
}, 900_000);
