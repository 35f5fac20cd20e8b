/** What the list of plans tells of each, and which job its card goes on with. */
import { expect, test } from 'vitest';
import { windingJob, woundDevices } from '../../src/app/jobs/windings';
import { sayIn } from '../../src/app/say';
import { begunJob, stateOf } from '../../src/app/screens/plans/plan-line';
import type { Answers } from '../../src/design/answers';
import { newSavedPlan, type SavedPlan } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';

/** An invented antenna. */
const orchard: Answers = {
  units: 'metric',
  bands: ['40m', '20m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
};
const plan = makePlan(orchard);
const bare = newSavedPlan('11111111-1111-4111-8111-111111111111', 1, orchard);
const say = sayIn('metric');
const line = (more: Partial<SavedPlan>, made: typeof plan | null = plan): string =>
  stateOf({ ...bare, ...more }, orchard, made, say).replaceAll('\u00a0', ' ');

test('cutting and raising are told by piece and step, and as begun until the plan is there', () => {
  const { piece } = plan.cuts[1] ?? {};
  const progress = { cut: { step: String(piece), at: 2 } };
  expect(line({ progress })).toBe(`Cutting, piece 2 of ${plan.cuts.length}`);
  expect(line({ progress }, null)).toBe('Cutting begun');
  expect(line({ progress: { cut: { step: 'done', at: 2 } } })).toBe('All pieces cut');
  const { id } = plan.steps[2] ?? {};
  expect(line({ progress: { raise: { step: String(id), at: 2 } } })).toBe(`Raising, step 3 of ${plan.steps.length}`);
});

test('a begun winding is told by its turns and leads back to its device; taken back to no turn it is none', () => {
  const devices = woundDevices(makePlan({ ...orchard, bands: ['40m', '20m', '10m'] }));
  // A choke in two parts and a tapped transformer, each with a code of its own.
  expect(devices.map(({ windings }) => windings.some(({ tapAt }) => tapAt !== null))).toContain(true);
  expect(devices.map(({ windings }) => windings.length)).toContain(2);
  for (const wound of devices) {
    const turns = wound.windings.reduce((sum, each) => sum + each.turns, 0);
    const counted = (step: string) => ({ cut: { step: 'done', at: 1 }, [windingJob(wound)]: { step, at: 2 } });
    expect(line({ progress: counted('2') })).toBe(`Winding, turn 2 of ${turns}`);
    expect(begunJob({ ...bare, progress: counted('2') })).toMatchObject({ job: 'wind', device: wound.id });
    expect(line({ progress: counted(String(turns)) })).toBe(`Wound: ${turns} turns`);
    expect(begunJob({ ...bare, progress: counted('0') })).toMatchObject({ job: 'cut' });
  }
});

test('a measured dip is told until another job is gone on with', () => {
  const measurements = [{ id: 'a', at: 5, band: '40m', dipMHz: 7.1 }];
  const before = { cut: { step: 'done', at: 4 }, trim: { step: 'measure', at: 5 } };
  expect(line({ measurements, progress: before })).toBe('Measured. Dip at 7.1 MHz');
  expect(line({ measurements, progress: { ...before, cut: { step: 'done', at: 6 } } })).toBe('All pieces cut');
});
