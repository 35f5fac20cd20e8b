/** One antenna of each kind that the tables of warnings go through. Invented. */
import type { Answers } from '../../src/design/answers';

export const dipole: Answers = {
  bands: ['40m'],
  radiator: 'straight-wire',
  fedAt: 'centre',
  shackEnd: 'radio',
  heightM: 10,
};
export const endFed: Answers = { ...dipole, fedAt: 'end' };
export const offCentre: Answers = {
  ...dipole,
  bands: ['80m', '40m', '20m'],
  fedAt: 'off-centre',
  shackEnd: 'wide-tuner',
};
export const nonResonant: Answers = {
  ...endFed,
  bands: ['80m', '40m', '20m'],
  lengthChoice: 'non-resonant',
  shackEnd: 'wide-tuner',
};
export const doublet: Answers = { ...dipole, bands: ['80m', '40m'], feedLine: 'window-line', shackEnd: 'wide-tuner' };
export const vertical: Answers = { bands: ['40m'], radiator: 'vertical', fedAt: 'base', shackEnd: 'radio' };
