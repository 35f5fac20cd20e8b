import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import type { Working } from '../../src/base/working';
import { everyCombination } from './combinations';
import { type GivenAnswers, wholePlan } from './whole-plan';

const math = create(all);
const lengthsOf = (given: GivenAnswers): number[] =>
  wholePlan(given).dimensions.pieces.map(({ length }) => length.metres);
const radiatorM = (given: GivenAnswers): number => wholePlan(given).dimensions.radiator.metres;
const FOOT_M = 0.3048;

/** The number that the text of a working gives, in its own unit. */
function evaluated({ formula, inputs, result }: Working): number {
  const scope = Object.fromEntries(
    Object.entries(inputs).map(([name, { value, unit }]) => [name, unit === '' ? value : math.unit(value, unit)]),
  );
  const found: unknown = math.evaluate(formula, scope);
  return math.isUnit(found) ? found.toNumber(result.unit) : Number(found);
}

describe('lengths of print', () => {
  // NCVEC question pool, General 2023-2027, G9B10 and G9B11: 33 ft at 14.250 MHz, 132 ft at 3.550 MHz, both to half a foot (rounded there).
  test.each([
    { band: '20m', focusMHz: 14.25, feet: 33 },
    { band: '80m', focusMHz: 3.55, feet: 132 },
  ] as const)('a bare half-wave for $focusMHz MHz is about $feet ft', ({ band, focusMHz, feet }) => {
    const metres = radiatorM({
      bands: [band],
      focusMHz: { [band]: focusMHz },
      fedAt: 'centre',
      wire: 'copper-2.0mm-bare',
    });
    expect(Math.abs(metres / FOOT_M - feet)).toBeLessThanOrEqual(0.5);
  });

  // NCVEC question pool, General 2023-2027, G9B12: quarter-wave for 28.5 MHz, 8 ft, to half a foot.
  test('a bare quarter-wave vertical for 28.5 MHz is about 8 ft', () => {
    const metres = radiatorM({
      bands: ['10m'],
      focusMHz: { '10m': 28.5 },
      radiator: 'vertical',
      fedAt: 'base',
      wire: 'copper-2.0mm-bare',
    });
    expect(Math.abs(metres / FOOT_M - 8)).toBeLessThanOrEqual(0.5);
  });

  // Handbook practice for insulated wire, from memory: 139.5/f m for PVC (453 to 458/f ft). 2 % between the two constants.
  test('PVC wire for 7.1 MHz is about 19.7 m long', () => {
    expect(radiatorM({ focusMHz: { '40m': 7.1 }, fedAt: 'centre' }) / 19.65).toBeCloseTo(1, 2);
  });

  // ARRL Antenna Book, loops: 1005/f ft once round, bare wire. 0.1 % is the rounding of the constant.
  test('a bare loop for 7.1 MHz is 1005/f feet round', () => {
    const metres = radiatorM({
      focusMHz: { '40m': 7.1 },
      radiator: 'loop',
      fedAt: 'corner',
      wire: 'copper-2.0mm-bare',
    });
    expect(metres / FOOT_M / (1005 / 7.1)).toBeCloseTo(1, 2.5);
  });

  // NCVEC question pool, Extra 2020-2024, E9C05: the off-centre feed point a third from one end.
  test('an off-centre wire is fed a third from one end', () => {
    const [short = 0, long = 0] = lengthsOf({ bands: ['80m', '40m'], fedAt: 'off-centre' });
    expect(short / (short + long)).toBeCloseTo(1 / 3, 3);
  });

  // ARRL Antenna Book, long wires: n half-waves are 492 (n - 0.05)/f ft, so a wire right on 40 m dips too high on 20 and 10 m.
  test('an end-fed for 40, 20 and 10 m splits the difference between its bands', () => {
    const { radiator, harmonics } = wholePlan({ bands: ['40m', '20m', '10m'] }).dimensions;
    const wanted = [7.1, 14.175, 28.85].map((f, i) => ((492 * (2 ** i - 0.05)) / f) * FOOT_M * 0.975);
    const middle = (Math.min(...wanted) + Math.max(...wanted)) / 2;
    expect(radiator.metres / middle).toBeCloseTo(1, 2.5);
    expect(harmonics.map(({ n }) => n)).toEqual([1, 2, 4]);
    expect(harmonics.every(({ offset }) => Math.abs(offset) < 0.03)).toBe(true);
  });

  // Common practice, no source: 15 m comes free with 40 m legs, a few per cent high.
  test('parallel dipoles let 15 m ride on the 40 m legs', () => {
    const { pieces, freeRides } = wholePlan({
      bands: ['40m', '20m', '15m'],
      radiator: 'parallel-wires',
      fedAt: 'centre',
    }).dimensions;
    expect(pieces.map(({ band }) => band)).toEqual(['40m', '20m']);
    expect(freeRides.map(({ band, on }) => `${band} on ${on}`)).toEqual(['15m on 40m']);
  });
});

describe('lengths that stay clear', () => {
  // Common practice, no source: windows of the trade for 40 to 10 m, all bands, PVC wire: 12.05 to 12.6 m and 21.65 to 21.9 m.
  test('the windows of the trade are found', () => {
    const { windows } = wholePlan({
      bands: ['40m', '30m', '20m', '17m', '15m', '12m', '10m'],
      lengthChoice: 'non-resonant',
      shackEnd: 'wide-tuner',
    }).dimensions;
    const has = (from: number, to: number): boolean =>
      windows.some(({ fromM, toM }) => Math.abs(fromM - from) < 0.1 && Math.abs(toM - to) < 0.1);
    expect(has(12.05, 12.6)).toBe(true);
    expect(has(21.65, 21.9)).toBe(true);
  });

  // Common practice, no source: 5 m is a half-wave on 10 m and 9.9 m on 20 m; counterpoise wires stay away from both.
  test('counterpoise wires for 80 to 10 m are two, and avoid 5 m and 9.9 m', () => {
    const wires = wholePlan({
      bands: ['80m', '40m', '20m', '10m'],
      lengthChoice: 'non-resonant',
      shackEnd: 'wide-tuner',
    }).dimensions.pieces.filter(({ piece }) => piece === 'counterpoise');
    expect(wires).toHaveLength(2);
    for (const { length } of wires)
      for (const resonantM of [4.95, 9.8]) expect(Math.abs(length.metres / resonantM - 1)).toBeGreaterThan(0.04);
  });

  // Common practice, no source: leg plus line (line length over its velocity factor) 0.05 λ and more from every half-wave.
  test('a doublet that may be any length keeps leg plus line clear', () => {
    const { radiator } = wholePlan({
      bands: ['80m', '40m', '20m'],
      fedAt: 'centre',
      lengthChoice: 'non-resonant',
      feedLine: 'open-wire',
      shackEnd: 'balanced-tuner',
    }).dimensions;
    const electricalM = radiator.metres / 2 + 15 / 0.97;
    for (const f of [3.65, 7.1, 14.175]) {
      const halfWaves = (electricalM * f) / 149.9;
      expect(Math.abs(halfWaves - Math.round(halfWaves)) / 2).toBeGreaterThan(0.05);
    }
  });

  test('a span too short for any window names the band that suffers', () => {
    const { windows, sufferingBand, radiator } = wholePlan({
      bands: ['80m', '40m'],
      lengthChoice: 'non-resonant',
      spanM: 12,
    }).dimensions;
    expect(windows).toEqual([]);
    expect(sufferingBand).toBe('80m');
    expect(radiator.metres).toBeLessThanOrEqual(12);
  });
});

describe('places of chokes', () => {
  // Common practice, no source: 0.05 λ of the lowest band, 4.2 m on 80 m, 2.1 m on 40 m, 1.06 m on 20 m.
  test.each([
    { bands: ['80m', '40m'], metres: 4.11 },
    { bands: ['40m'], metres: 2.11 },
    { bands: ['20m'], metres: 1.06 },
  ] as const)('an end-fed for $bands has its choke at $metres m', ({ bands, metres }) => {
    expect(wholePlan({ bands: [...bands] }).dimensions.chokeAt?.metres).toBeCloseTo(metres, 1);
  });

  test('a coax shorter than that keeps the choke on it, or at the box beside a wire', () => {
    expect(wholePlan({ bands: ['80m'], feedLineLengthM: 2 }).dimensions.chokeAt?.metres).toBe(2);
    const wired = wholePlan({ bands: ['80m'], feedLineLengthM: 2, returnPath: 'counterpoise-wire' });
    expect(wired.dimensions.chokeAt?.metres).toBe(0);
  });

  test('the last choke stands outside, before the entry, and never before the first', () => {
    const { dimensions } = wholePlan({ feedLineLengthM: 20, entryDistanceM: 16 });
    expect(dimensions.entryChokeAt?.metres).toBeCloseTo(15.7, 5);
    const short = wholePlan({ feedLineLengthM: 3, entryDistanceM: 1 }).dimensions;
    expect(short.entryChokeAt?.metres).toBeGreaterThanOrEqual(short.chokeAt?.metres ?? Number.NaN);
  });
});

describe('every combination', () => {
  const plans = everyCombination().map((answers) => wholePlan(answers));

  test('has lengths that are finite and above zero', () => {
    for (const { dimensions, facts } of plans) {
      expect(Number.isFinite(dimensions.radiator.metres) && dimensions.radiator.metres > 0).toBe(true);
      expect(Number.isFinite(dimensions.runM) && dimensions.runM >= 0).toBe(true);
      expect(Number.isFinite(dimensions.riseM) && dimensions.riseM >= 0).toBe(true);
      if (facts.system !== 'other') expect(dimensions.pieces.length).toBeGreaterThan(0);
      for (const { length, count } of dimensions.pieces) {
        expect(length.metres).toBeGreaterThan(0);
        expect(Number.isFinite(length.metres)).toBe(true);
        expect(count).toBeGreaterThan(0);
      }
    }
  });

  test('has workings whose text gives the same number', () => {
    const seen = new Map<string, Working>();
    for (const { dimensions, cuts, cautions } of plans) {
      const { radiator, pieces, chokeAt, entryChokeAt, clearLine } = dimensions;
      const all = [radiator, ...pieces.map(({ length }) => length), chokeAt, entryChokeAt, clearLine];
      for (const each of all) if (each !== null) seen.set(JSON.stringify(each.working), each.working);
      for (const { working } of cuts) seen.set(JSON.stringify(working), working);
      for (const { distanceMWorking: w } of cautions) if (w !== null) seen.set(JSON.stringify(w), w);
    }
    expect(seen.size).toBeGreaterThan(100);
    for (const working of seen.values())
      expect(evaluated(working) - working.result.value, JSON.stringify(working)).toBeCloseTo(0, 6);
  });
});
