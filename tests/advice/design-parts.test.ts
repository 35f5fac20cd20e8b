/**
 * Devices designed for an antenna. Compared with the trade's table of turns (common practice, no source; its core losses were worked out from
 * the makers' permeability, its choke turns come from published measurements on 61 mm rings of mix 31).
 */
import { describe, expect, test } from 'vitest';
import { createDesigner, designParts } from '../../src/advice/chain/design-parts';
import type { DeviceFinding } from '../../src/advice/device-finding';
import { dimensionsOf } from '../../src/advice/dimensions';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import type { FieldFacts } from '../../src/advice/field-facts';
import { complex, magnitude } from '../../src/base/complex';
import type { Answers } from '../../src/design/answers';
import { designChoke } from '../../src/physics/choke-design';
import { evaluateChoke } from '../../src/physics/choke-evaluate';
import type { ChokeNeed } from '../../src/physics/choke-need';
import { RISE_LIMIT_K } from '../../src/physics/core-heat';
import { evaluateTransformer } from '../../src/physics/transformer-evaluate';
import { coaxToWind } from '../../src/physics/wound-conductor';
import { alternativeNames, comparison, deviceNotes, shortfalls } from '../../src/words/en/device-figures';
import { builds } from '../../src/words/en/devices';
import { createFormat } from '../../src/words/format';
import { type Message, render } from '../../src/words/message';
import { expectWorkingHolds } from '../fixtures/evaluate-working';

const designer = createDesigner();

function designed(given: Partial<Answers>, field?: FieldFacts) {
  const answers: Answers = {
    bands: ['40m', '20m', '10m'],
    radiator: 'inverted-v',
    fedAt: 'end',
    shackEnd: 'radio-tuner',
    heightM: 2,
    supportHeightM: 9,
    powerW: 100,
    mode: 'voice',
    ...given,
  };
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error('no such feed point');
  return designParts(facts, dimensionsOf(facts), field, designer);
}

const transformerOf = (given: Partial<Answers>): DeviceFinding => {
  const { transformer } = designed(given);
  if (transformer === undefined) throw new Error('no transformer');
  return transformer;
};

describe('against the trade table', () => {
  // Mix 43, 61 mm, 3.6 MHz: 2 turns 24 to 30 %, 3 turns 12 to 15 %, 4 turns about 8 %, 3 turns on two rings about 7 %, 4 on two about 4 %.
  test.each([
    { turns: 2, rings: 1, percent: [24, 30] },
    { turns: 3, rings: 1, percent: [12, 15] },
    { turns: 4, rings: 1, percent: [7, 9] },
    { turns: 3, rings: 2, percent: [6, 8] },
    { turns: 4, rings: 2, percent: [3.5, 4.5] },
  ] as const)('a 49:1 of $turns turns on $rings ring(s) keeps $percent % in its core', ({ turns, rings, percent }) => {
    const build = { core: 'ft240-43', count: rings, primaryTurns: turns, secondaryTurns: 7 * turns } as const;
    const [point] = evaluateTransformer(
      {
        ratio: 49,
        winding: 'auto',
        points: [{ hz: 3.6e6, load: complex(2450) }],
        lineOhm: 50,
        powerW: 100,
        averageFactor: 1,
        housing: 'free-air',
        onHand: [],
      },
      build,
    ).points;
    expect(point?.coreHeatW).toBeGreaterThanOrEqual(percent[0]);
    expect(point?.coreHeatW).toBeLessThanOrEqual(percent[1]);
  });

  const need = (mhz: readonly number[]): ChokeNeed => ({
    minimumOhm: 5000,
    reactiveMinimumOhm: 5000,
    points: mhz.map((each) => ({ hz: each * 1e6, source: null })),
    powerW: 100,
    averageFactor: 0.2,
    housing: 'closed-box',
    conductors: [coaxToWind('rg-58')],
    onHand: [],
    mixes: ['31'],
  });

  // 160 and 80 m 16 to 18 turns, 80 to 20 m 13 to 14, 40 to 15 m 11 to 12, each ± 2; 80 to 10 m two in series, 14 + 10.
  test.each([
    { mhz: [1.9, 3.65], from: 16, to: 18 },
    { mhz: [3.65, 7.1, 14.15], from: 13, to: 14 },
    { mhz: [7.1, 14.15, 21.2], from: 11, to: 12 },
  ])('5 kΩ on $mhz MHz takes one ring and $from to $to turns, two more or less', ({ mhz, from, to }) => {
    const found = designChoke(need(mhz)).fewestCores;
    expect(found).toMatchObject({ core: 'ft240-31', coreCount: 1 });
    expect(found?.turns[0]).toBeGreaterThanOrEqual(from - 2);
    expect(found?.turns[0]).toBeLessThanOrEqual(to + 2);
  });

  test('5 kΩ on 80 to 10 m takes two windings in series, the longer one for the low bands', () => {
    const found = designChoke(need([3.65, 7.1, 14.15, 28.5])).fewestCores;
    expect(found).toMatchObject({ core: 'ft240-31', coreCount: 2 });
    expect(Math.abs((found?.turns[0] ?? 0) - 14)).toBeLessThanOrEqual(2);
    expect(found?.turns[1]).toBeLessThan(found?.turns[0] ?? 0);
  });

  // Here the model does not follow the table, which has 5 kΩ for 9 to 10 turns on 20 to 10 m: past its own resonance one winding stays at 4 kΩ
  // on 10 m, within what its capacitance may be off.
  test('on 10 m no single winding reaches 5 kΩ by its nominal capacitance, and may by less', () => {
    for (const turns of [9, 10, 11, 12]) {
      const [, high] = evaluateChoke(need([14.15, 28.5]), {
        core: 'ft240-31',
        count: 1,
        turns: [turns],
        conductor: coaxToWind('rg-58'),
      }).points;
      const ohm = magnitude(high?.impedance.nominal ?? complex(0));
      expect(ohm).toBeGreaterThan(3500);
      expect(ohm).toBeLessThan(5000);
      expect(high?.impedance.nominal.im).toBeLessThan(0);
      expect(high?.impedance.ohm[1]).toBeGreaterThan(5000);
    }
  });
});

describe('the build of the plan', () => {
  const kit: Answers['onHand'] = [
    { part: 'core', core: 'ft240-43', count: 1 },
    { part: 'core', core: 'ft240-31', count: 1 },
  ];

  // Common practice: one 61 mm ring of mix 43 for 100 W of voice, more for digital, or less power.
  test('100 W of voice goes through the one ring on hand; digital asks for more rings, or less power', () => {
    const voice = transformerOf({ station: 'portable', onHand: kit });
    expect(voice.build).toMatchObject({ core: 'ft240-43', count: 1 });
    expect(voice.figures.isEnough).toBe(true);
    expect(voice.figures.mostW).toBeGreaterThanOrEqual(100);
    const data = transformerOf({ station: 'portable', onHand: kit, mode: 'data' });
    expect(data.build.count).toBeGreaterThan(1);
    expect(data.figures.isEnough).toBe(true);
    const same = data.alternatives.find(({ id }) => id === 'on-hand');
    expect(same?.build).toMatchObject({ core: 'ft240-43', count: 1 });
    expect(same?.isEnough).toBe(false);
    expect(same?.mostW).toBeGreaterThan(20);
    expect(same?.mostW).toBeLessThan(60);
  });

  test('each ring on hand goes into one device only', () => {
    const { transformer, chokes = {} } = designed({ station: 'portable', onHand: kit });
    expect(transformer?.build.core).toBe('ft240-43');
    expect(chokes.antenna?.build).toMatchObject({ core: 'ft240-31', count: 1 });
    const other = Object.entries(chokes).filter(([role]) => role !== 'antenna');
    for (const [, { build, alternatives }] of other) {
      expect(alternatives.some(({ id, isEnough }) => id === 'on-hand' && isEnough)).toBe(false);
      expect(build.core === 'ft240-31' && build.count === 1).toBe(false);
    }
  });

  test('every limit is kept at the power told, and the most power brings the rise to its limit', () => {
    for (const mode of ['voice', 'cw', 'data'] as const) {
      const { figures } = transformerOf({ mode });
      expect(figures.riseK).toBeLessThanOrEqual(RISE_LIMIT_K);
      expect(figures.powerByModeW?.[mode]).toBeCloseTo(figures.mostW ?? 0, 6);
      expect(figures.powerByModeW?.voice).toBeCloseTo(5 * (figures.powerByModeW?.data ?? 0), 3);
    }
  });

  test('what nothing meets is told as the nearest miss, with the power that it stands', () => {
    const { figures } = transformerOf({ powerW: 3000, mode: 'data' });
    expect(figures.isEnough).toBe(false);
    expect(figures.shortfalls.map(({ code }) => code)).toContain('short-heat');
    expect(figures.mostW).toBeLessThan(3000);
  });

  test('a question for one mix is answered by that mix, with what changes', () => {
    const { alternatives, build } = transformerOf({});
    for (const mix of ['31', '43', '52', '61', '77']) {
      const answer = alternatives.find(({ id }) => id === `mix-${mix}`);
      expect(answer?.build.core).toMatch(new RegExp(`-${mix}$`));
      expect(answer?.changes.data.rings).toBe(answer?.rings);
    }
    expect(alternatives.filter(({ isPlanned }) => isPlanned).map((each) => each.build.core)).toEqual([build.core]);
  });

  test('the lightest weighs least of those that are enough, and the coolest is within 3 K of the lowest rise', () => {
    const { alternatives, figures } = transformerOf({ mode: 'data' });
    const enough = [figures, ...alternatives.filter(({ isEnough }) => isEnough)];
    const lightest = alternatives.find(({ id }) => id === 'lightest') ?? figures;
    const coolest = alternatives.find(({ id }) => id === 'coolest') ?? figures;
    for (const each of enough) {
      expect(lightest.massKg).toBeLessThanOrEqual(each.massKg + 0.01);
      expect(coolest.riseK).toBeLessThanOrEqual((each.riseK ?? 0) + 3);
    }
  });

  test('a station that only listens gets numbers too', () => {
    const { figures } = transformerOf({ transmitShare: 0 });
    expect(figures.mostW).toBeGreaterThan(100);
    expect(Number.isFinite(figures.mostW)).toBe(true);
  });

  test('a field solution decides load and source', () => {
    const field: FieldFacts = {
      bands: {
        '40m': { feedPoint: { r: 2450, x: 0 }, chokeSources: { antenna: { openV: 900, impedance: complex(300) } } },
        '20m': { feedPoint: { r: 2450, x: 0 } },
        '10m': { feedPoint: { r: 2450, x: 0 } },
      },
    };
    const byField = designed({}, field);
    for (const { swr } of byField.transformer?.figures.bands ?? []) expect(swr).toBeLessThan(1.6);
    const [low] = byField.chokes?.antenna?.figures.bands ?? [];
    expect(low?.voltageV).toBeGreaterThan(500);
  });

  test('the entry choke is judged by antennas like this one until it is solved, the one at the radio is not guessed', () => {
    const { chokes = {} } = designed({ bands: ['40m'] });
    const [low] = chokes.entry?.figures.bands ?? [];
    if (low?.rOhm == null || low.xOhm == null) throw new Error('no impedance');
    // End-fed at 40 m with both chokes: 7 mA through 5 kΩ per 100 W, 1 kΩ behind it: 42 V. Source: own field solutions. Voice averages a fifth.
    const amps2 = 42 ** 2 / ((low.rOhm.nominal + 1000) ** 2 + low.xOhm.nominal ** 2);
    expect(low.heatW).toBeCloseTo(0.2 * amps2 * low.rOhm.nominal, 6);
    const codes = (role: 'entry' | 'radio'): string[] => (chokes[role]?.figures.notes ?? []).map(({ code }) => code);
    expect(codes('entry')).toContain('choke-heat-likely');
    expect(codes('radio')).toContain('choke-heat-later');
    expect(chokes.radio?.figures.bands[0]?.heatW).toBeNull();
    const field: FieldFacts = { bands: { '40m': { chokeSources: { entry: { openV: 6, impedance: complex(1000) } } } } };
    const solved = designed({ bands: ['40m'] }, field).chokes?.entry?.figures;
    expect(solved?.notes.map(({ code }) => code)).toContain('choke-heat');
    expect(solved?.bands[0]?.heatW).toBeCloseTo(((low.heatW ?? 0) * 36) / 1764, 6);
  });

  test('a low feed point is matched the other way round', () => {
    const field: FieldFacts = { bands: { '80m': { feedPoint: { r: 12, x: 2 } } } };
    const found = designed({ bands: ['80m'], radiator: 'inverted-l', fedAt: 'base' }, field).transformer?.build;
    expect(found?.turns).toBeGreaterThan(found?.secondaryTurns ?? 99);
  });

  test('the plot runs over the wanted range, with the nominal value between least and most', () => {
    const { transformer, chokes = {} } = designed({});
    const curve = transformer?.figures.curve ?? [];
    expect(curve).toHaveLength(24);
    expect(curve[0]?.atMHz).toBeLessThan(7);
    expect(curve.at(-1)?.atMHz).toBeGreaterThan(29.7);
    const spreads = [
      ...curve.map(({ lossDb }) => lossDb),
      ...(chokes.antenna?.figures.curve ?? []).flatMap(({ rOhm, xOhm, ohm }) => [rOhm, xOhm, ohm]),
    ];
    for (const each of spreads) {
      expect(each?.low).toBeLessThanOrEqual((each?.nominal ?? 0) + 1e-9);
      expect(each?.high).toBeGreaterThanOrEqual((each?.nominal ?? 0) - 1e-9);
    }
  });

  test('a search asked again is not run again', () => {
    const own = createDesigner();
    const asked = need1();
    expect(own.choke(asked)).toBe(own.choke({ ...asked }));
    expect(own.choke({ ...asked, minimumOhm: 2000 })).not.toBe(own.choke(asked));
  });
});

const need1 = (): ChokeNeed => ({
  minimumOhm: 1000,
  reactiveMinimumOhm: 2000,
  points: [{ hz: 7.1e6, source: null }],
  powerW: 10,
  averageFactor: 1,
  housing: 'free-air',
  conductors: [coaxToWind('rg-58')],
  onHand: [],
});

describe('in words', () => {
  const formats = [createFormat('metric'), createFormat('imperial')];
  const asked: Partial<Answers>[] = [
    {},
    { mode: 'data' },
    { powerW: 3000, mode: 'data' },
    { fedAt: 'off-centre', radiator: 'straight-wire', bands: ['80m', '40m', '20m', '10m'] },
    { fedAt: 'end', lengthChoice: 'non-resonant', shackEnd: 'wide-tuner', bands: ['80m', '40m', '20m', '10m'] },
    { radiator: 'loop', fedAt: 'corner', bands: ['40m'] },
    {
      radiator: 'straight-wire',
      fedAt: 'centre',
      feedLine: 'window-line',
      shackEnd: 'wide-tuner',
      bands: ['160m', '10m'],
    },
    { radiator: 'folded-wire', fedAt: 'centre', feedLine: 'twin-lead', shackEnd: 'radio' },
    { bands: ['160m', '80m', '40m', '20m', '10m', '6m'], powerW: 1500, mode: 'data', feedLine: 'rg-213' },
  ];
  const all = asked.flatMap((given) => {
    const { transformer, chokes = {} } = designed(given);
    return [...(transformer === undefined ? [] : [transformer]), ...Object.values(chokes)];
  });
  const worded = (catalogue: Readonly<Record<string, Message>>, code: string, data: DeviceFinding['build']['data']) => {
    const message = catalogue[code];
    if (message === undefined) throw new Error(`no words for ${code}`);
    for (const format of formats)
      expect(render(message, data, format), code).not.toMatch(/undefined|NaN|Infinity|null/);
  };

  test('every build, note, shortfall and difference is said without gaps', () => {
    for (const { build, figures, alternatives } of all) {
      worded(builds, build.code, build.data);
      for (const note of figures.notes) worded(deviceNotes, note.code, note.data);
      for (const short of figures.shortfalls) worded(shortfalls, short.code, short.data);
      for (const other of alternatives) {
        expect(alternativeNames[other.id]).toMatch(/\w/);
        worded(builds, other.build.code, other.build.data);
        worded(comparison, other.changes.code, other.changes.data);
        for (const short of other.shortfalls) worded(shortfalls, short.code, short.data);
      }
    }
  });

  test('lengths to cut have a working that holds', () => {
    for (const { build } of all) {
      if (build.conductorLengthMWorking === null) throw new Error('no working');
      expectWorkingHolds(build.conductorLengthMWorking);
      expect(build.conductorLengthM).toBe(build.conductorLengthMWorking.result.value);
    }
  });

  test('a pair of wires is cut twice', () => {
    const pair = all.find(({ build }) => build.data.isPair === true)?.build;
    expect(pair?.conductorLengthM).toBeCloseTo(
      2 * (Number(pair?.data.conductorM) + Number(pair?.data.secondM ?? 0)),
      9,
    );
  });
});
