import { describe, expect, test } from 'vitest';
import { readSwr } from '../../src/app/fields/read-swr';
import { judgeSwr } from '../../src/app/screens/box-test/judge-swr';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan } from '../../src/design/saved-plan';

describe('what was read with the resistor on', () => {
  // Up to 1.5 good, up to 2 usable: common practice, no source.
  test.each([
    [1.3, 1.1, 'good'],
    [1.5, 1.1, 'good'],
    [1.6, 1.1, 'usable'],
    [2, 1.1, 'usable'],
    [2.1, 1.1, 'bad'],
  ] as const)('%f where %f was expected is %s', (measured, expected, verdict) => {
    expect(judgeSwr(measured, 1.5, expected)).toBe(verdict);
  });

  test('is good as far as the design itself expects it', () => {
    expect(judgeSwr(2.2, 1.5, 2.1)).toBe('good');
    expect(judgeSwr(2.4, 1.5, 2.1)).toBe('bad');
  });

  test('is typed with a point, a comma or as a ratio; below 1 it is none', () => {
    expect(['1.3', '1,3', '1.3:1'].map(readSwr)).toEqual([1.3, 1.3, 1.3]);
    expect(readSwr('')).toBeUndefined();
    expect(['0.9', 'good', '-2'].map(readSwr)).toEqual([null, null, null]);
  });

  test('is kept with the plan; the later of two tabs wins, and it can be taken back', () => {
    const plan = newSavedPlan('id', 0);
    const noted = applyEdit(plan, { kind: 'reading', key: 'box', value: 1.3, at: 5 });
    expect(noted.readings).toEqual({ box: { value: 1.3, at: 5 } });
    expect(applyEdit(noted, { kind: 'reading', key: 'box', value: 9, at: 4 })).toBe(noted);
    expect(applyEdit(noted, { kind: 'reading', key: 'box', value: null, at: 6 }).readings.box?.value).toBeNull();
  });
});
