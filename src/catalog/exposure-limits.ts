import { found, recalled, type Sourced } from './sourced';

/**
 * Limits on electric and magnetic fields where people may be, 1.8 to 54 MHz: level = a · f^b, f in MHz; E in V/m, H in A/m, both rms, S in W/m².
 * `averagingMin` 0 means that the level holds for the crest of a transmission and knows no averaging.
 *
 * Read in the source: the US rule, ICNIRP local levels (table 6) and stimulation levels, the European electric levels for workers. From memory,
 * checked by continuity at the joins only: ICNIRP whole-body levels, 1999/519/EC, Safety Code 6, the European magnetic levels for workers. Below 30 MHz the US values of S are plane-wave equivalents
 * for reference; ICNIRP has none there. A planning aid: national law may be stricter.
 */
export interface Level {
  readonly fromMHz: number;
  readonly toMHz: number;
  readonly a: number;
  readonly b: number;
}

export interface Levels {
  readonly averagingMin: number;
  readonly electric: readonly Level[];
  readonly magnetic: readonly Level[];
  readonly power: readonly Level[];
}

const level = (fromMHz: number, toMHz: number, a: number, b = 0): Level => ({ fromMHz, toMHz, a, b });

export const exposureLimits = {
  'us-controlled': found(
    {
      averagingMin: 6,
      electric: [level(0.3, 3, 614), level(3, 30, 1842, -1), level(30, 300, 61.4)],
      magnetic: [level(0.3, 3, 1.63), level(3, 30, 4.89, -1), level(30, 300, 0.163)],
      power: [level(0.3, 3, 1000), level(3, 30, 9000, -2), level(30, 300, 10)],
    },
    'us-exposure-rule',
  ),
  'us-uncontrolled': found(
    {
      averagingMin: 30,
      electric: [level(0.3, 1.34, 614), level(1.34, 30, 824, -1), level(30, 300, 27.5)],
      magnetic: [level(0.3, 1.34, 1.63), level(1.34, 30, 2.19, -1), level(30, 300, 0.073)],
      power: [level(0.3, 1.34, 1000), level(1.34, 30, 1800, -2), level(30, 300, 2)],
    },
    'us-exposure-rule',
  ),
  'icnirp-body-occupational': recalled(
    {
      averagingMin: 30,
      electric: [level(0.1, 30, 660, -0.7), level(30, 400, 61)],
      magnetic: [level(0.1, 30, 4.9, -1), level(30, 400, 0.16)],
      power: [level(30, 400, 10)],
    },
    'icnirp-levels',
  ),
  'icnirp-body-public': recalled(
    {
      averagingMin: 30,
      electric: [level(0.1, 30, 300, -0.7), level(30, 400, 27.7)],
      magnetic: [level(0.1, 30, 2.2, -1), level(30, 400, 0.073)],
      power: [level(30, 400, 2)],
    },
    'icnirp-levels',
  ),
  'icnirp-local-occupational': found(
    {
      averagingMin: 6,
      electric: [level(0.1, 30, 1504, -0.7), level(30, 400, 139)],
      magnetic: [level(0.1, 30, 10.8, -1), level(30, 400, 0.36)],
      power: [level(30, 400, 50)],
    },
    'icnirp-levels',
  ),
  'icnirp-local-public': found(
    {
      averagingMin: 6,
      electric: [level(0.1, 30, 671, -0.7), level(30, 400, 62)],
      magnetic: [level(0.1, 30, 4.9, -1), level(30, 400, 0.163)],
      power: [level(30, 400, 10)],
    },
    'icnirp-levels',
  ),
  'icnirp-crest-occupational': found(
    { averagingMin: 0, electric: [level(0.1, 10, 170)], magnetic: [level(0.1, 10, 80)], power: [] },
    'icnirp-levels',
  ),
  'icnirp-crest-public': found(
    { averagingMin: 0, electric: [level(0.1, 10, 83)], magnetic: [level(0.1, 10, 21)], power: [] },
    'icnirp-levels',
  ),
  'eu-public': recalled(
    {
      averagingMin: 6,
      electric: [level(1, 10, 87, -0.5), level(10, 400, 28)],
      magnetic: [level(0.15, 10, 0.73, -1), level(10, 400, 0.073)],
      power: [level(10, 400, 2)],
    },
    'eu-public-levels',
  ),
  'eu-workers': found(
    {
      averagingMin: 6,
      electric: [level(3.59, 10, 610, -1), level(10, 400, 61)], // 170 V/m below 3.59 MHz is not averaged
      magnetic: [],
      power: [],
    },
    'eu-worker-levels',
  ),
  // 2.0/f µT and 0.2 µT in air, as amperes per metre.
  'eu-workers-magnetic': recalled(
    { averagingMin: 6, electric: [], magnetic: [level(0.1, 10, 1.6, -1), level(10, 400, 0.16)], power: [] },
    'eu-worker-levels',
  ),
  'eu-workers-crest': found(
    { averagingMin: 0, electric: [level(0.003, 3.59, 170)], magnetic: [], power: [] },
    'eu-worker-levels',
  ),
  'ca-controlled': recalled(
    {
      averagingMin: 6,
      electric: [level(1.29, 10, 193, -0.5), level(10, 20, 61.4), level(20, 48, 129.8, -0.25), level(48, 100, 49.33)],
      magnetic: [level(0.1, 10, 1.6, -1), level(10, 20, 0.163), level(20, 48, 0.3444, -0.25), level(48, 100, 0.1309)],
      power: [level(10, 20, 10), level(20, 48, 44.72, -0.5), level(48, 100, 6.455)],
    },
    'canadian-safety-code',
  ),
  'ca-uncontrolled': recalled(
    {
      averagingMin: 6,
      electric: [level(1.1, 10, 87, -0.5), level(10, 20, 27.46), level(20, 48, 58.07, -0.25), level(48, 300, 22.06)],
      magnetic: [level(0.1, 10, 0.73, -1), level(10, 20, 0.0728), level(20, 48, 0.154, -0.25), level(48, 300, 0.05852)],
      power: [level(10, 20, 2), level(20, 48, 8.944, -0.5), level(48, 300, 1.291)],
    },
    'canadian-safety-code',
  ),
  'ca-controlled-crest': recalled(
    { averagingMin: 0, electric: [level(0.003, 10, 170)], magnetic: [level(0.003, 10, 180)], power: [] },
    'canadian-safety-code',
  ),
  'ca-uncontrolled-crest': recalled(
    { averagingMin: 0, electric: [level(0.003, 10, 83)], magnetic: [level(0.003, 10, 90)], power: [] },
    'canadian-safety-code',
  ),
} as const satisfies Readonly<Record<string, Sourced<Levels>>>;

export type LimitSetId = keyof typeof exposureLimits;

/** The level at a frequency; null where this set has none. At a join the stricter row holds. */
export function levelAt(rows: readonly Level[], frequencyMHz: number): number | null {
  const values = rows
    .filter(({ fromMHz, toMHz }) => frequencyMHz >= fromMHz && frequencyMHz <= toMHz)
    .map(({ a, b }) => a * frequencyMHz ** b);
  return values.length === 0 ? null : Math.min(...values);
}
