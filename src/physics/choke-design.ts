/**
 * Search of the whole core catalogue for a common-mode choke: every conductor offered, every core, stack of up to four and turns count that
 * fits the hole; where no single winding of a mix meets the need, two windings in series on stacks of one kind.
 *
 * A candidate is first tried on its nominal impedance alone, in plain numbers, because there are thousands; only the winners get the full
 * evaluation with uncertainty. Rank of `fewestCores`: rings of 74 and 102 mm last, because few shops have them, then mixes other than 31 and
 * 43, then the number of rings, then the conductor wished for, then weight. Weight counts in steps of 10 g; within a step the build farthest from its limits comes first. The coolest is the lightest of
 * those within 3 K of the lowest rise. A near miss that less power cures comes before one that it does not.
 */
import { type Complex, scale } from '../base/complex';
import { InputError } from '../base/input-error';
import { type CoreId, type CoreSize, coreIds, type Mix, mixIds } from '../catalog/core-ids';
import { type Core, coreOf } from '../catalog/cores';
import { muAt } from '../catalog/ferrites';
import { withCapacitance } from './choke';
import { bendUse, evaluateChoke, neededOhm, TAIL_M } from './choke-evaluate';
import { cablePowerUse, cableRiseK } from './choke-heat';
import type { ChokeBuild, ChokeChoice, ChokeDesign, ChokeNeed } from './choke-need';
import { conductorLengthM, turnLengthM, turnsThatFit } from './conductor-on-core';
import { RISE_LIMIT_K, temperatureRiseK } from './core-heat';
import { byCoreCount, byWeight, isRare, least, nearestMiss } from './least';
import { stackMassKg, stackSurfaceM2, windingImpedance } from './toroid';
import { turnToTurnF, windingFactor } from './winding-capacitance';
import type { WindingMaterial } from './wound-conductor';

const MAX_STACK = 4;
const MAX_TURNS = 20;
/** Nobody winds cable through more than that many rings twice over. */
const MAX_PAIR_STACK = 2;
const SAME_RISE_K = 3;

/** One core, stack and conductor, with R and X of every turns count (rows, from two turns up) at every frequency (columns). */
interface Stack {
  readonly core: Core;
  readonly count: number;
  readonly conductor: WindingMaterial;
  readonly conductorRank: number;
  readonly rows: number;
  readonly r: Float64Array;
  readonly x: Float64Array;
  readonly surfaceM2: number;
  /** Rise that the power through the cable makes by itself, K. */
  readonly cableRiseK: readonly number[];
}

interface Candidate {
  readonly build: ChokeBuild;
  readonly mix: Mix;
  readonly size: CoreSize;
  readonly conductorRank: number;
  readonly coreCount: number;
  readonly massKg: number;
  readonly riseK: number;
  readonly excess: number;
  readonly shortage: number;
}

const FEWEST_TURNS = 2;

export function designChoke(need: ChokeNeed): ChokeChoice {
  if (need.points.length === 0) throw new InputError('no-frequencies');
  if (!(need.minimumOhm > 0)) throw new InputError('impedance-not-positive', { minimumOhm: need.minimumOhm });
  const { meeting, misses } = search(need, coreIds, () => true);
  const own = search(
    need,
    need.onHand.map(({ core }) => core),
    (id, coreCount) => need.onHand.some(({ core, count }) => core === id && count >= coreCount),
  );
  const coolestK = Math.min(...meeting.map(({ riseK }) => riseK));
  const settle = (candidate: Candidate | undefined): ChokeDesign | null =>
    candidate === undefined ? null : evaluateChoke(need, candidate.build);
  const bestOf = (found: readonly Candidate[], missed: readonly Candidate[]): Candidate | undefined =>
    least(found, byCores) ?? nearestMiss(missed);
  const byMix = new Map<Mix, ChokeDesign>();
  for (const mix of mixIds) {
    const isMix = (each: Candidate): boolean => each.mix === mix;
    const design = settle(bestOf(meeting.filter(isMix), misses.filter(isMix)));
    if (design !== null) byMix.set(mix, design);
  }
  return {
    fewestCores: settle(least(meeting, byCores)),
    lightest: settle(least(meeting, byWeight)),
    coolest: settle(
      least(
        meeting.filter(({ riseK }) => riseK <= coolestK + SAME_RISE_K),
        byWeight,
      ),
    ),
    fromParts: settle(bestOf(own.meeting, own.misses)),
    moreOfOwn: settle(
      least(
        meeting.filter(({ build }) => need.onHand.some(({ core }) => core === build.core)),
        byCores,
      ),
    ),
    closest: meeting.length === 0 ? settle(nearestMiss(misses)) : null,
    byMix,
  };
}

/** Mixes whose chokes are mostly resistive and that shops keep: common practice. The others ring with the cable, or vary by two fifths. */
const USUAL: readonly Mix[] = ['31', '43'];
const UNUSUAL_COST = 1e7;

/** As byCoreCount, with the usual mixes before the number of rings, and the order of the conductors between rings and weight. */
const byCores = (candidate: Candidate): number =>
  byCoreCount(candidate) + candidate.conductorRank * 1e4 + (USUAL.includes(candidate.mix) ? 0 : UNUSUAL_COST);

interface Found {
  readonly meeting: readonly Candidate[];
  /** Of each mix, the one that misses least, of common rings and of rare ones. */
  readonly misses: readonly Candidate[];
}

/** Single windings; pairs in series only of mixes of which no single one is enough. */
function search(
  need: ChokeNeed,
  cores: readonly CoreId[],
  allowed: (core: CoreId, coreCount: number) => boolean,
): Found {
  const stacks = stacksOf(need, cores);
  const meeting: Candidate[] = [];
  const closest = new Map<string, Candidate>();
  const consider = (stack: Stack, rows: readonly number[]): void => {
    const coreCount = stack.count * rows.length;
    if (!allowed(stack.core.id, coreCount)) return;
    const key = `${stack.core.mix} ${isRare(stack.core.size)}`;
    const nearest = closest.get(key);
    const worth = nearest?.shortage ?? Number.POSITIVE_INFINITY;
    const standing = standingOf(need, stack, rows, worth);
    if (standing === undefined) return;
    const found = candidateOf(stack, rows, coreCount, standing);
    if (found.shortage <= 1) meeting.push(found);
    if (nearest === undefined || found.shortage < nearest.shortage) closest.set(key, found);
  };
  for (const stack of stacks) for (let row = 0; row < stack.rows; row++) consider(stack, [row]);
  const enough = new Set(meeting.map(({ mix }) => mix));
  for (const stack of stacks) {
    if (stack.count > MAX_PAIR_STACK || enough.has(stack.core.mix)) continue;
    for (let row = 0; row < stack.rows; row++) for (let other = 0; other <= row; other++) consider(stack, [row, other]);
  }
  return { meeting, misses: [...closest.values()] };
}

type Standing = Pick<Candidate, 'riseK' | 'excess' | 'shortage'>;

/** How a candidate stands to the need; undefined as soon as its shortage is above `worth`. Ohms that are missing weigh more than heat. */
function standingOf(need: ChokeNeed, stack: Stack, rows: readonly number[], worth: number): Standing | undefined {
  const { points } = need;
  let ohms = 0;
  let riseK = 0;
  let shortage = 0;
  for (let p = 0; p < points.length; p++) {
    let r = 0;
    let x = 0;
    let hottest = 0;
    for (const row of rows) {
      const rowR = stack.r[row * points.length + p] as number;
      r += rowR;
      x += stack.x[row * points.length + p] as number;
      hottest = Math.max(hottest, rowR);
    }
    ohms = Math.max(ohms, neededOhm(need, r, x) / Math.hypot(r, x));
    riseK = Math.max(riseK, stack.cableRiseK[p] as number);
    const source = points[p]?.source ?? null;
    if (source !== null) {
      const amps2 = source.openV ** 2 / ((r + source.impedance.re) ** 2 + (x + source.impedance.im) ** 2);
      const coreRiseK = temperatureRiseK(amps2 * hottest * need.averageFactor, stack.surfaceM2, need.housing);
      riseK = Math.max(riseK, coreRiseK + (stack.cableRiseK[p] as number));
    }
    shortage = Math.max(1, ohms) ** 3 * Math.max(1, riseK / RISE_LIMIT_K);
    if (shortage > worth) return undefined;
  }
  return { riseK, excess: Math.max(ohms, riseK / RISE_LIMIT_K), shortage };
}

function candidateOf(stack: Stack, rows: readonly number[], coreCount: number, standing: Standing): Candidate {
  const { core, count, conductor, conductorRank } = stack;
  const { mix, size } = core;
  const turns = rows.map((row) => row + FEWEST_TURNS);
  const lengthM = turns.reduce((sum, n) => sum + conductorLengthM(core, count, n, conductor.outerM, TAIL_M), 0);
  const massKg = stackMassKg(core, coreCount) + lengthM * conductor.massKgPerM;
  return {
    build: { core: core.id, count, turns, conductor },
    mix,
    size,
    conductorRank,
    coreCount,
    massKg,
    ...standing,
  };
}

function stacksOf(need: ChokeNeed, cores: readonly CoreId[]): Stack[] {
  const found: Stack[] = [];
  for (const id of cores) {
    const core = coreOf(id);
    if (need.mixes !== undefined && !need.mixes.includes(core.mix)) continue;
    const oneTurn = need.points.map(({ hz }) => windingImpedance(core, 1, 1, muAt(core.mix, hz), hz));
    need.conductors.forEach((conductor, conductorRank) => {
      if (cablePowerUse(need, conductor) > 1) return;
      const risesK = need.points.map(({ hz }) => cableRiseK(need, conductor, hz));
      for (let count = 1; count <= MAX_STACK; count++) {
        const rows = Math.min(MAX_TURNS, turnsThatFit(core, conductor.outerM)) - FEWEST_TURNS + 1;
        if (rows < 1 || bendUse(core, count, conductor) > 1) continue;
        const surfaceM2 = stackSurfaceM2(core, count);
        const table = impedances(need, core, count, conductor, oneTurn, rows);
        found.push({ core, count, conductor, conductorRank, rows, surfaceM2, cableRiseK: risesK, ...table });
      }
    });
  }
  return found;
}

function impedances(
  need: ChokeNeed,
  core: Core,
  count: number,
  conductor: WindingMaterial,
  oneTurn: readonly Complex[],
  rows: number,
): Pick<Stack, 'r' | 'x'> {
  const r = new Float64Array(rows * oneTurn.length);
  const x = new Float64Array(rows * oneTurn.length);
  const betweenTurnsF = turnToTurnF(conductor, turnLengthM(core, count, conductor.outerM));
  for (let row = 0; row < rows; row++) {
    const turns = row + FEWEST_TURNS;
    const strayF = windingFactor(turns) * betweenTurnsF;
    for (const [p, z] of oneTurn.entries()) {
      const at = withCapacitance(scale(z, turns ** 2 * count), strayF, need.points[p]?.hz ?? Number.NaN);
      r[row * oneTurn.length + p] = at.re;
      x[row * oneTurn.length + p] = at.im;
    }
  }
  return { r, x };
}
