/**
 * A plan's answers as an address of this app, and such an address found again in whatever a phone hands over. Parts on hand stay at home:
 * they are the sender's, and the link has to fit into a code that a camera reads.
 */
import type { Answers } from '../../design/answers';
import { linkText } from '../../storage/plan-link';
import { to } from '../routes';

export function planAddress({ onHand: _mine, ...theirs }: Answers, page: string): string {
  return new URL(to.receive(linkText(theirs)), page).href;
}

/** A link's own text begins with its version; two tildes stand before its check. */
const bare = /^v\d+~\S+~~\w+$/;
const within = /#\/receive\/(v\d+~\S+)/;

/** The part of a link that holds the answers, from a whole address, a message around one, or that part alone; null where there is none. */
export function codeIn(text: string): string | null {
  const trimmed = text.trim();
  return within.exec(trimmed)?.[1] ?? (bare.test(trimmed) ? trimmed : null);
}
