import type { Page } from 'playwright-core';
import type { Answers } from '../../../src/design/answers';
import { emptyRecord } from '../../empty-record.mjs';
import { openApp, putRecord } from './answering';

/** Invented antennas, answered in full, as the app keeps them. */
export const antennas = {
  /** Portable end-fed over a pole: gates, chokes, multiples to trim. */
  endFed: {
    name: 'Pear orchard',
    bands: ['40m', '20m', '10m'],
    radiator: 'inverted-v',
    fedAt: 'end',
    shackEnd: 'radio',
    station: 'portable',
    heightM: 1.2,
    endHeightM: 3,
    supportHeightM: 8,
  },
  /** Does not fit its room: a stop with ways out. */
  tooLong: {
    name: 'Small garden',
    bands: ['80m', '40m'],
    radiator: 'inverted-v',
    fedAt: 'off-centre',
    shackEnd: 'radio-tuner',
    station: 'home',
    spanM: 15,
  },
} as const;

const ids = {
  endFed: '11111111-1111-4111-8111-111111111111',
  tooLong: '22222222-2222-4222-8222-222222222222',
} as const;

const answeredAt = 1_700_000_000_000;

/** Puts an antenna among the saved plans of a freshly opened app, with more answers or others; returns its id. */
export async function withPlan(
  page: Page,
  url: string,
  which: keyof typeof antennas,
  more: Partial<Answers> = {},
): Promise<string> {
  const answers = { ...antennas[which], ...more };
  await openApp(page, url);
  await putRecord(page, 'plans', {
    ...emptyRecord,
    id: ids[which],
    createdAt: answeredAt,
    updatedAt: answeredAt,
    answers,
    answeredAt: Object.fromEntries(Object.keys(answers).map((key) => [key, answeredAt])),
  });
  await page.reload();
  await page.locator('h1').first().waitFor();
  return ids[which];
}

/** Opens a place of the app as a link would. */
export async function openAt(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** How far the page is wider than its window, px. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
