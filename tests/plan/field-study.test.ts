/** The study of whole antennas, and what the plan makes of it. Antennas are invented. */
import { describe, expect, test, vi } from 'vitest';
import type { FieldFacts } from '../../src/advice/field-facts';
import { InputError } from '../../src/base/input-error';
import { Answers } from '../../src/design/answers';
import type { FieldInstrument } from '../../src/plan/field/instrument';
import type { StudyOptions } from '../../src/plan/field/watched';
import { studyField } from '../../src/plan/field-study';
import { makePlan } from '../../src/plan/make-plan';
import { Plan } from '../../src/plan/plan-schema';
import { decibels, instrument } from './field-support';

// Whole antennas are solved here, in plain code.
vi.setConfig({ testTimeout: 120_000 });

const FOOT_M = 0.3048;
const bare = { wire: 'copper-2.0mm-bare', shackEnd: 'radio', feedLineLengthM: 25 } as const;

const dipole: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'centre', heightM: 12, ...bare };
const offCentre: Answers = {
  ...dipole,
  bands: ['80m', '40m'],
  fedAt: 'off-centre',
  heightM: 9,
  shackEnd: 'radio-tuner',
};
const endFed: Answers = { ...offCentre, fedAt: 'end', bands: ['80m', '40m', '20m'] };

async function solved(answers: Answers, options: StudyOptions = {}): Promise<FieldFacts> {
  const facts = await studyField(answers, instrument, options);
  if (facts === null) throw new Error('nothing to solve');
  return facts;
}

function everyNumber(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => everyNumber(each, `${path}.${key}`));
}

describe('lengths solved for the site lie by the rules of print', () => {
  // The common rule for a half-wave of wire, 468 ft MHz, and for a loop, 1005 ft MHz: amateur radio handbooks.
  test('half-wave within 4 % of 468 / f', async () => {
    const { lengths } = await solved(dipole);
    expect(lengths?.by).toBe('resonance');
    expect(Math.abs((lengths?.radiatorM ?? 0) / ((468 / 7.1) * FOOT_M) - 1)).toBeLessThan(0.04);
  });

  test('loop within 4 % of 1005 / f', async () => {
    const loop: Answers = { ...dipole, radiator: 'loop', fedAt: 'side-middle', heightM: 5, supportHeightM: 16 };
    const { lengths } = await solved(loop);
    expect(Math.abs((lengths?.radiatorM ?? 0) / ((1005 / 7.1) * FOOT_M) - 1)).toBeLessThan(0.04);
  });

  test('insulation shortens, by 1 to 5 % (published shortening of insulated wire)', async () => {
    const ofBare = (await solved(dipole)).lengths?.radiatorM ?? 0;
    const ofCoated = (await solved({ ...dipole, wire: 'pvc-1.5mm2' })).lengths?.radiatorM ?? 0;
    expect(1 - ofCoated / ofBare).toBeGreaterThan(0.01);
    expect(1 - ofCoated / ofBare).toBeLessThan(0.05);
  });

  test('at the solved length the feed point shows no reactance', async () => {
    const { bands } = await solved(dipole);
    expect(Math.abs(bands['40m']?.feedPoint?.x ?? 99)).toBeLessThan(1);
  });
});

test('a wire for several bands is cut for the least worst SWR, never worse than the rule’s length', async () => {
  const { lengths } = await solved(offCentre);
  const worst = (of: 'rule' | 'chosen') => Math.max(...(lengths?.swr ?? []).map((each) => each[of]));
  expect(lengths?.by).toBe('worst-swr');
  expect(lengths?.swr.map(({ band }) => band)).toEqual(['80m', '40m']);
  expect(worst('chosen')).toBeLessThanOrEqual(worst('rule') + 0.1);
});

describe('an end-fed half-wave', () => {
  test('keeps the coax above the choke as its counterpoise, about 4 m on 80 m (common practice, no source)', async () => {
    const plan = makePlan(endFed, { field: await solved(endFed) });
    const choke = plan.chain.find(({ device }) => device === 'choke');
    expect(choke?.distanceM).toBeGreaterThan(3.8);
    expect(choke?.distanceM).toBeLessThan(4.4);
  });

  test('shows in the plan what was solved: currents, duty, SWR over the band, and where the numbers are from', async () => {
    const field = await solved(endFed);
    const plan = makePlan(endFed, { field });
    const row = plan.bands.find(({ band }) => band === '40m');
    const study = plan.fieldStudy?.bands.find(({ band }) => band === '40m');
    expect(row?.entryCurrentMa).toBe(study?.planned?.entryMa);
    expect(decibels((study?.planned?.entryMa ?? 0) / 1000 / (study?.feedCurrentA ?? 1))).toBeCloseTo(
      row?.shieldCurrentDb ?? 0,
      6,
    );
    expect(100 / (study?.feedCurrentA ?? 0) ** 2).toBeCloseTo(row?.feedPoint?.r ?? 0, 6);
    expect(row?.swrSweep).toHaveLength(21);
    expect(row?.swrSweep?.every(({ swr }) => swr >= 1)).toBe(true);
    const wire = plan.cuts.find(({ piece }) => piece === 'wire');
    expect(wire?.finishedM).toBeCloseTo(field.lengths?.radiatorM ?? 0, 9);
    expect(Object.values(wire?.working.inputs ?? {}).map(({ from }) => from)).toContain('solved');
    expect(plan.fieldStudy?.lengths?.ruleM).toBeCloseTo(makePlan(endFed).cuts[0]?.finishedM ?? 0, 9);
  });

  test('chokes that are owned are told beside the planned ones and none', async () => {
    const owner: Answers = {
      ...endFed,
      bands: ['40m'],
      onHand: [{ part: 'choke', core: 'ft240-31', count: 1, turns: 12, line: 'rg-400' }],
    };
    const { noChoke, owned, planned } = (await solved(owner)).bands['40m'] ?? {};
    expect(owned?.places).toHaveLength(1);
    expect(owned?.entryMa).toBeLessThan(noChoke?.entryMa ?? 0);
    expect(owned?.entryMa).toBeGreaterThan(planned?.entryMa ?? Number.POSITIVE_INFINITY);
  });
});

test('chokes are chosen so that at most 30 mA per 100 W enter, and the house set stays where it does', async () => {
  for (const answers of [dipole, offCentre, endFed]) {
    const { chokes } = await solved(answers);
    expect(chokes?.goalMet).toBe(true);
    expect(chokes?.chosen.worstMa).toBeLessThanOrEqual(30);
    if ((chokes?.house.worstMa ?? 0) <= 30) expect(chokes?.chosen).toBe(chokes?.house);
  }
});

describe('every plan with a field', () => {
  const antennas: Answers[] = [
    dipole,
    offCentre,
    { ...endFed, lengthChoice: 'non-resonant', bands: ['40m', '20m'] },
    { ...dipole, radiator: 'vertical', fedAt: 'base', heightM: 2, bands: ['20m'] },
    { ...dipole, radiator: 'inverted-l', fedAt: 'base', heightM: 0.2, supportHeightM: 10, radialCount: 4 },
    { ...dipole, radiator: 'parallel-wires', bands: ['40m', '20m'] },
    { ...dipole, radiator: 'folded-wire' },
    { ...dipole, radiator: 'inverted-v', endHeightM: 4, feedLineRoute: 'along', houseEarth: 'both' },
    { ...dipole, feedLine: 'open-wire', shackEnd: 'balanced-tuner', bands: ['40m', '20m'] },
    { ...dipole, station: 'portable', feedLineLengthM: 8 },
  ].map((answers) => Answers.parse(answers));

  test.each(antennas)('$radiator $fedAt $feedLine: keeps its schema, holds no number that is none', async (answers) => {
    const plan = makePlan(answers, { field: await solved(answers) });
    expect(Plan.safeParse(plan).error).toBeUndefined();
    expect(everyNumber(plan).filter(([, value]) => !Number.isFinite(value))).toEqual([]);
    expect(plan.fieldStudy?.bands.map(({ band }) => band)).toEqual(plan.bands.map(({ band }) => band));
    for (const { efficiency } of plan.fieldStudy?.bands ?? []) {
      expect(efficiency).toBeGreaterThan(0.05);
      expect(efficiency).toBeLessThan(1);
    }
  });
});

describe('nothing is solved', () => {
  test('where no antenna is chosen, the shape is not known, or nothing but the wire meets at the feed point', async () => {
    const never: FieldInstrument = {
      prepare: () => Promise.reject(new Error('asked')),
      solve: () => Promise.reject(new Error('asked')),
      withLoads: instrument.withLoads,
    };
    const which: Answers = { bands: ['40m'], fedAt: 'end', shackEnd: 'radio' };
    const other: Answers = { ...dipole, radiator: 'other', feedImpedance: { r: 100, x: 0 } };
    const loose: Answers = { ...endFed, feedLine: 'none', returnPath: 'none', lengthChoice: 'fixed', wireLengthM: 40 };
    for (const answers of [which, other, loose]) expect(await studyField(answers, never)).toBeNull();
  });
});

describe('a study', () => {
  test('tells its progress and hands out facts before it is done', async () => {
    const seen: number[] = [];
    const partial: FieldFacts[] = [];
    const all = await solved(dipole, {
      onProgress: (done, of) => {
        expect(done).toBeLessThanOrEqual(of);
        seen.push(done);
      },
      onPartial: (facts) => partial.push(facts),
    });
    expect(seen).toEqual(seen.map((_, i) => i + 1));
    expect(partial[0]?.bands['40m']?.entryCurrentMa).toBe(all.bands['40m']?.entryCurrentMa);
    expect(partial[0]?.bands['40m']?.sweep).toBeUndefined();
  });

  test('called off asks the solver nothing more', async () => {
    let asked = 0;
    let isCancelled = false;
    const counting: FieldInstrument = {
      ...instrument,
      prepare: (geometry, frequenciesHz) => {
        asked++;
        isCancelled = true;
        return instrument.prepare(geometry, frequenciesHz);
      },
    };
    const study = studyField(dipole, counting, { isCancelled: () => isCancelled });
    await expect(study).rejects.toThrow(InputError);
    await expect(study).rejects.toMatchObject({ code: 'cancelled' });
    expect(asked).toBe(1);
  });
});
