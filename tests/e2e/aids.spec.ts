/** What the phone lends to the field screens: a screen that stays lit, and a voice. Both are faked as the standards describe them, since a test machine has neither. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { spokenLengthText } from '../../src/words/en/job-screens';
import { keepPlan, links, openScreen, passGates } from '../every-screen.mjs';
import { openBrowser } from './support/browser';
import { openAt } from './support/invented-plan';
import { serveBuilt } from './support/serve';

interface Lit {
  readonly litLog: string[];
  /** As the browser does it: a hidden page loses its lock. */
  hide(hidden: boolean): void;
}

/** Screen Wake Lock, W3C: `request` gives a sentinel; the browser releases it when the page is hidden. */
function lendScreen(): void {
  const log: string[] = [];
  let locks: { released: boolean }[] = [];
  let hidden = false;
  Object.defineProperty(document, 'visibilityState', { get: () => (hidden ? 'hidden' : 'visible') });
  Object.defineProperty(navigator, 'wakeLock', {
    value: {
      request: (type: string) => {
        const lock = {
          released: false,
          release: () => {
            lock.released = true;
            log.push('released');
            return Promise.resolve();
          },
        };
        locks.push(lock);
        log.push(`asked for ${type}`);
        return Promise.resolve(lock);
      },
    },
  });
  Object.assign(globalThis, {
    litLog: log,
    hide: (now: boolean) => {
      hidden = now;
      if (now) for (const lock of locks) lock.released = true;
      if (now) locks = [];
      document.dispatchEvent(new Event('visibilitychange'));
    },
  });
}

const litLog = (page: Page): Promise<string[]> => page.evaluate(() => [...(globalThis as unknown as Lit).litLog]);
const hide = (page: Page, hidden: boolean): Promise<void> =>
  page.evaluate((now) => (globalThis as unknown as Lit).hide(now), hidden);

test('the screen stays lit on Cut, is let go on leaving, and lit again when the phone comes back', async () => {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.addInitScript(lendScreen);
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, `#/plan/${id}`);
  expect(await litLog(page)).toEqual([]); // no permission and no lock before it is needed
  await openAt(page, `#/plan/${id}/cut`);
  await passGates(page);
  await page.locator('.call').waitFor();
  expect(await litLog(page)).toEqual(['asked for screen']);
  await hide(page, true);
  expect(await litLog(page)).toEqual(['asked for screen']);
  await hide(page, false);
  expect(await litLog(page)).toEqual(['asked for screen', 'asked for screen']);
  await openAt(page, `#/plan/${id}`);
  await page.locator('.call').waitFor({ state: 'detached' });
  expect(await litLog(page)).toEqual(['asked for screen', 'asked for screen', 'released']);
  await hide(page, true);
  await hide(page, false);
  expect(await litLog(page)).toHaveLength(3);
});

interface Voice {
  readonly name: string;
  readonly lang: string;
  readonly localService: boolean;
  readonly default: boolean;
}
interface Spoken {
  readonly spoken: { text: string; voice: string }[];
}

/** Web Speech API, W3C community group: `localService` tells whether a voice speaks without a server. */
function lendVoices(voices: readonly Voice[]): void {
  const spoken: { text: string; voice: string }[] = [];
  class Utterance {
    voice: Voice | null = null;
    lang = '';
    rate = 1;
    constructor(readonly text: string) {}
  }
  const synthesis = {
    getVoices: () => voices,
    cancel: () => undefined,
    speak: ({ text, voice }: Utterance) => spoken.push({ text, voice: voice?.name ?? '' }),
  };
  Object.defineProperty(globalThis, 'speechSynthesis', { value: synthesis });
  Object.assign(globalThis, { SpeechSynthesisUtterance: Utterance, spoken });
}

const server: Voice = { name: 'of a server', lang: 'en-US', localService: false, default: true };
const own: Voice = { name: 'of the phone', lang: 'en-GB', localService: true, default: false };
const foreign: Voice = { name: 'of another language', lang: 'fi-FI', localService: true, default: true };

async function sayFirstPiece(voices: readonly Voice[]): Promise<{ page: Page; shown: string[] }> {
  const { url } = await serveBuilt();
  const { page } = await openBrowser();
  await page.addInitScript(lendVoices, voices);
  const id = await keepPlan(page, url, links.sloper);
  await openScreen(page, url, `#/plan/${id}/cut`);
  await passGates(page);
  const shown = await page.locator('.call .num, .call .feet').allTextContents();
  expect(await spokenOn(page)).toEqual([]); // nothing sounds unasked
  await page.getByRole('button', { name: 'Say it' }).click();
  return { page, shown };
}
const spokenOn = (page: Page) => page.evaluate(() => (globalThis as unknown as Spoken).spoken);

test('a length is said by the phone’s own voice, in both units, as people say it', async () => {
  const { page, shown } = await sayFirstPiece([server, foreign, own]);
  const [metres = '', feet = ''] = shown;
  const [whole = 0, tenths = 0] = metres.split('.').map(Number);
  const [ft = 0, inches = 0] = feet.match(/\d+/g)?.map(Number) ?? [];
  const centimetres = tenths * (metres.split('.')[1]?.length === 1 ? 10 : 1);
  const text = spokenLengthText({ metres: whole, centimetres, feet: ft, inches, half: feet.includes('½') }, 'metric');
  expect(text).toMatch(/^[a-z-]+ point [a-z ]+ metres, [a-z -]+ feet\b/);
  expect(await spokenOn(page)).toEqual([{ text, voice: own.name }]);
});

test.each([
  { what: 'none', voices: [] },
  { what: 'one that needs a server', voices: [server] },
  { what: 'one of another language', voices: [foreign, server] },
])('without a voice that can say it ($what) the words stand on the screen', async ({ voices }) => {
  const { page, shown } = await sayFirstPiece(voices);
  const told = await page.getByRole('status').filter({ hasText: 'Read it out' }).textContent();
  expect(told).toMatch(/no English voice of its own/);
  expect(told).toMatch(/ metres, .* f(?:ee|oo)t/);
  expect(shown.length).toBe(2);
  expect(await spokenOn(page)).toEqual([]);
});
