import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Band, bandIds, type Region } from '../../src/catalog/band-ids';
import { bandEdgesMHz } from '../../src/catalog/bands';
import { counterpoiseAims, counterpoiseLength, counterpoiseSearch } from '../../src/physics/counterpoise-length';
import { nthHalfWaveM } from '../../src/physics/lengths';
import {
  CLEARANCE,
  clearWindows,
  type LengthSearch,
  leastBadLength,
  tunerRangeAt,
  wireSearch,
} from '../../src/physics/non-resonant-length';
import { expectedSwr, swrAtRatio, swrSweep } from '../../src/physics/non-resonant-swr';
import { expectWorkingHolds } from '../fixtures/evaluate-working';

const wanted = (names: string, region: Region = 1) =>
  names.split(' ').map((name) => ({ band: `${name}m` as Band, ...bandEdgesMHz(`${name}m` as Band, region) }));
const search = (names: string, spanM?: number, region: Region = 1): LengthSearch =>
  wireSearch(wanted(names, region), 0.975, spanM);

/** By brute force over frequency and n, apart from the code under test: the least |L − Ln| / Ln. */
function leastMargin({ bands, wireFactor }: LengthSearch, lengthM: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { lowMHz, highMHz } of bands)
    for (let step = 0; step <= 40; step++)
      for (let n = 1; n < 60; n++) {
        const resonantM = (149.9 * (n - 0.05) * wireFactor) / (lowMHz + ((highMHz - lowMHz) * step) / 40);
        least = Math.min(least, Math.abs(lengthM - resonantM) / resonantM);
      }
  return least;
}

// Windows in common use (common practice, no source), insulated wire. Each lies within a computed one to a twentieth of a metre.
describe('windows in common use are found', () => {
  test.each([
    ['80 40 30 20 17 15 12 10', 21.65, 21.9],
    ['40 30 20 17 15 12 10', 12.05, 12.6],
    ['40 30 20 17 15 12 10', 21.65, 21.9],
    ['40 20 15 10', 11.0, 12.2],
    ['40 20 15 10', 16.65, 17.45],
    ['80 40 20', 22.0, 27.6],
    ['20 17 15 12 10', 8.3, 8.8],
  ])('%s m: %d to %d m', (bands, fromM, toM) => {
    const window = clearWindows(search(bands)).find((each) => each.fromM <= fromM + 0.05 && each.toM >= toM - 0.05);
    expect(window).toBeDefined();
  });

  test('all bands from 80 to 10 m leave one window up to 45 m, in regions 1 and 2', () => {
    for (const region of [1, 2] as const) {
      const windows = clearWindows(search('80 40 30 20 17 15 12 10', undefined, region));
      expect(windows).toHaveLength(1);
      expect(windows[0].best.metres).toBeCloseTo(21.8, 1);
    }
  });
});

const anyBands = fc.subarray([...bandIds], { minLength: 1 });
const anyRegion = fc.constantFrom<Region>(1, 2, 3);
const anySearch = fc
  .tuple(
    anyBands,
    anyRegion,
    fc.double({ min: 0.93, max: 1, noNaN: true }),
    fc.double({ min: 5, max: 60, noNaN: true }),
  )
  .map(([bands, region, wireFactor, spanM]) =>
    wireSearch(
      bands.map((band) => ({ band, ...bandEdgesMHz(band, region) })),
      wireFactor,
      spanM,
    ),
  );

describe('laws of the windows', () => {
  test('inside a window nothing is within 5 %, just outside something is; best lies inside and its working holds', () => {
    fc.assert(
      fc.property(anySearch, fc.double({ min: 0, max: 1, noNaN: true }), (each, part) => {
        for (const window of clearWindows(each)) {
          const inside = window.fromM + (0.001 + 0.998 * part) * (window.toM - window.fromM);
          expect(leastMargin(each, inside)).toBeGreaterThan(CLEARANCE - 1e-4);
          if (window.below !== null) expect(leastMargin(each, window.fromM - 1e-4)).toBeLessThan(CLEARANCE);
          if (window.above !== null && window.toM < each.longestM)
            expect(leastMargin(each, window.toM + 1e-4)).toBeLessThan(CLEARANCE);
          expect(window.best.metres).toBeGreaterThanOrEqual(window.fromM);
          expect(window.best.metres).toBeLessThanOrEqual(window.toM);
          expect(window.fromM).toBeGreaterThanOrEqual(each.shortestM);
          expect(window.toM).toBeLessThanOrEqual(each.longestM);
          expectWorkingHolds(window.best.working);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('every clear length of the room lies in a window', () => {
    fc.assert(
      fc.property(anySearch, fc.double({ min: 0, max: 1, noNaN: true }), (each, part) => {
        if (each.shortestM >= each.longestM) return;
        const lengthM = each.shortestM + part * (each.longestM - each.shortestM);
        if (leastMargin(each, lengthM) <= CLEARANCE + 1e-3) return;
        expect(clearWindows(each).some(({ fromM, toM }) => lengthM >= fromM && lengthM <= toM)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  test('the least bad length fits the room and names a wanted band', () => {
    fc.assert(
      fc.property(anySearch, (each) => {
        const { window, suffers } = leastBadLength(each);
        expect(window.best.metres).toBeGreaterThan(0);
        expect(window.best.metres).toBeLessThanOrEqual(each.longestM + 1e-9);
        expect(each.bands.map(({ band }) => band)).toContain(suffers);
      }),
    );
  });
});

describe('where no window is left', () => {
  test('all bands from 160 to 6 m: the length with most clearance, and the band that suffers', () => {
    const all = search('160 80 60 40 30 20 17 15 12 10 6');
    expect(clearWindows(all)).toEqual([]);
    const { window, suffers, reason } = leastBadLength(all);
    expect(reason).toBe('near-half-wave');
    expect(suffers).toBe(window.nearest?.band);
    // No length of the room, looked at every centimetre, keeps clear of everything by more.
    const best = leastMargin(all, window.best.metres);
    for (let lengthM = all.shortestM; lengthM <= all.longestM; lengthM += 0.01)
      expect(leastMargin(all, lengthM)).toBeLessThanOrEqual(best + 1e-3);
  }, 30_000);

  test('room shorter than 0.23 of a wave: the longest clear length, and the lowest band suffers', () => {
    const short = search('80 40 20', 10);
    const { window, suffers, reason } = leastBadLength(short);
    expect([suffers, reason]).toEqual(['80m', 'too-short']);
    expect(leastMargin(short, window.best.metres)).toBeGreaterThan(CLEARANCE);
    expect(window.best.metres).toBeLessThanOrEqual(10);
  });

  test('no room at all is answered like a millimetre of it', () => {
    for (const longestM of [0, Number.MIN_VALUE, 9e-323])
      expect(leastBadLength(search('80 40 20', longestM))).toEqual(leastBadLength(search('80 40 20', 0.001)));
  });
});

describe('near the first half-wave', () => {
  const half = nthHalfWaveM(1, 7.1, 0.975);
  const one: LengthSearch = {
    bands: [{ band: '40m', lowMHz: 7.1, highMHz: 7.1 }],
    wireFactor: 0.975,
    shortestM: 5,
    longestM: 45,
  };

  test.each([
    [0.69, false],
    [0.71, true],
    [1.29, true],
    [1.31, false],
  ])('a wire of %d half-waves is flagged: %s', (ratio, flagged) => {
    expect(tunerRangeAt(one, ratio * half)).toHaveLength(flagged ? 1 : 0);
  });

  test('the sweep comes back at its points and is straight between them', () => {
    for (const [ratio, swr] of swrSweep.value) expect(swrAtRatio(ratio)).toBeCloseTo(swr, 9);
    expect(swrAtRatio(1.29)).toBeCloseTo((7.4 + 4.3) / 2, 9);
    expect(swrAtRatio(0.5)).toBe(5);
    expect(swrAtRatio(2)).toBe(1.2);
  });

  test('over a band the highest SWR counts, a peak inside it too', () => {
    expect(expectedSwr(1.05, 1.15)).toEqual({ ratio: 1.11, swr: 10.8 });
    expect(expectedSwr(0.6, 0.7)).toEqual({ ratio: 0.7, swr: 5 });
  });

  test('21.75 m on 40 m is 11 % long and flagged at the peak of the sweep', () => {
    const flagged = tunerRangeAt(search('80 40 30 20 17 15 12 10'), 21.75);
    expect(flagged.map(({ band }) => band)).toEqual(['40m']);
    expect(flagged[0].expectedSwr).toBeCloseTo(10.8, 1);
  });
});

describe('counterpoises', () => {
  test('80 to 10 m: one near 4.2 m and one near 9 m; 40 to 10 m: near 4.2 m (common practice, within 0.5 m)', () => {
    const low = wanted('80 40 30 20 17 15 12 10');
    expect(Math.abs(counterpoiseLength(low, 0.975, counterpoiseAims.short).length.metres - 4.2)).toBeLessThan(0.5);
    expect(Math.abs(counterpoiseLength(low, 0.975, counterpoiseAims.long).length.metres - 9)).toBeLessThan(0.5);
    const high = wanted('40 30 20 17 15 12 10');
    expect(Math.abs(counterpoiseLength(high, 0.975, counterpoiseAims.long).length.metres - 4.2)).toBeLessThan(0.5);
  });

  test('they keep clear of half-waves and within 0.05 to 0.25 of the lowest wave', () => {
    fc.assert(
      fc.property(anyBands, anyRegion, fc.constantFrom(...Object.values(counterpoiseAims)), (names, region, aim) => {
        const bands = names.map((band) => ({ band, ...bandEdgesMHz(band, region) }));
        const { length, clear } = counterpoiseLength(bands, 0.975, aim);
        const room = counterpoiseSearch(bands, 0.975);
        expect(length.metres).toBeGreaterThanOrEqual(room.shortestM - 1e-9);
        expect(length.metres).toBeLessThanOrEqual(room.longestM + 1e-9);
        expectWorkingHolds(length.working);
        if (clear) expect(leastMargin(room, length.metres)).toBeGreaterThan(CLEARANCE - 1e-4);
      }),
      { numRuns: 60 },
    );
  });
});
