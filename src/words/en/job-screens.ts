/** What the screens of one antenna share: call-out numbers, hold, gates of cautions, sources. */
import type { Message } from '../message';
import { many, plural } from './many';

export const jobs = {
  unfinished: 'Not a plan yet',
  unfinishedWhy: 'A question is still open. Answer it, or tap Not sure there.',
  working: 'Working it out',
  checkAnswers: 'Check the answers',
  none: 'Nothing to do here for this antenna.',
  seeStop: 'See what stops it',
  back: 'Back',
  next: 'Next',
  /** Before the number of a printed page. */
  foot: ({ name, date }) => `${name}. Printed ${date}. `,
} as const satisfies Readonly<Record<string, Message>>;

export const callOut = {
  metres: 'metres',
  feet: 'ft',
  inches: 'in',
  of: ({ what }) => `${what}:`,
  enlarge: 'Show large',
  close: 'Close',
} as const satisfies Readonly<Record<string, Message>>;

export const hold = {
  hold: 'Hold',
  held: 'Held',
  letGo: 'Rain and pockets do nothing. To let go: A, then B.',
} as const satisfies Readonly<Record<string, Message>>;

export const gateWords = {
  checked: ({ time }) => `Checked ${time}`,
  how: 'Next opens when every line is ticked. Tap a tick again to take it back.',
  left: ({ count }) => many(count, 'check left', 'checks left'),
} as const satisfies Readonly<Record<string, Message>>;

export const sourceWords = {
  from: ({ titles }) => `From: ${titles}`,
} as const satisfies Readonly<Record<string, Message>>;

/** "twenty point eight": the figures after the point one by one, as one calls them across a field. */
const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = '- - twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

function spokenNumber(value: number): string {
  if (value < 20) return small[value] ?? String(value);
  if (value < 100) {
    const rest = value % 10;
    return `${tens[Math.floor(value / 10)]}${rest === 0 ? '' : `-${small[rest]}`}`;
  }
  const rest = value % 100;
  const hundreds = `${spokenNumber(Math.floor(value / 100))} hundred`;
  return rest === 0 ? hundreds : `${hundreds} ${spokenNumber(rest)}`;
}

export interface Spoken {
  readonly metres: number;
  readonly centimetres: number;
  readonly feet: number;
  readonly inches: number;
  readonly half: boolean;
}

function spokenMetres({ metres, centimetres }: Spoken): string {
  if (metres === 0) return `${spokenNumber(centimetres)} centimetres`;
  if (centimetres === 0) return `${spokenNumber(metres)} ${plural(metres, 'metre', 'metres')}`;
  const figures = String(centimetres).padStart(2, '0').replace(/0$/, '');
  return `${spokenNumber(metres)} point ${[...figures].map((figure) => small[Number(figure)]).join(' ')} metres`;
}

function spokenFeet({ feet, inches, half }: Spoken): string {
  const whole = `${spokenNumber(feet)} ${plural(feet, 'foot', 'feet')}`;
  if (inches === 0 && !half) return whole;
  if (inches === 0) return feet === 0 ? 'half an inch' : `${whole} and half an inch`;
  const inch = `${spokenNumber(inches)}${half ? ' and a half' : ''}`;
  if (feet === 0) return `${inch} ${half ? 'inches' : plural(inches, 'inch', 'inches')}`;
  return `${whole} ${inch}`;
}

/** "twenty point eight metres, sixty-eight feet three". */
export function spokenLengthText(length: Spoken, units: 'metric' | 'imperial'): string {
  const texts = [spokenMetres(length), spokenFeet(length)];
  return (units === 'metric' ? texts : texts.reverse()).join(', ');
}

export const sendWords = {
  send: 'Send as text',
  copy: 'Copy as text',
  copied: 'Copied.',
  byHand: 'The browser did not copy it. Mark the text and copy it by hand.',
} as const satisfies Readonly<Record<string, Message>>;
