/**
 * Conductor lengths from the field solution, in place of rules of thumb: the operator's wire, insulation, ground, height and coax.
 *
 *   off-centre wires      where to feed them, before anything else (feed-search)
 *   raised radials        each pair resonant by itself (return-lengths), before the wire above them
 *   resonant wires        X(L) = 0 at the focus, by the secant method on the length (resonance)
 *   linked wires          each band's own resonance, the highest first (linked-lengths)
 *   half-wave multiples   least worst SWR over the bands the wire serves (multiple-lengths)
 *   non-resonant          least worst SWR over all wanted bands (clear-lengths)
 *   counterpoise          after the wire it works against (return-lengths)
 *
 * What was told is left alone.
 */
import { cutFor } from '../../advice/dimension';
import { type Dimensions, dimensionsOf } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { servesMultiples } from '../../advice/harmonics';
import { SYSTEM_OHM } from '../../advice/line-run';
import { staysClear, toldLengthM } from '../../advice/radiator-length';
import { knowing } from '../../advice/solved-facts';
import type { System } from '../../design/choices';
import { halfWave } from '../../physics/lengths';
import { swr } from '../../physics/line';
import { clearOfHalfWaves } from './clear-lengths';
import { solveFeed } from './feed-search';
import type { FieldInstrument } from './instrument';
import { forLinks } from './linked-lengths';
import { forMultiples } from './multiple-lengths';
import { rootFactor } from './resonance';
import { solveCounterpoise, solveRadials } from './return-lengths';
import { trialImpedance, trialReactance } from './trial';
import { orNull } from './watched';

const cutToResonance: readonly System[] = [
  'centre-fed-half-wave',
  'inverted-v',
  'sloper',
  'quarter-wave-vertical',
  'inverted-l',
  'full-wave-loop',
  'folded-dipole',
  'parallel-dipoles',
];

/** Null where the rules and what was told stand throughout. */
export async function solveLengths(
  facts: Facts,
  dimensions: Dimensions,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const feed = await orNull(solveFeed(facts, dimensions, instrument));
  const radials = await orNull(solveRadials(facts, dimensions, instrument));
  const decided = {
    ...(feed === null ? {} : { feed }),
    ...(radials === null ? {} : { returns: radials }),
  };
  const known = knowing(facts, decided);
  const ruleM = dimensionsOf(known).radiator.metres;
  const isTold = toldLengthM(facts) !== null;
  const start: SolvedLengths = {
    radiatorM: ruleM,
    ruleM,
    pairs: {},
    by: isTold ? 'told' : 'rule',
    swr: [],
    ...decided,
  };
  const solved = isTold ? null : await orNull(solveRadiator(known, start, instrument));
  const lengths = solved ?? start;
  const counterpoise = await orNull(solveCounterpoise(known, lengths, instrument));
  if (counterpoise !== null) return { ...lengths, returns: counterpoise };
  return solved === null && feed === null && radials === null ? null : lengths;
}

async function solveRadiator(
  facts: Facts,
  start: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const dimensions = dimensionsOf(facts, { lengths: start });
  if (staysClear(facts)) return clearOfHalfWaves(facts, dimensions, { ...start, by: 'worst-swr' }, instrument);
  if (servesMultiples(facts)) return forMultiples(facts, start, instrument);
  if (facts.system === 'linked-dipole') return forLinks(facts, start, instrument);
  if (!cutToResonance.includes(facts.system)) return null;
  return resonant(facts, dimensions, { ...start, by: 'resonance' }, instrument);
}

async function resonant(
  facts: Facts,
  dimensions: Dimensions,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const [lowest] = facts.bands;
  const lengthsOf = (factor: number): SolvedLengths => ({ ...rule, radiatorM: rule.ruleM * factor });
  const longest = await rootFactor(trialReactance(facts, lowest, lengthsOf, instrument));
  if (longest === null) return null;
  const whole: SolvedLengths = { ...rule, radiatorM: rule.ruleM * longest };
  return facts.system === 'parallel-dipoles' ? withPairs(facts, dimensions, whole, instrument) : whole;
}

/** A band on another pair's third resonance that shows more gets legs of its own. Common practice. */
const RIDE_SWR = 3;

/** The shorter pairs one after the other, the longest first; then the bands that were to do without one. */
async function withPairs(
  facts: Facts,
  dimensions: Dimensions,
  whole: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths> {
  const rides = dimensions.freeRides.map(({ band }) => band);
  const further = facts.bands.slice(1);
  const riders = further.filter(({ band }) => rides.includes(band));
  const others = further.filter(({ band }) => !rides.includes(band));
  let solved = whole;
  for (const at of others) solved = (await withPair(facts, solved, at, instrument)) ?? solved;
  for (const at of riders) {
    const rideSwr = await swrOn(facts, solved, at, instrument);
    if (rideSwr <= RIDE_SWR) continue;
    let own = await withPair(facts, solved, at, instrument, rideSwr);
    const shorter = others.filter(({ focusMHz }) => focusMHz > at.focusMHz);
    for (const each of shorter) if (own !== null) own = (await withPair(facts, own, each, instrument)) ?? own;
    if (own !== null && (await worstOf(facts, own, instrument)) < (await worstOf(facts, solved, instrument)))
      solved = own;
  }
  return solved;
}

async function withPair(
  facts: Facts,
  known: SolvedLengths,
  at: BandFacts,
  instrument: FieldInstrument,
  rideSwr?: number,
): Promise<SolvedLengths | null> {
  const ruleM = halfWave(cutFor(facts, at)).metres;
  const cutBy = (factor: number): SolvedLengths => ({
    ...known,
    pairs: {
      ...known.pairs,
      [at.band]: { wholeM: ruleM * factor, ruleM, ...(rideSwr === undefined ? {} : { rideSwr }) },
    },
  });
  const factor = await rootFactor(trialReactance(facts, at, cutBy, instrument));
  return factor === null ? null : cutBy(factor);
}

async function swrOn(
  facts: Facts,
  lengths: SolvedLengths,
  at: BandFacts,
  instrument: FieldInstrument,
): Promise<number> {
  const z = await trialImpedance(facts, lengths, instrument, at, [at.focusMHz * 1e6]);
  return z?.[0] === undefined ? Number.POSITIVE_INFINITY : swr(z[0], SYSTEM_OHM);
}

async function worstOf(facts: Facts, lengths: SolvedLengths, instrument: FieldInstrument): Promise<number> {
  let worst = 1;
  for (const at of facts.bands) worst = Math.max(worst, await swrOn(facts, lengths, at, instrument));
  return worst;
}
