import type { Page } from 'playwright-core';

/** Which build a page runs. */
export const versionOf = (page: Page): Promise<string | null> =>
  page.locator('meta[name="version"]').getAttribute('content');

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
