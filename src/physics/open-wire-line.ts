/**
 * Open-wire line from its geometry: two equal round wires in air.
 *
 *   Z0 = η0/π · arcosh(D/d) / √ε_eff      matched loss = 8.686 · R' / (2 Z0), R' both wires' resistance
 *
 * D spacing between centres, d wire diameter. The resistance follows √f while the wire is thick against the skin depth. Spacers slow the wave a
 * little and so lower Z0; their loss and radiation of an unbalanced line are left out, so real lines lose 10 to 20 % more.
 * Source: Pozar, Microwave Engineering, 4th ed., table 2.1 and §2.7.
 */
import { DB_PER_NEPER, type LineData } from './line';
import { wireResistanceOhmPerM } from './skin-effect';
import { twoWireZ0Ohm } from './two-wire-line';

export interface OpenWireGeometry {
  readonly spacingM: number;
  readonly diameterM: number;
  readonly conductivitySPerM: number;
  /** 0.97 for few, narrow spacers; 1 for none. */
  readonly velocityFactor: number;
}

export function openWireLine({ spacingM, diameterM, conductivitySPerM, velocityFactor }: OpenWireGeometry): LineData {
  const z0Ohm = twoWireZ0Ohm(spacingM, diameterM, 1 / velocityFactor ** 2);
  const resistance = 2 * wireResistanceOhmPerM(1e6, diameterM, conductivitySPerM);
  return { z0Ohm, velocityFactor, k1: (100 * DB_PER_NEPER * resistance) / (2 * z0Ohm), k2: 0, clad: null };
}
