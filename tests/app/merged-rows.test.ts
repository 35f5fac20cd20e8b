/** One shopping list for several plans: nothing lost, nothing owned used twice, ticks kept in the plans. */
import { describe, expect, test } from 'vitest';
import { isMergedTicked, type MergedRow, mergedRows, type PlanRows, ticksOf } from '../../src/app/jobs/merged-rows';
import { isTicked, itemText, partRows, tickKey } from '../../src/app/jobs/part-rows';
import type { Answers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan, type SavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';
import { createFormat } from '../../src/words/format';

const endFed: Answers = { bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio' };
const dipole: Answers = { bands: ['20m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };

const listOf = (name: string, answers: Answers, ticks: SavedPlan['ticks'] = {}): PlanRows => ({
  saved: { ...newSavedPlan(`00000000-0000-4000-8000-00000000000${name.length}`, 1000, answers), ticks },
  name,
  rows: partRows(makePlan(answers)),
});

const total = (list: readonly { readonly quantity: number }[]): number =>
  list.reduce((sum, { quantity }) => sum + quantity, 0);
const rowOf = (rows: readonly MergedRow[], item: RegExp): MergedRow => {
  const row = rows.find((each) => item.test(each.item));
  if (row === undefined) throw new Error(`no row ${String(item)}`);
  return row;
};

describe('a merged list', () => {
  test('holds every part of every plan, like parts in one row that says which plan takes how it', () => {
    const lists = [listOf('Pear', endFed), listOf('Meadow', dipole)];
    const rows = mergedRows(lists);
    expect(total(rows)).toBe(lists.reduce((sum, { rows: own }) => sum + total(own), 0));
    expect(rows.length).toBeLessThan(lists.reduce((sum, { rows: own }) => sum + own.length, 0));
    const insulators = rowOf(rows, /^end insulator/);
    expect(insulators.quantity).toBe(4);
    expect(insulators.for).toMatch(/^Pear: .*; Meadow: /);
  });

  test('of one plan is that plan’s own list', () => {
    const list = listOf('Pear', endFed);
    expect(mergedRows([list]).map(({ shares: _of, ...row }) => row)).toEqual(list.rows);
  });

  test('tells a sum of lengths by the sum, in both units', () => {
    const rows = mergedRows([listOf('Pear', endFed), listOf('Meadow', dipole)]);
    const wire = rowOf(rows, /^wire: /);
    expect(itemText(wire, createFormat('metric'))).toMatch(
      new RegExp(`^wire: .*, ${wire.quantity}\\.0\\u00a0m \\(\\d+\\u00a0ft`),
    );
  });

  test('uses a ring on hand once, however many plans would take it', () => {
    const core = partRows(makePlan(dipole)).find(({ item }) => /ring, mix/.test(item));
    expect(core?.owned).toBe(0);
    const owning: Answers = { ...dipole, onHand: [{ part: 'core', core: 'ft240-43', count: 1 }] };
    const alone = rowOf(mergedRows([listOf('Meadow', owning)]), /61 mm ring, mix 43/);
    const both = rowOf(mergedRows([listOf('Meadow', owning), listOf('Hilltop', owning)]), /61 mm ring, mix 43/);
    expect([alone.have, both.have]).toEqual([1, 1]);
    expect(both.quantity).toBe(2 * alone.quantity);
    expect(isMergedTicked(both, 'shop')).toBe(false);
  });

  test('gives a length on hand to a plan whole, or to the next', () => {
    const owning: Answers = {
      ...dipole,
      feedLineLengthM: 15,
      onHand: [{ part: 'line', line: 'rg-58', lengthM: 20 }],
    };
    const both = rowOf(mergedRows([listOf('Meadow', owning), listOf('Hilltop', owning)]), /^5 mm coax/);
    expect(both.shares.map(({ row }) => row.have)).toEqual([both.shares[0]?.row.quantity, 0]);
  });
});

describe('a tick', () => {
  test('is set in every plan the row is for, and counts once all have it', () => {
    const lists = [listOf('Pear', endFed), listOf('Meadow', dipole)];
    const row = rowOf(mergedRows(lists), /^end insulator/);
    expect(isMergedTicked(row, 'shop')).toBe(false);
    const ticks = ticksOf(row, 'shop', true);
    expect(ticks.map(({ planId }) => planId)).toEqual(lists.map(({ saved }) => saved.id));
    const after = lists.map((list) => {
      const tick = ticks.find(({ planId }) => planId === list.saved.id);
      if (tick === undefined) throw new Error('not ticked in every plan');
      return { ...list, saved: applyEdit(list.saved, { kind: 'tick', key: tick.key, on: tick.on, at: 2000 }) };
    });
    expect(isMergedTicked(rowOf(mergedRows(after), /^end insulator/), 'shop')).toBe(true);
    for (const { saved } of after) expect(isTicked(saved, 'shop', row)).toBe(true);
  });

  test('made in one plan alone stays there, and leaves the sum to buy', () => {
    const lone = listOf('Meadow', dipole);
    const [first] = lone.rows;
    if (first === undefined) throw new Error('no rows');
    const ticked = listOf('Meadow', dipole, { [tickKey('shop', first)]: { on: true, at: 2000 } });
    const rows = mergedRows([listOf('Pear', endFed), ticked]);
    const row = rows.find(({ key }) => key === first.key);
    if (row === undefined) throw new Error('the row is gone');
    expect(isMergedTicked(row, 'shop')).toBe(row.shares.length === 1);
    expect(ticksOf(row, 'shop', true).every(({ planId }) => planId !== ticked.saved.id)).toBe(true);
  });
});
