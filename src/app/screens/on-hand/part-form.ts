/** The fields of each kind of part, and how typed fields become a part. Pure: tested without a screen. */
import { coreSizes, mixIds } from '../../../catalog/core-ids';
import { coaxIds, lineIds } from '../../../catalog/line-ids';
import { wireIds } from '../../../catalog/wire-ids';
import { PartOnHand } from '../../../design/answers';
import type { Format } from '../../../words/format';
import { readLengthField } from '../../fields/length-field';
import { readCountField, readPowerField } from '../../fields/number-fields';
import { type BadReading, bad, good, isGood, type Reading } from '../../fields/reading';

export type PartKind = PartOnHand['part'];
export const partKindIds: readonly PartKind[] = [
  'transformer',
  'two-in-one',
  'choke',
  'beads',
  'coil',
  'core',
  'wire',
  'line',
];

export type FieldWords =
  | 'ratio'
  | 'kind'
  | 'unknownRating'
  | 'core'
  | 'mix'
  | 'count'
  | 'countStacked'
  | 'turns'
  | 'coilTurns'
  | 'line'
  | 'windingLine'
  | 'beadLine'
  | 'diameter'
  | 'wire'
  | 'length';

export type PartField = { readonly key: string; readonly words: FieldWords } & (
  | { readonly type: 'choice'; readonly options: readonly string[] }
  | { readonly type: 'count'; readonly least: number; readonly most: number }
  | { readonly type: 'ratio' | 'length' | 'power' }
);

const ratio: PartField = { key: 'ratio', words: 'ratio', type: 'ratio' };
const rating: PartField = { key: 'ratingW', words: 'unknownRating', type: 'power' };
const length: PartField = { key: 'lengthM', words: 'length', type: 'length' };
const size: PartField = { key: 'size', words: 'core', type: 'choice', options: coreSizes };
const mix: PartField = { key: 'mix', words: 'mix', type: 'choice', options: mixIds };
const count = (most: number, words: FieldWords = 'count'): PartField => ({
  key: 'count',
  words,
  type: 'count',
  least: 1,
  most,
});
const turns = (words: FieldWords): PartField => ({ key: 'turns', words, type: 'count', least: 1, most: 60 });
const coax = (words: FieldWords): PartField => ({ key: 'line', words, type: 'choice', options: coaxIds });

export const partFields: Readonly<Record<PartKind, readonly PartField[]>> = {
  transformer: [ratio, { key: 'kind', words: 'kind', type: 'choice', options: ['voltage', 'current'] }, rating],
  'two-in-one': [ratio, rating],
  choke: [size, mix, count(20, 'countStacked'), turns('turns'), coax('windingLine')],
  beads: [count(200), coax('beadLine')],
  coil: [turns('coilTurns'), { key: 'diameterM', words: 'diameter', type: 'length' }, coax('line')],
  core: [size, mix, count(50)],
  wire: [{ key: 'wire', words: 'wire', type: 'choice', options: wireIds }, length],
  line: [{ key: 'line', words: 'line', type: 'choice', options: lineIds }, length],
};

export type Values = Readonly<Record<string, string>>;

/** What the form shows for a part that is already on the list. */
export function valuesOf(part: PartOnHand): Values {
  const values = Object.fromEntries(Object.entries(part).map(([key, value]) => [key, String(value)]));
  const [sizeId = '', mixId = ''] = 'core' in part ? part.core.split('-') : [];
  return 'core' in part ? { ...values, size: sizeId, mix: mixId } : values;
}

/** The first of each choice stands until another is made. */
export const startingValues = (kind: PartKind): Values =>
  Object.fromEntries(
    partFields[kind].flatMap((field) => (field.type === 'choice' ? [[field.key, preferred(field)]] : [])),
  );

/** What most drawers hold: a 61 mm ring of mix 31, 5 mm coax, PVC wire. */
const preferred = (field: PartField & { type: 'choice' }): string =>
  ['ft240', '31', 'rg-58', 'pvc-1.5mm2'].find((usual) => field.options.includes(usual)) ?? field.options[0] ?? '';

export interface FormContext {
  readonly unit: 'm' | 'ft';
  readonly format: Format;
}

export function readPartField(field: PartField, text: string, { unit, format }: FormContext): Reading {
  switch (field.type) {
    case 'length':
      return readLengthField(text, { key: field.key === 'diameterM' ? 'coilDiameterM' : 'ownedLengthM', unit, format });
    case 'power':
      return readPowerField(text);
    case 'ratio':
      return readRatio(text);
    case 'count':
      return readCountField(text, field);
    case 'choice':
      return good('count', field.options.indexOf(text));
  }
}

/** `4`, `4:1`, `49 : 1`, `1.5`. */
function readRatio(text: string): Reading {
  if (text.trim() === '') return bad('empty');
  const [, digits] = /^\s*(\d+(?:[.,]\d+)?)\s*(?::\s*1)?\s*$/.exec(text) ?? [];
  const value = Number(digits?.replace(',', '.'));
  return value >= 1 && value <= 200 ? good('count', value) : bad('ratio-range', { text });
}

export type ReadPart = { readonly part: PartOnHand } | { readonly wrong: ReadonlyMap<string, BadReading> };

export function readPart(kind: PartKind, values: Values, context: FormContext): ReadPart {
  const wrong = new Map<string, BadReading>();
  const raw: Record<string, unknown> = { part: kind };
  for (const field of partFields[kind]) {
    const text = values[field.key] ?? '';
    if (field.type === 'power' && text.trim() === '') continue; // not known
    const reading = readPartField(field, text, context);
    if (!isGood(reading)) wrong.set(field.key, reading);
    else raw[field.key] = field.type === 'choice' ? text : reading.quantity.value;
  }
  if (wrong.size > 0) return { wrong };
  const { size: sizeId, mix: mixId, ...rest } = raw;
  return { part: PartOnHand.parse(sizeId === undefined ? rest : { ...rest, core: `${sizeId}-${mixId}` }) };
}
