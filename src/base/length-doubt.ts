/** Whether a length looks like a number in another unit: 66 "m" of wire in a 20 m garden is most likely 66 ft. Asked, never corrected. */
import { type Length, type LengthUnit, lengthUnits, metresPer } from './read-length';

export interface LengthContext {
  /** Usual range of this answer, m. */
  readonly leastM: number;
  readonly mostM: number;
  /** What the other answers let one expect, m: half a wave of the lowest band, the span. */
  readonly expectedM?: number;
}

const near = (metres: number, expectedM: number, share: number): boolean => Math.abs(metres / expectedM - 1) <= share;

/**
 * Readings of the same digits in other units that would make sense where the typed one does not, the likeliest first. Empty: no doubt.
 * In doubt when the length is outside its usual range and the other reading inside; or when the other reading hits the expected length
 * within 5 % and the typed one misses it by more than half.
 */
export function lengthDoubt(metres: number, unit: LengthUnit, context: LengthContext): readonly Length[] {
  const { leastM, mostM, expectedM } = context;
  const fits = (value: number): boolean => value >= leastM && value <= mostM;
  const digits = metres / metresPer[unit];
  const others = lengthUnits
    .filter((other) => other !== unit)
    .map((other): Length => ({ metres: digits * metresPer[other], unit: other }))
    .filter((other) => fits(other.metres));
  const expected = others.filter((other) => expectedM !== undefined && near(other.metres, expectedM, 0.05));
  if (fits(metres)) return expectedM !== undefined && !near(metres, expectedM, 0.5) ? expected : [];
  return [...expected, ...others.filter((other) => !expected.includes(other))];
}
