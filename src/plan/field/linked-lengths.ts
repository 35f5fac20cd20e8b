/**
 * Lengths of a linked dipole: each band's X(L) = 0 with its links open and the pieces beyond hanging on, the highest band first, since its wire is
 * part of every lower one's. A second round has the solved pieces beyond in place of the rule's.
 */
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { ownLength } from '../../advice/own-length';
import type { FieldInstrument } from './instrument';
import { rootFactor } from './resonance';
import { trialReactance } from './trial';

const ROUNDS = 2;

/** Null where no band comes out. */
export async function forLinks(
  facts: Facts,
  start: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  let solved: SolvedLengths = { ...start, by: 'resonance' };
  let found = false;
  for (let round = 0; round < ROUNDS; round++)
    for (const at of [...facts.bands].reverse()) {
      const known = solved;
      const factor = await rootFactor(
        trialReactance(facts, at, (each) => withBand(facts, known, at, each), instrument),
      );
      if (factor === null) continue;
      solved = withBand(facts, known, at, factor);
      found = true;
    }
  return found ? solved : null;
}

/** `factor`: on the length of the rule. */
function withBand(facts: Facts, known: SolvedLengths, at: BandFacts, factor: number): SolvedLengths {
  if (at === facts.bands[0]) return { ...known, radiatorM: known.ruleM * factor };
  const ruleM = ownLength(facts, at, undefined).metres;
  return { ...known, pairs: { ...known.pairs, [at.band]: { wholeM: ruleM * factor, ruleM } } };
}
