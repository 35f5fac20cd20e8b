/** One shopping list for several plans: nothing lost, nothing owned used twice, ticks kept in the plans. */
import { describe, expect, test } from 'vitest';
import {
  isMergedBought,
  type MergedRow,
  mergedRows,
  type PlanRows,
  sharesText,
  ticksOf,
} from '../../src/app/jobs/merged-rows';
import { isBought, partRows, tickKey } from '../../src/app/jobs/part-rows';
import { sayIn } from '../../src/app/say';
import type { Answers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan, type SavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

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
  const row = rows.find((each) => item.test(each.name));
  if (row === undefined) throw new Error(`no row ${String(item)}`);
  return row;
};

describe('a merged list', () => {
  test('holds every part of every plan, like parts in one row that says which plan takes how it', () => {
    const lists = [listOf('Pear', endFed), listOf('Meadow', dipole)];
    const rows = mergedRows(lists);
    const once = rows.filter(({ again }) => !again);
    expect(total(once)).toBe(lists.reduce((sum, { rows: own }) => sum + total(own.filter(({ again }) => !again)), 0));
    expect(rows.length).toBeLessThan(lists.reduce((sum, { rows: own }) => sum + own.length, 0));
    const insulators = rowOf(rows, /^end insulator/);
    expect(insulators.quantity).toBe(4);
    const say = sayIn('metric');
    expect(sharesText(insulators, true, say)).toBe('Pear, 2; Meadow, 2');
    expect(sharesText(rowOf(rows, /^PVC wire/), true, say)).toMatch(/^Pear, \d.*\u00a0ft.*\); Meadow, \d.*\u00a0ft/);
    expect(sharesText(rowOf(rows, /^capacitor/), true, say)).toBe('Pear: 49:1 transformer');
  });

  // Common practice, no source: a thrown line comes down again before the antenna is used, and a roll of tape does for many.
  test('counts what is used again once, as much as the plan asks that asks most', () => {
    const lists = [listOf('Pear', endFed), listOf('Hilltop', { ...endFed, supportHeightM: 12 })];
    const quantities = lists.map(({ rows }) => rows.find(({ id }) => id === 'throw-line')?.quantity ?? 0);
    const rows = mergedRows(lists);
    const line = rowOf(rows, /^throw line/);
    expect(quantities[0]).toBeLessThan(quantities[1] ?? 0);
    expect(line.quantity).toBe(quantities[1]);
    expect([rowOf(rows, /^throw weight/).quantity, rowOf(rows, /^bright tape/).quantity]).toEqual([1, 1]);
    expect(rowOf(rows, /^weight /).quantity).toBe(2); // stays in the tree with its antenna
    expect(ticksOf(line, true).map(({ planId }) => planId)).toEqual(lists.map(({ saved }) => saved.id));
  });

  test('of one plan is that plan’s own list', () => {
    const list = listOf('Pear', endFed);
    expect(mergedRows([list]).map(({ shares: _of, ...row }) => row)).toEqual(list.rows);
  });

  test('uses a ring on hand once, however many plans would take it', () => {
    const core = partRows(makePlan(dipole)).find(({ name }) => /ring, mix/.test(name));
    expect(core?.owned).toBe(0);
    const owning: Answers = { ...dipole, onHand: [{ part: 'core', core: 'ft240-43', count: 1 }] };
    const alone = rowOf(mergedRows([listOf('Meadow', owning)]), /61 mm ring, mix 43/);
    const both = rowOf(mergedRows([listOf('Meadow', owning), listOf('Hilltop', owning)]), /61 mm ring, mix 43/);
    expect([alone.have, both.have]).toEqual([1, 1]);
    expect(both.quantity).toBe(2 * alone.quantity);
    expect(isMergedBought(both)).toBe(false);
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
    expect(isMergedBought(row)).toBe(false);
    const ticks = ticksOf(row, true);
    expect(ticks.map(({ planId }) => planId)).toEqual(lists.map(({ saved }) => saved.id));
    const after = lists.map((list) => {
      const tick = ticks.find(({ planId }) => planId === list.saved.id);
      if (tick === undefined) throw new Error('not ticked in every plan');
      return { ...list, saved: applyEdit(list.saved, { kind: 'tick', key: tick.key, on: tick.on, at: 2000 }) };
    });
    expect(isMergedBought(rowOf(mergedRows(after), /^end insulator/))).toBe(true);
    for (const { saved } of after) expect(isBought(saved, row)).toBe(true);
  });

  test('made in one plan alone stays there, and leaves the sum to buy', () => {
    const lone = listOf('Meadow', dipole);
    const [first] = lone.rows;
    if (first === undefined) throw new Error('no rows');
    const ticked = listOf('Meadow', dipole, { [tickKey('shop', first)]: { on: true, at: 2000 } });
    const rows = mergedRows([listOf('Pear', endFed), ticked]);
    const row = rows.find(({ id }) => id === first.id);
    if (row === undefined) throw new Error('the row is gone');
    expect(isMergedBought(row)).toBe(row.shares.length === 1);
    expect(ticksOf(row, true).every(({ planId }) => planId !== ticked.saved.id)).toBe(true);
  });
});
