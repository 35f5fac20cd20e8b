import { expect, test } from 'vitest';
import { openBrowser, untilKeptOffline } from './support/browser';
import { openAt, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test('an open plan is solved in a worker, with the server gone too, and its numbers reach the screen', async () => {
  const server = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const id = await withPlan(page, server.url, 'endFed');
  await untilKeptOffline(page);
  await server.stop();
  const started = page.waitForEvent('worker');
  await openAt(page, `#/plan/${id}`);
  await started;
  await page
    .getByText(/Worked out from formulas/)
    .first()
    .waitFor({ state: 'attached' });
  await page
    .getByText(/Worked out from formulas/)
    .first()
    .waitFor({ state: 'detached', timeout: 80_000 });
  const text = await page.locator('#main').textContent();
  expect(text).toMatch(/\d+(\.\d+)?\smA/);
  expect(complaints).toEqual([]);
});
