/**
 * Conductor lengths from the field solution, in place of rules of thumb: the operator's wire, insulation, ground, height and coax.
 *
 *   resonant wires        X(L) = 0 at the focus, by the secant method on the length
 *   half-wave multiples   least worst SWR behind the ratio over the bands the wire serves. A wire longer by (1 + ε) at f behaves nearly as this
 *                         one at f (1 + ε), so one sweep about each focus shows all lengths near this one; solved again at the length found
 *   non-resonant          least worst SWR behind the ratio over all wanted bands, over all lengths that fit the site and keep clear of every
 *                         half-wave by the rule; over all that fit where none keeps clear
 *
 * A length that was told is left alone. Limits: within 8 % of the rule, but for non-resonant wires; bands' centres only.
 */

import type { Dimensions } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { multiplesOf } from '../../advice/harmonics';
import { needsOf, swrBehind } from '../../advice/needs';
import { searchOf } from '../../advice/non-resonant';
import type { Complex } from '../../base/complex';
import type { System } from '../../design/choices';
import type { FieldInstrument } from './instrument';
import { trialImpedance } from './trial';

const cutToResonance: readonly System[] = [
  'centre-fed-half-wave',
  'inverted-v',
  'sloper',
  'quarter-wave-vertical',
  'full-wave-loop',
  'folded-dipole',
  'parallel-dipoles',
];
const cutForMultiples: readonly System[] = ['end-fed-half-wave', 'off-centre-fed'];
const cutClear: readonly System[] = ['non-resonant-end-fed', 'non-resonant-vertical'];

/** Null where the rule or a told length stands. */
export async function solveLengths(
  facts: Facts,
  dimensions: Dimensions,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const { settled, system } = facts;
  if (settled.lengthChoice === 'fixed' && settled.wireLengthM !== null) return null;
  const rule: SolvedLengths = {
    radiatorM: dimensions.radiator.metres,
    ruleM: dimensions.radiator.metres,
    pairs: {},
    by: 'resonance',
    swr: [],
  };
  if (cutToResonance.includes(system) || (system === 'inverted-l' && settled.lengthChoice === 'resonant'))
    return resonant(facts, dimensions, rule, instrument);
  if (cutForMultiples.includes(system)) return forMultiples(facts, rule, instrument);
  return cutClear.includes(system) ? clear(facts, dimensions, rule, instrument) : null;
}

/** Furthest that a solved length may lie from its rule: beyond that another resonance was caught. */
const FURTHEST = 0.08;
const CLOSE_ENOUGH = 5e-4;
const MOST_TRIALS = 6;
const FIRST_STEP = 0.02;

const held = (factor: number): number => Math.min(Math.max(factor, 1 - FURTHEST), 1 + FURTHEST);

/** Factor on the rule's length at which `reactance` is nothing; null when none lies near it. */
async function rootFactor(reactance: (factor: number) => Promise<number | null>): Promise<number | null> {
  let [a, b] = [1, 1];
  let xa = await reactance(a);
  if (xa === null) return null;
  b = held(a - Math.sign(xa) * FIRST_STEP);
  for (let trial = 0; trial < MOST_TRIALS; trial++) {
    const xb = await reactance(b);
    if (xb === null || xb === xa) return null;
    const next: number = b - (xb * (b - a)) / (xb - xa);
    if (!Number.isFinite(next) || Math.abs(next - 1) > FURTHEST) return null;
    if (Math.abs(next - b) < CLOSE_ENOUGH) return next;
    [a, xa, b] = [b, xb, next];
  }
  return null;
}

async function resonant(
  facts: Facts,
  dimensions: Dimensions,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const [lowest] = facts.bands;
  const reactanceAt =
    (at: BandFacts, lengthsOf: (factor: number) => SolvedLengths) =>
    async (factor: number): Promise<number | null> => {
      const z = await trialImpedance(facts, lengthsOf(factor), instrument, at, [at.focusMHz * 1e6]);
      return z?.[0]?.im ?? null;
    };
  const longest = await rootFactor(reactanceAt(lowest, (factor) => ({ ...rule, radiatorM: rule.ruleM * factor })));
  if (longest === null) return null;
  let solved: SolvedLengths = { ...rule, radiatorM: rule.ruleM * longest };
  if (facts.system !== 'parallel-dipoles') return solved;
  for (const at of facts.bands.slice(1)) {
    const leg = dimensions.pieces.find(({ piece, band }) => piece === 'leg' && band === at.band);
    if (leg === undefined) continue;
    const ruleM = 2 * leg.length.metres;
    const known = solved;
    const withPair = (factor: number): SolvedLengths => ({
      ...known,
      pairs: { ...known.pairs, [at.band]: { wholeM: ruleM * factor, ruleM } },
    });
    const factor = await rootFactor(reactanceAt(at, withPair));
    if (factor !== null) solved = withPair(factor);
  }
  return solved;
}

/** Behind the feed point's transformer, on 50 Ω. */
const swrOf = (z: Complex, ratio: number): number => swrBehind({ r: z.re, x: z.im }, ratio, 50);

const ratioOf = (facts: Facts): number => needsOf(facts).transformation?.ratio ?? 1;

/** The worst band decides, and between equals the mean. */
const badness = (swrs: readonly number[]): number =>
  Math.max(...swrs) + (0.1 * swrs.reduce((sum, swr) => sum + swr, 0)) / swrs.length;

const STEPS = 12;
const STEP = 0.005;
const around = Array.from({ length: 2 * STEPS + 1 }, (_, i) => 1 + (i - STEPS) * STEP);
const ROUNDS = 2;

/** What one length does on each band: SWR over factors on the frequency, which stand for factors on the length. */
async function shownAround(
  facts: Facts,
  served: readonly BandFacts[],
  lengths: SolvedLengths,
  instrument: FieldInstrument,
) {
  const ratio = ratioOf(facts);
  return Promise.all(
    served.map(async (at) => {
      const frequenciesHz = around.map((factor) => at.focusMHz * 1e6 * factor);
      const z = await trialImpedance(facts, lengths, instrument, at, frequenciesHz);
      return z?.map((each) => swrOf(each, ratio)) ?? null;
    }),
  );
}

async function forMultiples(
  facts: Facts,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const served = multiplesOf(facts).map(({ at }) => at);
  let best = rule;
  let byRule: readonly number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const shown = await shownAround(facts, served, best, instrument);
    const known = shown.filter((swrs) => swrs !== null);
    if (known.length < served.length) return null;
    if (round === 0) byRule = known.map((swrs) => swrs[STEPS] ?? 1);
    const marks = around.map((factor, i) => ({ factor, bad: badness(known.map((swrs) => swrs[i] ?? 1)) }));
    const least = marks.reduce((a, b) => (b.bad < a.bad ? b : a));
    best = { ...best, radiatorM: rule.ruleM * held((best.radiatorM / rule.ruleM) * least.factor) };
    if (Math.abs(least.factor - 1) <= STEP) break;
  }
  return judged(facts, served, { ...best, by: 'worst-swr' }, byRule, instrument);
}

/** The SWR of the chosen length, solved and not read off a sweep; the rule's length stays when it does better. */
async function judged(
  facts: Facts,
  served: readonly BandFacts[],
  lengths: SolvedLengths,
  byRule: readonly number[],
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const chosen = await swrAtFocus(facts, served, lengths, instrument);
  if (chosen === null) return null;
  const isBetter = badness(chosen) <= badness(byRule);
  return {
    ...lengths,
    radiatorM: isBetter ? lengths.radiatorM : lengths.ruleM,
    swr: served.map(({ band }, i) => ({
      band,
      rule: byRule[i] ?? 1,
      chosen: (isBetter ? chosen[i] : byRule[i]) ?? 1,
    })),
  };
}

async function swrAtFocus(
  facts: Facts,
  served: readonly BandFacts[],
  lengths: SolvedLengths,
  instrument: FieldInstrument,
): Promise<readonly number[] | null> {
  const ratio = ratioOf(facts);
  const all = await Promise.all(
    served.map(async (at) => {
      const z = await trialImpedance(facts, lengths, instrument, at, [at.focusMHz * 1e6]);
      return z?.[0] === undefined ? null : swrOf(z[0], ratio);
    }),
  );
  const known = all.filter((swr) => swr !== null);
  return known.length < all.length ? null : known;
}

/** Lengths tried over the site, and then about the best of them. */
const COARSE = 0.05;
const FINE = [-0.025, -0.0125, 0.0125, 0.025];

interface Stretch {
  readonly fromM: number;
  readonly toM: number;
}

function stretchesOf(facts: Facts, { windows }: Dimensions): readonly Stretch[] {
  const { shortestM, longestM } = searchOf(facts);
  return windows.length > 0 ? windows : [{ fromM: shortestM, toM: longestM }];
}

/** Evenly over a stretch, its ends left out: cutting and hanging move a length by as much as that. */
function coarseLengths({ fromM, toM }: Stretch): readonly number[] {
  const steps = Math.max(2, Math.ceil(Math.log(toM / fromM) / COARSE));
  return Array.from({ length: steps - 1 }, (_, i) => fromM * (toM / fromM) ** ((i + 1) / steps));
}

async function clear(
  facts: Facts,
  dimensions: Dimensions,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const stretches = stretchesOf(facts, dimensions);
  const byRule = await swrAtFocus(facts, facts.bands, rule, instrument);
  if (byRule === null) return null;
  let best = { radiatorM: rule.ruleM, swr: byRule };
  const tryM = async (radiatorM: number): Promise<void> => {
    const swr = await swrAtFocus(facts, facts.bands, { ...rule, radiatorM, by: 'worst-swr' }, instrument);
    if (swr !== null && badness(swr) < badness(best.swr)) best = { radiatorM, swr };
  };
  for (const metres of stretches.flatMap(coarseLengths)) await tryM(metres);
  const around = FINE.map((step) => best.radiatorM * (1 + step));
  for (const metres of around) {
    if (stretches.some(({ fromM, toM }) => metres >= fromM && metres <= toM)) await tryM(metres);
  }
  return {
    ...rule,
    radiatorM: best.radiatorM,
    by: 'worst-swr',
    swr: facts.bands.map(({ band }, i) => ({ band, rule: byRule[i] ?? 1, chosen: best.swr[i] ?? 1 })),
  };
}
