/** Antennas to choose from: what speaks for and against each, and why one stands before another. */
import type { Message } from '../message';
import { many } from './many';
import { bandName } from './names';

const bandList = (ids: unknown): string =>
  String(ids)
    .split(' ')
    .map((id) => bandName(id).replace(' ', '\u00a0'))
    .join(', ');

export const candidateReasons = {
  'serves-all': (d) => (d.wanted === 1 ? 'Works on the band you want.' : 'Works on every band you want.'),
  'serves-some': (d) =>
    d.served === 0
      ? 'Works on none of your bands.'
      : `Works on ${d.served} of your ${d.wanted} bands; not on ${bandList(d.missing)}.`,
  'no-tuner': 'Needs no tuner.',
  'tuner-on': (d) => `Needs your tuner on ${bandList(d.bands)}.`,
  'beyond-on': (d) => `Needs a wider tuner than yours on ${bandList(d.bands)}.`,
  'no-tuner-for': (d) => `Needs a tuner, which you do not have, on ${bandList(d.bands)}.`,
  'by-hand': (d) => `Each change of band is made at the wire, by hand: it has ${many(d.links, 'link', 'links')}.`,
  fits: (d, f) => `Its ${f.length(Number(d.runM))} run fits your span.`,
  'too-long': (d, f) => `Its ${f.length(Number(d.runM))} run is longer than your span.`,
  'room-unknown': (d, f) => `Needs a straight run of ${f.length(Number(d.runM))}.`,
  'lies-flat': 'Lies flat, so it needs four supports.',
  high: (d, f) => `Needs a support ${f.length(Number(d.supportM))} high.`,
  'too-high': (d, f) => `Needs a support ${f.length(Number(d.supportM))} high, and yours is lower.`,
  loss: (d, f) => `Of 100 W about ${f.number(Number(d.radiatedW), 2)} W leave the feed line, on its worst band.`,
} as const satisfies Readonly<Record<string, Message>>;

/** Things to buy, by kind; a number stands only where the kind is counted. */
const things = {
  wire: () => 'wire',
  insulators: () => 'insulators',
  plugs: () => 'plugs for links',
  coax: () => 'coax',
  'open-wire': () => 'two-wire line',
  transformer: () => 'a transformer',
  choke: () => 'a choke',
  rings: (count: number) => many(count, 'ring', 'rings'),
  boxes: (count: number) => many(count, 'box', 'boxes'),
  tuner: () => 'a tuner',
  arrester: () => 'an arrester with its earth wire',
  rope: () => 'rope',
  pole: () => 'a pole',
} as const;

export const toBuyWords = (
  list: readonly { readonly thing: keyof typeof things; readonly count: number | null }[],
): string => {
  const names = list.map(({ thing, count }) => things[thing](count ?? 1)).join(', ');
  return list.length === 0
    ? 'Nothing to buy but tape and small parts.'
    : `${many(list.length, 'kind of thing', 'kinds of things')} to buy: ${names}.`;
};

const db = (value: unknown): string => `${value} dB`;

/** Clauses are set into `first` and `after`, one or two of them. */
export const candidatePlaces = {
  only: 'The only one that can be built here.',
  first: (d) => `First: the next one ${d.clauses}.`,
  after: (d) => `After the one above: it ${d.clauses}.`,
  and: ' and ',
  'level-first': 'First, but the next one is as good.',
  level: 'As good as the one above.',
  stopped: 'Cannot be built as it stands.',
  provisional: 'Its place is by the rules alone: its field is not worked out.',
  'beside-provisional': 'The one beside it is not worked out from its field, so the two do not compare yet.',
  'needs-height': 'needs a higher support',
  'fewer-bands': (d) => `works on ${many(d.fewer, 'band', 'bands')} fewer`,
  weaker: (d) => `is ${db(d.db)} weaker in the directions that count`,
  'more-loss': (d) => `loses ${db(d.db)} more in its feed line`,
  'a-tuner': 'needs a tuner that you do not have',
  'other-tuner': 'needs another tuner than yours',
  'more-tuner': (d) => `needs a tuner on ${many(d.bands, 'band', 'bands')} more`,
  'by-hand': 'is lowered for each change of band',
  'more-current': (d, f) => `brings ${f.number(Number(d.ma), 2)} mA to the house for 100 W`,
  'more-to-buy': (d) => `has ${many(d.things, 'kind of thing', 'kinds of things')} more to buy`,
} as const satisfies Readonly<Record<string, Message>>;
export type PlaceCode = keyof typeof candidatePlaces;
