/**
 * Two-wire line: two equal, parallel, round wires in one uniform medium.
 *
 *   Z0 = (η0 / π√εr) · arcosh(D / d)      D  spacing between centres, m      d  wire diameter, m
 *
 * Exact for perfect conductors, proximity effect included; loss is left out. For D ≫ d it tends to (η0 / π√εr) · ln(2D / d), in print
 * 276 log10(2D / d) Ω in air. Source: Pozar, Microwave Engineering, 4th ed., table 2.1, with Z0 = √(L/C).
 */
import { ETA0 } from '../base/constants';
import { InputError } from '../base/input-error';

export function twoWireZ0Ohm(spacingM: number, diameterM: number, epsilonR = 1): number {
  if (!(spacingM > diameterM)) throw new InputError('wires-touch', { spacingM, diameterM });
  return (ETA0 / (Math.PI * Math.sqrt(epsilonR))) * Math.acosh(spacingM / diameterM);
}
