/**
 * Stray capacitance across a single-layer winding on a ring core that carries charge.
 *
 *   Ctt = ε0 l [ εr θ / ln(D/d) + cot(θ/2) − cot(π/12) ],   θ = arccos(1 − ln(D/d) / εr)
 *   C(N) = Ctt + C(N−2) / (1 + 2 C(N−2) / Ctt),   C(2) = 2 Ctt,   C(3) = 1.5 Ctt      → 1.366 Ctt for many turns
 *
 *   d metal, D jacket diameter      εr jacket      Ctt between neighbouring turns that touch along l
 *
 * On a ring the turns touch in the hole and fan out everywhere else, so l is a part of the turn: 0.35, which makes the published list of turns
 * for 5 kΩ on one 61 mm ring of mix 31 come out right (1.2 to 1.5 pF; see the tests). The core is taken as a conductor (Ctc = 2 Ctt).
 * Limits: reckon with ±50 %: an even spread, an insulating nickel-zinc core, a gap between start and end give less; terminals and box give more.
 * One turn has no neighbour: zero.
 * Source: Massarini and Kazimierczuk, "Self-capacitance of inductors", IEEE Trans. Power Electronics 12 (1997) 671 (memory).
 */
import { EPSILON0 } from '../base/constants';
import type { WoundConductor } from './conductor-on-core';

/** Part of the nominal capacitance that the real one may lie below or above it. */
export const CAPACITANCE_TOLERANCE = 0.5;

/** Part of a turn that touches its neighbour. */
const TOUCHING_PART = 0.35;

/** Capacitance between two neighbouring turns of length `turnM` on a ring, F. */
export function turnToTurnF({ outerM, metalM, epsilonR }: WoundConductor, turnM: number): number {
  const log = Math.log(outerM / metalM);
  const theta = Math.acos(1 - log / epsilonR);
  const inside = (epsilonR * theta) / log;
  const outside = 1 / Math.tan(theta / 2) - 1 / Math.tan(Math.PI / 12);
  return EPSILON0 * TOUCHING_PART * turnM * (inside + Math.max(0, outside));
}

/** Capacitance across the whole winding, in units of the capacitance between two turns. */
export function windingFactor(turns: number): number {
  if (turns < 2) return 0;
  let factor = turns % 2 === 0 ? 2 : 1.5;
  for (let n = turns % 2 === 0 ? 4 : 5; n <= turns; n += 2) factor = 1 + factor / (1 + 2 * factor);
  return factor;
}

/** Stray capacitance of `turns` turns of length `turnM`, F. */
export const windingCapacitanceF = (conductor: WoundConductor, turns: number, turnM: number): number =>
  windingFactor(turns) * turnToTurnF(conductor, turnM);
