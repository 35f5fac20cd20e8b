/**
 * Keep-out distances from the currents of this very antenna: electric and magnetic field each against its own limit, round every part at any
 * height, and on the ground for a standing body. Power density is no test so near. Never less than touching distance; where nobody told the
 * height, the ground gives no relief either.
 */
import type { Dimension } from '../base/working';
import type { AntennaPart } from '../design/antenna-part';
import { type ExposureTest, type Tier, testsFor } from './exposure-tests';
import {
  crossingWorking,
  type FieldLine,
  leastWatts,
  metWorking,
  noWatts,
  type RawWatts,
  TOUCHING_M,
  touchingWorking,
  type Watts,
  wattsAtLimit,
} from './exposure-working';
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

interface SolvedTest extends ExposureTest {
  readonly kind: SolvedKind;
}

interface Judged {
  readonly test: SolvedTest;
  readonly line: FieldLine;
  readonly crossing: Crossing | null;
}

/** Distances are 0 where the limits are met everywhere. */
export interface SolvedDistance extends Dimension {
  /** From below or beside the nearest part to where a standing body meets the limits. */
  readonly ground: Dimension;
  readonly decidedBy: Said;
  readonly part: AntennaPart | null;
}

const isSolved = (test: ExposureTest): test is SolvedTest => test.kind !== 'power';

/** Power density says nothing so near. */
const solvedTests = ({ settled }: Facts, tier: Tier, { focusMHz }: BandFacts): readonly SolvedTest[] =>
  testsFor(settled.ruleSet, tier, focusMHz).filter(isSolved);

/** Turns a field at 100 W into the one to be judged. */
function scaleOf({ averageFactor, settled }: Facts, { onCrest }: ExposureTest): number {
  const share = onCrest ? 1 : averageFactor * settled.transmitShare;
  return FIELD_MARGIN * Math.sqrt((settled.powerW * share) / FIELD_POWER_W);
}

function judge(facts: Facts, near: NearField, family: Family, test: SolvedTest, part?: AntennaPart): Judged {
  const distancesM = family === 'around' ? near.aroundM : near.groundM;
  const fields = envelopeOf(near, family, test.kind, part);
  return {
    test,
    line: { distancesM, fields },
    crossing: crossingOf(distancesM, fields, scaleOf(facts, test), test.limit),
  };
}

const metresOf = ({ crossing }: Judged): number => crossing?.metres ?? 0;

const strongest = ({ line }: Judged): number => line.fields[0] ?? 0;

/** Field at the first distance over its limit. */
const shareOf = (facts: Facts, judged: Judged): number =>
  (scaleOf(facts, judged.test) * strongest(judged)) / judged.test.limit;

/** What asks for the greatest distance; where nothing asks for any, what comes nearest to its limit. */
function deciding(facts: Facts, list: readonly Judged[]): Judged | undefined {
  const [first, ...rest] = list;
  return first === undefined
    ? undefined
    : rest.reduce((best, each) => {
        const further = metresOf(each) - metresOf(best);
        return further > 0 || (further === 0 && shareOf(facts, each) > shareOf(facts, best)) ? each : best;
      }, first);
}

export function solvedDistance(facts: Facts, at: BandFacts, near: NearField, tier: Tier): SolvedDistance | null {
  const tests = solvedTests(facts, tier, at);
  const around = deciding(
    facts,
    tests.map((test) => judge(facts, near, 'around', test)),
  );
  const onGround = deciding(
    facts,
    tests.map((test) => judge(facts, near, 'ground', test)),
  );
  if (around === undefined || onGround === undefined) return null;
  const told = metresFrom(facts, onGround);
  const isTouching = metresOf(around) <= TOUCHING_M;
  const whole: Dimension = isTouching
    ? { metres: TOUCHING_M, working: touchingWorking(around.test) }
    : metresFrom(facts, around);
  return {
    ...whole,
    ground: facts.answers.heightM === undefined && told.metres < whole.metres ? whole : told,
    ...(isTouching || around.crossing === null
      ? touching(facts, near, tests)
      : decided(facts, near, around.test, around.crossing)),
  };
}

function metresFrom(facts: Facts, judged: Judged): Dimension {
  const { test, line, crossing } = judged;
  const working =
    crossing === null ? metWorking(facts, test, strongest(judged)) : crossingWorking(facts, test, line, crossing);
  return { metres: working.result.value, working };
}

/** Distance of one part alone, for the drawing: 0 where its limits are met at touching distance already. */
export function partDistance(
  facts: Facts,
  at: BandFacts,
  near: NearField,
  tier: Tier,
  part: AntennaPart,
): Dimension | null {
  const list = solvedTests(facts, tier, at).map((test) => judge(facts, near, 'around', test, part));
  const found = deciding(facts, list);
  return found === undefined ? null : metresFrom(facts, found);
}

/** Peak power that meets every public limit at this distance. */
export function powerAt(facts: Facts, at: BandFacts, near: NearField, metres: number): Watts | null {
  const tests = solvedTests(facts, 'public', at);
  const [first] = tests;
  if (first === undefined) return null;
  if (metres < TOUCHING_M) return noWatts(metres, first);
  const allowed = tests.map((test) => rawPowerAt(facts, near, test, metres));
  return leastWatts(allowed);
}

function rawPowerAt(facts: Facts, near: NearField, test: SolvedTest, metres: number): RawWatts {
  const fields = envelopeOf(near, 'around', test.kind);
  const distancesM = near.aroundM;
  const value = fieldAtDistance(distancesM, fields, metres);
  const unit = test.kind === 'electric' ? 'V/m' : 'A/m';
  const input = (amount: number, of: string) => ({ value: amount, unit: of, from: 'solved' }) as const;
  const nearest = { value: metres, unit: 'm', from: 'answer' } as const;
  const next = distancesM.findIndex((each) => each > metres);
  const before = next < 0 ? distancesM.length - 1 : next - 1;
  const here = { d1: input(distancesM[before] ?? 0, 'm'), F1: input(fields[before] ?? 0, unit), nearest };
  if (next < 0) return wattsAtLimit(facts, test, { value, formula: '(F1 * d1 / nearest)', inputs: here });
  const nextField = fields[next] ?? 0;
  if (nextField === 0) return wattsAtLimit(facts, test, { value, formula: 'F1', inputs: { F1: here.F1 } });
  return wattsAtLimit(facts, test, {
    value,
    formula: '(F1 * (F2 / F1)^(log(nearest / d1) / log(d2 / d1)))',
    inputs: { ...here, d2: input(distancesM[next] ?? 0, 'm'), F2: input(nextField, unit) },
  });
}

type Outcome = Pick<SolvedDistance, 'decidedBy' | 'part'>;

function touching(facts: Facts, near: NearField, tests: readonly SolvedTest[]): Outcome {
  const parts = tests.map((test) => ({ test, share: shareOf(facts, judge(facts, near, 'around', test)) }));
  const worst = parts.reduce((best, each) => (each.share > best.share ? each : best));
  const part = strongestPart(near, 'around', worst.test.kind, 0);
  return {
    part,
    decidedBy: {
      code: 'solved-touching',
      data: { kind: worst.test.kind, percent: 100 * Math.min(worst.share, 1), part: part ?? 'radiator' },
    },
  };
}

/** The part whose own distance under the deciding limit is the greatest; where parts share it, the strongest at the crossing. */
function decided(facts: Facts, near: NearField, test: SolvedTest, crossing: Crossing): Outcome {
  const own = near.parts.map(({ part }) => ({ part, metres: metresOf(judge(facts, near, 'around', test, part)) }));
  const strongestThere = strongestPart(near, 'around', test.kind, crossing.last);
  const part = own.reduce(
    (best, each) => (each.metres > best.metres ? each : best),
    own.find((each) => each.part === strongestThere) ?? { part: strongestThere, metres: 0 },
  ).part;
  return {
    part,
    decidedBy: {
      code: test.onCrest ? 'solved-on-crest' : 'solved',
      data: { kind: test.kind, limit: test.limit, part: part ?? 'radiator' },
    },
  };
}
