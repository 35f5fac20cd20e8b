/**
 * Keep-out distances from the currents of this very antenna: electric and magnetic field each against its own limit, round every part at any
 * height, and on the ground for a standing body. Power density is no test so near. Never less than touching distance; where nobody told the
 * height, the ground gives no relief either.
 */
import type { Working, WorkingInput } from '../base/working';
import { exposureLimits } from '../catalog/exposure-limits';
import type { AntennaPart } from '../design/antenna-part';
import { type ExposureTest, type Tier, testsFor } from './exposure-tests';
import type { BandFacts, Facts } from './facts';
import type { NearField } from './field-facts';
import type { Said } from './finding';
import {
  type Crossing,
  crossingOf,
  envelopeOf,
  type Family,
  FIELD_MARGIN,
  FIELD_POWER_W,
  fieldAtDistance,
  type SolvedKind,
  strongestPart,
} from './near-field';

export const TOUCHING_M = 0.5;
export const STEP_M = 0.5;
export const roundUpM = (metres: number): number => Math.ceil(metres / STEP_M - 1e-9) * STEP_M;

interface SolvedTest extends ExposureTest {
  readonly kind: SolvedKind;
}

interface Judged {
  readonly test: SolvedTest;
  readonly crossing: Crossing | null;
}

export interface SolvedDistance {
  readonly metres: number;
  /** From below or beside the nearest part to where a standing body meets the limits; 0 where it does everywhere. */
  readonly groundM: number;
  readonly working: Working;
  readonly decidedBy: Said;
  readonly part: AntennaPart | null;
}

const isSolved = (test: ExposureTest): test is SolvedTest => test.kind !== 'power';

/** Without a magnetic limit of its own (European workers, from 10 MHz up) a set is judged by what it has. */
const solvedTests = ({ settled }: Facts, tier: Tier, { focusMHz }: BandFacts): readonly SolvedTest[] =>
  testsFor(settled.ruleSet, tier, focusMHz).filter(isSolved);

const powerShare = ({ averageFactor, settled }: Facts, { onCrest }: ExposureTest): number =>
  onCrest ? 1 : averageFactor * settled.transmitShare;

/** Turns a field at 100 W into the one to be judged. */
const scaleOf = (facts: Facts, test: ExposureTest): number =>
  FIELD_MARGIN * Math.sqrt((facts.settled.powerW * powerShare(facts, test)) / FIELD_POWER_W);

function judge(facts: Facts, near: NearField, family: Family, test: SolvedTest, part?: AntennaPart): Judged {
  const distancesM = family === 'around' ? near.aroundM : near.groundM;
  const fields = envelopeOf(near, family, test.kind, part);
  return { test, crossing: crossingOf(distancesM, fields, scaleOf(facts, test), test.limit) };
}

const metresOf = ({ crossing }: Judged): number => crossing?.metres ?? 0;
const farthest = (list: readonly Judged[]): Judged | undefined =>
  list.reduce<Judged | undefined>(
    (best, each) => (best === undefined || metresOf(each) > metresOf(best) ? each : best),
    undefined,
  );

export function solvedDistance(facts: Facts, at: BandFacts, near: NearField, tier: Tier): SolvedDistance | null {
  const tests = solvedTests(facts, tier, at);
  const deciding = farthest(tests.map((test) => judge(facts, near, 'around', test)));
  if (deciding === undefined) return null;
  const metres = roundUpM(Math.max(metresOf(deciding), TOUCHING_M));
  const onGround = farthest(tests.map((test) => judge(facts, near, 'ground', test)));
  const groundM = onGround?.crossing == null ? 0 : roundUpM(Math.max(onGround.crossing.metres, TOUCHING_M));
  const heightTold = facts.answers.heightM !== undefined;
  return {
    metres,
    groundM: heightTold ? groundM : Math.max(groundM, metres),
    ...(deciding.crossing === null || deciding.crossing.metres <= TOUCHING_M
      ? touching(facts, near, tests)
      : decided(facts, near, deciding.test, deciding.crossing)),
  };
}

/** Distance of one part alone, for the drawing: 0 where its limits are met at touching distance already. */
export function partDistanceM(facts: Facts, at: BandFacts, near: NearField, tier: Tier, part: AntennaPart): number {
  const tests = solvedTests(facts, tier, at);
  const deciding = farthest(tests.map((test) => judge(facts, near, 'around', test, part)));
  return deciding?.crossing == null ? 0 : roundUpM(deciding.crossing.metres);
}

/** Peak power that meets every public limit at this distance, W. */
export function powerAtW(facts: Facts, at: BandFacts, near: NearField, metres: number): number {
  if (metres < TOUCHING_M) return 0;
  const allowed = solvedTests(facts, 'public', at).map((test) => {
    const share = powerShare(facts, test);
    const field = FIELD_MARGIN * fieldAtDistance(near.aroundM, envelopeOf(near, 'around', test.kind), metres);
    return share === 0 || field === 0 ? Number.POSITIVE_INFINITY : (FIELD_POWER_W * (test.limit / field) ** 2) / share;
  });
  return Math.min(...allowed);
}

type Outcome = Pick<SolvedDistance, 'working' | 'decidedBy' | 'part'>;

function touching(facts: Facts, near: NearField, tests: readonly SolvedTest[]): Outcome {
  const parts = tests.map((test) => ({
    test,
    share: (scaleOf(facts, test) * (envelopeOf(near, 'around', test.kind)[0] ?? 0)) / test.limit,
  }));
  const worst = parts.reduce((best, each) => (each.share > best.share ? each : best));
  const part = strongestPart(near, 'around', worst.test.kind, 0);
  return {
    part,
    decidedBy: {
      code: 'solved-touching',
      data: { kind: worst.test.kind, percent: 100 * Math.min(worst.share, 1), part: part ?? 'radiator' },
    },
    working: {
      formula: 'touching',
      inputs: { touching: { value: TOUCHING_M, unit: 'm', from: 'assumed' } },
      result: { value: TOUCHING_M, unit: 'm' },
      source: exposureLimits[worst.test.set].source,
    },
  };
}

function decided(facts: Facts, near: NearField, test: SolvedTest, crossing: Crossing): Outcome {
  const part = strongestPart(near, 'around', test.kind, crossing.last);
  return {
    part,
    decidedBy: {
      code: test.onCrest ? 'solved-on-crest' : 'solved',
      data: { kind: test.kind, limit: test.limit, part: part ?? 'radiator' },
    },
    working: workingOf(facts, near, test, crossing),
  };
}

/** The very interpolation of near-field.ts, as a formula. */
function workingOf(facts: Facts, near: NearField, test: SolvedTest, { metres, last }: Crossing): Working {
  const fields = envelopeOf(near, 'around', test.kind);
  const unit = test.kind === 'electric' ? 'V/m' : 'A/m';
  const solved = (value: number, of: string): WorkingInput => ({ value, unit: of, from: 'solved' });
  const told = (key: 'powerW' | 'mode' | 'transmitShare'): 'answer' | 'assumed' =>
    facts.answers[key] === undefined ? 'assumed' : 'answer';
  const duty: Record<string, WorkingInput> = test.onCrest
    ? {}
    : {
        duty: { value: facts.averageFactor, unit: '', from: told('mode') },
        share: { value: facts.settled.transmitShare, unit: '', from: told('transmitShare') },
      };
  const watts = test.onCrest ? 'P' : 'P * duty * share';
  const field = `(F1 * margin * sqrt(${watts} / Pref) / L)`;
  const nextM = near.aroundM[last + 1];
  const beyond: Record<string, WorkingInput> =
    nextM === undefined ? {} : { d2: solved(nextM, 'm'), F2: solved(fields[last + 1] ?? 0, unit) };
  const distance = nextM === undefined ? `d1 * ${field}` : `d1 * (d2 / d1)^(log(${field}) / log(F1 / F2))`;
  return {
    formula: `ceil(${distance} / step - 1e-9) * step`,
    inputs: {
      d1: solved(near.aroundM[last] ?? 0, 'm'),
      F1: solved(fields[last] ?? 0, unit),
      ...beyond,
      margin: { value: FIELD_MARGIN, unit: '', from: 'assumed' },
      P: { value: facts.settled.powerW, unit: 'W', from: told('powerW') },
      ...duty,
      Pref: { value: FIELD_POWER_W, unit: 'W', from: 'solved' },
      L: { value: test.limit, unit, from: 'catalogue' },
      step: { value: STEP_M, unit: 'm', from: 'assumed' },
    },
    result: { value: roundUpM(metres), unit: 'm' },
    source: exposureLimits[test.set].source,
  };
}
