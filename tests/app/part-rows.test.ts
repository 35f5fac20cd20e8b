import { describe, expect, test } from 'vitest';
import { packRows } from '../../src/app/jobs/pack-rows';
import { isBought, isPacked, partRows, shelves, tickKey, usesText } from '../../src/app/jobs/part-rows';
import { sayIn } from '../../src/app/say';
import type { Answers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

const answers: Answers = {
  bands: ['40m', '20m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
  station: 'portable',
};
const plan = makePlan(answers);
const rows = partRows(plan);
const saved = newSavedPlan('00000000-0000-4000-8000-000000000000', 1000, answers);

const total = (list: readonly { readonly quantity: number }[]): number =>
  list.reduce((sum, { quantity }) => sum + quantity, 0);

describe('rows to shop by', () => {
  test('nothing is lost or counted twice when like parts come together', () => {
    expect(total(rows)).toBe(total(plan.parts));
    expect(rows.length).toBeLessThan(plan.parts.length);
  });

  test('each row has a key of its own that fits a record, and a shelf', () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const row of rows) {
      expect(tickKey('shop', row).length).toBeLessThanOrEqual(200);
      expect(shelves).toContain(row.where);
    }
  });

  test('keys are of codes: neither a change of length nor one of units or wording touches them', () => {
    const longer = partRows(makePlan({ ...answers, feedLineLengthM: 22, supportHeightM: 11, units: 'imperial' }));
    const ids = new Set(longer.map(({ id }) => id));
    for (const { id } of rows) {
      expect([id, ids.has(id)]).toEqual([id, true]);
      expect(id).toMatch(/^[a-z-]+( [a-z0-9.-]+)*$/);
    }
    expect(ids).toContain('wire pvc-1.5mm2');
    expect(ids).toContain('throw-line');
  });

  test('what a row is for is short: devices by name and number, no place', () => {
    const uses = rows.map((row) => usesText(row, sayIn('metric')));
    expect(uses).toContain('49:1 transformer, 2\u00a0×\u00a01:1 choke');
    for (const text of uses) expect(text).not.toMatch(/feed point|\u00a0m/);
  });

  test('a row counts as there when enough is on hand, until it is ticked by hand', () => {
    const [first] = rows;
    const owned = { ...first, have: first.quantity };
    expect(isBought(saved, first)).toBe(false);
    expect(isBought(saved, owned)).toBe(true);
    expect(isPacked(saved, 'pack', owned)).toBe(false);
    const off = applyEdit(saved, { kind: 'tick', key: tickKey('shop', owned), on: false, at: 2000 });
    expect(isBought(off, owned)).toBe(false);
  });
});

describe('rows to pack by', () => {
  const packed = packRows(plan);

  test('hold boxes as they were made, not what is inside them', () => {
    const names = packed.map(({ name, quantity }) => `${quantity} ${name}`);
    expect(names).toEqual(
      expect.arrayContaining(['1 49:1 transformer', '2 1:1 choke', expect.stringMatching(/^2 end insulator/)]),
    );
    expect(packed.map(({ id }) => id.split(' ')[0])).not.toContain('ring');
    expect(names.some((name) => name.includes('capacitor'))).toBe(false);
  });

  test('name what guards head and eyes only where a line is thrown', () => {
    const ids = (given: Answers): string[] => packRows(makePlan(given)).map(({ id }) => id);
    expect(ids(answers)).toContain('tool headgear');
    expect(ids({ ...answers, indoors: true })).not.toContain('tool headgear');
    expect(ids({ ...answers, indoors: true })).toContain('tool gloves');
  });

  test('there and back are ticked apart', () => {
    const [wire] = packed;
    const there = applyEdit(saved, { kind: 'tick', key: tickKey('pack', wire), on: true, at: 2000 });
    expect([isPacked(there, 'pack', wire), isPacked(there, 'leave', wire)]).toEqual([true, false]);
  });
});
