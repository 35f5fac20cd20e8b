/**
 * Steady temperature rise of a wound core.
 *
 *   ΔT = (P / A)^0.833      ΔT in K, P in mW, A bare surface in cm²; free air, still
 *
 * A closed box in the sun is taken to halve the watts for the same rise (common practice, no source).
 * Limits: ±25 %; winding and a big terminal carry some heat away, a potted or wrapped core keeps it. Small and large cores reach it in about 10
 * and 40 minutes, so shorter overs stay below.
 * Source: iron powder and ferrite makers' catalogues, temperature rise of toroids (memory).
 */
export const housings = ['free-air', 'closed-box'] as const;
export type Housing = (typeof housings)[number];

/** Rise that designs keep to: makers' usual figure, and well below the 130 °C at which mixes 31 and 43 stop working, on a hot day. */
export const RISE_LIMIT_K = 40;
export const RISE_EXPONENT = 0.833;
/** Watts from a square metre that bring 1 K: the law's 1 mW from a square centimetre. */
export const HEAT_W_PER_M2 = 10;
export const BOX_FACTOR: Readonly<Record<Housing, number>> = { 'free-air': 1, 'closed-box': 2 };

/** Rise above the air around, K. */
export const temperatureRiseK = (powerW: number, surfaceM2: number, housing: Housing): number =>
  ((BOX_FACTOR[housing] * powerW) / (surfaceM2 * HEAT_W_PER_M2)) ** RISE_EXPONENT;

/** Steady watts for a given rise: the same law turned round. */
export const heatForRiseW = (riseK: number, surfaceM2: number, housing: Housing): number =>
  (riseK ** (1 / RISE_EXPONENT) * surfaceM2 * HEAT_W_PER_M2) / BOX_FACTOR[housing];
