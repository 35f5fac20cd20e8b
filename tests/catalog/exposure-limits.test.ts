import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exposureLimits, type LimitSetId, levelAt } from '../../src/catalog/exposure-limits';
import { sources } from '../../src/catalog/sources';
import { reactiveLimitM } from '../../src/physics/exposure-screen';

type Kind = 'electric' | 'magnetic' | 'power';
const { levels, nearFieldM } = JSON.parse(
  readFileSync(new URL('../fixtures/exposure-band-values.json', import.meta.url), 'utf8'),
) as { levels: [LimitSetId, Kind, number, number][]; nearFieldM: [number, number][] };

test('levels on the amateur bands are those worked out by hand', () => {
  expect(levels.length).toBeGreaterThan(600);
  for (const [set, kind, frequencyMHz, expected] of levels) {
    const computed = levelAt(exposureLimits[set].value[kind], frequencyMHz) as number;
    expect([set, kind, frequencyMHz, Math.abs(computed / expected - 1) < 1e-3]).toEqual([
      set,
      kind,
      frequencyMHz,
      true,
    ]);
  }
});

test('the reach of the near field is λ/2π', () => {
  for (const [frequencyMHz, metres] of nearFieldM)
    expect(reactiveLimitM(299.792458 / frequencyMHz)).toBeCloseTo(metres, 2);
});

const sets = Object.keys(exposureLimits) as LimitSetId[];

describe.each(sets)('%s', (id) => {
  const { value, source } = exposureLimits[id];
  test.each(['electric', 'magnetic', 'power'] as const)('%s levels join within the rounding of print', (kind) => {
    const rows = value[kind];
    for (let i = 1; i < rows.length; i++) {
      const [before, after] = [rows[i - 1], rows[i]];
      expect(after.fromMHz).toBe(before.toMHz);
      const ratio = (before.a * before.toMHz ** before.b) / (after.a * after.fromMHz ** after.b);
      // Two figures are printed at some joins: 87/√10 = 27.5 beside 28, 0.163 beside 0.16.
      expect(Math.abs(ratio - 1)).toBeLessThan(0.03);
    }
  });

  test('has a source and an averaging time', () => {
    expect(Object.keys(sources)).toContain(source);
    expect([0, 6, 30]).toContain(value.averagingMin);
  });
});
