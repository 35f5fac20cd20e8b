/** What one warning says: the effect with its number, the cause and the cure, and each way out as something to do. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { bandName, lineName, systemName } from './names';

export interface WarningWords {
  readonly text: Message;
  readonly why: Message;
  readonly waysOut: Readonly<Record<string, Message>>;
}

/** Small readers of a warning's numbers, so that each sentence stays a sentence. */
export const say = {
  length: (d: Data, f: Format, key: string): string => f.length(Number(d[key])),
  number: (d: Data, f: Format, key: string, figures = 2): string => f.number(Number(d[key]), figures),
  mhz: (d: Data, f: Format, key: string): string => `${f.number(Number(d[key]), 5)} MHz`,
  watts: (d: Data, f: Format, key: string): string => `${f.number(Number(d[key]), 2)} W`,
  /** 5000 as "5 kΩ". */
  ohms: (d: Data, f: Format, key: string): string => {
    const value = Number(d[key]);
    return value >= 1000 ? `${f.number(value / 1000, 2)} kΩ` : `${f.number(value, 2)} Ω`;
  },
  swr: (d: Data, f: Format, key = 'swr'): string =>
    Number(d[key]) > 50 ? 'above 50' : `about ${f.number(Number(d[key]), 2)}`,
  band: (d: Data, key = 'band'): string => bandName(String(d[key])),
  bands: (d: Data, key = 'bands'): string => String(d[key]).split(',').map(bandName).join(', '),
  line: (d: Data): string => lineName(String(d.line)),
  system: (d: Data): string => systemName(String(d.system)),
} as const;
