import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { inject, onTestFinished } from 'vitest';
import { type BrowserOptions, openContext } from '../../browser.mjs';

/** A phone held upright, as most people in a field have it. */
export const phone: BrowserOptions = {
  viewport: { width: 360, height: 740 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
};
export const desktop: BrowserOptions = { viewport: { width: 1280, height: 800 } };

export interface OpenedBrowser {
  readonly context: BrowserContext;
  readonly page: Page;
  /** What the pages complained about: console errors and uncaught exceptions, as text. */
  readonly complaints: readonly string[];
  /** Ends the browser's process at once, as an empty battery would. */
  kill(): Promise<void>;
  close(): Promise<void>;
}

/** A folder for a browser's storage; opening a browser on it again finds what the last one left. */
export function newProfile(): string {
  const dir = mkdtempSync(join(tmpdir(), 'halyard-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 }));
  return dir;
}

/** Opens a browser with one empty page on a profile; closed after the test if it is still open. */
export async function openBrowser(
  options: BrowserOptions = phone,
  profile: string = newProfile(),
): Promise<OpenedBrowser> {
  const context = await openContext(inject('browser'), profile, options);
  const complaints: string[] = [];
  const listen = (page: Page): void => {
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
  };
  context.on('page', listen);
  context.pages().forEach(listen);
  const page = context.pages()[0] ?? (await context.newPage());
  const closed = new Promise<void>((resolve) => context.on('close', () => resolve()));
  onTestFinished(() => context.close());
  return {
    context,
    page,
    complaints,
    kill: async () => {
      process.kill(processOf(profile), 'SIGKILL');
      await closed;
    },
    close: () => context.close(),
  };
}

/** The browser's main process, found by its profile: Playwright names none for a persistent context. */
function processOf(profile: string): number {
  const found = readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .find((name) => {
      try {
        const command = readFileSync(`/proc/${name}/cmdline`, 'utf8');
        return command.includes(`--user-data-dir=${profile}`) && !command.includes('--type=');
      } catch {
        return false; // it ended while we looked
      }
    });
  if (found === undefined) throw new Error(`no browser runs on ${profile}`);
  return Number(found);
}

/** Resolves when the whole app is kept on this browser: the service worker is active, its cache complete. */
export async function untilKeptOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
}
