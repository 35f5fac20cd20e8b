/** What can be said of a part on hand. words/en/verdicts.ts has a sentence for each. */
import type { Data, Verdict } from './finding';

export const verdictCodes = [
  'transformer-fits',
  'transformer-fits-nearly',
  'transformer-current-balanced',
  'transformer-current-off-centre',
  'transformer-other-ratio',
  'transformer-not-here',
  'transformer-on-open-wire',
  'transformer-at-tuner',
  'transformer-rating',
  'one-to-one-is-choke',
  'one-to-one-voltage',
  'two-in-one-fits',
  'two-in-one-heat',
  'two-in-one-no-return',
  'choke-fits',
  'choke-fits-elsewhere',
  'choke-too-small',
  'choke-reactive',
  'choke-capacitive',
  'choke-not-here',
  'choke-turns',
  'choke-of-open-line',
  'core-for-transformer',
  'core-for-choke',
  'core-for-other-choke',
  'core-too-small',
  'core-too-few-ohms',
  'core-not-here',
  'wire-fits',
  'wire-other-kind',
  'wire-part',
  'wire-return',
  'wire-too-short',
  'line-fits',
  'line-other-coax',
  'line-lossy',
  'line-75-ohm',
  'line-for-jumper',
  'line-too-short',
  'line-power',
  'line-open-for-coax',
  'line-coax-for-open',
  'line-not-here',
] as const;
export type VerdictCode = (typeof verdictCodes)[number];

export type Judged = Omit<Verdict, 'part'>;

export const judged = (verdict: Verdict['verdict'], code: VerdictCode, data: Data = {}): Judged => ({
  verdict,
  code,
  data,
});
