// Every screen of the app, for pictures and for tests that look at all of them, and plans to fill them with. All data is invented.

/** Links as people hold them: they must open for ever, so they stand here as text. */
export const links = {
  sloper:
    'v1~b40m.20m.15m.10m~rsloper~fend~sradio-tuner~nSloper%20from%20the%20pole~Sportable~p100~mdata~cresonant~h1.2~e7~~1ghgwc5',
  meadow: 'v1~b40m.20m~rinverted-v~fcentre~sradio~nMeadow%20by%20the%20lake~h9~~p3q0uj',
  garden: 'v1~b80m.40m.20m.15m~rinverted-l~fend~swide-tuner~nGarden~Shome~cnon-resonant~h1~H9~~1j5u7sk',
};

/** @typedef {{ name: string, path: string }} ScreenPlace */

/** @param {string} id of a plan that is kept @returns {ScreenPlace[]} */
export const everyScreen = (id) => [
  { name: 'plans', path: '#/' },
  { name: 'ask', path: '#/new' },
  ...['radiator', 'fedAt', 'shackEnd', 'heightM', 'onHand', 'focusMHz', 'name'].map((question) => ({
    name: `ask-${question}`,
    path: `#/ask/${id}/${question}`,
  })),
  { name: 'not-sure', path: `#/ask/${id}/fedAt/not-sure` },
  { name: 'which', path: `#/plan/${id}/which` },
  { name: 'plan', path: `#/plan/${id}` },
  ...['surer', 'shop', 'cut', 'raise', 'trim', 'share', 'sheet', 'record', 'card'].map((job) => ({
    name: job,
    path: `#/plan/${id}/${job}`,
  })),
  ...['wind', 'box-test', 'stand'].map((bench) => ({ name: bench, path: `#/plan/${id}/${bench}/` })),
  { name: 'why', path: '#/why' },
  { name: 'on-hand', path: '#/on-hand' },
  { name: 'settings', path: '#/settings' },
  { name: 'receive', path: '#/receive' },
  { name: 'received', path: `#/receive/${links.meadow}` },
  { name: 'scan', path: '#/scan' },
];

/**
 * Keeps the plan of a link and returns its id. Finds its way by structure alone, so that it also works in other words.
 * @param {import('playwright-core').Page} page
 * @param {string} url of the app
 * @param {string} link
 */
export async function keepPlan(page, url, link) {
  await page.goto(`${url}#/receive/${link}`);
  await page.locator('.act .btn.go').click();
  await page.locator('a[href="#/new"]').first().waitFor();
  const ids = await page
    .locator('a[href^="#/plan/"]')
    .evaluateAll((found) => found.map((each) => each.getAttribute('href')?.split('/')[2] ?? ''));
  const [id] = ids;
  if (id === undefined) throw new Error('the plan is not in the list');
  return id;
}

/**
 * Opens a screen and waits until nothing on it is still to come.
 * @param {import('playwright-core').Page} page
 * @param {string} url of the app
 * @param {string} path
 */
export async function openScreen(page, url, path) {
  await page.goto('about:blank');
  await page.goto(url + path);
  await page.locator('h1').first().waitFor();
  await untilShown(page, path);
}

/**
 * Goes to another screen of the app that is open, as a link of it would, and waits as openScreen does. What the app has solved it keeps.
 * @param {import('playwright-core').Page} page
 * @param {string} path of another screen than the one in sight
 */
export async function goToScreen(page, path) {
  await page.evaluate((hash) => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    location.hash = hash;
  }, path);
  // What is opened takes the focus, and no screen that is left can.
  await page.waitForFunction(() => document.activeElement !== document.body);
  await untilShown(page, path);
}

/** @param {import('playwright-core').Page} page @param {string} path */
async function untilShown(page, path) {
  if (path.endsWith('/share')) await page.locator('img.card').waitFor();
  if (path.endsWith('/sheet')) await page.locator('svg.qr').waitFor();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/**
 * Waits until nothing on a screen of a plan is still being worked out.
 * @param {import('playwright-core').Page} page
 */
export const untilSolved = (page) => page.locator('.underway').first().waitFor({ state: 'detached' });

/**
 * Ticks every line of every gate that stands in the way; returns how many gates there were.
 * @param {import('playwright-core').Page} page
 */
export async function passGates(page) {
  let gates = 0;
  await page.locator('h1').first().waitFor();
  for (; (await page.locator('.gate').count()) > 0; gates++) {
    const head = await page.locator('.gate').textContent();
    for (const line of await page.locator('.gate input').all()) {
      // A screen that has just opened takes the focus to its heading, and the key may go there.
      while (!(await line.isChecked())) await line.press('Space');
    }
    await page.locator('.act .btn.go').click();
    await page.waitForFunction((before) => document.querySelector('.gate')?.textContent !== before, head);
  }
  return gates;
}
