import fc from 'fast-check';
import { expect, test } from 'vitest';
import { METRES_PER_FOOT, METRES_PER_INCH } from '../../src/base/convert';
import { feetInches, metricParts, spokenLength } from '../../src/base/format-length';

test.each([
  [0.4166, 0.42, 2],
  [4.1, 4.1, 2],
  [9.994, 9.99, 2],
  [9.996, 10, 1],
  [20.249, 20.2, 1],
  [99.96, 100, 0],
  [120.4, 120, 0],
  [1234, 1230, 0],
])('%d m is shown as %d with %d figures after the point', (metres, shown, decimals) => {
  expect(metricParts(metres)).toEqual({ metres: shown, decimals });
});

test.each([
  [2.9, { feet: 9, inches: 6, half: false }],
  [1.2827, { feet: 4, inches: 2, half: true }],
  [11.99 * METRES_PER_INCH, { feet: 1, inches: 0, half: false }],
  [20.2, { feet: 66, inches: 3, half: false }],
  [65.97 * METRES_PER_FOOT, { feet: 66, inches: 0, half: false }],
  [4.2, { feet: 13, inches: 9, half: false }],
])('%d m is shown as %j', (metres, shown) => {
  expect(feetInches(metres)).toEqual(shown);
});

test('inches never reach a foot, and halves end at 3 m', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (metres) => {
      const { inches, half } = feetInches(metres);
      expect(inches).toBeLessThan(12);
      if (metres >= 3) expect(half).toBe(false);
    }),
  );
});

test('what is said aloud is what is shown', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 999, noNaN: true }), (metres) => {
      const spoken = spokenLength(metres);
      expect(spoken.metres + spoken.centimetres / 100).toBeCloseTo(metricParts(metres).metres, 9);
      expect(spoken.centimetres).toBeLessThan(100);
      expect(spoken).toMatchObject(feetInches(metres));
    }),
  );
});
