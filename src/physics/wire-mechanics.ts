/**
 * A wire hung between two supports of equal height.
 *
 *   parabola   sag = w L² / (8 T)                          T horizontal pull, N    w weight per metre, N/m    L span, m
 *   catenary   sag = a (cosh(L / 2a) − 1)   a = T / w      length = 2 a sinh(L / 2a)      pull at the end = T cosh(L / 2a)
 *   wind       p = 0.613 v²  Pa on the wire's outline, at right angles to its weight: w' = √(w² + (p D)²)
 *
 *   centre     T = (w L²/8 + W L/4) / sag         W  weight hung from the middle: line, choke, transformer
 *   ice        w_ice = ρ π t (D + t) g            t  thickness all round, ρ = 913 kg/m³
 *
 * The parabola is within 2.2 % while sag < L/8, within 0.1 % at L/40. Stretch is left out, which keeps pulls in wind and ice on the high side;
 * so are moving trees: hang with slack. 0.613 kg/m³ is half the density of air at 15 °C; drag factor 1 on round wire, of 1.0 to 1.2.
 * Sources: statics of the hanging cable (any mechanics text); dynamic pressure as in structural codes.
 */
import { STANDARD_GRAVITY_M_PER_S2 } from '../base/convert';

export const weightNPerM = (massKgPerM: number): number => massKgPerM * STANDARD_GRAVITY_M_PER_S2;

export const sagM = (spanM: number, weightPerM: number, pullN: number): number =>
  (weightPerM * spanM ** 2) / (8 * pullN);

export const pullN = (spanM: number, weightPerM: number, sag: number): number => (weightPerM * spanM ** 2) / (8 * sag);

export const pullWithCentreN = (spanM: number, weightPerM: number, centreN: number, sag: number): number =>
  ((weightPerM * spanM ** 2) / 8 + (centreN * spanM) / 4) / sag;

export const ICE_KG_PER_M3 = 913;

export const iceNPerM = (diameterM: number, thicknessM: number): number =>
  weightNPerM(ICE_KG_PER_M3 * Math.PI * thicknessM * (diameterM + thicknessM));

export interface Catenary {
  /** a, m: pull at the lowest point over weight per metre. */
  readonly parameterM: number;
  readonly sagM: number;
  readonly lengthM: number;
  readonly endPullN: number;
}

export function catenaryFromPull(spanM: number, weightPerM: number, horizontalN: number): Catenary {
  const parameterM = horizontalN / weightPerM;
  const half = spanM / (2 * parameterM);
  return {
    parameterM,
    // cosh x − 1 = 2 sinh²(x/2) keeps its figures when the sag is small
    sagM: 2 * parameterM * Math.sinh(half / 2) ** 2,
    lengthM: 2 * parameterM * Math.sinh(half),
    endPullN: horizontalN * Math.cosh(half),
  };
}

export const windPressurePa = (speedMPerS: number): number => 0.613 * speedMPerS ** 2;

/** Load per metre with wind square to the wire. */
export const loadInWindNPerM = (weightPerM: number, outsideDiameterM: number, speedMPerS: number): number =>
  Math.hypot(weightPerM, windPressurePa(speedMPerS) * outsideDiameterM);

/** Times the wire could carry its pull. Print recommends about ten at rest for hard-drawn and copper-clad antenna wire. */
export const safetyFactor = (breakN: number, endPullN: number): number => breakN / endPullN;
