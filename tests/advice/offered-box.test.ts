import { expect, test } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

const offered = (answers: Answers) => makePlan(answers).offeredBox;
const offCentre: Answers = {
  bands: ['40m', '20m'],
  radiator: 'inverted-v',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
};
const endFed: Answers = { bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio', powerW: 100 };

// One box with both stands about 25 W average, 100 W of voice: house position, common practice, no source.
test('a box that a shop offers will do for 100 W of voice and not for as much of a digital mode', () => {
  expect(offered({ ...offCentre, powerW: 100, mode: 'voice' })).toMatchObject({ ratio: 4, verdict: 'fits' });
  expect(offered({ ...offCentre, powerW: 100, mode: 'data' })).toMatchObject({ ratio: 4, verdict: 'too-small' });
  expect(offered({ ...offCentre, powerW: 20, mode: 'data' })).toMatchObject({ verdict: 'fits' });
});

test('on an end-fed it will do only with a counterpoise wire of its own', () => {
  expect(offered({ ...endFed, mode: 'voice', returnPath: 'coax-shield' })).toMatchObject({
    ratio: 49,
    verdict: 'wrong',
  });
  expect(offered({ ...endFed, mode: 'voice', returnPath: 'counterpoise-wire' })).toMatchObject({ verdict: 'fits' });
});

test('is told of where a ratio is asked for and no such box is on hand', () => {
  expect(offered({ bands: ['40m'], radiator: 'inverted-v', fedAt: 'centre', shackEnd: 'radio' })).toBeNull();
  expect(offered({ ...endFed, onHand: [{ part: 'two-in-one', ratio: 49 }] })).toBeNull();
});
