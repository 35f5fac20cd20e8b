// How long somebody waits who has not chosen an antenna: until the list is there by the rules, until the fields of three of it are worked out,
// and until those of all are. Invented station with four bands and room for every kind.
import { openSaved } from './open-saved.mjs';

const id = '44444444-4444-4444-8444-444444444444';
const answers = {
  name: 'Bench',
  bands: ['80m', '40m', '20m', '10m'],
  shackEnd: 'radio-tuner',
  station: 'home',
  spanM: 45,
  supportHeightM: 10,
};

/** Milliseconds from opening the list. @returns {Promise<{ ruleMs: number, threeMs: number, allMs: number }>} */
export async function searchTimes(/** @type {string} */ dir) {
  const { page, close } = await openSaved(dir, id, answers);
  const startMs = performance.now();
  const sinceMs = () => performance.now() - startMs;
  await page.evaluate((address) => {
    location.hash = address;
  }, `#/plan/${id}/which`);
  await page.locator('.candidate dl').first().waitFor();
  const ruleMs = sinceMs();
  const waiting = page.locator('.candidate dl').filter({ hasText: '…' });
  const all = await page.locator('.candidate dl').count();
  const untilLeft = async (/** @type {number} */ left) => {
    while ((await waiting.count()) > left) await page.waitForTimeout(20);
    return sinceMs();
  };
  const times = { ruleMs, threeMs: await untilLeft(all - 3), allMs: await untilLeft(0) };
  await close();
  return times;
}
