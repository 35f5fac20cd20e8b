import { found, practice, type Sourced } from './sourced';

/**
 * Average power while keyed, as part of the peak envelope power.
 * Source: US exposure bulletin, table 2: conversational SSB without processing 0.2 (heavy processing 0.5), conversational CW 0.4, FM and
 * keyed data 1.0. AM with 50 % modulation is 0.5 in its worksheet; used here for every AM station by common practice.
 */
export const modeIds = ['voice', 'cw', 'data', 'fm', 'am'] as const;
export type Mode = (typeof modeIds)[number];

export const modeAverageFactor: Readonly<Record<Mode, Sourced>> = {
  voice: found(0.2, 'us-exposure-bulletin'),
  cw: found(0.4, 'us-exposure-bulletin'),
  data: found(1, 'us-exposure-bulletin'),
  fm: found(1, 'us-exposure-bulletin'),
  am: practice(0.5, 'us-exposure-bulletin'),
};
