/** What one summary card says: name, answer, cuts, places of the chokes, danger. Both units beside every length. */
import { dangerFirst } from '../../plan/plain-text';
import type { Plan } from '../../plan/plan-schema';
import { capital } from '../../words/capital';
import { card } from '../../words/en/share-screen';
import type { Say } from '../say';

export interface CardRow {
  readonly what: string;
  readonly length: string;
}

export interface CardContent {
  readonly name: string;
  readonly summary: string;
  readonly danger: readonly { readonly name: string; readonly text: string }[];
  readonly cuts: readonly CardRow[];
  readonly chokes: readonly CardRow[];
}

/** Nearer than this, m, a choke hangs at the feed point itself. */
const AT_FEED_POINT_M = 0.05;

export function cardContent(plan: Plan, name: string, say: Say): CardContent {
  return {
    name,
    summary: plan.summary,
    danger: dangerFirst(plan).map(({ name: what, act }) => ({ name: what, text: act })),
    cuts: plan.cuts.map((cut) => ({
      what: capital(say(card.piece, { name: cut.name, count: cut.count })),
      length: say.format.length(cut.cutM),
    })),
    chokes: chokeRows(plan, say),
  };
}

/** Numbered as in the drawing. */
function chokeRows({ chain }: Plan, say: Say): CardRow[] {
  const chokes = chain.flatMap(({ device, name, distanceM }) =>
    device === 'choke' && distanceM !== null ? [{ name, distanceM }] : [],
  );
  return chokes.map(({ name, distanceM }, index) => ({
    what: say(card.choke, { number: index + 1, name }),
    length: distanceM < AT_FEED_POINT_M ? say(card.atFeedPoint) : say.format.length(distanceM),
  }));
}

/** The card in words, for those who do not see it. */
export const cardText = ({ name, summary, danger, cuts, chokes }: CardContent): string =>
  [
    `${name}.`,
    ...danger.map((line) => `${line.name}: ${line.text}`),
    summary,
    ...[...cuts, ...chokes].map(({ what, length }) => `${what}: ${length}.`),
  ].join(' ');
