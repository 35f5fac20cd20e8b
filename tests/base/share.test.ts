import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareOf } from '../../src/base/share';
import { shareText } from '../../src/words/en/stand-screen';

describe('a ratio as it is said', () => {
  test.each([
    [1.5, 'more than'],
    [1, 'about as much as'],
    [0.72, 'about three quarters of'],
    [0.65, 'about two thirds of'],
    [0.47, 'about half of'],
    [0.33, 'about a third of'],
    [0.125, 'about an eighth of'],
    [0.1, 'about a tenth of'],
    [0.07, 'less than a tenth of'],
    [0.049, 'less than a twentieth of'],
    [0.0004, 'less than a thousandth of'],
    [0, 'less than a thousandth of'],
  ])('%f is %s', (ratio, words) => {
    expect(shareText(shareOf(ratio))).toBe(words);
  });

  test('never says less than something that it is not less than, and misses a plain fraction by a quarter at most', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.2, noNaN: true }), (ratio) => {
        const share = shareOf(ratio);
        if (share.kind === 'less') expect(ratio).toBeLessThanOrEqual(1 / share.parts);
        else if (share.kind === 'about') expect(Math.abs(share.of / share.parts / ratio - 1)).toBeLessThan(0.25);
      }),
    );
  });
});
