import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyRecord } from '../empty-record.mjs';
import { answerFirstFour, copiedLink, goTo, heading, openApp, putRecord, storedRecords } from './support/answering';
import { newProfile, openBrowser, untilKeptOffline } from './support/browser';
import { serveBuilt } from './support/serve';

const ids = { a: '11111111-1111-4111-8111-111111111111', b: '22222222-2222-4222-8222-222222222222' };

test('a plan is copied, renamed, deleted, put back, and removed for good only after a yes', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  await answerFirstFour(page);
  await goTo(page, '#/', 'Plans');
  await page.locator('summary').click();
  await page.getByRole('button', { name: 'Rename' }).click();
  await page.getByLabel('Name of the plan').fill('Pear orchard');
  await page.getByRole('button', { name: 'Keep the name' }).click();
  await page.getByRole('heading', { name: 'Pear orchard' }).waitFor();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await page.getByRole('heading', { name: 'Pear orchard, copy' }).waitFor();

  await page.getByRole('button', { name: 'Delete' }).first().click();
  await page.getByText('Deleted: Pear orchard, copy.').waitFor();
  expect(await page.getByRole('heading', { name: 'Pear orchard, copy' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('heading', { name: 'Pear orchard, copy' }).waitFor();

  await page.locator('summary').first().click({ trial: true });
  if ((await page.getByRole('button', { name: 'Delete' }).count()) === 0) await page.locator('summary').first().click();
  await page.getByRole('button', { name: 'Delete' }).first().click();
  await goTo(page, '#/settings', 'Settings');
  await page.getByRole('button', { name: 'Remove for good' }).click();
  await page.getByText(/There is no way back/).waitFor();
  await page.getByRole('button', { name: 'Yes, remove it' }).click();
  await page.getByText(/There is no way back/).waitFor({ state: 'detached' });
  expect(await storedRecords(page, 'plans')).toHaveLength(1);
});

test('the file of all plans comes back on another phone, and what it cannot read is refused by name and reason', async () => {
  const { url } = await serveBuilt();
  const first = await openBrowser();
  await openApp(first.page, url);
  await answerFirstFour(first.page);
  await goTo(first.page, '#/', 'Plans');
  const [download] = await Promise.all([
    first.page.waitForEvent('download'),
    first.page.getByRole('button', { name: 'Keep all as a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^halyard-\d{4}-\d\d-\d\d\.json$/);
  const file = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(file.plans).toHaveLength(1);

  const bent = { ...emptyRecord, id: ids.a, answers: { name: 'Bent', bands: ['41m'] } };
  const newer = { version: 9, id: ids.b, answers: { name: 'From the future' } };
  const path = join(newProfile(), 'mixed.json');
  writeFileSync(path, JSON.stringify({ ...file, plans: [...file.plans, bent, newer] }));

  const second = await openBrowser();
  await openApp(second.page, `${url}#/receive`);
  await second.page.locator('input[type=file]').setInputFiles(path);
  await second.page.getByText('1 plan taken in.').waitFor();
  const report = (await second.page.locator('main').textContent()) ?? '';
  expect(report).toContain('2 records refused:');
  expect(report).toContain('Plan 2, Bent');
  expect(report).toMatch(/answers\.bands\[0\]: is "41m"; allowed: 160m/);
  expect(report).toContain('Plan 3, From the future was written by a newer version');
  expect(await storedRecords(second.page, 'plans')).toHaveLength(1);
  await second.page.locator('input[type=file]').setInputFiles(path);
  await second.page.getByText('1 plan was here already, the same.').waitFor();
});

test.each([
  ['a picture', '\u0089PNG not a file of ours', 'is not a file of plans'],
  ['another JSON', '{"shopping":["milk"]}', 'holds no plans'],
  ['a later file', '{"kind":"halyard-plans","version":2}', 'newer version'],
])('%s is refused whole, in words', async (_what, content, says) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, `${url}#/receive`);
  const path = join(newProfile(), 'file.json');
  writeFileSync(path, content);
  await page.locator('input[type=file]').setInputFiles(path);
  await page.getByRole('alert').getByText(says).waitFor();
  expect(await storedRecords(page, 'plans')).toHaveLength(0);
});

test('a plan crosses to another phone as a link, with no server left', async () => {
  const server = await serveBuilt();
  const first = await openBrowser();
  await openApp(first.page, server.url);
  await answerFirstFour(first.page);
  const link = await copiedLink(first.page);
  expect(link.length).toBeLessThan(140);

  const second = await openBrowser();
  await openApp(second.page, server.url);
  await untilKeptOffline(second.page);
  await second.page.reload();
  await server.stop();
  await second.page.goto(link);
  await second.page.getByRole('heading', { name: 'A plan came with this link' }).waitFor();
  await second.page.getByRole('button', { name: 'Keep it on this phone' }).click();
  await second.page.getByRole('heading', { name: /Inverted V, 40 and 20/ }).waitFor();
  await second.page.goto(`${link.slice(0, -9)}`);
  await second.page.getByText('The link is not whole.').waitFor();
});

test("two tabs see each other's changes, and neither overwrites the other's answer", async () => {
  const { url } = await serveBuilt();
  const { page, context } = await openBrowser();
  await openApp(page, url);
  const id = await answerFirstFour(page);
  const other = await context.newPage();
  await other.goto(`${url}#/ask/${id}/station`);
  await heading(other, 'Home or portable?');
  await goTo(page, `#/ask/${id}/indoors`, 'Does the wire hang indoors?');
  await other.getByRole('radio', { name: 'Portable' }).check();
  await page.getByRole('radio', { name: 'Yes' }).check();
  for (const tab of [page, other]) {
    await goTo(tab, `#/plan/${id}/surer`, 'Make it surer');
    await tab.getByText('Station: Portable').waitFor();
    await tab.getByText('Indoors: Yes').waitFor();
  }
  const [record] = (await storedRecords(page, 'plans')) as { answers: object }[];
  expect(record?.answers).toMatchObject({ station: 'portable', indoors: true, fedAt: 'centre' });
});

test('records of a newer version and broken ones are set aside, named, and never lost', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, url);
  const newer = { version: 9, id: ids.a, answers: { name: 'From the future' }, wings: 2 };
  const broken = { ...emptyRecord, id: ids.b, answers: { name: 'Bent', bands: ['41m'] } };
  await putRecord(page, 'plans', newer);
  await putRecord(page, 'plans', broken);
  await page.reload();
  await page.getByRole('heading', { name: 'Set aside' }).waitFor();
  await page.getByText(/From the future: written by a newer version/).waitFor();
  await page.getByText(/Bent: cannot be read/).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Take it out as a file' }).first().click(),
  ]);
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toEqual(newer);
  await answerFirstFour(page);
  expect(await storedRecords(page, 'plans')).toEqual(expect.arrayContaining([newer, broken]));
});

test('where nothing can be stored the screen says so and the answers stay on it', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('invented refusal', 'SecurityError');
    };
  });
  await openApp(page, url);
  await page.getByText(/does not let pages keep anything/).waitFor();
  await page.getByRole('link', { name: 'New plan' }).click();
  await page.getByRole('checkbox', { name: '40 m', exact: true }).check();
  await page.getByText('Not saved', { exact: true }).waitFor();
  expect(await page.getByRole('checkbox', { name: '40 m', exact: true }).isChecked()).toBe(true);
});
