/** Devices in the plan: built, reckoned into the loss, and in words, for any answers. Invented antennas. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createDesigner } from '../../src/advice/chain/design-parts';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { Plan } from '../../src/plan/plan-schema';
import { everyCombination } from '../advice/combinations';

const designer = createDesigner();
const planOf = (answers: Answers): Plan => makePlan(answers, { designer });
const endFed: Answers = {
  bands: ['40m', '20m', '10m'],
  radiator: 'straight-wire',
  fedAt: 'end',
  shackEnd: 'radio-tuner',
  heightM: 10,
  powerW: 100,
  mode: 'voice',
};

test('every device that is wound has a build, figures on every wanted band, and other rings to choose from', () => {
  const plan = planOf(endFed);
  const wound = plan.chain.filter(({ device }) => device === 'transformer' || device === 'choke');
  expect(wound.length).toBeGreaterThan(2);
  for (const { build, figures, alternatives } of wound) {
    expect(build?.text).toMatch(/turns/);
    expect(figures?.bands.map(({ band }) => band)).toEqual(endFed.bands);
    expect(figures?.notes.length).toBeGreaterThan(2);
    expect(alternatives.filter(({ id }) => id.startsWith('mix-')).length).toBeGreaterThan(3);
  }
  for (const { device, build, figures, alternatives } of plan.chain) {
    if (device === 'transformer' || device === 'choke') continue;
    expect([build, figures, alternatives]).toEqual([null, null, []]);
  }
});

test('the loss of a band is that of its transformer and its chokes, and the SWR is that of the transformer as built', () => {
  const plan = planOf(endFed);
  for (const band of plan.bands) {
    const losses = plan.chain.flatMap(({ figures }) => figures?.bands.filter((each) => each.band === band.band) ?? []);
    const sum = losses.reduce((total, { lossDb }) => total + lossDb, 0);
    expect(band.deviceLossDb).toBeCloseTo(sum, 2);
    expect(band.swrAtFeedPoint).toBeCloseTo(losses.find(({ swr }) => swr !== null)?.swr ?? 0, 2);
  }
});

test('a core that gets too hot is warned of with the power that it stands, and at that power there is no warning', () => {
  const hot = planOf({ ...endFed, powerW: 1500, mode: 'data' });
  const transformer = hot.chain.find(({ device }) => device === 'transformer');
  expect(transformer?.figures?.isEnough).toBe(false);
  expect(hot.warnings.filter(({ id }) => id === 'core-heat').length).toBeGreaterThan(0);
  const mild = planOf({ ...endFed, powerW: 20, mode: 'voice' });
  expect(mild.warnings.filter(({ id }) => id === 'core-heat')).toEqual([]);
});

test('rings on hand are used and are not bought', () => {
  const plan = planOf({
    ...endFed,
    onHand: [
      { part: 'core', core: 'ft240-52', count: 2 },
      { part: 'core', core: 'ft240-31', count: 2 },
    ],
  });
  expect(plan.chain.find(({ device }) => device === 'transformer')?.build?.core).toBe('ft240-52');
  const rings = plan.parts.filter(({ item }) => item.includes('ring, mix'));
  // Two of mix 52 and two of mix 31, each asked for by some device.
  expect(rings.reduce((sum, { have }) => sum + have, 0)).toBe(4);
  expect(plan.verdicts.map(({ verdict }) => verdict)).toEqual(['fits', 'fits']);
});

test('any answers give a plan of finite numbers and whole sentences', () => {
  const all = everyCombination();
  const random = fc.record({
    index: fc.nat({ max: all.length - 1 }),
    powerW: fc.double({ min: 0.1, max: 3000, noNaN: true }),
    heightM: fc.double({ min: 0.2, max: 40, noNaN: true }),
    feedLineLengthM: fc.double({ min: 0.5, max: 100, noNaN: true }),
    transmitShare: fc.constantFrom(0, 0.3, 1),
    mode: fc.constantFrom('voice', 'cw', 'data', 'fm', 'am'),
    focus: fc.constantFrom<Answers['focusMHz']>({}, { '10m': 28_500 }, { '80m': 0.4 }),
  });
  fc.assert(
    fc.property(random, ({ index, focus, ...given }) => {
      const plan = planOf({ ...(all[index] as Answers), ...given, focusMHz: focus ?? {} });
      const read = Plan.safeParse(plan);
      expect(read.success, read.error?.message).toBe(true);
      expect(JSON.stringify(plan.chain)).not.toMatch(/undefined|NaN|Infinity/);
    }),
    { numRuns: 60 },
  );
}, 60_000);
