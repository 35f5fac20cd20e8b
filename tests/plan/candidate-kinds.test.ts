/** How the antennas to choose from are hung on what supports there are. Heights by plane geometry. */
import { expect, test } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { candidateAnswers } from '../../src/plan/candidate-kinds';
import { makePlan } from '../../src/plan/make-plan';

const site: Answers = { bands: ['20m'], shackEnd: 'radio', supportHeightM: 12 };

const one = (answers: Answers, radiator: Answers['radiator']): Answers => {
  const found = candidateAnswers(answers).find((each) => each.radiator === radiator);
  if (found === undefined) throw new Error(`no ${radiator}`);
  return found;
};

test('a wire hangs at the top, with coax longer by what that is above the usual 8 m', () => {
  expect(one(site, 'straight-wire')).toMatchObject({ heightM: 12, feedLineLengthM: 19 });
  expect(one({ ...site, feedLineLengthM: 30 }, 'straight-wire').feedLineLengthM).toBe(30);
});

test('a sloper is fed half-way between the top and its low end, and reaches no higher than the top', () => {
  const sloper = one(site, 'sloper');
  expect(sloper.heightM).toBe(7.5);
  expect(7.5 + (makePlan(sloper).riseM ?? 0) / 2).toBeLessThanOrEqual(12.01);
});

test('a loop for 20 m, 5.4 m high, stands upright under 12 m; one for 80 m, 20 m high, lies flat', () => {
  // 1005 ft MHz, the common rule of print: 21.6 m round at 14.17 MHz, 5.4 m to a side.
  const upright = one(site, 'loop');
  expect(upright.loopPlane).toBeUndefined();
  expect(upright.heightM).toBeGreaterThan(6.4);
  expect(upright.heightM).toBeLessThan(6.8);
  expect(one({ ...site, bands: ['80m'] }, 'loop')).toMatchObject({ loopPlane: 'flat', heightM: 12 });
});

test('what stands on the ground stays there, and a height that was told stays as told', () => {
  expect(one(site, 'vertical').heightM).toBeUndefined();
  expect(one(site, 'inverted-l').heightM).toBeUndefined();
  for (const each of candidateAnswers({ ...site, heightM: 5 })) expect(each.heightM).toBe(5);
});

test('a length that was told of another antenna goes; parallel dipoles and links ask for two bands', () => {
  for (const each of candidateAnswers({ ...site, wireLengthM: 31, lengthChoice: 'fixed' })) {
    expect(each.wireLengthM).toBeUndefined();
    expect(each.lengthChoice).not.toBe('fixed');
  }
  const kinds = (bands: Answers['bands']) => candidateAnswers({ ...site, bands }).map(({ radiator }) => radiator);
  for (const radiator of ['parallel-wires', 'linked-wire'] as const) {
    expect(kinds(['20m'])).not.toContain(radiator);
    expect(kinds(['20m', '15m'])).toContain(radiator);
  }
});
