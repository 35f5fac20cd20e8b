/**
 * Conductor lengths from the field solution, in place of rules of thumb: the operator's wire, insulation, ground, height and coax.
 *
 *   off-centre wires      where to feed them, before anything else (feed-search)
 *   raised radials        each pair resonant by itself (return-lengths), before the wire above them
 *   resonant wires        X(L) = 0 at the focus, by the secant method on the length (resonance)
 *   half-wave multiples   least worst SWR over the bands the wire serves (multiple-lengths)
 *   non-resonant          least worst SWR over all wanted bands (clear-lengths)
 *   counterpoise          after the wire it works against (return-lengths)
 *
 * What was told is left alone.
 */
import { type Dimensions, dimensionsOf } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { staysClear, toldLengthM } from '../../advice/radiator-length';
import { knowing } from '../../advice/solved-facts';
import type { System } from '../../design/choices';
import { clearOfHalfWaves } from './clear-lengths';
import { solveFeed } from './feed-search';
import type { FieldInstrument } from './instrument';
import { forMultiples } from './multiple-lengths';
import { rootFactor } from './resonance';
import { solveCounterpoise, solveRadials } from './return-lengths';
import { trialImpedance } from './trial';
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
const cutForMultiples: readonly System[] = ['end-fed-half-wave', 'off-centre-fed'];

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
  if (cutForMultiples.includes(facts.system)) return forMultiples(facts, start, instrument);
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
