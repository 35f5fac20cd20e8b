/**
 * Stray capacitance across a single-layer winding on a core that carries charge.
 *
 *   Ctt = ε0 l [ εr θ / ln(D/d) + cot(θ/2) − cot(π/12) ],   θ = arccos(1 − ln(D/d) / εr)
 *   C(N) = Ctt + C(N−2) / (1 + 2 C(N−2) / Ctt),   C(2) = 2 Ctt,   C(3) = 1.5 Ctt      → 1.366 Ctt for many turns
 *
 *   l length of a turn      d metal, D jacket diameter      εr jacket      Ctt between neighbouring turns that touch
 *
 * Limits: turns touch and the core is taken as a conductor (Ctc = 2 Ctt); turns spread around the ring and the insulating nickel-zinc mixes
 * have less, terminals and box more. Reckon with ±50 %. One turn has no neighbour: zero.
 * Source: Massarini and Kazimierczuk, "Self-capacitance of inductors", IEEE Trans. Power Electronics 12 (1997) 671 (memory).
 */
import { EPSILON0 } from '../base/constants';
import type { WoundConductor } from './conductor-on-core';

/** Part of the nominal capacitance that the real one may lie below or above it. */
export const CAPACITANCE_TOLERANCE = 0.5;

/** Capacitance between two touching turns, F. */
export function turnToTurnF({ outerM, metalM, epsilonR }: WoundConductor, turnM: number): number {
  const log = Math.log(outerM / metalM);
  const theta = Math.acos(1 - log / epsilonR);
  const inside = (epsilonR * theta) / log;
  const outside = 1 / Math.tan(theta / 2) - 1 / Math.tan(Math.PI / 12);
  return EPSILON0 * turnM * (inside + Math.max(0, outside));
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
