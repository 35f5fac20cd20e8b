/**
 * Each way out that is a changed answer: it changes one answer, and the warning it is a way out of is gone; or it stays, by name, for a reason.
 */
import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { dipole, doublet, endFed, nonResonant, offCentre, vertical } from './invented-antennas';

type Case = readonly [
  id: string,
  answers: Answers,
  /** The answers that its ways out change, in the order they are told. */
  keys: readonly (keyof Answers)[],
];

const cases: readonly Case[] = [
  ['no-such-feed-point', { ...dipole, radiator: 'loop' }, ['fedAt', 'fedAt']],
  ['unit-doubt', { ...dipole, focusMHz: { '40m': 7100 } }, ['focusMHz', 'focusMHz']],
  ['unit-doubt', { ...dipole, lengthChoice: 'fixed', wireLengthM: 66, spanM: 25 }, ['wireLengthM']],
  ['unit-doubt', { ...dipole, heightM: 70 }, ['heightM']],
  ['outside-band', { ...dipole, bands: ['40m', '20m'], focusMHz: { '40m': 7.25 } }, ['focusMHz', 'bands']],
  ['outside-band', { ...dipole, bands: ['160m'], focusMHz: { '160m': 1.9 } }, ['focusMHz']],
  ['power-limit-60m', { ...dipole, bands: ['60m', '40m'], powerW: 100 }, ['powerW', 'bands']],
  ['power-above-licence', { ...dipole, powerW: 2000 }, ['powerW']],
  ['people-too-near', { ...dipole, powerW: 400, mode: 'data', nearestPersonM: 0.5 }, ['powerW']],
  ['does-not-fit', { ...dipole, bands: ['40m', '20m'], spanM: 14 }, ['radiator', 'bands']],
  // A square of 10.5 m on a side fed 8 m up, and on 80 m one of 20 m, which no foot under 10 m is low enough for.
  [
    'does-not-fit',
    { ...dipole, radiator: 'loop', fedAt: 'corner', supportHeightM: 14, heightM: 8 },
    ['heightM', 'loopPlane'],
  ],
  ['does-not-fit', { ...dipole, bands: ['80m'], radiator: 'loop', fedAt: 'corner', supportHeightM: 12 }, ['loopPlane']],
  ['does-not-fit', { ...vertical, supportHeightM: 8 }, ['radiator']],
  ['links-by-hand', { ...dipole, bands: ['40m', '20m'], radiator: 'linked-wire' }, ['radiator']],
  ['open-piece-half-wave', { ...dipole, bands: ['40m', '15m'], radiator: 'linked-wire' }, ['bands']],
  ['low-height', { ...dipole, bands: ['80m'], heightM: 4 }, ['heightM']],
  ['low-height', { ...endFed, bands: ['80m'], heightM: 4, endHeightM: 2 }, ['heightM']],
  ['indoors', { ...dipole, indoors: true }, ['powerW', 'indoors']],
  ['thin-wire', { ...dipole, wire: 'ptfe-awg22' }, ['wire']],
  ['few-radials', { ...vertical, returnPath: 'ground-radials', radialCount: 2 }, ['radialCount', 'returnPath']],
  ['few-radials', { ...vertical, returnPath: 'ground-rod' }, ['returnPath', 'returnPath']],
  ['few-radials', { ...vertical, returnPath: 'elevated-radials', radialCount: 1 }, ['radialCount', 'radialCount']],
  ['line-does-not-belong', { ...endFed, feedLine: 'window-line', shackEnd: 'wide-tuner' }, ['feedLine', 'fedAt']],
  [
    'line-does-not-belong',
    { ...dipole, lengthChoice: 'non-resonant', feedLine: 'rg-58', shackEnd: 'wide-tuner' },
    ['feedLine', 'lengthChoice', 'shackEnd'],
  ],
  ['return-path-needed', { ...vertical, returnPath: 'none' }, ['returnPath', 'returnPath']],
  ['return-path-needed', { ...vertical, returnPath: 'ground-radials', radialCount: 0 }, ['radialCount']],
  ['return-path-needed', { ...endFed, returnPath: 'none' }, ['returnPath', 'returnPath']],
  ['choke-without-return', { ...endFed, returnPath: 'none' }, ['returnPath', 'returnPath']],
  ['open-wire-needs-choke', { ...doublet, shackEnd: 'radio' }, ['shackEnd', 'shackEnd', 'feedLine']],
  ['band-not-served', { ...dipole, bands: ['40m', '20m'] }, ['bands']],
  ['off-centre-null', { ...offCentre, bands: ['40m', '15m'] }, ['feedFraction', 'bands']],
  ['wire-near-half-wave', { ...nonResonant, lengthChoice: 'fixed', wireLengthM: 38.5 }, ['bands']],
  ['tuner-range', { ...nonResonant, shackEnd: 'radio-tuner' }, ['shackEnd', 'bands']],
  [
    'tuner-range',
    { ...doublet, radiator: 'inverted-v', bands: ['80m', '40m', '20m'], heightM: 8 },
    ['shackEnd', 'lengthChoice', 'bands'],
  ],
  [
    'tuner-range',
    { ...doublet, bands: ['40m', '20m'], feedLine: 'open-wire', heightM: 8 },
    ['shackEnd', 'feedLineLengthM', 'bands'],
  ],
  [
    'leg-plus-line-half-wave',
    { ...doublet, bands: ['40m'], lengthChoice: 'fixed', wireLengthM: 27, feedLineLengthM: 6.3 },
    ['feedLineLengthM'],
  ],
  [
    'two-in-one-box',
    { ...offCentre, powerW: 400, mode: 'voice', onHand: [{ part: 'two-in-one', ratio: 4 }] },
    ['powerW'],
  ],
  ['no-4to1-on-open-wire', { ...doublet, shackEnd: 'wide-tuner-4to1' }, ['shackEnd', 'shackEnd']],
  ['core-heat', { ...offCentre, bands: ['80m'], powerW: 1500, mode: 'data' }, ['powerW']],
  ['line-under-wire', { ...dipole, feedLineRoute: 'along' }, ['feedLineRoute']],
  [
    'line-shorter-than-counterpoise',
    { ...endFed, bands: ['80m'], feedLineLengthM: 2, station: 'portable' },
    ['returnPath', 'feedLineLengthM'],
  ],
  ['line-too-short', { ...dipole, heightM: 12, feedLineLengthM: 5 }, ['feedLineLengthM', 'heightM']],
  ['line-too-short', { ...dipole, feedLineLengthM: 10, entryDistanceM: 30 }, ['feedLineLengthM', 'entryDistanceM']],
  ['line-overrated', { ...dipole, feedLine: 'rg-174', powerW: 1500, mode: 'data' }, ['feedLine', 'powerW']],
  ['end-out-of-reach', { ...dipole, radiator: 'inverted-v', heightM: 16, endHeightM: 2 }, ['endHeightM', 'heightM']],
  [
    'end-out-of-reach',
    { ...dipole, radiator: 'inverted-v', fedAt: 'end', heightM: 1, supportHeightM: 20 },
    ['supportHeightM'],
  ],
  ['line-loss', { ...dipole, bands: ['10m'], feedLine: 'rg-174', feedLineLengthM: 30 }, ['feedLine']],
];

/** Changes after which the warning is told still, with the reason. */
const stays: readonly (readonly [id: string, key: keyof Answers])[] = [
  ['indoors', 'powerW'], // said of every antenna indoors, with the power it has
  ['tuner-range', 'shackEnd'], // near its first half-wave a wire is hard to tune for any tuner: then said more mildly
  ['core-heat', 'powerW'], // for less power the plan takes fewer rings, which come near their own limit
];

describe('ways out that are a changed answer', () => {
  test.each(cases)('%s, case %#', (id, answers, keys) => {
    const warning = makePlan(answers).warnings.find((each) => each.id === id);
    if (warning === undefined) throw new Error('not warned of');
    expect(warning.wayAnswers.length).toBe(warning.waysOut.length);
    const changes = warning.wayAnswers.filter((change) => change !== null);
    expect(changes.flatMap((change) => Object.keys(change))).toEqual(keys);
    for (const change of changes) {
      const [key] = Object.keys(change);
      const after = makePlan({ ...answers, ...change } as Answers).warnings.filter((each) => each.id === id);
      const same = after.filter(
        ({ bands }) => bands.length === 0 || bands.some((band) => warning.bands.includes(band)),
      );
      if (!stays.some(([stayId, stayKey]) => stayId === id && stayKey === key)) expect([key, same]).toEqual([key, []]);
    }
  });

  test('take a number in another unit as what it was', () => {
    const changeOf = (answers: Answers) =>
      makePlan(answers)
        .warnings.find(({ id }) => id === 'unit-doubt')
        ?.wayAnswers.find((change) => change !== null);
    // 66 ft and 70 ft by the international foot of 0.3048 m
    expect(changeOf({ ...dipole, lengthChoice: 'fixed', wireLengthM: 66, spanM: 25 })).toEqual({ wireLengthM: 20.117 });
    expect(changeOf({ ...dipole, heightM: 70 })).toEqual({ heightM: 21.336 });
    expect(changeOf({ ...dipole, focusMHz: { '40m': 7074 } })).toEqual({ focusMHz: { '40m': 7.074 } });
  });

  test('leave the only band where it is, and offer nothing that is set already', () => {
    const { warnings } = makePlan({ ...dipole, focusMHz: { '40m': 7.25 } });
    expect(warnings.find(({ id }) => id === 'outside-band')?.wayAnswers.some((change) => change?.bands)).toBe(false);
    const inside = makePlan({ ...dipole, indoors: true, powerW: 40 }).warnings.find(({ id }) => id === 'indoors');
    expect(inside?.wayAnswers).toEqual([null, null, { indoors: false }]);
  });

  test('never set more watts than the way out allows', () => {
    const limited = makePlan({ ...dipole, bands: ['60m'], powerW: 100 }).warnings.find(
      ({ id }) => id === 'power-limit-60m',
    );
    const [less] = limited?.wayAnswers ?? [];
    expect(limited?.waysOut[0]).toContain(`${less?.powerW} W`);
  });
});
