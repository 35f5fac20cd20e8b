/** Turns codes and numbers into sentences in the operator's units. A code without a sentence is a fault, and says so. */
import type { Said } from '../advice/finding';
import { createFormat, type Format } from '../words/format';
import { type Message, render } from '../words/message';

export interface Speaker {
  readonly format: Format;
  say(catalogue: Readonly<Record<string, Message>>, said: Said): string;
}

export function createSpeaker(units: 'metric' | 'imperial'): Speaker {
  const format = createFormat(units);
  return {
    format,
    say(catalogue, { code, data }) {
      const message = catalogue[code];
      if (message === undefined) throw new Error(`no words for ${code}`);
      return render(message, data, format);
    },
  };
}
