/** The field study of open plans: run once, partial results at once, called off when nobody looks. Studies here are invented. */
import { describe, expect, test } from 'vitest';
import type { FieldFacts } from '../../../src/advice/field-facts';
import { createFieldStore, type StartStudy, studyKey } from '../../../src/app/stores/field-store';
import { InputError } from '../../../src/base/input-error';
import type { Answers } from '../../../src/design/answers';

const dipole: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };
const facts = (entryCurrentMa: number): FieldFacts => ({
  bands: { '40m': { feedPoint: { r: 70, x: 0 }, entryCurrentMa } },
});

/** A study that stands still until it is told to go on. */
function byHand(later: (work: () => void) => void = (work) => work()) {
  const started: {
    answers: Answers;
    watch: Parameters<StartStudy>[1];
    finish(found: FieldFacts | null): void;
    break(error: Error): void;
    cancelled: boolean;
  }[] = [];
  const start: StartStudy = (answers, watch) => {
    const study = { answers, watch, finish: (_: FieldFacts | null) => {}, break: (_: Error) => {}, cancelled: false };
    const result = new Promise<FieldFacts | null>((resolve, reject) => {
      study.finish = resolve;
      study.break = reject;
    });
    started.push(study);
    return {
      result,
      cancel() {
        study.cancelled = true;
        study.break(new InputError('cancelled'));
      },
    };
  };
  return { started, store: createFieldStore(async () => start, later) };
}

const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn++) await Promise.resolve();
};

describe('a plan that is open', () => {
  test('is solved once, however many screens look at it and whatever it is called', async () => {
    const { started, store } = byHand();
    store.follow(dipole);
    store.follow({ ...dipole, name: 'invented', units: 'imperial', powerW: 400 });
    await settle();
    expect(started).toHaveLength(1);
    expect(store.stateOf(dipole).kind).toBe('working');
    started[0]?.finish(facts(5));
    await settle();
    expect(store.stateOf(dipole)).toEqual({ kind: 'solved', facts: facts(5) });
    store.follow(dipole);
    await settle();
    expect(started).toHaveLength(1);
  });

  test('shows what is known so far while the rest is on the way', async () => {
    const { started, store } = byHand();
    store.follow(dipole);
    await settle();
    started[0]?.watch.onProgress?.(2, 6);
    started[0]?.watch.onPartial?.(facts(7));
    const state = store.stateOf(dipole);
    expect(state).toMatchObject({ kind: 'working', facts: facts(7) });
    started[0]?.watch.onProgress?.(3, 6);
    expect(store.stateOf(dipole)).toBe(state);
    expect(state.kind === 'working' && state.progress.value).toEqual({ done: 3, of: 6 });
    expect(store.factsOf(dipole)).toEqual(facts(7));
  });

  test('is called off when the last screen closes, and begun anew when one opens again', async () => {
    const { started, store } = byHand();
    const [first, second] = [store.follow(dipole), store.follow(dipole)];
    await settle();
    first();
    expect(started[0]?.cancelled).toBe(false);
    second();
    await settle();
    expect(started[0]?.cancelled).toBe(true);
    expect(store.stateOf(dipole).kind).toBe('idle');
    store.follow(dipole);
    await settle();
    expect(started).toHaveLength(2);
  });

  test('keeps its study from one screen to the next', async () => {
    const put: (() => void)[] = [];
    const { started, store } = byHand((work) => put.push(work));
    store.follow(dipole)();
    await settle();
    store.follow(dipole);
    for (const work of put) work();
    await settle();
    expect(started).toHaveLength(1);
    expect(started[0]?.cancelled).toBe(false);
  });

  test('that is opened again while its study is being called off is solved all the same', async () => {
    const { started, store } = byHand();
    const close = store.follow(dipole);
    await settle();
    close();
    store.follow(dipole);
    await settle();
    expect(started.map(({ cancelled }) => cancelled)).toEqual([true, false]);
    expect(store.stateOf(dipole).kind).toBe('working');
  });

  test('whose study breaks says so and may be tried again', async () => {
    const { started, store } = byHand();
    store.follow(dipole);
    await settle();
    started[0]?.break(new InputError('internal', { detail: 'out of memory' }));
    await settle();
    expect(store.stateOf(dipole).kind).toBe('failed');
    expect(store.factsOf(dipole)).toBeUndefined();
    store.follow(dipole);
    await settle();
    expect(started).toHaveLength(2);
  });

  test('with nothing to solve is not asked for again', async () => {
    const { started, store } = byHand();
    store.follow(dipole);
    await settle();
    started[0]?.finish(null);
    await settle();
    expect(store.stateOf(dipole).kind).toBe('nothing-to-solve');
    store.follow(dipole);
    await settle();
    expect(started).toHaveLength(1);
  });
});

test('what changes the field changes the key, and nothing else does', () => {
  const key = studyKey(dipole);
  for (const beside of [{ name: 'a' }, { powerW: 5 }, { ruleSet: 'us-fcc' }, { nearestPersonM: 3 }] as const)
    expect(studyKey({ ...dipole, ...beside })).toBe(key);
  for (const deciding of [
    { heightM: 9 },
    { bands: ['20m'] },
    { feedLineRoute: 'along' },
    { region: 2 },
    { onHand: [{ part: 'beads', count: 5, line: 'rg-58' }] },
  ] as const)
    expect(studyKey({ ...dipole, ...deciding } as Answers)).not.toBe(key);
});
