/**
 * Voltage at a wire's end or at the box of an end-fed.
 *
 *   V = √(P · R), rms      P peak envelope power, W      R = 2450 Ω, what a 49:1 transformer is made for
 *
 * Limits: real ends lie between 2 and 5 kΩ, so up to 1.4 times as much; the peak of the wave is √2 times the figure.
 */
import type { Working } from '../base/working';

const WIRE_END_OHM = 2450;

export function wireEndVoltage(powerW: number, told: boolean): { readonly volts: number; readonly working: Working } {
  const volts = Math.sqrt(powerW * WIRE_END_OHM);
  return {
    volts,
    working: {
      formula: 'sqrt(power * resistance)',
      inputs: {
        power: { value: powerW, unit: 'W', from: told ? 'answer' : 'assumed' },
        resistance: { value: WIRE_END_OHM, unit: 'ohm', from: 'catalogue' },
      },
      result: { value: volts, unit: 'V' },
      source: 'wire-end-voltage',
    },
  };
}
