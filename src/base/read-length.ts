/**
 * Lengths as people type them: `13 ft 2 in`, `13'2"`, `13'2`, `66 1/2 ft`, `66½ ft`, `4.1 m`, `4,1`, `4 m 10 cm`, `410 cm`, `4100 mm`.
 * A bare number takes the unit of its field. What can be read in two ways is asked, never guessed.
 */
import { METRES_PER_FOOT, METRES_PER_INCH } from './convert';
import { plainSigns, readNumber } from './read-number';

export const lengthUnits = ['m', 'cm', 'mm', 'ft', 'in'] as const;
export type LengthUnit = (typeof lengthUnits)[number];

export interface Length {
  readonly metres: number;
  /** The unit it was typed in (feet for feet and inches). */
  readonly unit: LengthUnit;
}

export type LengthProblemCode =
  | 'empty'
  | 'not-a-number'
  | 'negative'
  | 'zero'
  | 'two-commas'
  | 'unknown-unit'
  | 'comma-doubt'
  | 'inches-past-foot'
  | 'mixed-units';

/** Why a text is no length. `candidates` are the readings to choose from when there is more than one. */
export interface LengthProblem {
  readonly code: LengthProblemCode;
  readonly data: Readonly<Record<string, string | number>>;
  readonly candidates: readonly Length[];
}

export const metresPer: Readonly<Record<LengthUnit, number>> = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  ft: METRES_PER_FOOT,
  in: METRES_PER_INCH,
};

const unitNames: ReadonlyMap<string, LengthUnit> = new Map([
  ...['m', 'metre', 'metres', 'meter', 'meters'].map((name) => [name, 'm'] as const),
  ...['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((name) => [name, 'cm'] as const),
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((name) => [name, 'mm'] as const),
  ...['ft', 'foot', 'feet', "'"].map((name) => [name, 'ft'] as const),
  ...['in', 'inch', 'inches', '"'].map((name) => [name, 'in'] as const),
]);

/** What may follow a greater unit, and how many of it make one of the greater. */
const smaller: Partial<Record<LengthUnit, { readonly unit: LengthUnit; readonly perGreater: number }>> = {
  ft: { unit: 'in', perGreater: 12 },
  m: { unit: 'cm', perGreater: 100 },
};

interface Part {
  readonly digits: string;
  /** Empty when none was typed. */
  readonly unitText: string;
}

const partPattern = /([\d.,/ ]*[\d.,/])\s*(['"]|\p{L}+\.?)?\s*/gu;

function partsOf(text: string): Part[] | undefined {
  const parts: Part[] = [];
  let end = 0;
  for (const match of text.matchAll(partPattern)) {
    if (match.index !== end) return undefined;
    end += match[0].length;
    parts.push({ digits: (match[1] ?? '').trim(), unitText: (match[2] ?? '').replace(/\.$/, '').toLowerCase() });
  }
  return end === text.length && parts.length > 0 ? parts : undefined;
}

const problem = (
  code: LengthProblemCode,
  data: LengthProblem['data'] = {},
  candidates: readonly Length[] = [],
): LengthProblem => ({ code, data, candidates });

export const isLengthProblem = (read: Length | LengthProblem): read is LengthProblem => 'code' in read;

/** Reads a typed length. `fieldUnit` is the unit of a number typed without one. */
export function readLength(typed: string, fieldUnit: LengthUnit): Length | LengthProblem {
  const text = plainSigns(typed);
  if (text === '') return problem('empty');
  if (/^-\s*[\d.,]/.test(text)) return problem('negative', { text: typed });
  const parts = partsOf(text);
  if (parts === undefined) return problem('not-a-number', { text: typed });
  const unknown = parts.find((part) => part.unitText !== '' && !unitNames.has(part.unitText));
  if (unknown !== undefined) return problem('unknown-unit', { text: typed, unit: unknown.unitText });
  const [first, second, ...rest] = parts;
  if (first === undefined || rest.length > 0) return problem('mixed-units', { text: typed });
  return second === undefined ? readOne(first, fieldUnit, typed) : readPair(first, second, typed);
}

function readOne(part: Part, fieldUnit: LengthUnit, typed: string): Length | LengthProblem {
  const unit = unitNames.get(part.unitText) ?? fieldUnit;
  const number = readNumber(part.digits);
  if ('problem' in number) return problem(number.problem, { text: typed });
  if ('candidates' in number) {
    const [decimal, thousands] = number.candidates;
    const candidates = number.candidates.map((value): Length => ({ metres: value * metresPer[unit], unit }));
    return problem('comma-doubt', { text: typed, unit, decimal, thousands }, candidates);
  }
  return number.value > 0 ? { metres: number.value * metresPer[unit], unit } : problem('zero', { text: typed });
}

/** Feet and inches, metres and centimetres. The last unit may be left out after feet only: `13'2`. */
function readPair(first: Part, second: Part, typed: string): Length | LengthProblem {
  const unit = unitNames.get(first.unitText);
  const follower = unit === undefined ? undefined : smaller[unit];
  const secondUnit = unitNames.get(second.unitText) ?? (unit === 'ft' ? 'in' : undefined);
  if (unit === undefined || follower === undefined || secondUnit !== follower.unit)
    return problem('mixed-units', { text: typed });
  const greater = readNumber(first.digits);
  const lesser = readNumber(second.digits);
  if (!('value' in greater) || !('value' in lesser)) return problem('not-a-number', { text: typed });
  if (!Number.isInteger(greater.value)) return problem('mixed-units', { text: typed });
  if (lesser.value >= follower.perGreater)
    return problem('inches-past-foot', { text: typed, most: follower.perGreater });
  const metres = greater.value * metresPer[unit] + lesser.value * metresPer[secondUnit];
  return metres > 0 ? { metres, unit } : problem('zero', { text: typed });
}

/** The same digits with the unit written out, for a field whose unit is about to change: what was typed keeps its meaning. */
export function withUnit(typed: string, fieldUnit: LengthUnit): string {
  const parts = partsOf(plainSigns(typed));
  const bare = parts?.length === 1 && parts[0]?.unitText === '';
  return bare ? `${typed.trim()} ${fieldUnit}` : typed;
}
