import { recalled } from './sourced';

/** Peak volts that the common screw plug of amateur coax stands. */
export const screwPlugPeakV = recalled(500, 'engineering-judgement');
