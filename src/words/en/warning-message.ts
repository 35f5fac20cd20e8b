/** What one warning says: the effect with its number, the cause and the cure, and each way out as something to do. */
import type { Format } from '../format';
import type { Data, Message } from '../message';
import { lineName } from './catalog-names';
import { bandName, systemName } from './names';
import { band, figure, metres, ohms } from './readers';

export interface WarningWords {
  readonly text: Message;
  readonly why: Message;
  readonly waysOut: Readonly<Record<string, Message>>;
}

/** Readers of a warning's data. */
export const say = {
  length: metres,
  number: figure,
  mhz: (d: Data, f: Format, key: string): string => `${f.number(Number(d[key]), 5)} MHz`,
  watts: (d: Data, f: Format, key: string): string => `${f.number(Number(d[key]), 2)} W`,
  ohms,
  swr: (d: Data, f: Format, key = 'swr'): string =>
    Number(d[key]) > 50 ? 'above 50' : `about ${f.number(Number(d[key]), 2)}`,
  band,
  bands: (d: Data, key = 'bands'): string => String(d[key]).split(',').map(bandName).join(', '),
  line: (d: Data): string => lineName(String(d.line)),
  system: (d: Data): string => systemName(String(d.system)),
} as const;
