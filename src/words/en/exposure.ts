/** What decided a keep-out distance. Never that a place is without danger. */
import type { Message } from '../message';

const field = (kind: unknown): string =>
  kind === 'electric' ? 'electric field' : kind === 'magnetic' ? 'magnetic field' : 'power density';
const unit = (kind: unknown): string => (kind === 'electric' ? 'V/m' : kind === 'magnetic' ? 'A/m' : 'W/m²');

const partNames: Readonly<Record<string, string>> = {
  radiator: 'the wire',
  'feed-point': 'the feed point',
  'wire-end': 'the end of the wire',
  counterpoise: 'the counterpoise',
  radials: 'the radials',
  coax: 'the outside of the coax',
  house: 'the earth and mains leads',
};

/** A part of the antenna, as a sentence's subject. */
export const partName = (part: unknown): string => partNames[String(part)] ?? 'the antenna';

const placeNames: Readonly<Record<string, string>> = {
  radio: 'At the radio',
  indoors: 'Beside the coax indoors',
  entry: 'Where the coax enters',
  'coax-run': 'Beside the coax on its way',
  'under-wire': 'Under and beside the wire',
  'wire-end': 'By the end of the wire',
  'feed-point': 'By the feed point',
  counterpoise: 'By the counterpoise',
  radials: 'Among the radials',
  house: 'By mains and earth leads of the radio',
};

/** A place of the site where people may be. */
export const placeName = (place: string): string => placeNames[place] ?? place;

/** Never broken at the end of a line. */
export const whole = (text: unknown): string => String(text).replaceAll(' ', '\u00a0');

/** Behind a limit that was written from memory. */
export const memoryMark = '\u00a0†';

export const exposureWords = {
  screen: (d, f) =>
    `Decided by the ${field(d.kind)}, limit ${f.number(Number(d.limit))} ${unit(d.kind)}, on average power, with the published far-field formula.`,
  'screen-on-crest': (d, f) =>
    `Decided by the ${field(d.kind)}, limit ${f.number(Number(d.limit))} ${unit(d.kind)}, on the crest of your transmission: pauses and mode give no relief here.`,
  'near-wire': (d, f) =>
    `The far-field formula gives ${f.length(Number(d.screenM))}, but nearer than ${f.length(Number(d.farM))} it is no final answer. Until the field close to the wire is computed, the distance of common practice for ${f.number(Number(d.powerW))} W stands.`,
  'end-of-near-field': (d, f) =>
    `The far-field formula gives ${f.length(Number(d.screenM))}, but it holds only from ${f.length(Number(d.farM))} outward, so that distance stands until the field close to the wire is computed.`,
  solved: (d, f) =>
    `Computed from the currents on this antenna: ${partName(d.part)} decides, by its ${field(d.kind)} against ${f.number(Number(d.limit))} ${unit(d.kind)}, on average power.`,
  'solved-on-crest': (d, f) =>
    `Computed from the currents on this antenna: ${partName(d.part)} decides, by its ${field(d.kind)} against ${f.number(Number(d.limit))} ${unit(d.kind)}, on the crest of your transmission: pauses and mode give no relief here.`,
  'solved-touching': (d, f) =>
    `Computed from the currents on this antenna: every limit is met within reach of an arm already (${partName(d.part)} comes nearest, ${f.number(Number(d.percent), 2)} % of the limit for the ${field(d.kind)}). The distance stands because nobody may touch any part.`,
  'small-loop': (d, f) =>
    `A loop of ${f.length(Number(d.roundM))} round is less than half a wave. The far-field formula gives distances that are too short for it, so it gives no distance. Wait until the field of this loop has been computed. If it cannot be, put up a loop of half a wave or more, or have this one assessed with your national method before you send.`,
} as const satisfies Readonly<Record<string, Message>>;

/** For people who stand on the ground, which is often much less than from the wire itself. */
export const onTheGround: Message = (d, f) =>
  Number(d.groundPublicM) === 0
    ? 'Standing on the ground, more than an arm’s reach from every part, everybody is within the limits.'
    : `Standing on the ground, seen from above: people who know ${f.length(Number(d.groundKnowingM))}, everybody else ${f.length(Number(d.groundPublicM))}.`;

const whom = (tier: unknown): string => (tier === 'knowing' ? 'people who know' : 'anyone else');

/** The table of places where people may be, on the plan. */
export const placesWords = {
  head: 'Where people may be',
  intro:
    'The strongest field from foot to head, an arm’s length from the nearest conductor, as a part of its limit on the worst band: 100 % is the limit.',
  place: 'Place',
  cell: (d, f) => `${f.number(Number(d.percent), 2)}\u00a0% on ${whole(d.band)}`,
  over: (d, f) =>
    `${f.number(Number(d.percent), 2)}\u00a0% on ${whole(d.band)}: at most ${f.number(Number(d.mostW), 2)}\u00a0W`,
  powerOn: ({ band }) => `power for the nearest person, ${band}`,
  watts: 'Watts are those at the crest, in your mode and with your pauses.',
  recalled: ({ limits }) =>
    `Not yet compared with the printed tables, written from memory: ${limits}. Check these before you rely on them.`,
  recalledLine: ({ tier, field, minutes }) => `${whom(tier)}, ${field} over ${minutes} min`,
  recalledCrest: ({ tier, field }) => `${whom(tier)}, ${field} on the crest`,
} as const satisfies Readonly<Record<string, Message>>;

/** Kinds of limits in the middle of a sentence. */
export const fieldName = field;
