import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PHOTO_MOST_PX, photoSize } from '../../src/design/photo';

test('a picture keeps its proportion and never grows', () => {
  expect(photoSize(4000, 3000)).toEqual([1600, 1200]);
  expect(photoSize(3000, 4000)).toEqual([1200, 1600]);
  expect(photoSize(800, 600)).toEqual([800, 600]);
});

test('no side is longer than is kept, and none vanishes', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20_000 }), fc.integer({ min: 1, max: 20_000 }), (wide, high) => {
      const kept = photoSize(wide, high);
      expect(Math.max(...kept)).toBeLessThanOrEqual(PHOTO_MOST_PX);
      expect(Math.min(...kept)).toBeGreaterThanOrEqual(1);
    }),
  );
});
