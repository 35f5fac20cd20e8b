import { rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { onTestFinished } from 'vitest';
import { buildApp } from './build-app';

/** Which build a page runs. */
export const versionOf = (page: Page): Promise<string | null> =>
  page.locator('meta[name="version"]').getAttribute('content');

/** A build that differs from the shared one in its version; removed after the test. */
export function buildVersion(version: string): string {
  const dir = buildApp(`version-${version}`, { HALYARD_VERSION: version });
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  return dir;
}

/** Asks for a newer version, as the app does now and then, and waits until one stands ready. */
export async function untilUpdateWaits(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (!registration.waiting) await new Promise((resolve) => setTimeout(resolve, 50));
  });
}

/** What the app sends when the person says yes. */
export async function letUpdateTakeOver(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { waiting } = await navigator.serviceWorker.ready;
    waiting?.postMessage({ type: 'SKIP_WAITING' });
  });
}

/** Resolves when the page has reloaded into the given build. */
export async function untilVersion(page: Page, version: string): Promise<void> {
  await page.locator(`meta[name="version"][content="${version}"]`).waitFor({ state: 'attached' });
}
