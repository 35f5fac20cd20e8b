/**
 * High-pass T-network of an antenna tuner: C1 in series, L across, C2 in series to the load. All loss is taken to be the coil's, ωL / Q in series
 * with it.
 *
 *   Y = Y_coil + 1 / (Z_load − j/ωC2)      matched when Re(1/Y) = 50 Ω and C1 cancels Im(1/Y) > 0      part lost = G_coil / (G_coil + G_load)
 *
 * C2 is tried over its range, C1 and L follow; the least loss counts. Limits: ideal capacitors, no stray capacitance, no limit on L; a real tuner
 * loses a little more. Source: circuit theory; Q 200 and 12 to 250 pF are common practice, no source.
 */
import { add, type Complex, complex, reciprocal, subtract } from '../base/complex';

const INPUT_OHM = 50;
const COIL_Q = 200;
const LEAST_F = 12e-12;
const MOST_F = 250e-12;
const STEPS = 120;

/** Least loss with which the tuner brings `load` to 50 Ω, dB; null where it cannot. */
export function tNetworkLossDb(load: Complex, hz: number): number | null {
  const omega = 2 * Math.PI * hz;
  let least: number | null = null;
  for (let step = 0; step <= STEPS; step++) {
    const outputF = LEAST_F * (MOST_F / LEAST_F) ** (step / STEPS);
    const lost = partLost(reciprocal(subtract(load, complex(0, 1 / (omega * outputF)))), omega);
    if (lost !== null && (least === null || lost < least)) least = lost;
  }
  return least === null || least >= 1 ? null : -10 * Math.log10(1 - least);
}

/** Part of the power that the coil takes when it is set for 50 Ω across this admittance. */
function partLost(behind: Complex, omega: number): number | null {
  let coil = complex(0);
  // The coil's own conductance moves the setting a little: a few rounds settle it.
  for (let round = 0; round < 4; round++) {
    const g = behind.re + coil.re;
    const squared = g / INPUT_OHM - g * g;
    if (squared < 0) return null;
    const susceptance = -Math.sqrt(squared) - behind.im;
    if (susceptance >= 0) return null; // would be a capacitor
    const ohms = -1 / susceptance;
    coil = reciprocal(complex(ohms / COIL_Q, ohms));
  }
  const input = reciprocal(add(behind, coil));
  const seriesF = 1 / (omega * input.im);
  if (!(seriesF >= LEAST_F && seriesF <= MOST_F)) return null;
  return coil.re / (coil.re + behind.re);
}
