/** What one band asks for by itself, where several share a feed point or a wire. */
import type { Dimension } from '../base/working';
import { halfWave } from '../physics/lengths';
import { cutFor, dimension, metresOf, onSite } from './dimension';
import type { BandFacts, Facts } from './facts';
import type { SolvedLengths } from './field-facts';

/** Its half-wave by rule, or as the field solution of this very site has it. */
export function ownLength(facts: Facts, at: BandFacts, solved: SolvedLengths | undefined): Dimension {
  const rule = halfWave(cutFor(facts, at));
  const wholeM = solved?.pairs[at.band]?.wholeM;
  return wholeM === undefined ? rule : onSite(rule, wholeM);
}

export const half = (whole: Dimension): Dimension =>
  dimension(whole.metres / 2, 'whole / 2', { whole: metresOf(whole.metres, 'solved') }, 'house-practice');
