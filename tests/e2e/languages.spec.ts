import { rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keepPlan, links, openScreen } from '../every-screen.mjs';
import { writeInventedLanguage } from '../invented-language.mjs';
import { desktop, openBrowser, phone } from './support/browser';
import { buildApp } from './support/build-app';
import { eachScreen } from './support/each-screen';
import { serveBuilt } from './support/serve';

const builds = resolve('node_modules/.cache/e2e', `invented-languages-${process.pid}`);

/** The app in a language that is none, built as one that is: by the switch alone. */
function buildIn(name: string): string {
  const words = join(builds, `${name}-words`);
  writeInventedLanguage(name, words);
  return buildApp(`in-${name}`, { HALYARD_LANGUAGE: words });
}
let built: Readonly<Record<string, string>>;

beforeAll(() => {
  built = { longer: buildIn('longer'), leftward: buildIn('leftward') };
});
afterAll(() => {
  for (const dir of [builds, ...Object.values(built)]) rmSync(dir, { recursive: true, force: true });
});

/**
 * Words that stick out of the window sideways, or are cut off by the box they stand in. What is there for screen readers alone, and the
 * drawings, whose words do not come from the catalogue, are left out.
 */
function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const wide = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > wide)
      found.add(`the page is ${document.documentElement.scrollWidth} wide`);
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
      const holder = text.parentElement;
      if (holder === null || text.nodeValue?.trim() === '' || holder.closest('.vh, .skip, svg, option') !== null)
        continue;
      // A table of many columns that is made for paper is pushed sideways in its own frame.
      if (!holder.checkVisibility() || holder.closest('.paper-table') !== null) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      const { left, right, top, bottom } = range.getBoundingClientRect();
      const words = (text.nodeValue ?? '').trim().slice(0, 60);
      if (left < -1 || right > wide + 1) found.add(`out of the window: ${words}`);
      for (let box: Element | null = holder; box !== null && box !== document.body; box = box.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(box);
        const control = box.matches('button, .btn, .seg, .bar, .bar a');
        const edge = box.getBoundingClientRect();
        const beside = left < edge.left - 1 || right > edge.right + 1;
        const beyond = top < edge.top - 2 || bottom > edge.bottom + 2;
        const out =
          (beside && (control || overflowX !== 'visible')) || (beyond && (control || overflowY !== 'visible'));
        if (out) found.add(`out of its ${box.tagName.toLowerCase()} ${box.className}: ${words}`);
      }
    }
    return [...found];
  });
}

test('the check sees words that do not fit', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await openScreen(page, url, '#/');
  expect(await misfits(page)).toEqual([]);
  await page.evaluate(() => {
    const button = document.createElement('button');
    button.textContent = 'Incomprehensibilities';
    button.style.width = '40px';
    document.querySelector('main')?.append(button);
  });
  expect(await misfits(page)).toEqual([expect.stringContaining('Incomprehensibilities')]);
});

test.each([
  { language: 'longer', on: 'a phone', options: phone, widths: [320, 360] },
  { language: 'longer', on: 'a desk', options: desktop, widths: [1280] },
  { language: 'leftward', on: 'a phone', options: phone, widths: [320, 360] },
  { language: 'leftward', on: 'a desk', options: desktop, widths: [1280] },
])('every screen holds the words of $language on $on', async ({ language, options, widths }) => {
  const { url } = await serveBuilt(built[language]);
  const { page, complaints } = await openBrowser(options);
  const faults: string[] = [];
  await eachScreen(page, url, async (name) => {
    for (const width of widths) {
      await page.setViewportSize({ width, height: 740 });
      faults.push(...(await misfits(page)).map((fault) => `${name}, ${width} px wide: ${fault}`));
    }
  });
  expect(faults).toEqual([]);
  expect(complaints).toEqual([]);
});

test.each([
  { name: 'longer', lang: 'en-XA', dir: 'ltr', title: 'Handha it overov', letters: /[a-z]/ },
  { name: 'leftward', lang: 'en-XB', dir: 'rtl', title: 'חאנד it סתהצ', letters: /[א-ת]/ },
])('the switch sets language, direction, words and home screen: $name', async ({ name, lang, dir, title, letters }) => {
  const { url } = await serveBuilt(built[name]);
  const { page } = await openBrowser();
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, `#/plan/${id}/share`);
  expect(await page.locator('h1').first().textContent()).toContain(title);
  expect(await page.locator('html').evaluate(({ lang, dir }: HTMLHtmlElement) => ({ lang, dir }))).toEqual({
    lang,
    dir,
  });
  const manifest = await (await fetch(`${url}manifest.webmanifest`)).json();
  expect(manifest).toMatchObject({ lang, dir, description: expect.stringMatching(letters) });
});

test('what points along the line of reading is mirrored with it, figures and drawn places are not', async () => {
  const shapes = async (name: string): Promise<Record<string, string>> => {
    const { url } = await serveBuilt(built[name]);
    const { page } = await openBrowser();
    const id = await keepPlan(page, url, links.sloper);
    const found: Record<string, string> = {};
    const note = async (
      what: string,
      selector: string,
      property: 'scale' | 'direction' | 'clipPath',
    ): Promise<void> => {
      found[what] = await page
        .locator(selector)
        .first()
        .evaluate((each, style) => getComputedStyle(each)[style], property);
    };
    await openScreen(page, url, `#/plan/${id}`);
    await note('back', '.up svg', 'scale');
    await note('wire', '.sky .d', 'scale');
    await note('tag', '.tag', 'clipPath');
    await note('site', '.d.site', 'scale');
    await note('site words', '.d.site', 'direction');
    await openScreen(page, url, `#/ask/${id}/heightM`);
    await note('field', 'input.number', 'direction');
    await note('pad', '.keys', 'direction');
    return found;
  };
  const [ltr, rtl] = [await shapes('longer'), await shapes('leftward')];
  const same = { site: 'none', 'site words': 'ltr', field: 'ltr', pad: 'ltr' };
  expect(ltr).toMatchObject({ back: 'none', wire: 'none', ...same });
  expect(rtl).toMatchObject({ back: '-1 1', wire: '-1 1', ...same });
  expect(rtl.tag).not.toBe(ltr.tag);
});

/** Texts with an English word in them. Citations, formulas and the names of countries are not of the catalogue of words; "and" is of Intl. */
const englishIn = (page: Page, own: string): Promise<string[]> =>
  page.evaluate((name) => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
      const words = (text.nodeValue ?? '').replaceAll(name, '').replace(/\band\b/g, '');
      if (text.parentElement?.closest('.source, .working, option') === null && /[a-z]{3,}/.test(words))
        found.push(words);
    }
    return found;
  }, own);

test('no sentence of the field screens is left in English when the words are not', async () => {
  const { url } = await serveBuilt(built.leftward);
  const { page } = await openBrowser();
  const id = await keepPlan(page, url, links.sloper);
  for (const screen of ['', '/shop', '/cut', '/raise', '/trim', '/which', '/surer']) {
    await openScreen(page, url, `#/plan/${id}${screen}`);
    expect([screen, await englishIn(page, 'Sloper from the pole')]).toEqual([screen, []]);
  }
});
