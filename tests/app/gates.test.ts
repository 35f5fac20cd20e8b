import { describe, expect, test } from 'vitest';
import { gatesOf, lineKey, openGates, readAt, unreadLines } from '../../src/app/jobs/gates';
import type { Answers, DraftAnswers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan, type SavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

/** An invented portable antenna. */
const answers: Answers = {
  bands: ['40m', '20m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
  station: 'portable',
  supportHeightM: 8,
};
const plan = makePlan(answers);
const step = (id: string) => {
  const found = plan.steps.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no step ${id}`);
  return found;
};
/** Shortly after everything in these tests. */
const now = 5000;
const fresh = newSavedPlan('00000000-0000-4000-8000-000000000000', 1000, answers);

const readAll = (saved: SavedPlan, at: number): SavedPlan =>
  plan.cautions.reduce(
    (read, gate) =>
      gate.lines.reduce(
        (next, line) => applyEdit(next, { kind: 'caution-read', key: lineKey(gate, line), on: true, at }),
        read,
      ),
    saved,
  );
const answer = (saved: SavedPlan, key: keyof Answers, given: DraftAnswers, at: number): SavedPlan =>
  applyEdit(saved, { kind: 'answer', key, answer: given, at });

test('no gate has more than three lines', () => {
  for (const gate of plan.cautions) expect(gate.lines.length).toBeLessThanOrEqual(3);
});

test('every outdoor step of a fresh plan is behind a gate', () => {
  for (const each of plan.steps.filter(({ outdoor }) => outdoor)) {
    expect([each.id, openGates(fresh, plan, each).length > 0]).toEqual([each.id, true]);
  }
});

test('cutting outdoors waits for the site cautions, power lines among them', () => {
  expect(gatesOf(plan, step('cut-wire')).map(({ id }) => id)).toContain('power-lines');
});

test('packing waits for nothing', () => {
  expect(openGates(fresh, plan, step('pack'))).toEqual([]);
});

test('a gate opens when its last line is read, and a tick taken back closes it again', () => {
  const [gate] = gatesOf(plan, step('walk-site'));
  let saved = fresh;
  for (const line of gate.lines) {
    expect(unreadLines(saved, gate, now)).toContain(line);
    saved = applyEdit(saved, { kind: 'caution-read', key: lineKey(gate, line), on: true, at: 2000 });
  }
  expect(unreadLines(saved, gate, now)).toEqual([]);
  expect(readAt(saved, gate, gate.lines[0], now)).toBe(2000);
  const back = applyEdit(saved, { kind: 'caution-read', key: lineKey(gate, gate.lines[0]), on: false, at: 2001 });
  expect(unreadLines(back, gate, now)).toEqual([gate.lines[0]]);
});

describe('what was read', () => {
  const read = readAll(fresh, 2000);

  test('opens every step', () => {
    for (const each of plan.steps) expect([each.id, openGates(read, plan, each, now)]).toEqual([each.id, []]);
  });

  test.each([
    ['supportHeightM', { supportHeightM: 12 }],
    ['spanM', { spanM: 30 }],
    ['station', { station: 'home' }],
    ['powerW', { powerW: 400 }],
  ] as const)('is asked again when %s changes', (key, given) => {
    const changed = answer(read, key, given, 3000);
    expect(openGates(changed, plan, step('raise'), now).length).toBeGreaterThan(0);
  });

  test('stays read when an answer changes that moves nothing on the site', () => {
    const changed = answer(read, 'name', { name: 'Another name' }, 3000);
    expect(openGates(changed, plan, step('raise'), now)).toEqual([]);
  });

  // Common practice, no source: what was ticked at the table in the evening is asked again in the field.
  test('is asked again on the next day', () => {
    const evening = readAll(fresh, 20 * 3_600_000);
    const open = (hour: number): number => openGates(evening, plan, step('raise'), hour * 3_600_000).length;
    expect(open(22)).toBe(0);
    expect(open(24 + 9)).toBe(gatesOf(plan, step('raise')).length);
  });
});
