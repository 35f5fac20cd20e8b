/** Sentences of words/ in the operator's units. */
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

/** The time of day as the phone writes it. */
export const clock = (at: number): string =>
  new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' }).format(at);
