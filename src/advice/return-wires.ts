/**
 * What a wire with one terminal works against: radials and counterpoise wires.
 *
 * Ground radials: part of the lowest band's wave, by their number (physics/lengths). Elevated radials: a quarter-wave each.
 * Counterpoise of an end-fed half-wave: 0.05 λ of the lowest band. Of a non-resonant wire: about 0.1 λ, and below 5 MHz a shorter one beside
 * it for the higher bands. Each keeps clear of every half-wave of every wanted band (physics/counterpoise-length).
 * Sources: measured radials; common practice; own field solutions (two wires on 80 m).
 */
import { counterpoiseAims, counterpoiseLength } from '../physics/counterpoise-length';
import { groundRadial, quarterWave } from '../physics/lengths';
import { asTold, cutFor, focusOf, onSite } from './dimension';
import type { Piece } from './dimensions';
import type { Facts } from './facts';
import type { SolvedReturn } from './field-facts';
import { searchOf } from './non-resonant';

/** Part of the lowest band's wave. */
const END_FED_COUNTERPOISE = 0.05;
const TWO_WIRES_BELOW_MHZ = 5;

/** `solved`: lengths that a field solution of this very site found in place of the rules'. */
export function returnWiresOf(facts: Facts, solved?: SolvedReturn): Piece[] {
  const computed = byRule(facts);
  if (solved === undefined) return computed;
  return computed.map((piece, i) => {
    const metres = solved.wires[i]?.chosenM;
    if (piece.piece !== solved.piece || metres === undefined) return piece;
    return { ...piece, length: onSite(piece.length, metres) };
  });
}

function byRule(facts: Facts): Piece[] {
  if (facts.balanced || facts.system === 'off-centre-fed') return [];
  const [lowest] = facts.bands;
  switch (facts.settled.returnPath) {
    case 'ground-radials':
      return radials(facts, groundRadial(facts.settled.radialCount, focusOf(facts, lowest)));
    case 'elevated-radials':
      return radials(facts, quarterWave(cutFor(facts, lowest)));
    case 'counterpoise-wire':
      return counterpoises(facts);
    default:
      return [];
  }
}

function radials(facts: Facts, computed: Piece['length']): Piece[] {
  const { radialCount, radialLengthM } = facts.settled;
  const length = radialLengthM === null ? computed : asTold(radialLengthM);
  return radialCount === 0 ? [] : [{ piece: 'radial', band: null, count: radialCount, length }];
}

function counterpoises(facts: Facts): Piece[] {
  const { counterpoiseM } = facts.settled;
  const lengths = counterpoiseM === null ? computedCounterpoises(facts) : [asTold(counterpoiseM)];
  return lengths.map((length) => ({ piece: 'counterpoise', band: null, count: 1, length }));
}

function computedCounterpoises(facts: Facts): Piece['length'][] {
  const [lowest] = facts.bands;
  if (facts.system === 'end-fed-half-wave') return [counterpoise(facts, END_FED_COUNTERPOISE)];
  if (facts.system === 'quarter-wave-vertical') return [quarterWave(cutFor(facts, lowest))];
  if (lowest.focusMHz >= TWO_WIRES_BELOW_MHZ) return [counterpoise(facts, counterpoiseAims.long)];
  return [counterpoise(facts, counterpoiseAims.short), counterpoise(facts, counterpoiseAims.long)];
}

const counterpoise = (facts: Facts, aim: number): Piece['length'] =>
  counterpoiseLength(searchOf(facts).bands, facts.wire.velocityFactor.value, aim).length;
