// How long the page cannot answer a tap while a plan is open and its field is being worked out: the longest task of the main thread, over
// an invented antenna with chokes and coax on four bands, opened from the list of plans. In processor time, which does not hang on what else
// the machine is doing.
import { openSaved } from './open-saved.mjs';

const id = '33333333-3333-4333-8333-333333333333';
const answers = {
  name: 'Bench',
  bands: ['80m', '40m', '20m', '10m'],
  radiator: 'straight-wire',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
  station: 'home',
  heightM: 9,
  supportHeightM: 10,
  entryDistanceM: 12,
  feedLineLengthM: 25,
};
/** Milliseconds of processor time of the longest task. @returns {Promise<number>} */
export async function longestTaskMs(/** @type {string} */ dir) {
  const { context, page, close } = await openSaved(dir, id, answers);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Tracing.start', { transferMode: 'ReturnAsStream', categories: 'devtools.timeline,toplevel' });
  await page.evaluate((address) => {
    location.hash = address;
  }, `#/plan/${id}`);
  await page.getByText('Worked out for this very antenna').waitFor({ timeout: 120_000 });
  const trace = await readTrace(devtools);
  await close();
  return longestOnMain(trace);
}

/** @typedef {{ name: string, ph: string, pid: number, tid: number, tdur?: number, args: { name?: string } }} TraceEvent */

/** @returns {Promise<TraceEvent[]>} */
async function readTrace(/** @type {import('playwright-core').CDPSession} */ devtools) {
  /** @type {Promise<{ stream?: string }>} */
  const complete = new Promise((resolve) => devtools.once('Tracing.tracingComplete', resolve));
  await devtools.send('Tracing.end');
  const { stream = '' } = await complete;
  for (let text = ''; ; ) {
    const { data, eof } = await devtools.send('IO.read', { handle: stream });
    text += data;
    if (eof) return JSON.parse(text).traceEvents;
  }
}

/** Of the page's main thread, which is the one that lays out most. */
function longestOnMain(/** @type {TraceEvent[]} */ events) {
  const threadOf = (/** @type {TraceEvent} */ { pid, tid }) => `${pid} ${tid}`;
  const layouts = new Map();
  for (const event of events)
    if (event.name === 'Layout') layouts.set(threadOf(event), (layouts.get(threadOf(event)) ?? 0) + 1);
  const [main] = [...layouts].toSorted(([, a], [, b]) => b - a)[0] ?? [];
  const tasks = events.filter((event) => event.name.endsWith('RunTask') && threadOf(event) === main);
  return Math.max(...tasks.map(({ tdur }) => (tdur ?? 0) / 1000));
}
