import { expect, test } from 'vitest';
import { storedRecords } from './support/answering';
import { accessibilityFaults } from './support/axe';
import { newProfile, openBrowser, phone, untilKeptOffline } from './support/browser';
import { openAt, overflow, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

type Page = import('playwright-core').Page;

const number = (page: Page) => page.locator('main .num').textContent();
/** Turns are counted once the field study has settled them, which takes a busy machine its time. */
const settled = { timeout: 85_000 } as const;
const turns = (page: Page) => page.getByText(/^of \d+ turns$/).textContent();

test('turns are counted from the plan on, by a button as wide as the screen, by keys, and one back', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}`);
  await page.getByText('How to make it').first().click();
  await page.getByRole('link', { name: /^Count the turns: 49:1/ }).click();
  const more = page.getByRole('button', { name: 'One more turn' });
  await more.waitFor(settled);
  const box = (await more.boundingBox())!;
  expect(box.width).toBeGreaterThan(320);
  expect(box.height).toBeGreaterThan(150);
  expect((await page.locator('main .num').boundingBox())!.height).toBeGreaterThan(100);
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  await more.click();
  expect(await number(page)).toBe('1');
  const tap = page.getByText(/^\d+: tap here/);
  await page.locator('h1').focus();
  for (const key of ['Space', 'PageDown', 'ArrowRight', 'Enter'] as const) {
    if ((await tap.count()) > 0) break;
    await page.keyboard.press(key);
  }
  const at = await number(page);
  expect(await tap.textContent()).toContain(`${at}: tap here`);
  await page.keyboard.press('Enter');
  expect(await tap.count()).toBe(0);
  await page.getByRole('button', { name: 'Undo one' }).click();
  expect(await number(page)).toBe(at);
  expect(complaints).toEqual([]);
});

test('a count outlives the battery, is held against rain, and says when all turns are on', async () => {
  const server = await serveBuilt();
  const profile = newProfile();
  const first = await openBrowser(phone, profile);
  const id = await withPlan(first.page, server.url, 'endFed');
  await openAt(first.page, `#/plan/${id}/wind/transformer-feed-point`);
  await first.page.getByRole('button', { name: 'One more turn' }).waitFor(settled);
  await first.page.locator('h1').focus();
  for (let turn = 0; turn < 9; turn++) await first.page.keyboard.press('PageDown');
  const kept = async (): Promise<string> => JSON.stringify(await storedRecords(first.page, 'plans'));
  await expect.poll(kept, { timeout: 20_000 }).toContain('"step":"9"');
  await first.kill();

  const { page } = await openBrowser(phone, profile);
  await page.goto(`${server.url}#/plan/${id}/wind/transformer-feed-point`);
  await page.getByRole('button', { name: 'One more turn' }).waitFor(settled);
  expect(await number(page)).toBe('9');
  await page.getByRole('button', { name: 'Hold' }).click();
  const dialog = page.getByRole('dialog');
  await page.keyboard.press('PageDown');
  expect(await dialog.locator('.num').textContent()).toBe('9');
  await dialog.getByRole('button', { name: 'A' }).click();
  await dialog.getByRole('button', { name: 'B' }).click();
  const last = Number(/\d+/.exec((await turns(page))!)?.[0]);
  await page.locator('h1').focus();
  for (let turn = 9; turn < last; turn++) await page.keyboard.press('PageDown');
  await page.getByText(`${last} turns: all on. Look: ${last} in the hole, ${last - 1} round the outside.`).waitFor();
  await page.getByRole('button', { name: 'Count again' }).click();
  expect(await number(page)).toBe('0');
  await page.getByRole('button', { name: `Back to ${last}` }).click();
  expect(await number(page)).toBe(String(last));
  await page.getByRole('link', { name: /^Next: 1:1 choke/ }).click();
  await page.getByRole('heading', { name: /^1:1 choke/ }).waitFor();
  expect(await number(page)).toBe('0');
});

test('a lost count is set to what is seen in the hole, and a wet finger that bounces counts once', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/wind/transformer-feed-point`);
  const more = page.getByRole('button', { name: 'One more turn' });
  await more.waitFor(settled);
  await more.evaluate((button) => {
    for (const timeStamp of [5000, 5040, 5600]) {
      const click = new MouseEvent('click', { bubbles: true, detail: 1 });
      Object.defineProperty(click, 'timeStamp', { value: timeStamp });
      button.dispatchEvent(click);
    }
  });
  await expect.poll(() => number(page)).toBe('2');
  await page.getByText('The count is wrong').click();
  const seen = page.getByLabel('Passes you see in the hole, of this winding');
  await seen.fill('999');
  await page.getByRole('button', { name: 'Set the count' }).click();
  await page.getByText(/^Type a whole number from 0 to \d+\.$/).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await seen.fill('11');
  await page.getByRole('button', { name: 'Set the count' }).click();
  await expect.poll(() => number(page)).toBe('11');
});

test('the step that makes the boxes leads to the counting of each of them', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/raise/make-boxes`);
  const links = page.getByRole('link', { name: /^Count the turns: / });
  await links.first().waitFor();
  expect(await links.count()).toBeGreaterThan(1);
});

test('what a box shows with a resistor on is noted band by band, judged, and still there after a reload', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/box-test/transformer-feed-point`);
  await page.getByText('2.4 kΩ', { exact: true }).waitFor();
  // Until then the plan may come to another box.
  await expect.poll(() => page.locator('.underway').count(), settled).toBe(0);
  expect(await page.getByText(/^about 1\.\d:1$/).count()).toBe(3);
  const on40 = page.getByRole('textbox', { name: 'SWR you read on 40 m' });
  await on40.fill('1,3');
  await on40.press('Tab');
  await page.getByText(/^Good\. Noted/).waitFor();
  const on10 = page.getByRole('textbox', { name: 'SWR you read on 10 m' });
  await on10.fill('high');
  await on10.press('Tab');
  await page.getByText(/^SWR is a number from 1 up/).waitFor();
  expect(await on10.inputValue()).toBe('high');
  await on10.fill('2.6');
  await on10.press('Tab');
  await page.getByText(/^Something is wrong/).waitFor();
  expect(await overflow(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
  const kept = async (): Promise<string> => JSON.stringify(await storedRecords(page, 'plans'));
  await expect.poll(kept, { timeout: 20_000 }).toContain('"value":2.6');
  await page.reload();
  await page.getByText(/^Good\. Noted/).waitFor(settled);
  expect(await on40.inputValue()).toBe('1.3');
  expect(await on10.inputValue()).toBe('2.6');
  expect(complaints).toEqual([]);
});

/** A picture of so many pixels, made by the page itself: every pixel another colour, so that it is large as a file. */
const noisyPicture = (page: Page, widthPx: number, heightPx: number): Promise<number[]> =>
  page.evaluate(
    async ([wide, high]) => {
      const canvas = document.createElement('canvas');
      canvas.width = wide!;
      canvas.height = high!;
      const context = canvas.getContext('2d')!;
      const image = context.createImageData(wide!, high!);
      for (let i = 0, seed = 1; i < image.data.length; i++) {
        seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
        image.data[i] = i % 4 === 3 ? 255 : seed >> 16;
      }
      context.putImageData(image, 0, 0);
      const blob = await new Promise<Blob>((done) => canvas.toBlob((made) => done(made!), 'image/jpeg', 0.95));
      return [...new Uint8Array(await blob.arrayBuffer())];
    },
    [widthPx, heightPx],
  );

test('a photo of how it hung is made small, kept on the phone, shown on the plan, and taken away with a way back that outlives the battery', async () => {
  const { url } = await serveBuilt();
  const profile = newProfile();
  const { page, complaints, kill } = await openBrowser(phone, profile);
  const id = await withPlan(page, url, 'endFed');
  const buffer = Buffer.from(await noisyPicture(page, 1800, 1000));
  expect(buffer.length).toBeGreaterThan(600_000);
  await openAt(page, `#/plan/${id}/trim`);
  const add = page.getByLabel('Add a photo');
  await add.setInputFiles({ name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') });
  await page.getByText(/^This browser cannot read that file as a picture/).waitFor();
  await add.setInputFiles({ name: 'hung.jpg', mimeType: 'image/jpeg', buffer });
  const shown = page.getByRole('img', { name: /^How it hung: photo kept/ });
  await shown.waitFor();
  expect(
    await shown.evaluate((img: HTMLImageElement) => img.decode().then(() => img.naturalWidth)),
  ).toBeLessThanOrEqual(1600);
  const kept = (await storedRecords(page, 'photos')) as { jpeg: Record<string, number> }[];
  expect(kept).toHaveLength(1);
  expect(Object.keys(kept[0]!.jpeg).length).toBeLessThanOrEqual(400_000);
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
  await page.getByRole('button', { name: /^Take away the photo/ }).click();
  await shown.waitFor({ state: 'detached' });
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
  await kill();

  const next = (await openBrowser(phone, profile)).page;
  await next.goto(`${url}#/plan/${id}`);
  await next.locator('h1').first().waitFor();
  const again = next.getByRole('img', { name: /^How it hung: photo kept/ });
  expect(await again.count()).toBe(0);
  await openAt(next, `#/plan/${id}/trim`);
  await next.getByRole('button', { name: /^Put back the photo/ }).click();
  await again.waitFor();
  await openAt(next, `#/plan/${id}`);
  await again.waitFor();
  expect(await next.getByLabel('Add a photo').count()).toBe(0);
  await openAt(next, `#/plan/${id}/trim`);
  await next.getByRole('button', { name: /^Take away the photo/ }).click();
  const forGood = next.getByRole('button', { name: /^Delete for good the photo/ });
  const { x, y, width, height } = (await forGood.boundingBox())!;
  await next.mouse.dblclick(x + width / 2, y + height / 2);
  expect(await storedRecords(next, 'photos')).toHaveLength(1);
  await forGood.click();
  await next.getByText('Delete it for good? Nothing brings it back.').waitFor();
  await forGood.click();
  await forGood.waitFor({ state: 'detached' });
  expect(await storedRecords(next, 'photos')).toHaveLength(0);
});

test('a group reads two large numbers, choke out and in, computed until a second person types what the meter says', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await openAt(page, `#/plan/${id}/stand/40m`);
  const figures = page.locator('.column .figure:not(.none)');
  await expect.poll(() => figures.count(), { timeout: 60_000 }).toBe(2);
  expect(await page.getByText('computed', { exact: true }).count()).toBe(2);
  expect((await figures.first().boundingBox())!.height).toBeGreaterThanOrEqual(76);
  expect(await overflow(page)).toBe(0);
  for (const [label, text] of [
    ['On the wire, mA', '450'],
    ['On the coax, choke out, mA', '150'],
    ['On the coax, choke in, mA', '7,2'],
  ] as const) {
    const field = page.getByLabel(label);
    await field.fill(text);
    await field.press('Tab');
  }
  await page.getByText('about a third of the wire’s current').waitFor();
  await page.getByText('less than a fiftieth of the wire’s current').waitFor();
  await page.getByText('With the choke: less than a twentieth of what it was, 26 dB less.').waitFor();
  expect(await page.getByText('measured', { exact: true }).count()).toBe(2);
  const wrong = page.getByLabel('On the wire, mA');
  await wrong.fill('a lot');
  await wrong.press('Tab');
  await page.getByText(/^Type milliamps/).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.setViewportSize({ width: 1280, height: 800 });
  expect((await figures.first().boundingBox())!.height).toBeGreaterThan(150);
  expect(complaints).toEqual([]);
});

test('what is looked up in a hurry is two taps away with no signal: the box a shop offers, the climbing SWR, the slid choke', async () => {
  const { url } = await serveBuilt();
  const { page, context, complaints } = await openBrowser();
  const id = await withPlan(page, url, 'endFed');
  await untilKeptOffline(page);
  await page.reload();
  await page.locator('h1').first().waitFor();
  await context.setOffline(true);
  await openAt(page, `#/plan/${id}`);
  await page.getByRole('link', { name: 'Shop' }).click();
  await page.getByText('Offered transformer and choke in one box?').click();
  await page.getByText(/^A 49:1 with a choke inside/).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('link', { name: 'Trim' }).click();
  await page.getByText(/^The SWR climbs while/).click();
  await page.getByText(/^Go on with \d+\sW at most/).waitFor();
  await page.getByRole('button', { name: 'It moves' }).click();
  await page
    .getByText(/along the coax, counted from the box$/)
    .first()
    .waitFor();
  for (const [title, lastStep] of [
    [
      'Radio, key or computer plays up on one band',
      'Unplug one lead after the other: computer, key, microphone, second supply.',
    ],
    ['Noise: is it the feed line?', 'Switch off chargers, lamps, computer and vehicle one by one.'],
    ['Low SWR on the analyser, yet the radio turns down', 'Sweep twice with the analyser and compare.'],
    ['The pole is metal or carbon', /^Measure the dip, hold the wire 0\.50/],
  ] as const) {
    await openAt(page, `#/plan/${id}`);
    await page.getByRole('link', { name: 'Trim' }).click();
    await page.getByText(title, { exact: true }).click();
    await page.getByText(lastStep).waitFor();
  }
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
});
