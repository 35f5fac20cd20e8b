/** The conductor length of the longest radiator: told, clear of resonances, or resonant on the lowest band. */
import type { Dimension } from '../base/working';
import type { Band } from '../catalog/band-ids';
import { fullWaveLoop, halfWave, harmonicHalfWave, quarterWave } from '../physics/lengths';
import { asSolved, asTold, cutFor, focusOf, onSite, wireFactorOf } from './dimension';
import type { LengthWindow } from './dimensions';
import { doubletLength } from './doublet';
import type { Facts } from './facts';
import type { SolvedLengths } from './field-facts';
import { multiplesOf } from './harmonics';
import { clearLength } from './non-resonant';

export interface RadiatorLength {
  readonly radiator: Dimension;
  readonly windows: readonly LengthWindow[];
  readonly sufferingBand: Band | null;
}

/** `lengths`: what a field solution of this very site found in place of the rule. A length that was told stays as told. */
export function radiatorLengthOf(facts: Facts, lengths?: SolvedLengths): RadiatorLength {
  const solved = lengths?.by === 'rule' ? undefined : lengths;
  const toldM = toldLengthM(facts);
  if (toldM !== null) return { radiator: asTold(toldM), windows: [], sufferingBand: null };
  if (staysClear(facts)) {
    const clear = clearLength(facts);
    return solved === undefined ? clear : { ...clear, radiator: asSolved(solved.radiatorM) };
  }
  const rule = resonantLength(facts);
  const radiator = solved === undefined ? rule : onSite(rule, solved.radiatorM);
  return { radiator, windows: [], sufferingBand: null };
}

/** The length of a wire that is there already; null where it is to be found. */
export const toldLengthM = ({ system, settled: { lengthChoice, wireLengthM } }: Facts): number | null =>
  lengthChoice === 'fixed' || system === 'other' ? wireLengthM : null;

/** Systems that must, or are asked to, stay away from every half-wave. */
export const staysClear = ({ system, settled: { lengthChoice } }: Facts): boolean =>
  system === 'non-resonant-end-fed' ||
  system === 'non-resonant-vertical' ||
  (system === 'inverted-l' && lengthChoice === 'non-resonant');

function resonantLength(facts: Facts): Dimension {
  const [lowest] = facts.bands;
  switch (facts.system) {
    case 'end-fed-half-wave':
    case 'off-centre-fed':
      return harmonicHalfWave(
        multiplesOf(facts).map(({ at }) => focusOf(facts, at)),
        wireFactorOf(facts),
      );
    case 'quarter-wave-vertical':
    case 'inverted-l':
      return quarterWave(cutFor(facts, lowest));
    case 'full-wave-loop':
      return fullWaveLoop(cutFor(facts, lowest));
    case 'open-wire-doublet':
      return facts.settled.lengthChoice === 'non-resonant' ? doubletLength(facts) : halfWave(cutFor(facts, lowest));
    default:
      return halfWave(cutFor(facts, lowest));
  }
}
