/** How distances and powers of a solved field came about, as formulas with their inputs: the very interpolation of near-field.ts. */
import type { Working, WorkingInput } from '../base/working';
import { exposureLimits } from '../catalog/exposure-limits';
import type { ExposureTest } from './exposure-tests';
import type { Facts } from './facts';
import { type Crossing, FIELD_MARGIN, FIELD_POWER_W } from './near-field';

export const STEP_M = 0.5;
export const roundUpM = (metres: number): number => Math.ceil(metres / STEP_M - 1e-9) * STEP_M;
/** Nearer than this nobody stays. */
export const TOUCHING_M = 0.5;
/** The schema takes no more. */
export const MOST_W = 3000;

/** Two figures, rounded down. */
export function roundDown(watts: number): number {
  if (watts <= 0) return 0;
  const step = downStep(watts);
  return Math.floor(watts / step + 1e-9) * step;
}
const downStep = (watts: number): number => 10 ** (Math.floor(Math.log10(watts)) - 1);

type Inputs = Readonly<Record<string, WorkingInput>>;

/** A solved field by distance, as far as one limit is asked of it. */
export interface FieldLine {
  readonly distancesM: readonly number[];
  readonly fields: readonly number[];
}

const told = ({ answers }: Facts, key: 'powerW' | 'mode' | 'transmitShare'): 'answer' | 'assumed' =>
  answers[key] === undefined ? 'assumed' : 'answer';

const solved = (value: number, unit: string): WorkingInput => ({ value, unit, from: 'solved' });
const fieldUnit = ({ kind }: ExposureTest): string => (kind === 'electric' ? 'V/m' : 'A/m');

export const powerInput = (facts: Facts): Inputs => ({
  P: { value: facts.settled.powerW, unit: 'W', from: told(facts, 'powerW') },
});

/** Mode and pauses, where the limit is averaged; nothing where it holds for the crest. */
export const dutyInputs = (facts: Facts, { onCrest }: ExposureTest): Inputs =>
  onCrest
    ? {}
    : {
        duty: { value: facts.averageFactor, unit: '', from: told(facts, 'mode') },
        share: { value: facts.settled.transmitShare, unit: '', from: told(facts, 'transmitShare') },
      };

const judgedInputs = (facts: Facts, test: ExposureTest): Inputs => ({
  margin: { value: FIELD_MARGIN, unit: '', from: 'assumed' },
  ...powerInput(facts),
  ...dutyInputs(facts, test),
  Pref: solved(FIELD_POWER_W, 'W'),
  L: { value: test.limit, unit: fieldUnit(test), from: 'catalogue' },
});

/** Field over its limit, both as amounts, from a field called F1. */
const ratioOf = ({ onCrest }: ExposureTest): string =>
  `(F1 * margin * sqrt(${onCrest ? 'P' : 'P * duty * share'} / Pref) / L)`;

/** The distance at which a limit is met, rounded up. */
export function crossingWorking(
  facts: Facts,
  test: ExposureTest,
  line: FieldLine,
  { metres, last }: Crossing,
): Working {
  const { distancesM, fields } = line;
  const ratio = ratioOf(test);
  const [hereM, nextM] = [distancesM[last] ?? 0, distancesM[last + 1]];
  const nextField = fields[last + 1] ?? 0;
  const here = { d1: solved(hereM, 'm'), F1: solved(fields[last] ?? 0, fieldUnit(test)) };
  const next = nextM === undefined ? {} : { d2: solved(nextM, 'm'), F2: solved(nextField, fieldUnit(test)) };
  const isWhole = nextM !== undefined && (hereM === 0 || nextField === 0);
  const distance =
    nextM === undefined
      ? `d1 * ${ratio}`
      : isWhole
        ? `(${ratio} > 1 ? d2 : d1)`
        : `d1 * (d2 / d1)^(log(${ratio}) / log(F1 / F2))`;
  return {
    formula: `max(ceil(${distance} / step - 1e-9) * step, touching)`,
    inputs: { ...here, ...next, ...judgedInputs(facts, test), step: stepInput, touching: touchingInput },
    result: { value: Math.max(roundUpM(metres), TOUCHING_M), unit: 'm' },
    source: exposureLimits[test.set].source,
  };
}

/** No distance at all: the strongest field meets its limit. */
export const metWorking = (facts: Facts, test: ExposureTest, strongest: number): Working => ({
  formula: `${ratioOf(test)} > 1 ? touching : none`,
  inputs: {
    F1: solved(strongest, fieldUnit(test)),
    ...judgedInputs(facts, test),
    none: { value: 0, unit: 'm', from: 'assumed' },
    touching: touchingInput,
  },
  result: { value: 0, unit: 'm' },
  source: exposureLimits[test.set].source,
});

export const touchingWorking = ({ set }: ExposureTest): Working => ({
  formula: 'touching',
  inputs: { touching: touchingInput },
  result: { value: TOUCHING_M, unit: 'm' },
  source: exposureLimits[set].source,
});

export const stepInput: WorkingInput = { value: STEP_M, unit: 'm', from: 'assumed' };
const touchingInput: WorkingInput = { value: TOUCHING_M, unit: 'm', from: 'assumed' };
const mostInput: WorkingInput = { value: MOST_W, unit: 'W', from: 'catalogue' };

/** A power and how it was found. */
export interface Watts {
  readonly watts: number;
  readonly working: Working;
}

/** A power before it is rounded down to two figures and held to the greatest that is taken. */
export interface RawWatts {
  readonly watts: number;
  readonly formula: string;
  readonly inputs: Inputs;
  readonly source: string;
}

/** What meets every limit: the least of the powers that meet one each. */
export const leastWatts = (allowed: readonly RawWatts[]): Watts =>
  statedWatts(allowed.reduce((least, each) => (each.watts < least.watts ? each : least)));

export function statedWatts({ watts, formula, inputs, source }: RawWatts): Watts {
  const isMost = watts >= MOST_W;
  const value = roundDown(Math.min(watts, MOST_W));
  if (isMost)
    return {
      watts: value,
      working: { formula: 'most', inputs: { most: mostInput }, result: { value, unit: 'W' }, source },
    };
  const step: WorkingInput = { value: value === 0 ? 1 : downStep(watts), unit: 'W', from: 'assumed' };
  return {
    watts: value,
    working: {
      formula: `floor((${formula}) / step + 1e-9) * step`,
      inputs: { ...inputs, step },
      result: { value, unit: 'W' },
      source,
    },
  };
}

/** Nobody may stay so near, whatever the power. */
export const noWatts = (nearestM: number, { set }: ExposureTest): Watts => ({
  watts: 0,
  working: {
    formula: 'nearest < touching ? none : most',
    inputs: {
      nearest: { value: nearestM, unit: 'm', from: 'answer' },
      touching: touchingInput,
      none: { value: 0, unit: 'W', from: 'assumed' },
      most: mostInput,
    },
    result: { value: 0, unit: 'W' },
    source: exposureLimits[set].source,
  },
});

/** Peak power that brings one field to its limit. `field` names the field at the place by formula and inputs. */
export function wattsAtLimit(
  facts: Facts,
  test: ExposureTest,
  field: { readonly value: number; readonly formula: string; readonly inputs: Inputs },
): RawWatts {
  const share = test.onCrest ? 1 : facts.averageFactor * facts.settled.transmitShare;
  const watts =
    share === 0 || field.value === 0
      ? Number.POSITIVE_INFINITY
      : (FIELD_POWER_W * (test.limit / (FIELD_MARGIN * field.value)) ** 2) / share;
  const { P: _power, ...judged } = judgedInputs(facts, test);
  return {
    watts,
    formula: `Pref * (L / (margin * ${field.formula}))^2${test.onCrest ? '' : ' / (duty * share)'}`,
    inputs: { ...field.inputs, ...judged },
    source: exposureLimits[test.set].source,
  };
}
