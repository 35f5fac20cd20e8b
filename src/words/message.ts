import type { Format } from './format';

/** What a sentence is filled with: numbers in the unit their name ends with, ids, flags. */
export type Data = Readonly<Record<string, number | string | boolean>>;

/** A sentence, or how to make one. */
export type Message = string | ((data: Data, format: Format) => string);

export const render = (message: Message, data: Data, format: Format): string =>
  typeof message === 'string' ? message : message(data, format);
