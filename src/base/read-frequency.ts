/**
 * Frequencies as people type them: `7.1`, `7,1`, `7100 kHz`, `7.100 MHz`. A bare number is megahertz. One that only makes sense in another
 * unit (`7100`) is asked about, never corrected.
 */
import { plainSigns, readNumber } from './read-number';

export type FrequencyUnit = 'MHz' | 'kHz' | 'Hz';

export interface Frequency {
  readonly megahertz: number;
  readonly unit: FrequencyUnit;
}

export type FrequencyProblemCode =
  | 'empty'
  | 'not-a-number'
  | 'negative'
  | 'zero'
  | 'two-commas'
  | 'unknown-unit'
  | 'unit-doubt'
  | 'out-of-range';

export interface FrequencyProblem {
  readonly code: FrequencyProblemCode;
  readonly data: Readonly<Record<string, string | number>>;
  readonly candidates: readonly Frequency[];
}

/** Below and above this no question of ours has an answer. */
export const frequencyRangeMHz = { least: 1, most: 60 } as const;

const megahertzPer: Readonly<Record<FrequencyUnit, number>> = { MHz: 1, kHz: 1e-3, Hz: 1e-6 };
const unitNames: ReadonlyMap<string, FrequencyUnit> = new Map([
  ['', 'MHz'],
  ['mhz', 'MHz'],
  ['mc', 'MHz'],
  ['megahertz', 'MHz'],
  ['khz', 'kHz'],
  ['kc', 'kHz'],
  ['kilohertz', 'kHz'],
  ['hz', 'Hz'],
  ['hertz', 'Hz'],
]);

const problem = (
  code: FrequencyProblemCode,
  data: FrequencyProblem['data'] = {},
  candidates: readonly Frequency[] = [],
): FrequencyProblem => ({ code, data, candidates });

export const isFrequencyProblem = (read: Frequency | FrequencyProblem): read is FrequencyProblem => 'code' in read;

const inRange = (megahertz: number): boolean =>
  megahertz >= frequencyRangeMHz.least && megahertz <= frequencyRangeMHz.most;

export function readFrequency(typed: string): Frequency | FrequencyProblem {
  const text = plainSigns(typed);
  if (text === '') return problem('empty');
  if (/^-\s*[\d.,]/.test(text)) return problem('negative', { text: typed });
  const [, digits, unitText = ''] = /^([\d., ]*[\d.,])\s*(\p{L}*)\.?$/u.exec(text) ?? [];
  if (digits === undefined) return problem('not-a-number', { text: typed });
  const unit = unitNames.get(unitText.toLowerCase());
  if (unit === undefined) return problem('unknown-unit', { text: typed, unit: unitText });
  const number = readNumber(digits);
  if ('problem' in number) return problem(number.problem, { text: typed });
  // `7,100` is 7.1 or 7100: the reading that is a frequency of ours in the unit as typed is meant, and never more than one is.
  const values = 'value' in number ? [number.value] : number.candidates;
  const value = values.find((each) => inRange(each * megahertzPer[unit])) ?? values[0] ?? 0;
  return judge(value, unit, typed);
}

function judge(value: number, unit: FrequencyUnit, typed: string): Frequency | FrequencyProblem {
  if (value === 0) return problem('zero', { text: typed });
  const megahertz = value * megahertzPer[unit];
  if (inRange(megahertz)) return { megahertz, unit };
  const candidates = (['MHz', 'kHz', 'Hz'] as const)
    .map((other): Frequency => ({ megahertz: value * megahertzPer[other], unit: other }))
    .filter((other) => inRange(other.megahertz));
  return candidates.length > 0
    ? problem('unit-doubt', { text: typed, value, unit }, candidates)
    : problem('out-of-range', { text: typed, ...frequencyRangeMHz });
}
