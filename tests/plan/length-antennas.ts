/** Antennas whose lengths are solved, and their plans with such lengths. Invented. */
import type { SolvedLengths } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

export const offCentre: Answers = {
  bands: ['40m', '20m', '10m'],
  radiator: 'straight-wire',
  fedAt: 'off-centre',
  wire: 'copper-2.0mm-bare',
  shackEnd: 'radio-tuner',
  heightM: 10,
  feedLineLengthM: 25,
};
export const endFed: Answers = { ...offCentre, fedAt: 'end' };
export const vertical: Answers = {
  ...offCentre,
  bands: ['20m'],
  radiator: 'vertical',
  fedAt: 'base',
  heightM: 2.5,
  returnPath: 'elevated-radials',
};

export const planned = (answers: Answers, lengths: SolvedLengths) =>
  makePlan(answers, { field: { bands: {}, lengths } });
