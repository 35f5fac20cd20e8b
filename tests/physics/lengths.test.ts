import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutting, toleranceM } from '../../src/physics/cutting';
import {
  type CutFor,
  fullWaveLoop,
  groundRadial,
  halfWave,
  harmonicHalfWave,
  legPlusLineM,
  lineLength,
  nthHalfWave,
  nthHalfWaveM,
  nthResonanceMHz,
  offCentreLegs,
  partOfWave,
  quarterWave,
  wavesFromHalfWave,
} from '../../src/physics/lengths';
import { expectWorkingHolds } from '../fixtures/evaluate-working';

const known = (value: number) => ({ value, from: 'answer' }) as const;
const cutFor = (frequencyMHz: number, wireFactor: number): CutFor => ({
  frequencyMHz: known(frequencyMHz),
  wireFactor: { value: wireFactor, from: 'catalogue' },
});
const frequency = fc.double({ min: 1.8, max: 54, noNaN: true });
const factor = fc.double({ min: 0.9, max: 1, noNaN: true });
const cut = fc.tuple(frequency, factor).map(([f, kw]) => cutFor(f, kw));

describe('the text of each working gives the length it stands beside, in metres', () => {
  test.each([
    ['half-wave', halfWave],
    ['quarter-wave', quarterWave],
    ['loop', fullWaveLoop],
    ['third resonance', (each: CutFor) => nthHalfWave(3, each)],
    [
      'harmonics',
      (each: CutFor) =>
        harmonicHalfWave(
          [1, 2.03, 4.1].map((n) => known(n * each.frequencyMHz.value)),
          each.wireFactor,
        ),
    ],
    ['part of a wave', (each: CutFor) => partOfWave(0.05, each.frequencyMHz)],
    ['ground radial', (each: CutFor) => groundRadial(40, each.frequencyMHz)],
    ['line', (each: CutFor) => lineLength(0.25, each.frequencyMHz, known(0.66))],
    ['short leg', (each: CutFor) => offCentreLegs(known(halfWave(each).metres), known(0.3)).short],
    ['long leg', (each: CutFor) => offCentreLegs(known(halfWave(each).metres), known(0.3)).long],
    ['cut length', (each: CutFor) => cutting({ metres: halfWave(each).metres, from: 'solved' }, 2, 'resonant').cut],
  ])('%s', (_name, rule) => {
    fc.assert(
      fc.property(cut, (each) => {
        const { metres, working } = rule(each);
        expect(working.result).toEqual({ value: metres, unit: 'm' });
        expectWorkingHolds(working);
      }),
      { numRuns: 30 },
    );
  });
});

// House examples, common practice: 80 m 39.8 / 38.8 m, 40 m 20.2 / 19.7 m, 20 m 10.1 / 9.9 m, bare and insulated. The tolerance is their
// last figure.
test.each([
  [3.6, 1, 39.8],
  [3.6, 0.975, 38.8],
  [7.1, 1, 20.2],
  [7.1, 0.975, 19.7],
  [14.15, 1, 10.1],
  [14.15, 0.975, 9.9],
])('half-wave at %d MHz with wire factor %d is %d m', (f, kw, metres) => {
  expect(Math.abs(halfWave(cutFor(f, kw)).metres - metres)).toBeLessThanOrEqual(0.06);
});

// Common practice: 20.2 m of bare wire dips at 7.05, 14.47 and 29.3 MHz, read to a hundredth or a tenth.
test.each([
  [1, 7.05],
  [2, 14.47],
  [4, 29.31],
])('resonance %d of 20.2 m bare lies at %d MHz', (n, megahertz) => {
  expect(Math.abs(nthResonanceMHz(n, 20.2, 1) - megahertz)).toBeLessThanOrEqual(0.01);
});

test('choke of an end-fed half-wave at 0.05 of a wave: 4.2, 2.1, 1.06 m on 80, 40, 20 m (common practice)', () => {
  for (const [f, metres] of [
    [3.6, 4.2],
    [7.1, 2.1],
    [14.15, 1.06],
  ] as const)
    expect(Math.abs(partOfWave(0.05, known(f)).metres - metres)).toBeLessThanOrEqual(0.04);
});

test('electrical totals of doublet leg and line said to be good keep off half-wave multiples by 0.15 of a wave (common practice)', () => {
  for (const f of [3.65, 7.1, 14.175]) expect(wavesFromHalfWave(27.9, f)).toBeGreaterThan(0.15);
  expect(legPlusLineM(13.4, 13.2, 0.91)).toBeCloseTo(27.9, 1);
});

describe('laws', () => {
  test('a quarter-wave is half of a half-wave and the n-th resonance rises with n and falls with frequency', () => {
    fc.assert(
      fc.property(cut, fc.integer({ min: 1, max: 12 }), (each, n) => {
        const [f, kw] = [each.frequencyMHz.value, each.wireFactor.value];
        expect(quarterWave(each).metres).toBeCloseTo(halfWave(each).metres / 2, 10);
        expect(nthHalfWaveM(n + 1, f, kw)).toBeGreaterThan(nthHalfWaveM(n, f, kw));
        expect(nthHalfWaveM(n, f * 1.01, kw)).toBeLessThan(nthHalfWaveM(n, f, kw));
        expect(nthResonanceMHz(n, nthHalfWaveM(n, f, kw), kw)).toBeCloseTo(f, 9);
      }),
    );
  });

  test('the legs of an off-centre wire make up the whole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        (whole, fraction) => {
          const { short, long } = offCentreLegs(known(whole), known(fraction));
          expect(short.metres + long.metres).toBeCloseTo(whole, 9);
          expect(short.metres).toBeLessThanOrEqual(long.metres);
        },
      ),
    );
  });

  test('distance from half-waves lies between 0 and a quarter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 200, noNaN: true }), frequency, (metres, f) => {
        const waves = wavesFromHalfWave(metres, f);
        expect(waves).toBeGreaterThanOrEqual(0);
        expect(waves).toBeLessThanOrEqual(0.25);
      }),
    );
  });

  test('a harmonic wire lies between the lengths its bands ask for, and one band gets its own', () => {
    expect(harmonicHalfWave([known(7.1)], known(1)).metres).toBeCloseTo(nthHalfWaveM(1, 7.1, 1), 9);
    const both = harmonicHalfWave([known(7.1), known(14.175), known(28.85)], known(1)).metres;
    expect(both).toBeGreaterThan(nthHalfWaveM(1, 7.1, 1));
    expect(both).toBeLessThan(nthHalfWaveM(2, 14.175, 1));
  });

  test('what is cut is longer than what hangs, marks fall inside it, and no tolerance is below 2 cm', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        fc.constantFrom(1 as const, 2 as const),
        (metres, ends) => {
          const piece = cutting({ metres, from: 'solved' }, ends, 'resonant');
          expect(piece.cut.metres).toBeGreaterThan(metres);
          expect(piece.marksM).toHaveLength(ends);
          for (const mark of piece.marksM) expect(mark).toBeLessThan(piece.cut.metres);
          expect(piece.toleranceM).toBeGreaterThanOrEqual(0.02);
        },
      ),
    );
    expect(toleranceM(20, 'resonant')).toBeCloseTo(0.1, 9);
  });
});
