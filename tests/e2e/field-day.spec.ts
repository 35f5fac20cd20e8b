/**
 * One whole outing, moment by moment, on one phone: planned at a kitchen table with interruptions, shopped for, put up with no signal, trimmed,
 * kept, and planned anew on the way home. The outing is invented.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { passGates } from '../every-screen.mjs';
import { done, heading, next, openApp, planId, saved, storedRecords } from './support/answering';
import { newProfile, openBrowser, phone, untilKeptOffline } from './support/browser';
import { openAt, overflow } from './support/invented-plan';
import { serveBuilt } from './support/serve';

const bothUnits = /\d\u00a0m.*\d\u00a0(ft|in)/;

/** The evening before: three questions to a first length, a locked screen, a changed answer, the drawer ticked off. */
async function evening(page: Page, url: string): Promise<string> {
  await openApp(page, url);
  await page.getByRole('link', { name: 'New plan' }).click();
  await heading(page, 'Which bands?');
  for (const band of ['40 m', '20 m', '10 m']) await page.getByRole('checkbox', { name: band, exact: true }).check();
  await next(page);
  await heading(page, 'What is the radiator?');
  await page.getByRole('radio', { name: 'Wire over one support, both ends low' }).check();
  const soFar = page.getByText(/^So far: about /);
  await soFar.waitFor();
  expect(await soFar.textContent()).toMatch(bothUnits);
  await page.getByText('Provisional').first().waitFor();
  expect(await page.getByText('Touching one can kill').first().isVisible()).toBe(true);
  await saved(page);
  await page.reload(); // the doorbell, the screen locks
  await heading(page, 'What is the radiator?');
  expect(await page.getByRole('radio', { name: 'Wire over one support, both ends low' }).isChecked()).toBe(true);
  await next(page);
  await heading(page, 'Where is it fed?');
  await page.getByRole('radio', { name: 'At one end' }).check();
  await next(page);
  await heading(page, 'What is at the radio end?');
  await page.getByRole('radio', { name: 'Radio with a tuner inside' }).check();
  await saved(page);
  const id = planId(page);
  await openAt(page, `#/plan/${id}`);
  const answer = page.locator('.answer');
  await answer.waitFor();
  expect(await answer.textContent()).toMatch(/49:1 transformer[\s\S]*1:1 choke[\s\S]*2\.11\u00a0m \(6\u00a0ft/);
  const choke = page.locator('.node').filter({ hasText: '1:1 choke' }).first();
  await choke.getByText('Why', { exact: true }).click(); // why not at the box?
  expect(await choke.locator('.reasons p').first().isVisible()).toBe(true);
  await openAt(page, `#/ask/${id}/mode`);
  await page.getByRole('radio', { name: 'Digital' }).check();
  await page.locator('.changed s').first().waitFor(); // what changed, the old value struck through
  await openAt(page, `#/plan/${id}/shop`);
  const first = page.locator('.shelf .item').first();
  await first.waitFor();
  expect(await first.textContent()).toMatch(bothUnits);
  await first.click();
  await page.getByText(/^1 have/).waitFor();
  return id;
}

/** The park: no signal, cautions before any number, a call in between, a dip to the wrong unit, permission to stop. */
async function park(page: Page, id: string): Promise<void> {
  await openAt(page, `#/plan/${id}/cut`);
  await page.getByText('checks left').waitFor();
  expect(await page.locator('.num').count()).toBe(0);
  await passGates(page);
  await page.locator('.num').waitFor();
  expect((await page.locator('.num').boundingBox())!.height).toBeGreaterThan(76);
  expect(await page.locator('main').textContent()).toMatch(/finished, then .* spare/);
  await page.getByRole('button', { name: 'Cut, next' }).click();
  await page.getByText(/^piece 2 of /).waitFor();
  const kept = async (): Promise<string> => JSON.stringify(await storedRecords(page, 'plans'));
  await expect.poll(kept, { timeout: 20_000 }).toMatch(/"cut":\{"step":"(?!wire")/);
  await page.reload(); // the phone rings
  await page.getByText(/^piece 2 of /).waitFor();
  await page.getByRole('button', { name: 'Hold' }).click(); // rain
  await page.locator('dialog.holding').waitFor();
  await page.getByRole('button', { name: 'B', exact: true }).click();
  expect(await page.locator('dialog.holding').isVisible()).toBe(true);
  await page.getByRole('button', { name: 'A', exact: true }).click();
  await page.getByRole('button', { name: 'B', exact: true }).click();
  await page.getByText(/^piece 2 of /).waitFor();
  await openAt(page, `#/plan/${id}/trim`);
  const dip = page.getByLabel('Dip on 40 m, MHz');
  await dip.fill('6780');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByText('Did you mean kilohertz?').waitFor();
  await page.getByRole('button', { name: '6.780 MHz' }).click();
  await page.getByRole('heading', { name: 'Too long for 40 m.' }).waitFor();
  await page.getByRole('heading', { name: 'What it does to all bands' }).waitFor();
  await page.getByRole('button', { name: 'Done, measure again' }).click();
  await dip.fill('6,88');
  await page.getByLabel(/^SWR at 7\.100\sMHz/).fill('1.9');
  await page.getByRole('button', { name: 'Take it' }).first().click();
  await page.getByRole('heading', { name: 'Good enough: stop' }).waitFor();
  await page.getByRole('heading', { name: /^Up 0\.100 MHz since/ }).waitFor();
}

/** At home: the same antenna with twice the trouble, and only what changed. */
async function homeAgain(page: Page, id: string): Promise<void> {
  await openAt(page, '#/');
  await page.getByText(/Measured\. Dip at 6\.88\sMHz/).waitFor();
  await page.locator('details.manage summary').first().click();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  const copy = page.getByRole('heading', { name: /, copy$/ });
  await copy.waitFor();
  const address = (await page.locator('a.go-on').getAttribute('href')) ?? '';
  const copied = /[0-9a-f]{8}-[0-9a-f-]{27}/.exec(address)?.[0] ?? '';
  expect(copied).not.toBe(id);
  await openAt(page, `#/ask/${copied}/powerW`);
  const power = page.getByRole('textbox').first();
  await power.fill('400');
  await done(page);
  await openAt(page, `#/plan/${copied}`);
  await page.locator('.what-changed .changed').waitFor();
  expect(await page.locator('.what-changed').textContent()).toContain('400');
  expect(await overflow(page)).toBe(0);
  await openAt(page, `#/plan/${id}`);
  await page.locator('.answer').waitFor();
  expect(await page.locator('.what-changed').textContent()).not.toContain('400');
}

test('a day out, from the kitchen table to the way home', { timeout: 240_000 }, async () => {
  const server = await serveBuilt();
  const profile = newProfile();
  const { page, complaints } = await openBrowser(phone, profile);
  const id = await evening(page, server.url);
  await untilKeptOffline(page);
  await page.reload();
  await server.stop(); // no bars from here on
  await park(page, id);
  await homeAgain(page, id);
  expect(complaints).toEqual([]);
});
