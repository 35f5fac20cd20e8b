/** Plans as the page holds them: asked for once, kept in sight while a new one is made, refused until asked again. Makers here are invented. */
import { effect, signal } from '@preact/signals';
import { expect, test } from 'vitest';
import type { FieldFacts } from '../../../src/advice/field-facts';
import { createPlanner, type MakePlan } from '../../../src/app/stores/planner';
import type { Answers } from '../../../src/design/answers';
import { makePlan } from '../../../src/plan/make-plan';

const dipole: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };
const facts = (entryCurrentMa: number): FieldFacts => ({
  bands: { '40m': { feedPoint: { r: 70, x: 0 }, entryCurrentMa } },
});

/** A maker that answers when it is told to. */
function byHand() {
  const asked: { answers: Answers; field: FieldFacts | undefined; answer(): void; refuse(error: Error): void }[] = [];
  const make: MakePlan = (answers, field) =>
    new Promise((resolve, reject) => {
      const answer = (): void => resolve(makePlan(answers, field === undefined ? {} : { field }));
      asked.push({ answers, field, answer, refuse: reject });
    });
  return { asked, make };
}

const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn++) await Promise.resolve();
};

test('a plan is asked for once, however often it is looked at, and who looks hears when it is there', async () => {
  const { asked, make } = byHand();
  const planner = createPlanner(async () => make);
  const seen: (string | undefined)[] = [];
  effect(() => {
    seen.push(planner.planOf(dipole)?.summary);
  });
  await planner.fetch();
  planner.planOf({ ...dipole });
  expect(asked).toHaveLength(1);
  asked[0]?.answer();
  await settle();
  expect(seen.at(0)).toBeUndefined();
  expect(seen.at(-1)).toBe(makePlan(dipole).summary);
  expect(asked).toHaveLength(1);
});

test('who looks at one plan hears nothing of another', async () => {
  const { asked, make } = byHand();
  const planner = createPlanner(async () => make);
  await planner.fetch();
  let looks = 0;
  effect(() => {
    planner.planOf(dipole);
    looks++;
  });
  planner.planOf({ ...dipole, bands: ['20m'] });
  asked[1]?.answer();
  await settle();
  expect(looks).toBe(1);
});

test('the old plan stays while solved numbers are put in, and numbers that arrive meanwhile are taken along', async () => {
  const { asked, make } = byHand();
  const field = signal<FieldFacts | undefined>(undefined);
  const planner = createPlanner(
    async () => make,
    () => field.value,
  );
  await planner.fetch();
  let entryMa: number | null | undefined;
  effect(() => {
    entryMa = planner.planOf(dipole)?.bands[0]?.entryCurrentMa;
  });
  asked[0]?.answer();
  await settle();
  expect(entryMa).toBeNull();
  field.value = facts(5);
  field.value = facts(6);
  field.value = facts(7);
  expect(asked.map((one) => one.field)).toEqual([undefined, facts(5)]);
  expect(entryMa).toBeNull();
  expect(planner.isUpToDate(dipole)).toBe(false);
  asked[1]?.answer();
  await settle();
  expect(entryMa).toBe(5);
  expect(asked[2]?.field).toEqual(facts(7));
  asked[2]?.answer();
  await settle();
  expect(entryMa).toBe(7);
  expect(planner.isUpToDate(dipole)).toBe(true);
  expect(asked).toHaveLength(3);
});

test('a plan that cannot be made is said so, and asked for again only when a screen asks', async () => {
  const { asked, make } = byHand();
  const planner = createPlanner(async () => make);
  await planner.fetch();
  const looking = effect(() => {
    planner.planOf(dipole);
  });
  asked[0]?.refuse(new Error('the worker broke'));
  await settle();
  expect(planner.failed.value).toContain('the worker broke');
  expect(planner.planOf(dipole)).toBeNull();
  expect(asked).toHaveLength(1);
  looking();
  await planner.fetch();
  expect(planner.failed.value).toBeNull();
  planner.planOf(dipole);
  asked[1]?.answer();
  await settle();
  expect(planner.planOf(dipole)?.summary).toBe(makePlan(dipole).summary);
});

test('a maker that cannot be had is said so, and asked for again', async () => {
  let tries = 0;
  const { make } = byHand();
  const planner = createPlanner(async () => {
    if (tries++ === 0) throw new Error('no signal');
    return make;
  });
  await planner.fetch();
  expect(planner.failed.value).toContain('no signal');
  await planner.fetch();
  expect(planner.failed.value).toBeNull();
});

test('who can wait gets the plan, or null where none can be made', async () => {
  const planner = createPlanner(async () => async (answers) => {
    if (answers.bands.includes('20m')) throw new Error('a fault of the rules');
    return makePlan(answers);
  });
  expect((await planner.planFor(dipole))?.system).toBe('centre-fed-half-wave');
  expect(await planner.planFor({ ...dipole, bands: ['20m'] })).toBeNull();
});
