/** Ticks of version 2 were kept by words: each part that it could name is known by its id since, and nothing ticked is lost. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { newSavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';
import { readSavedPlan } from '../../src/storage/plan-history';
import { ticksById } from '../../src/storage/ticks-by-words';

/** What version 2 wrote behind the name of the list, and the id of the same part. */
const kept = readFileSync('tests/fixtures/saved-plans/ticks-of-version-2.txt', 'utf8')
  .trimEnd()
  .split('\n')
  .map((line) => line.split('\t') as [words: string, id: string]);

describe('ticks by words', () => {
  test.each(kept)('%s', (words, id) => {
    for (const list of ['shop', 'pack'])
      expect(ticksById({ [`${list}:${words}`]: { at: 1 } })).toEqual({ [`${list}:${id}`]: { at: 1 } });
  });

  test('the kept words are those of the parts of today’s plans', () => {
    const ids = new Set(kept.map(([, id]) => id));
    const { parts } = makePlan({ bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio' });
    for (const { id } of parts) expect([id, ids.has(id)]).toEqual([id, true]);
  });

  test('of two that are one part now, the later counts', () => {
    const weight = (kg: number): string =>
      `shop:hardware weight of ${kg} kg with a pulley, for an end tied to a tree piece`;
    expect(ticksById({ [weight(1)]: { at: 5 }, [weight(2)]: { at: 4 } })).toEqual({ 'shop:end-weight': { at: 5 } });
  });

  test('other ticks and unknown words stay as they are', () => {
    const ticks = {
      'raise:walk-site': { at: 1 },
      'with:1234': { at: 2 },
      'shop:hardware a thing of ours piece': { at: 3 },
    };
    expect(ticksById(ticks)).toEqual(ticks);
  });

  test('a record of version 2 comes out of storage with its ticks', () => {
    const old = { ...newSavedPlan('00000000-0000-4000-8000-000000000000', 1000), version: 2 };
    const ticks = Object.fromEntries(kept.map(([words], at) => [`shop:${words}`, { on: true, at }]));
    const read = readSavedPlan({ ...old, ticks });
    if (read.kind !== 'good') throw new Error('not read');
    expect(Object.keys(read.record.ticks).sort()).toEqual([...new Set(kept.map(([, id]) => `shop:${id}`))].sort());
  });
});
