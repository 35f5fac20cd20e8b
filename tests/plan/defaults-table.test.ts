/** Defaults of the data contract, row by row: each absent key that matters is listed as assumed, with this value. */
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

const base: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };
const offCentre: Answers = { ...base, fedAt: 'off-centre' };
const inverted: Answers = { ...base, radiator: 'inverted-v' };
const vertical: Answers = { ...base, radiator: 'vertical', fedAt: 'base' };
const loop: Answers = { ...base, radiator: 'loop', fedAt: 'corner' };
const other: Answers = { ...base, radiator: 'other' };

const assumedOf = (answers: Answers) =>
  Object.fromEntries(makePlan(answers).assumed.map(({ key, value }) => [key, value]));

describe('what is assumed', () => {
  it.each([
    ['units', 'metric', base],
    ['region', 1, base],
    ['ruleSet', 'icnirp-2020', base],
    ['ruleSet', 'us-fcc', { ...base, country: 'US' }],
    ['ruleSet', 'eu-1999-519', { ...base, country: 'DE' }],
    ['ruleSet', 'ca-safety-code-6', { ...base, country: 'CA' }],
    ['ruleSet', 'au-rps-s1', { ...base, country: 'AU' }],
    ['ruleSet', 'icnirp-2020', { ...base, country: 'GB' }],
    ['station', 'home', base],
    ['indoors', false, base],
    ['powerW', 100, base],
    ['mode', 'not-told', base],
    ['transmitShare', 1, base],
    ['lengthChoice', 'resonant', base],
    ['feedFraction', 1 / 3, offCentre],
    ['loopShape', 'square', loop],
    ['loopPlane', 'upright', loop],
    ['balanced', false, other],
    ['feedImpedance', 'not-told', other],
    ['spanM', 'not-told', base],
    ['heightM', 8, base],
    ['heightM', 0.2, vertical],
    ['heightM', 0.2, { ...base, radiator: 'inverted-l', fedAt: 'base' }],
    ['heightM', 1.5, { ...vertical, returnPath: 'elevated-radials' }],
    ['endHeightM', 11, { ...base, heightM: 11 }],
    ['endHeightM', 3, { ...inverted, heightM: 11 }],
    ['endHeightM', 3, { ...base, radiator: 'sloper', heightM: 11 }],
    ['supportHeightM', 11, { ...base, heightM: 11 }],
    ['wire', 'pvc-1.5mm2', base],
    ['ground', 'average', base],
    ['returnPath', 'ground-radials', vertical],
    ['returnPath', 'elevated-radials', { ...vertical, heightM: 1.2 }],
    ['radialCount', 16, vertical],
    ['radialCount', 4, { ...vertical, returnPath: 'elevated-radials' }],
    ['feedLine', 'rg-58', base],
    ['feedLineLengthM', 15, base],
    ['feedLineRoute', 'square', base],
    ['runHeightM', 0.1, base],
    ['entryDistanceM', 11, base],
    ['entryDistanceM', 26, { ...base, feedLineLengthM: 30 }],
    ['entryDistanceM', 14, { ...base, station: 'portable' }],
    ['houseEarth', 'mains', base],
    ['houseEarth', 'open', { ...base, station: 'portable' }],
    ['rfInShack', false, base],
    ['nearestPersonM', 'not-told', base],
    ['nearestPowerLineM', 'not-told', base],
  ] as const)('%s is %s', (key, value, answers) => {
    expect(assumedOf(answers)[key]).toBe(value);
  });

  it('is cut for the middle of each band', () => {
    expect(assumedOf({ ...base, bands: ['40m', '20m'] })).toMatchObject({
      'focusMHz.40m': 7.1,
      'focusMHz.20m': 14.175,
    });
    expect(assumedOf({ ...base, region: 2 })).toMatchObject({ 'focusMHz.40m': 7.15 });
  });

  it('lists nothing that was answered', () => {
    const answered: Answers = { ...base, heightM: 9, powerW: 50, feedLine: 'rg-213', focusMHz: { '40m': 7.03 } };
    const keys = Object.keys(assumedOf(answered));
    for (const key of ['heightM', 'powerW', 'feedLine', 'focusMHz.40m']) expect(keys).not.toContain(key);
  });

  it('lists nothing that cannot matter', () => {
    const keys = Object.keys(assumedOf(base));
    for (const key of [
      'returnPath',
      'radialCount',
      'loopShape',
      'feedFraction',
      'feedImpedance',
      'balanced',
      'counterpoiseM',
    ])
      expect(keys).not.toContain(key);
    expect(Object.keys(assumedOf({ ...base, feedLine: 'none' }))).not.toContain('feedLineLengthM');
  });

  it('comes in order of how much it would change', () => {
    const rank = { large: 0, middle: 1, small: 2 };
    const ranks = makePlan(base).assumed.map(({ effect }) => rank[effect]);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  });
});
