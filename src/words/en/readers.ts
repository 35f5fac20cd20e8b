/** Small readers of a sentence's data, so that each sentence stays a sentence. */
import type { Format } from '../format';
import type { Data } from '../message';
import { bandName } from './names';

export const metres = (d: Data, f: Format, key: string): string => f.length(Number(d[key]));
export const figure = (d: Data, f: Format, key: string, figures = 2): string => f.number(Number(d[key]), figures);
export const band = (d: Data, key = 'band'): string => bandName(String(d[key]));

/** 5000 as "5 kΩ". */
export function ohms(d: Data, f: Format, key = 'ohm'): string {
  const value = Number(d[key]);
  return value >= 1000 ? `${f.number(value / 1000, 2)} kΩ` : `${f.number(value, 2)} Ω`;
}
