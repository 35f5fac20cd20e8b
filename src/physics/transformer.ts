/**
 * Wide-band transformer on ring cores, seen from its low-impedance side.
 *
 *         ┌──── R copper ── jω Lleak ──┬─────────┐
 *   in ───┼── Zm ── C                  Cs n²     ZL / n²        n = Ns / Np, impedance ratio n²
 *         └─────────────┴──────────────┴─────────┘
 *
 *   Zm  Np turns on complex permeability: its loss is the core's heat      C   compensating capacitor across the low side
 *   Cs  stray capacitance across the high side
 *
 * Limits: lumped, so each winding must be short against the wavelength (the high side below about a tenth, a quarter at most); leakage and
 * stray capacitance are estimates; core at low field and 25 °C. Loss in the capacitor is left out.
 * Source: Snelling, Soft Ferrites, 2nd ed., ch. 7, wide-band transformers (memory); series permeability model of ferrite makers.
 */
import { add, type Complex, complex, reciprocal, scale } from '../base/complex';
import type { RingSize } from '../catalog/cores';
import type { Permeability } from '../catalog/ferrites';
import { wireResistanceOhmPerM } from './skin-effect';
import { fluxDensityT, windingImpedance } from './toroid';

export interface TransformerModel {
  readonly ring: RingSize;
  readonly count: number;
  readonly primaryTurns: number;
  readonly secondaryTurns: number;
  readonly leakageH: number;
  /** Across the high side, F. */
  readonly strayF: number;
  /** Across the low side, F. */
  readonly compensationF: number;
  /** Wire of both windings, and the length that carries the whole input current with the same loss. */
  readonly wire: { readonly diameterM: number; readonly conductivitySPerM: number };
  readonly copperLengthM: number;
}

export interface TransformerState {
  readonly input: Complex;
  /** Parts of the input power. */
  readonly coreShare: number;
  readonly copperShare: number;
  readonly efficiency: number;
  readonly lossDb: number;
  /** Volts rms across the low and the high side, per √W of input. */
  readonly lowVPerRootW: number;
  readonly highVPerRootW: number;
}

/** Impedance ratio of a winding pair. */
export const impedanceRatio = (primaryTurns: number, secondaryTurns: number): number =>
  (secondaryTurns / primaryTurns) ** 2;

/** Turns ratio that matches one impedance to another. */
export const turnsRatioFor = (highOhm: number, lowOhm: number): number => Math.sqrt(highOhm / lowOhm);

/** What an ideal transformer of this ratio shows of `load`: for a part that does not belong to the feed point. */
export const throughIdeal = (load: Complex, ratio: number): Complex => scale(load, 1 / ratio);

/** Input impedance and where the power goes, at one frequency into one load. In plain numbers, because a design search asks it ten thousand times. */
export function transformerState(
  model: TransformerModel,
  mu: Permeability,
  hz: number,
  load: Complex,
): TransformerState {
  const omega = 2 * Math.PI * hz;
  const n = model.secondaryTurns / model.primaryTurns;
  const ratio = n ** 2;
  // Load and stray capacitance, seen from the low side.
  const load2 = load.re ** 2 + load.im ** 2;
  const outG = (ratio * load.re) / load2;
  const outB = (-ratio * load.im) / load2 + omega * model.strayF * ratio;
  const out2 = outG ** 2 + outB ** 2;
  // Copper and leakage in series with it.
  const { diameterM, conductivitySPerM } = model.wire;
  const copper = model.copperLengthM * wireResistanceOhmPerM(hz, diameterM, conductivitySPerM);
  const branchR = copper + outG / out2;
  const branchX = omega * model.leakageH - outB / out2;
  const branch2 = branchR ** 2 + branchX ** 2;
  const branchA2 = 1 / branch2; // at 1 V
  // Core and capacitor across the input.
  const core = windingImpedance(model.ring, model.count, model.primaryTurns, mu, hz);
  const core2 = core.re ** 2 + core.im ** 2;
  const totalG = branchR / branch2 + core.re / core2;
  const totalB = -branchX / branch2 - core.im / core2 + omega * model.compensationF;
  const total2 = totalG ** 2 + totalB ** 2;
  const efficiency = (branchA2 * outG) / out2 / totalG;
  const lowVPerRootW = 1 / Math.sqrt(totalG);
  return {
    input: complex(totalG / total2, -totalB / total2),
    coreShare: core.re / core2 / totalG,
    copperShare: (branchA2 * copper) / totalG,
    efficiency,
    lossDb: -10 * Math.log10(efficiency),
    lowVPerRootW,
    highVPerRootW: lowVPerRootW * Math.sqrt(branchA2 / out2) * n,
  };
}

/** What the high side shows of `load` on the low side: the same circuit, looked into from its other end. */
export function highSideInput(model: TransformerModel, mu: Permeability, hz: number, load: Complex): Complex {
  const omega = 2 * Math.PI * hz;
  const ratio = impedanceRatio(model.primaryTurns, model.secondaryTurns);
  const { diameterM, conductivitySPerM } = model.wire;
  const core = windingImpedance(model.ring, model.count, model.primaryTurns, mu, hz);
  const low = reciprocal(add(add(reciprocal(load), reciprocal(core)), complex(0, omega * model.compensationF)));
  const copper = model.copperLengthM * wireResistanceOhmPerM(hz, diameterM, conductivitySPerM);
  const through = scale(add(low, complex(copper, omega * model.leakageH)), ratio);
  return reciprocal(add(reciprocal(through), complex(0, omega * model.strayF)));
}

/** Peak flux density in the core at `inputW`, T. */
export const transformerFluxT = (
  model: TransformerModel,
  state: TransformerState,
  hz: number,
  inputW: number,
): number => fluxDensityT(model.ring, model.count, model.primaryTurns, state.lowVPerRootW * Math.sqrt(inputW), hz);

/** Current in the compensating capacitor, A rms. */
export const capacitorA = (model: TransformerModel, state: TransformerState, hz: number, inputW: number): number =>
  2 * Math.PI * hz * model.compensationF * state.lowVPerRootW * Math.sqrt(inputW);
