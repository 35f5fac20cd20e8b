/**
 * Coax wound as a single-layer air coil and used as a common-mode choke.
 *
 *   L = N² D² / (18 D + 40 l) · 1 µH/in      D mean diameter, l winding length (Wheeler); within 1 % for l > 0.4 D
 *   C = 1.5 · H(l/D) · D                      H Medhurst's coefficient, pF per cm
 *
 * The 1.5 carries the jacket between touching turns; it is the mean of five published resonances of close-wound 10.3 mm coax, which scatter
 * from 1.3 to 1.9. Limits: single layer; a bunched coil has several times the capacitance and resonates far lower. Nearly a pure reactance on
 * both sides of its narrow peak: it can resonate with the cable and raise the current.
 * Sources: Wheeler, "Simple inductance formulas for radio coils", Proc. IRE 16 (1928) 1398; Medhurst, "H.F. resistance and self-capacitance of
 * single-layer solenoids", Wireless Engineer 24 (1947) 35, table of H (both memory).
 */
import { type Complex, complex, magnitude } from '../base/complex';
import { type ImpedanceBand, withCapacitance } from './choke';

const INCH_M = 0.0254;
const JACKET_FACTOR = 1.5;
const CAPACITANCE_SCATTER = 0.35;
/** Unloaded quality of a coax coil below its resonance: order of size, no source. */
const COIL_Q = 150;
/** Medhurst's table: winding length over diameter, pF per cm of diameter. */
const MEDHURST: readonly (readonly [number, number])[] = [
  [0.1, 0.96],
  [0.15, 0.79],
  [0.2, 0.7],
  [0.25, 0.64],
  [0.3, 0.6],
  [0.4, 0.54],
  [0.5, 0.5],
  [0.6, 0.48],
  [0.8, 0.46],
  [1, 0.46],
  [1.5, 0.47],
  [2, 0.5],
  [3, 0.61],
  [4, 0.72],
  [5, 0.81],
];

export interface AirCoil {
  readonly turns: number;
  /** To the centre line of the cable, m. */
  readonly diameterM: number;
  readonly lengthM: number;
}

/** A coil wound turn against turn on a form. */
export const closeWound = (turns: number, formDiameterM: number, cableM: number): AirCoil => ({
  turns,
  diameterM: formDiameterM + cableM,
  lengthM: turns * cableM,
});

export const coilInductanceH = ({ turns, diameterM, lengthM }: AirCoil): number =>
  (1e-6 * (turns * diameterM) ** 2) / ((18 * diameterM + 40 * lengthM) * INCH_M);

/** Turns, not rounded, for an inductance on a given diameter and length. */
export const coilTurns = (inductanceH: number, diameterM: number, lengthM: number): number =>
  Math.sqrt(inductanceH * 1e6 * (18 * diameterM + 40 * lengthM) * INCH_M) / diameterM;

export function coilCapacitanceF({ diameterM, lengthM }: AirCoil): number {
  return JACKET_FACTOR * medhurst(lengthM / diameterM) * diameterM * 100e-12;
}

/** Frequency at which an inductance and a capacitance cancel, Hz. */
export const resonanceHz = (inductanceH: number, capacitanceF: number): number =>
  1 / (2 * Math.PI * Math.sqrt(inductanceH * capacitanceF));

/** Cable wound on the coil, m. */
export const coilCableM = ({ turns, diameterM, lengthM }: AirCoil): number =>
  Math.hypot(turns * Math.PI * diameterM, lengthM);

export const coilImpedance = (coil: AirCoil, hz: number): Complex => scaledCoil(coil, hz, 1, 1);

/** The same over the scatter of the published coils. */
export function coilBand(coil: AirCoil, hz: number): ImpedanceBand {
  const all = [0.95, 1, 1.05].flatMap((l) =>
    [1 - CAPACITANCE_SCATTER, 1, 1 + CAPACITANCE_SCATTER].map((c) => scaledCoil(coil, hz, l, c)),
  );
  const range = (of: (z: Complex) => number): [number, number] => [Math.min(...all.map(of)), Math.max(...all.map(of))];
  return {
    nominal: coilImpedance(coil, hz),
    rOhm: range((z) => z.re),
    xOhm: range((z) => z.im),
    ohm: range(magnitude),
  };
}

function scaledCoil(coil: AirCoil, hz: number, inductance: number, capacitance: number): Complex {
  const x = 2 * Math.PI * hz * coilInductanceH(coil) * inductance;
  return withCapacitance(complex(x / COIL_Q, x), coilCapacitanceF(coil) * capacitance, hz);
}

/** Straight lines between the table's points, its end values outside. */
function medhurst(ratio: number): number {
  const above = MEDHURST.findIndex(([at]) => at >= ratio);
  if (above <= 0) return (above === 0 ? MEDHURST[0] : MEDHURST.at(-1))?.[1] as number;
  const [x0, y0] = MEDHURST[above - 1] as readonly [number, number];
  const [x1, y1] = MEDHURST[above] as readonly [number, number];
  return y0 + ((y1 - y0) * (ratio - x0)) / (x1 - x0);
}
