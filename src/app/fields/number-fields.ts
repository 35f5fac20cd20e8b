/** Reads typed frequencies, powers, shares and counts. A doubt about the unit is asked, with the readings that make sense. */

import { isFrequencyProblem, readFrequency } from '../../base/read-frequency';
import { plainSigns, readNumber } from '../../base/read-number';
import type { BandEdges } from '../../catalog/bands';
import { bad, good, type QuantityKind, type Reading, type TakeValue } from './reading';

const mean = (kind: QuantityKind, value: number): TakeValue => ({ way: 'mean', quantity: { kind, value } });

export interface FrequencyQuestion {
  readonly bandName: string;
  readonly edges: BandEdges;
}

export function readFrequencyField(typed: string, { bandName, edges }: FrequencyQuestion): Reading {
  const { lowMHz, highMHz } = edges;
  const onBand = (mhz: number): boolean => mhz >= lowMHz - 1e-9 && mhz <= highMHz + 1e-9;
  const read = readFrequency(typed);
  if (isFrequencyProblem(read)) {
    const readings = read.candidates.map(({ megahertz }) => megahertz).filter(onBand);
    const take = readings.map((megahertz) => mean('frequency', megahertz));
    if (read.code === 'unit-doubt') return bad('frequency-doubt', read.data, take);
    return bad(read.code, read.data, take);
  }
  if (onBand(read.megahertz)) return good('frequency', read.megahertz);
  const middle: TakeValue = { way: 'middle', quantity: { kind: 'frequency', value: (lowMHz + highMHz) / 2 } };
  const data = { mhz: round(read.megahertz), band: bandName, low: lowMHz, high: highMHz };
  return bad('not-on-band', data, [middle]);
}

/** One number and the unit after it; a comma before three figures gives two. */
function split(typed: string): { readonly values: readonly number[]; readonly unit: string } | Reading {
  const text = plainSigns(typed);
  if (text === '') return bad('empty');
  if (/^-\s*[\d.,]/.test(text)) return bad('negative', { text: typed });
  const [, digits, unit = ''] = /^([\d., /]*[\d.,])\s*(\p{L}*|%)\.?$/u.exec(text) ?? [];
  if (digits === undefined) return bad('not-a-number', { text: typed });
  const number = readNumber(digits.trim());
  if ('problem' in number) return bad(number.problem, { text: typed });
  return { values: 'value' in number ? [number.value] : number.candidates, unit: unit.toLowerCase() };
}

const mostW = 3000;
const wattsPer: Readonly<Record<string, number>> = { '': 1, w: 1, watt: 1, watts: 1, kw: 1000, mw: 0.001 };

export function readPowerField(typed: string): Reading {
  const parts = split(typed);
  if (!('values' in parts)) return parts;
  const factor = wattsPer[parts.unit];
  if (factor === undefined) return bad('unknown-unit', { text: typed, unit: parts.unit });
  const [watts = 0, ...other] = parts.values.map((value) => value * factor);
  if (other.length > 0)
    return bad(
      'power-doubt',
      { text: typed },
      [watts, ...other].map((each) => mean('power', each)),
    );
  if (watts === 0) return bad('zero', { text: typed });
  return watts <= mostW ? good('power', watts) : bad('too-much-power', { watts: round(watts) });
}

export interface ShareQuestion {
  readonly least: number;
  readonly most: number;
}

/** `33 %`, `1/3`, `0.33`. A bare number above 1 is per cent; one of exactly 1 or below could be either when written with no fraction. */
export function readShareField(typed: string, { least, most }: ShareQuestion): Reading {
  const parts = split(typed);
  if (!('values' in parts)) return parts;
  const [number = 0, ...other] = parts.values;
  if (parts.unit !== '' && parts.unit !== '%') return bad('unknown-unit', { text: typed, unit: parts.unit });
  if (other.length > 0) return bad('not-a-number', { text: typed });
  const asPercent = parts.unit === '%' || number > 1;
  if (number === 1 && parts.unit === '' && most >= 1) {
    return bad('share-doubt', { text: typed }, [mean('share', 0.01), mean('share', 1)]);
  }
  const share = asPercent ? number / 100 : number;
  const data = { text: typed, least: round(least * 100), most: round(most * 100) };
  return share >= least && share <= most ? good('share', share) : bad('share-range', data);
}

export interface CountQuestion {
  readonly least: number;
  readonly most: number;
}

export function readCountField(typed: string, { least, most }: CountQuestion): Reading {
  const parts = split(typed);
  if (!('values' in parts)) return parts;
  const [number = 0, ...other] = parts.values;
  if (parts.unit !== '' || other.length > 0) return bad('not-a-number', { text: typed });
  if (!Number.isInteger(number)) return bad('not-whole', { text: typed });
  if (number > most) return bad('too-many', { text: typed, most });
  return number < least ? bad('too-few', { text: typed, least }) : good('count', number);
}

/** Ohms of a feed point; a reactance may be below zero. */
export function readOhms(typed: string, signed: boolean): number | Reading {
  const text = plainSigns(typed);
  const minus = text.startsWith('-');
  if (minus && !signed) return bad('negative', { text: typed });
  const parts = split(minus ? text.slice(1).trim() : text);
  if (!('values' in parts)) return parts;
  const [number = 0, ...other] = parts.values;
  if (other.length > 0 || !['', 'ohm', 'ohms', 'ω'].includes(parts.unit)) return bad('not-a-number', { text: typed });
  if (number > 100_000) return bad('too-many-ohms', { text: typed });
  return minus ? -number : number;
}

const round = (value: number): number => Number(value.toPrecision(6));
