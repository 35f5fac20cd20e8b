/**
 * How far people must stay from every part of the antenna, counterpoise included, band by band.
 *
 * The published far-field screen for each limit of the rule set, the largest distance deciding; no credit for mismatch or line loss; average
 * power = peak × mode factor × transmitted share, and the crest alone where a limit knows no averaging. Inside λ/2π the screen is not final: there
 * the distance is at least 3 m at 100 W and 10 m at 1 kW, a power law through both, common practice near wire ends, for both groups of people, until the near field is
 * computed; then the computed field decides (exposure-solved). Loops under half a wave round are refused. What is not told is taken at its worst.
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
import { partDistanceM, powerAtW, roundUpM, STEP_M, solvedDistance } from './exposure-solved';
import { type ExposureTest, type Tier, testsFor } from './exposure-tests';
import type { BandFacts, Facts } from './facts';
import { type FieldFacts, fieldOf, type NearField } from './field-facts';
import type { BandFinding, Exposure, Said } from './finding';
import { FIELD_MARGIN } from './near-field';

/** The schema takes no more. */
const MOST_W = 3000;
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
  if (facts.system === 'full-wave-loop' && dimensions.radiator.metres < SMALL_LOOP_WAVES * at.wavelengthM) {
    const decidedBy = { code: 'small-loop', data: { roundM: dimensions.radiator.metres } };
    return { ...withoutDistance(at, facts), decidedBy };
  }
  const { nearField } = fieldOf(field, at.band);
  const solved = nearField === undefined ? null : solvedExposure(facts, at, nearField);
  return solved ?? screenedExposure(facts, dimensions, at, field);
}

const withoutDistance = (at: BandFacts, { settled: { ruleSet } }: Facts): Omit<Exposure, 'decidedBy'> => ({
  band: at.band,
  knowingM: null,
  knowingMWorking: null,
  publicM: null,
  publicMWorking: null,
  groundKnowingM: null,
  groundPublicM: null,
  ruleSet,
  method: 'refused',
  part: null,
  parts: [],
  nearestPersonOk: null,
  powerAtNearestPersonW: null,
});

function solvedExposure(facts: Facts, at: BandFacts, near: NearField): Exposure | null {
  const knowing = solvedDistance(facts, at, near, 'knowing');
  const everyone = solvedDistance(facts, at, near, 'public');
  if (knowing === null || everyone === null) return null;
  const { nearestPersonM } = facts.settled;
  return {
    band: at.band,
    knowingM: knowing.metres,
    knowingMWorking: knowing.working,
    publicM: everyone.metres,
    publicMWorking: everyone.working,
    groundKnowingM: knowing.groundM,
    groundPublicM: everyone.groundM,
    ruleSet: facts.settled.ruleSet,
    method: 'solved',
    decidedBy: everyone.decidedBy,
    part: everyone.part,
    parts: near.parts.map(({ part }) => ({
      part,
      knowingM: partDistanceM(facts, at, near, 'knowing', part),
      publicM: partDistanceM(facts, at, near, 'public', part),
    })),
    nearestPersonOk: nearestPersonM === null ? null : nearestPersonM >= everyone.metres,
    powerAtNearestPersonW:
      nearestPersonM === null ? null : roundDown(Math.min(powerAtW(facts, at, near, nearestPersonM), MOST_W)),
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
  const { nearestPersonM, ruleSet } = facts.settled;
  return {
    ...withoutDistance(at, facts),
    knowingM: knowing.metres,
    knowingMWorking: knowing.working,
    publicM: everyone.metres,
    publicMWorking: everyone.working,
    groundKnowingM: knowing.metres,
    groundPublicM: everyone.metres,
    ruleSet,
    method: everyone.decidedBy.code.startsWith('screen') ? 'screen' : 'common-practice',
    decidedBy: everyone.decidedBy,
    nearestPersonOk: nearestPersonM === null ? null : nearestPersonM >= everyone.metres,
    powerAtNearestPersonW: nearestPersonM === null ? null : powerFor(source, nearestPersonM),
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

/** Peak power at which the public distance just reaches the nearest person, W, two figures, rounded down. */
function powerFor(source: Radiation, nearestM: number): number {
  const { facts, at } = source;
  const perWatt = testsFor(facts.settled.ruleSet, 'public', at.focusMHz).map((test) => {
    const share = test.onCrest ? 1 : facts.averageFactor * facts.settled.transmitShare;
    return share === 0 ? 0 : screenDistanceM(share, source.gain, test.density, source.factor);
  });
  const most = Math.max(...perWatt);
  const byScreen = most === 0 ? Number.POSITIVE_INFINITY : (nearestM / most) ** 2;
  const isFar = nearestM >= reactiveLimitM(at.wavelengthM);
  const byNearWire = isFar ? Number.POSITIVE_INFINITY : NEAR_WIRE_W * (nearestM / NEAR_WIRE_M) ** (1 / NEAR_WIRE_RISE);
  return roundDown(Math.min(byScreen, byNearWire, MOST_W));
}

function roundDown(watts: number): number {
  if (watts <= 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(watts)) - 1);
  return Math.floor(watts / step + 1e-9) * step;
}

const rounded = (expression: string): string => `ceil((${expression}) / step) * step`;
const step: WorkingInput = { value: STEP_M, unit: 'm', from: 'assumed' };

function screenWorking(source: Radiation, test: ExposureTest): Working {
  const { facts, gain, factor } = source;
  const told = (key: 'powerW' | 'mode' | 'transmitShare'): 'answer' | 'assumed' =>
    facts.answers[key] === undefined ? 'assumed' : 'answer';
  const power: Record<string, WorkingInput> = { P: { value: facts.settled.powerW, unit: 'W', from: told('powerW') } };
  if (!test.onCrest) {
    power.duty = { value: facts.averageFactor, unit: '', from: told('mode') };
    power.share = { value: facts.settled.transmitShare, unit: '', from: told('transmitShare') };
  }
  const watts = test.onCrest ? 'P' : 'P * duty * share';
  const unit = { electric: 'V/m', magnetic: 'A/m', power: 'W/m^2' }[test.kind];
  const limit = { electric: 'E^2 / eta', magnetic: 'H^2 * eta', power: 'S' }[test.kind];
  const name = { electric: 'E', magnetic: 'H', power: 'S' }[test.kind];
  const wave: Record<string, WorkingInput> =
    test.kind === 'power' ? {} : { eta: { value: ETA0, unit: 'ohm', from: 'catalogue' } };
  return {
    formula: rounded(`sqrt(k * ${watts} * g / (4 * pi * ${limit}))`),
    inputs: {
      k: { value: factor, unit: '', from: 'catalogue' },
      ...power,
      g: { value: gain, unit: '', from: 'assumed' },
      [name]: { value: test.limit, unit, from: 'catalogue' },
      ...wave,
      step,
    },
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
      step,
    },
    result: { value: roundUpM(nearWireM(powerW)), unit: 'm' },
    source: 'exposure-near-wire',
  };
}

function farWorking(at: BandFacts): Working {
  return {
    formula: rounded('lambda / (2 * pi)'),
    inputs: { lambda: { value: at.wavelengthM, unit: 'm', from: 'answer' }, step },
    result: { value: roundUpM(reactiveLimitM(at.wavelengthM)), unit: 'm' },
    source: 'us-exposure-bulletin',
  };
}
