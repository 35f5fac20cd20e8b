/** A page is listed by the browser, and a print of it named, after its heading. */
import { shell } from '../../words/en/screens';
import type { Say } from '../say';

/** To be called once the heading is there. */
export function titleByHeading(say: Say): void {
  document.title = say(shell.title, { page: document.querySelector('h1')?.textContent ?? say(shell.appName) });
}
