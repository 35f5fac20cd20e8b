import fc from 'fast-check';
import { expect, test } from 'vitest';
import { frequencyRangeMHz, isFrequencyProblem, readFrequency } from '../../src/base/read-frequency';

test.each([
  ['7.1', 7.1],
  ['7,1', 7.1],
  ['7', 7],
  ['7100 kHz', 7.1],
  ['7,100 kHz', 7.1],
  ['7 100 kHz', 7.1],
  ['7.100 MHz', 7.1],
  ['7,100 MHz', 7.1],
  ['14,250', 14.25],
  ['14250.5 kHz', 14.2505],
  ['7100000 Hz', 7.1],
  ['3.65mhz', 3.65],
])('%j is %d MHz', (typed, megahertz) => {
  expect(readFrequency(typed)).toMatchObject({ megahertz: expect.closeTo(megahertz, 9) });
});

test.each([
  ['7100', 'kHz', 7.1],
  ['7100 MHz', 'kHz', 7.1],
  ['7.1 kHz', 'MHz', 7.1],
  ['14250000', 'Hz', 14.25],
])('%j is asked about: %s?', (typed, unit, megahertz) => {
  const read = readFrequency(typed);
  expect(read).toMatchObject({ code: 'unit-doubt' });
  expect(isFrequencyProblem(read) && read.candidates).toEqual([{ unit, megahertz: expect.closeTo(megahertz, 9) }]);
});

test.each([
  ['', 'empty'],
  ['forty', 'not-a-number'],
  ['-7.1', 'negative'],
  ['0', 'zero'],
  ['7,1,0', 'two-commas'],
  ['7.100.00', 'two-commas'],
  ['7.1 GHz', 'unknown-unit'],
  ['144.3', 'out-of-range'],
  ['0.136', 'out-of-range'],
])('%j is refused as %s', (typed, code) => {
  expect(readFrequency(typed)).toMatchObject({ code });
});

test('any text gives a frequency in range or a reason', () => {
  const typed = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'0123456789., kMHz') }));
  fc.assert(
    fc.property(typed, (text) => {
      const read = readFrequency(text);
      if (isFrequencyProblem(read)) return;
      expect(read.megahertz).toBeGreaterThanOrEqual(frequencyRangeMHz.least);
      expect(read.megahertz).toBeLessThanOrEqual(frequencyRangeMHz.most);
    }),
  );
});

test('kilohertz and megahertz of the same frequency read alike', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1_000, max: 60_000 }), (kilohertz) => {
      const asKilohertz = readFrequency(`${kilohertz} kHz`);
      const asMegahertz = readFrequency(`${(kilohertz / 1000).toFixed(3)} MHz`);
      if (isFrequencyProblem(asKilohertz) || isFrequencyProblem(asMegahertz)) throw new Error('refused');
      expect(asKilohertz.megahertz).toBeCloseTo(asMegahertz.megahertz, 9);
    }),
  );
});
