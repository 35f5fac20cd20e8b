import { expect, test } from 'vitest';
import { openBrowser } from './support/browser';
import { openAt, withPlan } from './support/invented-plan';
import { serveBuilt } from './support/serve';

test('where the browser starts no worker, the plan says that it could not be worked out and the answers stay', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, server.url, 'endFed');
  await page.addInitScript(() => {
    globalThis.Worker = class {
      constructor() {
        throw new TypeError('no workers here');
      }
    } as unknown as typeof Worker;
  });
  await page.reload();
  await openAt(page, `#/plan/${id}`);
  await page.getByRole('heading', { name: 'The plan could not be worked out. Your answers are kept.' }).waitFor();
  await page.getByRole('link', { name: /answers/ }).click();
  await page.waitForURL(new RegExp(`#/plan/${id}/surer$`));
  await page
    .getByText(/^Bands: .*40/)
    .first()
    .waitFor();
});

test('a worker that breaks is started again by the next screen', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  const id = await withPlan(page, server.url, 'endFed');
  await page.addInitScript(() => {
    const Real = globalThis.Worker;
    let started = 0;
    globalThis.Worker = class extends Real {
      constructor(...asked: ConstructorParameters<typeof Worker>) {
        super(...asked);
        if (++started === 1)
          setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' })));
      }
    };
  });
  await page.reload();
  await openAt(page, `#/plan/${id}`);
  await page.locator('#chain').waitFor();
  expect(await page.getByText('could not be worked out').count()).toBe(0);
});
