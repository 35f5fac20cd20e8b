import type { Page } from 'playwright-core';
import {
  everyScreen,
  goToScreen,
  keepPlan,
  links,
  openScreen,
  passGates,
  type ScreenPlace,
  untilSolved,
} from '../../every-screen.mjs';

const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
    scrollTo(0, 0);
  });

/**
 * Keeps an invented plan and looks at each of its screens, and at some more, all that folds open, before and behind the cautions that stand in
 * the way. The app is loaded once and its antenna solved once: the screens before the plan are seen while that is under way, those after it solved.
 */
export async function eachScreen(
  page: Page,
  url: string,
  look: (name: string) => Promise<void>,
  more: (id: string) => readonly ScreenPlace[] = () => [],
): Promise<void> {
  const id = await keepPlan(page, url, links.sloper);
  const [first, ...others] = [...everyScreen(id), ...more(id)];
  if (first === undefined) throw new Error('there are no screens');
  await openScreen(page, url, first.path);
  await unfold(page);
  await look(first.name);
  for (const { name, path } of others) {
    await goToScreen(page, path);
    if (name === 'cut' || name === 'raise') {
      await unfold(page);
      await look(`${name}, cautions`);
      await passGates(page);
    }
    await unfold(page);
    await look(name);
    if (name !== 'plan') continue;
    await untilSolved(page);
    await unfold(page);
    await look(`${name}, solved`);
  }
}
