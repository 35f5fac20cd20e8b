import { expect, test } from 'vitest';
import { isFirm } from '../../src/app/jobs/firm-tap';

test('a drop that bounces is one tap, quick fingers are as many as they tap', () => {
  expect(isFirm(1000, Number.NEGATIVE_INFINITY)).toBe(true);
  expect(isFirm(1040, 1000)).toBe(false);
  // Seven taps a second are 143 ms apart: about as fast as people tap, from memory.
  expect(isFirm(1143, 1000)).toBe(true);
});
