import { describe, expect, test } from 'vitest';
import { answersBefore, applyEdit, type PlanEdit } from '../../src/design/plan-edit';
import { newSavedPlan, SavedPlan } from '../../src/design/saved-plan';

const plan = newSavedPlan('11111111-1111-4111-8111-111111111111', 10);
const after = (...edits: PlanEdit[]): SavedPlan => SavedPlan.parse(edits.reduce(applyEdit, plan));
const height = (heightM: number, at: number, pointOut = false): PlanEdit => ({
  kind: 'answer',
  key: 'heightM',
  answer: { heightM },
  at,
  pointOut,
});

describe('an answer', () => {
  test('stands with the time it was given', () => {
    const saved = after(height(8, 20));
    expect(saved.answers).toEqual({ heightM: 8 });
    expect(saved.answeredAt).toEqual({ heightM: 20 });
    expect(saved.updatedAt).toBe(20);
  });

  test('gives way to a later one only', () => {
    expect(after(height(8, 20), height(5, 15)).answers).toEqual({ heightM: 8 });
    expect(after(height(5, 15), height(8, 20)).answers).toEqual({ heightM: 8 });
  });

  test('that was taken back does not return with an earlier edit', () => {
    const takenBack: PlanEdit = { kind: 'answer', key: 'heightM', answer: {}, at: 30 };
    expect(after(height(8, 20), takenBack, height(5, 25)).answers).toEqual({});
  });

  test('given as "not sure" says so until it is given for sure', () => {
    const unsure: PlanEdit = { kind: 'answer', key: 'shackEnd', answer: { shackEnd: 'radio' }, unsure: true, at: 20 };
    expect(after(unsure).unsure.shackEnd?.on).toBe(true);
    expect(after(unsure, { ...unsure, unsure: false, at: 21 }).unsure.shackEnd?.on).toBe(false);
  });
});

describe('a change that is pointed out', () => {
  test('remembers what stood before, through several taps on one question', () => {
    const saved = after(height(8, 20), height(9, 21, true), height(10, 22, true));
    expect(saved.lastEdit).toEqual({ key: 'heightM', before: { heightM: 8 }, at: 22 });
    expect(answersBefore(saved)).toEqual({ heightM: 8 });
  });

  test('is forgotten when the old answer is back, or the change is accepted', () => {
    expect(after(height(8, 20), height(9, 21, true), height(8, 22, true)).lastEdit).toBeUndefined();
    expect(after(height(8, 20), height(9, 21, true), { kind: 'accept-edit', at: 30 }).lastEdit).toBeUndefined();
    expect(answersBefore(after(height(8, 20)))).toBeNull();
  });

  test('remembers that nothing stood there', () => {
    expect(answersBefore(after(height(8, 20, true)))).toEqual({});
  });
});

test('typed text is kept until it is taken away', () => {
  expect(after({ kind: 'typed', field: 'spanM', text: '13 f', at: 1 }).typed).toEqual({
    spanM: { text: '13 f', at: 1 },
  });
  expect(
    after({ kind: 'typed', field: 'spanM', text: '13 f', at: 1 }, { kind: 'typed', field: 'spanM', text: '', at: 2 })
      .typed,
  ).toEqual({});
});

test('ticks, cautions, progress and deletion each follow their latest time', () => {
  const saved = after(
    { kind: 'tick', key: 'shop:wire', on: true, at: 5 },
    { kind: 'tick', key: 'shop:wire', on: false, at: 4 },
    { kind: 'caution-read', key: 'power-lines:1', on: true, at: 5 },
    { kind: 'progress', job: 'cut', step: 'leg', at: 6 },
    { kind: 'progress', job: 'cut', step: 'wire', at: 5 },
    { kind: 'deleted', on: true, at: 7 },
    { kind: 'deleted', on: false, at: 6 },
  );
  expect(saved.ticks['shop:wire']).toEqual({ on: true, at: 5 });
  expect(saved.cautionsRead['power-lines:1']).toEqual({ on: true, at: 5 });
  expect(saved.progress.cut?.step).toBe('leg');
  expect(saved.deleted).toEqual({ on: true, at: 7 });
});

test('a measurement is added, replaced by its id and taken out', () => {
  const measurement = { id: 'm1', at: 5, band: '40m', dipMHz: 6.88 };
  const edits: PlanEdit[] = [
    { kind: 'measured', measurement, at: 5 },
    { kind: 'measured', measurement: { ...measurement, dipMHz: 6.98 }, at: 6 },
  ];
  expect(after(...edits).measurements).toEqual([{ ...measurement, dipMHz: 6.98 }]);
  expect(after(...edits, { kind: 'unmeasured', id: 'm1', at: 7 }).measurements).toEqual([]);
});

test('a note stands by its measurement, goes with it and comes back with it; empty takes it back', () => {
  const first = { id: 'm1', at: 5, band: '40m', dipMHz: 6.88 };
  const second = { id: 'm2', at: 6, band: '40m', dipMHz: 6.98 };
  const note = 'Over the oak fork, drizzle';
  const noted = (text: string): PlanEdit[] => [
    { kind: 'measured', measurement: first, at: 5 },
    { kind: 'measured', measurement: second, at: 6 },
    { kind: 'noted', id: 'm1', note: text, at: 7 },
  ];
  expect(after(...noted(note)).measurements).toEqual([{ ...first, note }, second]);
  expect(after(...noted(note), { kind: 'noted', id: 'm1', note: '', at: 8 }).measurements).toEqual([first, second]);
  const removed: PlanEdit[] = [...noted(note), { kind: 'unmeasured', id: 'm1', at: 8 }];
  // Typed in another tab meanwhile: what was removed stays removed.
  expect(after(...removed, { kind: 'noted', id: 'm1', note: 'Rain', at: 9 }).measurements).toEqual([second]);
  // Back in its place: the wire in use is told by the last.
  expect(after(...removed, { kind: 'measured', measurement: { ...first, note }, at: 9 }).measurements).toEqual([
    { ...first, note },
    second,
  ]);
});
