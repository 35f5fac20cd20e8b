/** Sentences of words/ in the operator's units. */
import { language } from '../words/en/language';
import type { Format } from '../words/format';
import { createFormat } from '../words/format';
import { type Data, type Message, render } from '../words/message';
import { useStores } from './stores/stores';

const formats = { metric: createFormat('metric'), imperial: createFormat('imperial') } as const;

export interface Say {
  (message: Message, data?: Data): string;
  readonly format: Format;
}

export function sayIn(units: keyof typeof formats): Say {
  const format = formats[units];
  return Object.assign((message: Message, data: Data = {}) => render(message, data, format), { format });
}

const said = { metric: sayIn('metric'), imperial: sayIn('imperial') } as const;

export const useSay = (): Say => said[useStores().settings.units.value];

/** The phone's own variety of the language of the words, where it has one: an Irish phone and an American one write a date in two ways. */
function variety(): string {
  const ownOf = (tag: string): string | undefined => tag.split('-')[0];
  return navigator.languages.find((tag) => ownOf(tag) === ownOf(language.tag)) ?? language.tag;
}

/** The time of day, in twelve hours or twenty-four as the phone has it. */
export function clock(at: number): string {
  const { hourCycle = 'h23' } = new Intl.DateTimeFormat(undefined, { hour: 'numeric' }).resolvedOptions();
  return new Intl.DateTimeFormat(variety(), { hour: '2-digit', minute: '2-digit', hourCycle }).format(at);
}

/** The time of day; on any other day with its date. */
export const moment = (at: number): string => (day(at) === day(Date.now()) ? clock(at) : `${day(at)}, ${clock(at)}`);

export const day = (at: number): string => new Intl.DateTimeFormat(variety(), { dateStyle: 'long' }).format(at);
