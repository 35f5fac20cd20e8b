import type { Page } from 'playwright-core';
import { everyScreen, keepPlan, links, openScreen, passGates } from '../../every-screen.mjs';

const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
    scrollTo(0, 0);
  });

/** Keeps an invented plan and looks at each of its screens, all that folds open, before and behind the cautions that stand in the way. */
export async function eachScreen(page: Page, url: string, look: (name: string) => Promise<void>): Promise<void> {
  const id = await keepPlan(page, url, links.sloper);
  for (const { name, path } of everyScreen(id)) {
    await openScreen(page, url, path);
    if (name === 'cut' || name === 'raise') {
      await unfold(page);
      await look(`${name}, cautions`);
      await passGates(page);
    }
    await unfold(page);
    await look(name);
  }
}
