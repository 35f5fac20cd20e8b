import { describe, expect, test } from 'vitest';
import { readSwr } from '../../src/app/fields/read-swr';
import { woundDevices } from '../../src/app/jobs/windings';
import {
  boxBuild,
  boxReadingKey,
  boxReadings,
  buildInHand,
  partsOfBuild,
} from '../../src/app/screens/box-test/box-readings';
import { judgeSwr } from '../../src/app/screens/box-test/judge-swr';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';
import { boxTest } from '../../src/words/en/box-test-screen';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';

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

describe('the box that was read', () => {
  const boxAt = (powerW: number) =>
    woundDevices(
      makePlan({ bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio', powerW }),
    ).find(({ item }) => item.device === 'transformer')!;
  const [little, much] = [boxAt(10), boxAt(1000)];
  const key = boxReadingKey(little.id, boxBuild(little), '40m');
  const noted = applyEdit(newSavedPlan('id', 0), { kind: 'reading', key, value: 1.4, at: 5 });

  test('is another one when more power asks for other rings or turns, and the reading stays with the first', () => {
    expect(boxBuild(much)).not.toBe(boxBuild(little));
    const [reading] = boxReadings(noted, much.id);
    expect(reading).toEqual({ band: '40m', build: boxBuild(little), value: 1.4, at: 5 });
    expect(noted.readings[boxReadingKey(much.id, boxBuild(much), '40m')]).toBeUndefined();
    expect(boxReadings(noted, 'transformer-feed')).toEqual([]);
  });

  test('is the last one read while the plan may still move, then the one of the plan', () => {
    const read = boxReadings(noted, much.id);
    expect(buildInHand(boxBuild(much), false, read)).toBe(boxBuild(little));
    expect(buildInHand(boxBuild(much), true, read)).toBe(boxBuild(much));
    expect(buildInHand(boxBuild(much), false, [])).toBe(boxBuild(much));
  });

  test('is told by its turns and rings; of a reading kept without them only that it is of an earlier box', () => {
    const told = (build: string): string =>
      render(boxTest.earlier, { ...partsOfBuild(build), swr: '1.4', time: '13:05' }, createFormat('metric')).replaceAll(
        '\u00a0',
        ' ',
      );
    expect(told('ft240-43:2:21/3')).toMatch(
      /^1\.4:1 is of the earlier box \(21 turns, 2 stacked, each a 61 mm ring, mix 43/,
    );
    expect(told('ft140-43:1:9*2+9')).toContain('(18 turns, one 36 mm ring');
    expect(told('')).toBe('1.4:1 is of the earlier box. Noted 13:05. It says nothing of this one.');
    const old = { ...newSavedPlan('id', 0), readings: { 'box transformer-feed-point 40m': { value: 1.3, at: 2 } } };
    const read = boxReadings(old, 'transformer-feed-point');
    expect(read).toEqual([{ band: '40m', build: '', value: 1.3, at: 2 }]);
    expect(buildInHand('ft240-43:2:21/3', false, read)).toBe('ft240-43:2:21/3');
  });

  test('shows no reading that was taken back', () => {
    expect(boxReadings(applyEdit(noted, { kind: 'reading', key, value: null, at: 6 }), little.id)).toEqual([]);
  });
});
