/** What is wrong with something typed, and the ways out of it. */
import type { Message } from '../message';

export const fieldProblems = {
  empty: 'Nothing is typed yet.',
  'not-a-number': ({ text }) => `“${text}” is not a number Halyard can read.`,
  negative: ({ text }) => `“${text}” is below zero. It must be more than zero.`,
  zero: ({ text }) => `“${text}” is zero. It must be more than zero.`,
  'two-commas': ({ text }) => `“${text}” has more than one point or comma.`,
  'unknown-unit': ({ text, unit }) => `“${text}”: Halyard does not know the unit “${unit}”.`,
  'unknown-length-unit': ({ text, unit }) =>
    `“${text}”: Halyard does not know the unit “${unit}”. It knows m, cm, mm, ft and in.`,
  'comma-doubt': ({ text }) => `“${text}” can be read in two ways. Which is it?`,
  'inches-past-foot': ({ text, most }) => `“${text}”: the smaller unit runs only up to ${most}. Which is it?`,
  'mixed-units': ({ text }) => `“${text}” mixes units in a way Halyard cannot read. Write 13 ft 2 in, or 4.1 m.`,
  'length-doubt': ({ length }) => `${length} is unusual here. Is another unit meant?`,
  'unusual-length': ({ length, least, most }) =>
    `${length} is unusual here: most are between ${least} and ${most}. Is it right?`,
  'too-long': ({ length, most }) => `${length} is more than Halyard can plan with. ${most} is the most.`,
  'frequency-doubt': ({ text, value }) => `“${text}” would be ${value} MHz, outside the bands. Which is it?`,
  'out-of-range': ({ text, least, most }) => `“${text}” is outside ${least} to ${most} MHz.`,
  'not-on-band': ({ mhz, band, low, high }) =>
    `${mhz} MHz is not on ${band}, which runs from ${low} to ${high} MHz here.`,
  'too-much-power': ({ watts }) => `${watts} W is more than Halyard plans for. 3000 W is the most.`,
  'power-doubt': ({ text }) => `“${text}” can be read in two ways. Which is it?`,
  'not-whole': ({ text }) => `“${text}” is not a whole number.`,
  'too-many': ({ text, most }) => `“${text}” is more than ${most}.`,
  'too-few': ({ text, least }) => `“${text}” is less than ${least}.`,
  'share-doubt': ({ text }) => `“${text}” can be read in two ways. Which is it?`,
  'share-range': ({ text, least, most }) => `“${text}” is outside ${least} to ${most} %.`,
  'ratio-range': ({ text }) => `“${text}” is no ratio. It runs from 1 to 200.`,
  'name-long': 'A name has at most 80 letters.',
  'too-many-ohms': ({ text }) => `“${text}” is more than 100,000 ohms.`,
} as const satisfies Readonly<Record<string, Message>>;
export type FieldProblem = keyof typeof fieldProblems;

export const waysOut = {
  typeAgain: 'Type again',
  take: ({ what }) => `Take ${what}`,
  itIs: ({ what }) => `Yes, ${what}`,
  mean: ({ what }) => `I mean ${what}`,
  notSure: 'Not sure',
  keep: ({ what }) => `Keep ${what}`,
  middle: ({ what }) => `Take the middle, ${what}`,
} as const satisfies Readonly<Record<string, Message>>;

export const watts = ({ value }: { value: string }): string => `${value}\u00a0W`;
export const megahertz = ({ value }: { value: string }): string => `${value}\u00a0MHz`;
export const percent = ({ value }: { value: string }): string => `${value} %`;
export const ohms = ({ r, x }: { r: string; x: string }): string => `${r} ohms, X ${x} ohms`;
