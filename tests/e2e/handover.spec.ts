import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { decodeQR } from 'qr/decode.js';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { keepPlan, links, openScreen } from '../every-screen.mjs';
import { answerFirstFour, copiedLink, goTo, openApp, saved, storedRecords } from './support/answering';
import { desktop, newProfile, openBrowser, phone, untilKeptOffline } from './support/browser';
import { pagesOf } from './support/pages-of';
import { serveBuilt } from './support/serve';

const shareTitle = 'Hand it over';

/** A screen of the first phone with the code on it, as a picture. */
async function codeShown(page: Page, url: string): Promise<Buffer> {
  await openApp(page, url);
  const id = await answerFirstFour(page);
  await goTo(page, `#/plan/${id}/share`, shareTitle);
  await page.locator('svg.qr').waitFor();
  return page.locator('svg.qr').screenshot();
}

async function textIn(picture: Buffer): Promise<string> {
  const { data, info } = await sharp(picture).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return decodeQR({ width: info.width, height: info.height, data: new Uint8ClampedArray(data) });
}

function photoFile(name: string, content: Buffer): string {
  const path = join(newProfile(), name);
  writeFileSync(path, content);
  return path;
}

test.each(['light', 'dark'] as const)('the code is dark on light and as wide as the phone, %s', async (colorScheme) => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser({ ...phone, colorScheme });
  const picture = await codeShown(page, url);
  const box = await page.locator('svg.qr').boundingBox();
  expect(box?.width).toBeGreaterThanOrEqual(320);
  expect(await textIn(picture)).toContain(`${url}#/receive/v1~`);
  const { data } = await sharp(picture)
    .extract({ left: 8, top: 8, width: 1, height: 1 })
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect(data[0]).toBe(255);
  expect(complaints).toEqual([]);
});

test('a plan crosses to a second phone by a photo of the code, with no server left', async () => {
  const server = await serveBuilt();
  const first = await openBrowser();
  const second = await openBrowser();
  await openApp(second.page, server.url);
  await untilKeptOffline(second.page);
  await second.page.reload();
  const picture = await codeShown(first.page, server.url);
  await server.stop();
  // A photo has more in it than the code, and the code is not straight in it.
  const photo = await sharp(picture)
    .rotate(7, { background: '#998' })
    .extend({ top: 300, left: 200, bottom: 90, right: 160, background: '#665' })
    .jpeg({ quality: 70 })
    .toBuffer();
  await goTo(second.page, '#/scan', 'Scan a plan');
  await second.page.locator('input[type=file]').setInputFiles(photoFile('photo.jpg', photo));
  await second.page.getByRole('heading', { name: 'A plan came with this link' }).waitFor();
  await second.page.getByRole('button', { name: 'Keep it on this phone' }).click();
  await second.page.getByRole('heading', { name: 'Plans', level: 1 }).waitFor();
  expect(await storedRecords(second.page, 'plans')).toHaveLength(1);
  expect(second.complaints.filter((line) => !line.includes('ERR_CONNECTION_REFUSED'))).toEqual([]);
});

test('a photo without a code, and a file that is no photo, say what to do', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, `${url}#/scan`);
  const grey = await sharp({ create: { width: 300, height: 300, channels: 3, background: '#777' } })
    .png()
    .toBuffer();
  await page.locator('input[type=file]').setInputFiles(photoFile('grey.png', grey));
  await page.getByRole('alert').getByText('There is no readable code in this photo.').waitFor();
  await page.locator('input[type=file]').setInputFiles(photoFile('text.png', Buffer.from('not a picture')));
  await page.getByRole('alert').getByText('This file is no picture').waitFor();
});

test('the camera starts after a tap, reads the code and is let go', async () => {
  const { url } = await serveBuilt();
  const first = await openBrowser();
  const picture = await codeShown(first.page, url);
  const frame = await sharp(picture)
    .resize(420, 420)
    .extend({ top: 30, bottom: 30, left: 110, right: 110, background: '#887' })
    .jpeg({ quality: 90 })
    .toBuffer();
  const film = photoFile('film.mjpeg', Buffer.concat([frame, frame, frame]));
  const second = await openBrowser({
    ...phone,
    args: [
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
  });
  await second.page.addInitScript(() => {
    const asked: string[] = [];
    const tracks: MediaStreamTrack[] = [];
    Object.assign(globalThis, { asked, tracks });
    const { mediaDevices } = navigator;
    const real = mediaDevices.getUserMedia.bind(mediaDevices);
    mediaDevices.getUserMedia = async (what) => {
      asked.push(JSON.stringify(what));
      const stream = await real(what);
      tracks.push(...stream.getTracks());
      return stream;
    };
  });
  await openApp(second.page, `${url}#/scan`);
  const asked = () => second.page.evaluate(() => (globalThis as unknown as { asked: string[] }).asked.length);
  expect(await asked()).toBe(0);
  await second.page.getByRole('button', { name: 'Use the camera' }).click();
  await second.page.getByRole('heading', { name: 'A plan came with this link' }).waitFor();
  expect(await asked()).toBe(1);
  const states = await second.page.evaluate(() =>
    (globalThis as unknown as { tracks: MediaStreamTrack[] }).tracks.map(({ readyState }) => readyState),
  );
  expect(states).toEqual(['ended']);
  expect(second.complaints).toEqual([]);
});

test('without a camera the screen says what else can be done', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, `${url}#/scan`);
  await page.getByRole('button', { name: 'Use the camera' }).click();
  await page
    .getByRole('alert')
    .getByText(/Take it from a photo|take it from a photo/)
    .waitFor();
  await page.getByRole('button', { name: 'Use the camera' }).waitFor();
});

test('the summary card is a picture with the code in it', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await codeShown(page, url);
  const card = page.locator('img.card');
  await card.waitFor();
  const alt = await card.getAttribute('alt');
  expect(alt).toMatch(/Overhead power lines:.*\d\sm \(\d+\sft/s);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Keep the picture' }).click();
  const file = readFileSync(await (await download).path());
  expect((await download).suggestedFilename()).toMatch(/\.png$/);
  const { width, height = 0 } = await sharp(file).metadata();
  expect(width).toBe(1080);
  expect(height).toBeGreaterThan(1200);
  expect(await textIn(file)).toContain('#/receive/v1~');
});

test('text and link are copied where the phone has no share sheet, and the file comes back in', async () => {
  const { url } = await serveBuilt();
  const { page, context } = await openBrowser();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await codeShown(page, url);
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await page.getByText('Copied.').first().waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('#/receive/v1~');
  await page.getByRole('button', { name: 'Copy as text' }).click();
  await page.getByText('Copied.').nth(1).waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/DANGER FIRST[\s\S]*CUT/);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Keep as a file' }).click();
  const path = await (await download).path();
  const other = await openBrowser();
  await openApp(other.page, `${url}#/receive`);
  await other.page.locator('input[type=file]').setInputFiles(path);
  await other.page.getByText('1 plan taken in.').waitFor();
});

test('what another app shares reaches Receive through the service worker, with the server gone', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  await openApp(page, server.url);
  await answerFirstFour(page);
  const link = await copiedLink(page);
  await untilKeptOffline(page);
  await page.reload();
  await server.stop();
  const share = (text: string) =>
    page.evaluate(async (shared) => {
      const body = new FormData();
      body.set('title', 'A plan');
      body.set('text', shared);
      return (await fetch('handed-in', { method: 'POST', body, redirect: 'manual' })).type;
    }, text);
  expect(await share(`Look: ${link}`)).toBe('opaqueredirect');
  await page.goto(`${server.url}#/receive/handed-in`);
  await page.getByRole('heading', { name: 'A plan came with this link' }).waitFor();
  await share('nothing of ours');
  await goTo(page, '#/receive/handed-in', 'Receive');
  await page.getByText('This is no link of a plan.').waitFor();
});

test('a file that the phone opens with the app is taken in', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.addInitScript(() => {
    const plan = { bands: ['40m'], radiator: 'inverted-v', fedAt: 'centre', shackEnd: 'radio', name: 'Opened' };
    const file = new File([JSON.stringify(plan)], 'plan.json', { type: 'application/json' });
    Object.defineProperty(globalThis, 'launchQueue', {
      value: {
        setConsumer: (consumer: (launch: object) => void) => consumer({ files: [{ getFile: async () => file }] }),
      },
    });
  });
  await openApp(page, url);
  await page.getByText('1 plan taken in.').waitFor();
  await saved(page);
  expect(await storedRecords(page, 'plans')).toHaveLength(1);
});

test.each(['A4', 'Letter'] as const)(
  'the print sheet is one flow of few pages, black on white, foldouts open, %s',
  async (format) => {
    const { url } = await serveBuilt();
    const { page } = await openBrowser({ ...desktop, colorScheme: 'dark' });
    await openApp(page, url);
    const id = await answerFirstFour(page);
    await page.evaluate((address) => {
      location.hash = address;
    }, `#/plan/${id}/sheet`);
    await page.locator('.sheet svg.qr').waitFor();
    const pages = pagesOf(await page.pdf({ format }));
    expect(pages).toBeGreaterThan(3);
    expect(pages).toBeLessThan(9);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.bar').isVisible()).toBe(false);
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    const sheet = page.locator('.sheet');
    expect(await sheet.evaluate((paper) => getComputedStyle(paper).color)).toBe('rgb(0, 0, 0)');
    expect(await sheet.locator('details:not([open])').count()).toBe(0);
    // Nothing that must stay whole is taller than a page: 260 mm at 96 dots to the inch.
    const tallest = await sheet
      .locator('.whole, figure, tr')
      .evaluateAll((parts) => Math.max(...parts.map((part) => part.clientHeight)));
    expect(tallest).toBeLessThan(980);
  },
);

test('the hand-over is worked by keyboard alone, and holds text of twice the size', async () => {
  const { url } = await serveBuilt();
  const { page, context } = await openBrowser({ ...phone, hasTouch: false });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, `#/plan/${id}/share`);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  const reached: string[] = [];
  const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
  for (let presses = 0; presses < 20 && !reached.includes('Copy the link'); presses++) {
    await page.keyboard.press('Tab');
    reached.push(await focused());
  }
  await page.keyboard.press('Enter');
  await page.getByText('Copied.').first().waitFor();
  expect(await focused()).toBe('Copy the link');
});
