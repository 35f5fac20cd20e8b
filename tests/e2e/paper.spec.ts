import type { Page } from 'playwright-core';
import { decodeQR } from 'qr/decode.js';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { openScreen, passGates } from '../every-screen.mjs';
import { desktop, openBrowser } from './support/browser';
import { withPlan } from './support/invented-plan';
import { type PrintedPage, printedPages } from './support/printed';
import { serveBuilt } from './support/serve';

/** Whatever a person may print, with the most pages that it takes: more would be gaps. */
const papers = {
  sheet: 8,
  record: 3,
  card: 1,
  plan: 11,
  shop: 3,
  cut: 1,
  raise: 2,
  trim: 4,
} as const;
/** The size of a newspaper's text, points (common practice, no source), less what is lost by whole pixels. */
const LEAST_PT = 8.95;

/** Without what leaves no ink: spaces, and the joiners that keep a code on one line. */
const bare = (text: string): string => text.replace(/[\s\u2060]+/g, '');

/** Every text that shows when printed, as it stands in the page; not what is for screen readers alone. */
const textsShown = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const range = document.createRange();
      range.selectNodeContents(node);
      const isSpoken = node.parentElement?.closest('.vh, title, [aria-hidden="true"]') !== null;
      if (!isSpoken && range.getClientRects().length > 0) found.push(node.textContent ?? '');
    }
    return found;
  });

/** In one piece, or in two where a page or a column ends in it. */
const isIn = (told: string, text: string): boolean =>
  told.includes(text) ||
  [...text].some((_, at) => at > 0 && told.includes(text.slice(0, at)) && told.includes(text.slice(at)));

const isCutOff =
  ({ box: [left, lower, right, upper] }: PrintedPage) =>
  ({ text, xPt, yPt, sizePt }: PrintedPage['glyphs'][number]): boolean =>
    text.trim() !== '' && (xPt < left || xPt + sizePt / 4 > right || yPt < lower || yPt + sizePt / 2 > upper);

/** Letters on which others stand. The same letter twice in one place is its outline and its filling. */
function overprinted({ glyphs }: PrintedPage): string[] {
  const inked = glyphs.filter(({ text }) => text.trim() !== '').sort((a, b) => a.yPt - b.yPt);
  return inked.flatMap((one, index) => {
    for (let at = index + 1; at < inked.length; at++) {
      const other = inked[at];
      if (other === undefined || other.yPt - one.yPt > one.sizePt / 2) return [];
      const isBeside = Math.abs(other.xPt - one.xPt) > one.sizePt / 5 || other.yPt - one.yPt < one.sizePt / 20;
      if (!isBeside) return [`${one.text} under ${other.text} at ${one.xPt}, ${one.yPt}`];
    }
    return [];
  });
}

/** Prints what is open on both papers and finds nothing missing, cut off, overprinted, too small or without its name. */
async function judgePaper(page: Page, most: number): Promise<string> {
  await page.emulateMedia({ media: 'print' });
  let told = '';
  for (const format of ['A4', 'Letter']) {
    const texts = await textsShown(page);
    const pages = printedPages(await page.pdf({ format, preferCSSPageSize: true }));
    const glyphs = pages.flatMap((each) => each.glyphs).filter(({ text }) => text.trim() !== '');
    told = bare(glyphs.map(({ text }) => text).join(''));
    expect(texts.length).toBeGreaterThan(5);
    expect(texts.filter((text) => !isIn(told, bare(text)))).toEqual([]);
    expect(pages.flatMap((each) => each.glyphs.filter(isCutOff(each)))).toEqual([]);
    expect(pages.flatMap(overprinted)).toEqual([]);
    expect(glyphs.filter(({ sizePt }) => sizePt < LEAST_PT)).toEqual([]);
    expect(pages.length).toBeLessThanOrEqual(most);
    pages.forEach(({ foot }, index) => {
      expect(foot).toMatch(/^Pear orchard\. Printed \S.*\d{4}\. /);
      expect(foot).toMatch(new RegExp(`${index + 1} / ${pages.length}$`));
    });
  }
  await page.emulateMedia({ media: null });
  return told;
}

test.each(Object.entries(papers))(
  'all that is printed is there, whole, large enough, and says on each page what it belongs to: %s',
  async (paper, most) => {
    const { url } = await serveBuilt();
    const { page } = await openBrowser(desktop);
    const id = await withPlan(page, url, 'endFed');
    await openScreen(page, url, `#/plan/${id}${paper === 'plan' ? '' : `/${paper}`}`);
    await judgePaper(page, most);
    if (paper !== 'cut') return;
    await passGates(page);
    await judgePaper(page, most);
  },
);

test.each(['sheet', 'cut', 'shop'] as const)('with feet first it is whole too: %s', async (paper) => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser(desktop);
  const id = await withPlan(page, url, 'endFed', { units: 'imperial' });
  await openScreen(page, url, `#/plan/${id}/${paper}`);
  if (paper === 'cut') await passGates(page);
  expect(await judgePaper(page, papers[paper])).toMatch(/\d+ft(\d+½?in)?\(?\d+\.\d+m/);
});

test('the code on the sheet is read from the paper', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser({ ...desktop, colorScheme: 'dark' });
  const id = await withPlan(page, url, 'endFed');
  await openScreen(page, url, `#/plan/${id}/sheet`);
  await page.emulateMedia({ media: 'print' });
  const code = page.locator('svg.qr');
  const { width = 0 } = (await code.boundingBox()) ?? {};
  expect(width).toBeGreaterThan(4 * 37.8); // 4 cm: a phone reads it from an arm's length (common practice, no source)
  const { data, info } = await sharp(await code.screenshot())
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  expect(decodeQR({ width: info.width, height: info.height, data: new Uint8ClampedArray(data) })).toContain(
    '#/receive/v1~',
  );
});
