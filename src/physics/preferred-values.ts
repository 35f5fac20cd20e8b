/**
 * Values that ordinary resistors are sold in: the E24 series, 24 to a decade, each within 5 % of the next.
 * Source: IEC 60063, series E24, from memory.
 */
const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91] as const;

/** The E24 value nearest by ratio, since an SWR goes by ratios too. */
export function nearestE24Ohm(ohm: number): number {
  const decade = 10 ** Math.floor(Math.log10(ohm) - 1);
  const values = [...E24, 100].map((value) => value * decade);
  const off = (value: number): number => Math.abs(Math.log(value / ohm));
  return values.reduce((best, value) => (off(value) < off(best) ? value : best));
}
