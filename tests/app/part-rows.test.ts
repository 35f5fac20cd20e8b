import { expect, test } from 'vitest';
import { isTicked, partRows, shelves, tickKey } from '../../src/app/jobs/part-rows';
import type { Answers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

const answers: Answers = { bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio' };
const plan = makePlan(answers);
const rows = partRows(plan);
const saved = newSavedPlan('00000000-0000-4000-8000-000000000000', 1000, answers);

test('nothing is lost or counted twice when like parts come together', () => {
  const total = (list: readonly { quantity: number }[]): number =>
    list.reduce((sum, { quantity }) => sum + quantity, 0);
  expect(total(rows)).toBe(total(plan.parts));
  expect(rows.length).toBeLessThan(plan.parts.length);
});

test('each row has a key of its own that fits a record, and a shelf', () => {
  expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
  for (const row of rows) {
    expect(tickKey('shop', row).length).toBeLessThanOrEqual(200);
    expect(shelves).toContain(row.where);
  }
});

test('a tick outlives a change of length, and the order stays', () => {
  const longer = partRows(makePlan({ ...answers, feedLineLengthM: 22, supportHeightM: 11 }));
  const keys = new Set(longer.map(({ key }) => key));
  const measured = rows.filter(({ unit, item }) => unit === 'metre' && /rope|wire:|coax/.test(item));
  expect(measured.length).toBeGreaterThan(1);
  for (const { key } of measured) expect([key, keys.has(key)]).toEqual([key, true]);
});

test('a row counts as there when enough is on hand, until it is ticked by hand', () => {
  const [first] = rows;
  const owned = { ...first, have: first.quantity };
  expect(isTicked(saved, 'shop', first)).toBe(false);
  expect(isTicked(saved, 'shop', owned)).toBe(true);
  expect(isTicked(saved, 'pack', owned)).toBe(false);
  const off = applyEdit(saved, { kind: 'tick', key: tickKey('shop', owned), on: false, at: 2000 });
  expect(isTicked(off, 'shop', owned)).toBe(false);
});
