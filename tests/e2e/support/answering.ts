import type { Page } from 'playwright-core';

/** Opens the app and waits until a screen stands. */
export async function openApp(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.locator('h1').first().waitFor();
}

export const heading = (page: Page, text: string) => page.getByRole('heading', { name: text, level: 1 }).waitFor();
export const next = (page: Page) => page.getByRole('button', { name: 'Next', exact: true }).click();
export const done = (page: Page) => page.getByRole('button', { name: 'Done', exact: true }).click();
export const saved = (page: Page) => page.getByText(/^Saved \d/).waitFor();

/** Begins a plan for 40 and 20 m, as far as the question what the radiator is. */
export async function answerBands(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'New plan' }).click();
  await heading(page, 'Which bands?');
  await page.getByRole('checkbox', { name: '40 m', exact: true }).check();
  await page.getByRole('checkbox', { name: '20 m', exact: true }).check();
  await next(page);
  await heading(page, 'What is the radiator?');
}

/** Answers the four first questions of a new plan: an inverted V for 40 and 20 m, radio alone. Returns the plan's id. */
export async function answerFirstFour(page: Page): Promise<string> {
  await answerBands(page);
  await page.getByRole('radio', { name: 'Wire over one support, both ends low' }).check();
  await next(page);
  await heading(page, 'Where is it fed?');
  await page.getByRole('radio', { name: 'In the middle' }).check();
  await next(page);
  await heading(page, 'What is at the radio end?');
  await page.getByRole('radio', { name: 'Radio alone' }).check();
  await saved(page);
  return planId(page);
}

/** The link of the first plan in the list, copied as a person would: from Plans by way of Hand it over. Leaves the page there. */
export async function copiedLink(page: Page): Promise<string> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await goTo(page, '#/', 'Plans');
  await page.locator('details.manage summary').first().click();
  await page.getByRole('link', { name: 'Hand it over' }).click();
  await heading(page, 'Hand it over');
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await page.getByText('Copied.').first().waitFor();
  return page.evaluate(() => navigator.clipboard.readText());
}

export function planId(page: Page): string {
  const id = /[0-9a-f]{8}-[0-9a-f-]{27}/.exec(page.url())?.[0];
  if (id === undefined) throw new Error(`no plan in the address ${page.url()}`);
  return id;
}

/** Goes to an address of the app without loading the page anew. */
export async function goTo(page: Page, address: string, title: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
  await heading(page, title);
}

/** What IndexedDB holds in a store, as it is. */
export const storedRecords = (page: Page, store: string): Promise<unknown[]> =>
  page.evaluate(
    (name) =>
      new Promise<unknown[]>((resolve, reject) => {
        const opening = indexedDB.open('halyard');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction(name).objectStore(name).getAll();
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result);
          };
        };
      }),
    store,
  );

export const putRecord = (page: Page, store: string, record: unknown): Promise<void> =>
  page.evaluate(
    ([name, value]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('halyard');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction(name as string, 'readwrite');
          tx.objectStore(name as string).put(value);
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [store, record] as const,
  );
