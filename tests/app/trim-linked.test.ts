/** Trimming a wire with links: each band by its own piece, the highest first. */
import { describe, expect, test } from 'vitest';
import {
  dipNow,
  movedWith,
  nextToTrim,
  ownWireText,
  readField,
  untrimmedInside,
  wireAsReadM,
  wireField,
  wireInUseM,
} from '../../src/app/screens/trim/trim-state';
import { trimTargets } from '../../src/app/screens/trim/trim-targets';
import type { Answers } from '../../src/design/answers';
import { applyEdit } from '../../src/design/plan-edit';
import { newSavedPlan, type SavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

const linked: Answers = { bands: ['40m', '20m', '15m'], radiator: 'linked-wire', fedAt: 'centre', shackEnd: 'radio' };
const plan = makePlan(linked);
const targets = trimTargets(linked, plan);
const [fifteen, twenty, forty] = targets;
const saved = newSavedPlan('00000000-0000-4000-8000-000000000000', 1000, linked);

const typed = (before: SavedPlan, field: string, metres: number, at: number): SavedPlan =>
  applyEdit(before, { kind: 'typed', at, field, text: metres.toFixed(3) });
const measured = (before: SavedPlan, band: Answers['bands'][number], dipMHz: number, wireM: number, at: number) =>
  applyEdit(before, { kind: 'measured', at, measurement: { id: `${band}${at}`, at, band, dipMHz, wireM } });

describe('what is trimmed', () => {
  test('a dip for each band, the highest first, each folded at its own link but the last', () => {
    expect(targets.map(({ band, atLink, ends, inner }) => [band, atLink, ends, inner.length])).toEqual([
      ['15m', true, 2, 0],
      ['20m', true, 2, 1],
      ['40m', false, 2, 2],
    ]);
  });

  test('the wire in use is that of the cut list, both legs', () => {
    const legsM = plan.cuts.flatMap(({ legM }) => (legM === null ? [] : [2 * legM]));
    for (const [index, target] of targets.entries())
      expect(wireInUseM(saved, target, targets)).toBeCloseTo(legsM[index] ?? 0, 9);
  });
});

describe('what a step does', () => {
  test('a piece that is folded shortens every lower band by as much, and no higher one', () => {
    const before = targets.map((each) => wireInUseM(saved, each, targets));
    const text = ownWireText(saved, twenty, targets, (before[1] ?? 0) - 0.2);
    const folded = applyEdit(saved, { kind: 'typed', at: 2000, field: wireField(twenty), text: text ?? '' });
    const after = targets.map((each) => wireInUseM(folded, each, targets));
    expect(after.map((metres, index) => (before[index] ?? 0) - metres)).toEqual([
      0,
      expect.closeTo(0.2, 2),
      expect.closeTo(0.2, 2),
    ]);
    expect(movedWith(twenty, targets).map(({ band }) => band)).toEqual(['20m', '40m']);
  });

  test('the dip of a lower band follows, by proportion, until it is measured again', () => {
    const wholeM = wireInUseM(saved, forty, targets);
    const read = measured(saved, '40m', 7.0, wholeM, 2000);
    expect(dipNow(read, forty, targets)).toEqual({ megahertz: 7, measured: true });
    const folded = typed(read, wireField(fifteen), fifteen.plannedM - 0.3, 3000);
    const now = dipNow(folded, forty, targets);
    expect(now?.measured).toBe(false);
    expect(now?.megahertz).toBeCloseTo((7 * wholeM) / (wholeM - 0.3), 3);
  });

  test('no length is left for a piece when the whole is told shorter than what lies inside it', () => {
    expect(ownWireText(saved, forty, targets, 5)).toBeNull();
  });

  test('undo brings back the piece as it was read, not the whole when one inside has changed since', () => {
    const wholeM = wireInUseM(saved, forty, targets);
    const read = typed(measured(saved, '40m', 7.0, wholeM, 2000), readField(forty), forty.plannedM, 2000);
    const inside = typed(read, wireField(fifteen), fifteen.plannedM - 0.3, 3000);
    expect(wireAsReadM(inside, forty, targets)).toBeCloseTo(wireInUseM(inside, forty, targets), 9);
    const folded = typed(inside, wireField(forty), forty.plannedM - 0.1, 4000);
    expect(wireAsReadM(folded, forty, targets)).toBeCloseTo(wireInUseM(folded, forty, targets) + 0.1, 3);
  });
});

describe('in which order', () => {
  const wholeOf = (target: typeof fifteen): number => wireInUseM(saved, target, targets);

  test('the highest that is not trimmed comes first', () => {
    expect(untrimmedInside(saved, fifteen, targets)).toBeNull();
    expect(untrimmedInside(saved, forty, targets)?.band).toBe('15m');
    const far = measured(saved, '15m', 0.95 * fifteen.aimMHz, wholeOf(fifteen), 2000);
    expect(untrimmedInside(far, forty, targets)?.band).toBe('15m');
    const good = measured(saved, '15m', fifteen.aimMHz, wholeOf(fifteen), 2000);
    expect(untrimmedInside(good, forty, targets)?.band).toBe('20m');
    expect(untrimmedInside(good, twenty, targets)).toBeNull();
  });

  test('from a band that is trimmed it goes on to the next that is not, and from the last to none', () => {
    const good = measured(saved, '15m', fifteen.aimMHz, wholeOf(fifteen), 2000);
    expect(nextToTrim(good, fifteen, targets)?.band).toBe('20m');
    const both = measured(good, '20m', twenty.aimMHz, wholeOf(twenty), 3000);
    expect(nextToTrim(both, fifteen, targets)?.band).toBe('40m');
    expect(nextToTrim(both, forty, targets)).toBeNull();
  });

  test('bands on one wire are trimmed together: none is next', () => {
    const endFed: Answers = { ...linked, radiator: 'inverted-v', fedAt: 'end' };
    const [first] = trimTargets(endFed, makePlan(endFed));
    expect(nextToTrim(newSavedPlan(saved.id, 1000, endFed), first, trimTargets(endFed, makePlan(endFed)))).toBeNull();
  });
});
