/**
 * How far people must stay from every part of the antenna, counterpoise included, band by band.
 *
 * The published far-field screen for each limit of the rule set, the largest distance deciding; no credit for mismatch or line loss; average
 * power = peak × mode factor × transmitted share, and the crest alone where a limit knows no averaging. Inside λ/2π the screen is not final: there
 * the distance is at least 3 m at 100 W and 10 m at 1 kW, a power law through both, common practice near wire ends, for both groups of people, until the near field is
 * computed; then the computed field decides (exposure-solved). Loops under half a wave round are refused until then. What is not told is taken at
 * its worst.
 * Rounded up to 0.5 m.
 */
import { ETA0 } from '../base/constants';
import type { Working, WorkingInput } from '../base/working';
import { exposureLimits } from '../catalog/exposure-limits';
import {
  GROUND_FACTOR,
  gainNumber,
  REFLECTING_FACTOR,
  reactiveLimitM,
  screenDistanceM,
} from '../physics/exposure-screen';
import { mostGainDbi } from './antenna-gain';
import type { Dimensions } from './dimensions';
import { exposurePlaces } from './exposure-places';
import { partDistance, powerAt, solvedDistance } from './exposure-solved';
import { type ExposureTest, limitsOn, type Tier, testsFor } from './exposure-tests';
import {
  dutyInputs,
  leastWatts,
  noWatts,
  powerInput,
  type RawWatts,
  roundUpM,
  stepInput,
  TOUCHING_M,
  type Watts,
} from './exposure-working';
import type { BandFacts, Facts } from './facts';
import { type FieldFacts, fieldOf, type NearField } from './field-facts';
import type { BandFinding, Exposure, Said } from './finding';
import { FIELD_MARGIN } from './near-field';

const NEAR_WIRE_M = 3;
const NEAR_WIRE_W = 100;
/** Exponent that leads from 3 m at 100 W through 10 m at 1 kW. */
const NEAR_WIRE_RISE = Math.log10(10 / 3);
/** In print the formula still falls short at 0.29 wavelengths round (US bulletin, table 17, 28 MHz). */
const SMALL_LOOP_WAVES = 0.5;

interface Radiation {
  readonly facts: Facts;
  readonly at: BandFacts;
  readonly gain: number;
  readonly factor: number;
}

interface Distance {
  readonly metres: number;
  readonly working: Working | null;
  readonly decidedBy: Said;
}

export function exposureOf(
  facts: Facts,
  dimensions: Dimensions,
  bands: readonly BandFinding[],
  field?: FieldFacts,
): Exposure[] {
  return facts.bands
    .filter(({ band }) => bands.some((finding) => finding.band === band))
    .map((at) => exposureOn(facts, dimensions, at, field));
}

function exposureOn(facts: Facts, dimensions: Dimensions, at: BandFacts, field: FieldFacts | undefined): Exposure {
  const { nearField } = fieldOf(field, at.band);
  const solved = nearField === undefined ? null : solvedExposure(facts, at, nearField);
  if (solved !== null) return solved;
  if (facts.system === 'full-wave-loop' && dimensions.radiator.metres < SMALL_LOOP_WAVES * at.wavelengthM) {
    const decidedBy = { code: 'small-loop', data: { roundM: dimensions.radiator.metres } };
    return { ...withoutDistance(at, facts), decidedBy };
  }
  return screenedExposure(facts, dimensions, at, field);
}

const withoutDistance = (at: BandFacts, { settled: { ruleSet } }: Facts): Omit<Exposure, 'decidedBy'> => ({
  band: at.band,
  knowingM: null,
  knowingMWorking: null,
  publicM: null,
  publicMWorking: null,
  groundKnowingM: null,
  groundKnowingMWorking: null,
  groundPublicM: null,
  groundPublicMWorking: null,
  ruleSet,
  method: 'refused',
  part: null,
  parts: [],
  places: [],
  limits: limitsOn(ruleSet, at.focusMHz),
  nearestPersonOk: null,
  powerAtNearestPersonW: null,
  powerAtNearestPersonWWorking: null,
});

/** Nobody is judged until the place of the nearest person is told. */
const judgedPerson = (metres: number | null, publicM: number, most: Watts | null) => ({
  nearestPersonOk: metres === null ? null : metres >= publicM,
  powerAtNearestPersonW: most?.watts ?? null,
  powerAtNearestPersonWWorking: most?.working ?? null,
});

interface Stretch<W> {
  readonly metres: number;
  readonly working: W;
}

const distances = <W>(knowing: Stretch<W>, everyone: Stretch<W>) => ({
  knowingM: knowing.metres,
  knowingMWorking: knowing.working,
  publicM: everyone.metres,
  publicMWorking: everyone.working,
});

const onGround = <W>(knowing: Stretch<W>, everyone: Stretch<W>) => ({
  groundKnowingM: knowing.metres,
  groundKnowingMWorking: knowing.working,
  groundPublicM: everyone.metres,
  groundPublicMWorking: everyone.working,
});

function solvedExposure(facts: Facts, at: BandFacts, near: NearField): Exposure | null {
  const knowing = solvedDistance(facts, at, near, 'knowing');
  const everyone = solvedDistance(facts, at, near, 'public');
  if (knowing === null || everyone === null) return null;
  const { nearestPersonM } = facts.settled;
  return {
    ...withoutDistance(at, facts),
    ...distances(knowing, everyone),
    ...onGround(knowing.ground, everyone.ground),
    method: 'solved',
    decidedBy: everyone.decidedBy,
    part: everyone.part,
    // Between two distances the strongest of all parts counts, which may ask for more than any of them: the deciding part bears that.
    parts: near.parts.flatMap(({ part }) => {
      const knows = part === knowing.part ? knowing : partDistance(facts, at, near, 'knowing', part);
      const others = part === everyone.part ? everyone : partDistance(facts, at, near, 'public', part);
      return knows === null || others === null ? [] : [{ part, ...distances(knows, others) }];
    }),
    places: exposurePlaces(facts, at, near),
    ...judgedPerson(
      nearestPersonM,
      everyone.metres,
      nearestPersonM === null ? null : powerAt(facts, at, near, nearestPersonM),
    ),
  };
}

function screenedExposure(
  facts: Facts,
  dimensions: Dimensions,
  at: BandFacts,
  field: FieldFacts | undefined,
): Exposure {
  const source: Radiation = {
    facts,
    at,
    gain: gainNumber(fieldOf(field, at.band).gainDbi ?? mostGainDbi(facts, dimensions, at)),
    factor: standsOnGround(facts) ? REFLECTING_FACTOR : GROUND_FACTOR,
  };
  const knowing = distanceFor(source, 'knowing');
  const everyone = distanceFor(source, 'public');
  const { nearestPersonM } = facts.settled;
  return {
    ...withoutDistance(at, facts),
    ...distances(knowing, everyone),
    ...onGround(knowing, everyone),
    method: everyone.decidedBy.code.startsWith('screen') ? 'screen' : 'common-practice',
    decidedBy: everyone.decidedBy,
    ...judgedPerson(nearestPersonM, everyone.metres, nearestPersonM === null ? null : powerFor(source, nearestPersonM)),
  };
}

const standsOnGround = ({ settled, system }: Facts): boolean =>
  settled.returnPath !== 'elevated-radials' &&
  (system === 'quarter-wave-vertical' || system === 'non-resonant-vertical' || system === 'inverted-l');

/** Average power for a test, W; the crest where it is not averaged. */
const powerOf = ({ facts: { settled, averageW } }: Radiation, test: ExposureTest): number =>
  test.onCrest ? settled.powerW : averageW;

const screen = (source: Radiation, test: ExposureTest): number =>
  screenDistanceM(powerOf(source, test), source.gain, test.density, source.factor);

const nearWireM = (powerW: number): number => NEAR_WIRE_M * (powerW / NEAR_WIRE_W) ** NEAR_WIRE_RISE;

function distanceFor(source: Radiation, tier: Tier): Distance {
  const { facts, at } = source;
  const tests = testsFor(facts.settled.ruleSet, tier, at.focusMHz);
  const deciding = tests.reduce((worst, test) => (screen(source, test) > screen(source, worst) ? test : worst));
  const screenM = screen(source, deciding);
  const farM = reactiveLimitM(at.wavelengthM);
  const leastM = Math.min(nearWireM(facts.settled.powerW), farM);
  if (screenM >= leastM) {
    return { metres: roundUpM(screenM), working: screenWorking(source, deciding), decidedBy: screenSaid(deciding) };
  }
  const isFar = farM <= nearWireM(facts.settled.powerW);
  const data = { screenM, farM, powerW: facts.settled.powerW };
  return {
    metres: roundUpM(leastM),
    working: isFar ? farWorking(at) : nearWireWorking(facts),
    decidedBy: { code: isFar ? 'end-of-near-field' : 'near-wire', data },
  };
}

const LEAST_REACH_M = 4;

/**
 * How far out the solved field must be asked for, m: beyond, even full reflection and the greatest gain stay below every limit.
 */
export function searchReachM(facts: Facts, dimensions: Dimensions, at: BandFacts): number {
  const gain = gainNumber(mostGainDbi(facts, dimensions, at)) * FIELD_MARGIN ** 2;
  const source: Radiation = { facts, at, gain, factor: REFLECTING_FACTOR };
  const tests = testsFor(facts.settled.ruleSet, 'public', at.focusMHz);
  return Math.max(LEAST_REACH_M, ...tests.map((test) => screen(source, test)));
}

const screenSaid = (test: ExposureTest): Said => ({
  code: test.onCrest ? 'screen-on-crest' : 'screen',
  data: { kind: test.kind, limit: test.limit },
});

/** Peak power at which the public distance just reaches the nearest person; inside the near field no more than common practice gives. */
function powerFor(source: Radiation, nearestM: number): Watts {
  const { facts, at } = source;
  const tests = testsFor(facts.settled.ruleSet, 'public', at.focusMHz);
  const [first] = tests;
  if (first !== undefined && nearestM < TOUCHING_M) return noWatts(nearestM, first);
  const allowed = tests.map((test) => screenWatts(source, test, nearestM));
  if (nearestM < reactiveLimitM(at.wavelengthM)) allowed.push(nearWireWatts(nearestM));
  return leastWatts(allowed);
}

function screenWatts(source: Radiation, test: ExposureTest, nearestM: number): RawWatts {
  const { facts, gain, factor } = source;
  const share = test.onCrest ? 1 : facts.averageFactor * facts.settled.transmitShare;
  const perWattM = screenDistanceM(share, gain, test.density, factor);
  const watts = test.onCrest ? '' : ' * duty * share';
  return {
    watts: perWattM === 0 ? Number.POSITIVE_INFINITY : (nearestM / perWattM) ** 2,
    formula: `4 * pi * ${densityFormula[test.kind]} * nearest^2 / (k * g${watts})`,
    inputs: { nearest: nearestInput(nearestM), ...screenInputs(source, test) },
    source: exposureLimits[test.set].source,
  };
}

const nearWireWatts = (nearestM: number): RawWatts => ({
  watts: NEAR_WIRE_W * (nearestM / NEAR_WIRE_M) ** (1 / NEAR_WIRE_RISE),
  formula: 'Pref * (nearest / least)^(1 / rise)',
  inputs: {
    nearest: nearestInput(nearestM),
    least: { value: NEAR_WIRE_M, unit: 'm', from: 'catalogue' },
    Pref: { value: NEAR_WIRE_W, unit: 'W', from: 'catalogue' },
    rise: { value: NEAR_WIRE_RISE, unit: '', from: 'catalogue' },
  },
  source: 'exposure-near-wire',
});

const nearestInput = (value: number): WorkingInput => ({ value, unit: 'm', from: 'answer' });

const rounded = (expression: string): string => `ceil((${expression}) / step) * step`;

const densityFormula = { electric: 'E^2 / eta', magnetic: 'H^2 * eta', power: 'S' } as const;
const limitName = { electric: 'E', magnetic: 'H', power: 'S' } as const;
const limitUnit = { electric: 'V/m', magnetic: 'A/m', power: 'W/m^2' } as const;

/** All but the power at the crest. */
const screenInputs = (
  { facts, gain, factor }: Radiation,
  test: ExposureTest,
): Readonly<Record<string, WorkingInput>> => ({
  k: { value: factor, unit: '', from: 'catalogue' },
  ...dutyInputs(facts, test),
  g: { value: gain, unit: '', from: 'assumed' },
  [limitName[test.kind]]: { value: test.limit, unit: limitUnit[test.kind], from: 'catalogue' },
  ...(test.kind === 'power' ? {} : { eta: { value: ETA0, unit: 'ohm', from: 'catalogue' } }),
});

function screenWorking(source: Radiation, test: ExposureTest): Working {
  const watts = test.onCrest ? 'P' : 'P * duty * share';
  return {
    formula: rounded(`sqrt(k * ${watts} * g / (4 * pi * ${densityFormula[test.kind]}))`),
    inputs: { ...powerInput(source.facts), ...screenInputs(source, test), step: stepInput },
    result: { value: roundUpM(screen(source, test)), unit: 'm' },
    source: exposureLimits[test.set].source,
  };
}

function nearWireWorking({ answers, settled: { powerW } }: Facts): Working {
  return {
    formula: rounded('least * (P / Pref)^rise'),
    inputs: {
      least: { value: NEAR_WIRE_M, unit: 'm', from: 'catalogue' },
      P: { value: powerW, unit: 'W', from: answers.powerW === undefined ? 'assumed' : 'answer' },
      Pref: { value: NEAR_WIRE_W, unit: 'W', from: 'catalogue' },
      rise: { value: NEAR_WIRE_RISE, unit: '', from: 'catalogue' },
      step: stepInput,
    },
    result: { value: roundUpM(nearWireM(powerW)), unit: 'm' },
    source: 'exposure-near-wire',
  };
}

function farWorking(at: BandFacts): Working {
  return {
    formula: rounded('lambda / (2 * pi)'),
    inputs: { lambda: { value: at.wavelengthM, unit: 'm', from: 'answer' }, step: stepInput },
    result: { value: roundUpM(reactiveLimitM(at.wavelengthM)), unit: 'm' },
    source: 'us-exposure-bulletin',
  };
}
