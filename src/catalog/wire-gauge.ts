/**
 * American wire gauge.
 *
 *   d = 0.127 mm · 92^((36 − n) / 39)      n = 0, −1, −2, −3 for 0, 00, 000, 0000
 *
 * Exact by definition (no. 36 is 0.005 in, no. 0000 is 0.46 in). Source: ASTM B258.
 */
export const gaugeDiameterM = (gauge: number): number => 0.127e-3 * 92 ** ((36 - gauge) / 39);

/** Sizes a shop keeps. */
const soldGauges = [10, 12, 14, 16, 18, 20, 22, 24, 26, 28] as const;

/** The sold gauge nearest in section, by ratio. */
export function nearestGauge(sectionM2: number): number {
  const apart = (gauge: number): number => Math.abs(Math.log((Math.PI * gaugeDiameterM(gauge) ** 2) / 4 / sectionM2));
  return soldGauges.reduce((best, gauge) => (apart(gauge) < apart(best) ? gauge : best), soldGauges[0] as number);
}
