import { describe, expect, test } from 'vitest';
import { nearestE24Ohm } from '../../src/physics/preferred-values';

// IEC 60063, series E24, from memory: values come as the standard's own two figures, times a power of ten.
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

describe('the resistor that is sold', () => {
  test('for 49:1 at 50 ohms is 2.4 kilohms, as such boxes are tried out', () => {
    expect(nearestE24Ohm(50 * 49)).toBeCloseTo(2400, 6); // common practice, no source
    expect(nearestE24Ohm(50 * 4)).toBeCloseTo(200, 6); // common practice, no source
  });

  test('is its own nearest, in every decade', () => {
    for (const decade of [1, 10, 100]) {
      for (const value of e24) expect(nearestE24Ohm(value * decade)).toBeCloseTo(value * decade, 6);
    }
  });

  test('is never farther off than half the widest step of the series', () => {
    for (let ohm = 10; ohm < 10_000; ohm *= 1.013) {
      expect(Math.abs(Math.log(nearestE24Ohm(ohm) / ohm))).toBeLessThanOrEqual(Math.log(15 / 13) / 2 + 1e-9);
    }
  });
});
