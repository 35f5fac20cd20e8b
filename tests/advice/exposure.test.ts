import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandsOf } from '../../src/advice/bands';
import { chainOf } from '../../src/advice/chain/chain';
import { dimensionsOf } from '../../src/advice/dimensions';
import { exposureOf } from '../../src/advice/exposure';
import { limitSets } from '../../src/advice/exposure-tests';
import { roundUpM } from '../../src/advice/exposure-working';
import { type Facts, factsOf } from '../../src/advice/facts';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Exposure } from '../../src/advice/finding';
import type { Working } from '../../src/base/working';
import type { Answers } from '../../src/design/answers';
import { ruleSetIds } from '../../src/design/choices';
import { exposureWords } from '../../src/words/en/exposure';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { expectWorkingHolds } from '../fixtures/evaluate-working';

const dipole: Answers = {
  bands: ['80m', '20m', '10m'],
  radiator: 'straight-wire',
  fedAt: 'centre',
  shackEnd: 'radio',
  heightM: 10,
};

function exposureFor(answers: Answers, field?: FieldFacts): Exposure[] {
  const facts = factsOf(answers) as Facts;
  const dimensions = dimensionsOf(facts);
  const chain = chainOf(facts, dimensions);
  return exposureOf(facts, dimensions, bandsOf(facts, dimensions, chain), field);
}
const on = (list: Exposure[], band: string): Exposure => list.find((each) => each.band === band) as Exposure;

test('a dipole with 100 W on 10 m is kept from the public by the published formula', () => {
  // US bulletin, table 7 (half-wave dipole, 2 dBi, 29.7 MHz, 100 W): 4.0 m uncontrolled; the band's middle and 2.15 dBi are within 0.2 m.
  const tenMetres = on(exposureFor({ ...dipole, bands: ['10m'], ruleSet: 'us-fcc' }), '10m');
  expect(tenMetres.publicM).toBe(4);
  expect(tenMetres.decidedBy.code).toBe('screen');
});

test('near a wire on 80 m common practice stands: 3 m at 100 W, 10 m at 1 kW', () => {
  // Common practice, no source, for the floor; that λ/2π is 13 m there, US rule text of 2019 (47.7/f).
  expect(on(exposureFor({ ...dipole, bands: ['80m'], ruleSet: 'us-fcc' }), '80m').publicM).toBe(3);
  const kilowatt = on(exposureFor({ ...dipole, bands: ['80m'], ruleSet: 'us-fcc', powerW: 1000 }), '80m');
  expect(kilowatt.publicM).toBe(10);
  expect(kilowatt.decidedBy.code).toBe('near-wire');
});

test('pauses give no relief where a limit holds for the crest', () => {
  // ICNIRP: 83 V/m below 10 MHz, without averaging; above 10 MHz only averages count.
  const bands: Answers['bands'] = ['30m', '40m', '20m'];
  const speech = exposureFor({ ...dipole, bands, powerW: 3000, mode: 'voice', transmitShare: 0.01 });
  const steady = exposureFor({ ...dipole, bands, powerW: 3000, mode: 'data' });
  expect(on(speech, '40m').decidedBy.code).toBe('screen-on-crest');
  expect(on(speech, '20m').publicM as number).toBeLessThan(on(steady, '20m').publicM as number);
});

test('an antenna standing on the ground counts reflection fully', () => {
  const base: Answers = { bands: ['10m'], radiator: 'vertical', fedAt: 'base', shackEnd: 'radio', powerW: 1000 };
  const onGround = on(exposureFor(base), '10m');
  const raised = on(exposureFor({ ...base, returnPath: 'elevated-radials', heightM: 2 }), '10m');
  // √(4 / 2.56) = 1.25 (US bulletin, equations 6 and 7).
  expect((onGround.publicM as number) / (raised.publicM as number)).toBeCloseTo(1.25, 1);
});

test('a loop under half a wave round gets no distance, and says why', () => {
  const small = on(
    exposureFor({
      ...dipole,
      bands: ['40m'],
      radiator: 'loop',
      fedAt: 'corner',
      lengthChoice: 'fixed',
      wireLengthM: 6,
      nearestPersonM: 5,
    }),
    '40m',
  );
  expect([small.knowingM, small.publicM, small.nearestPersonOk, small.powerAtNearestPersonW]).toEqual([
    null,
    null,
    null,
    null,
  ]);
  expect(small.decidedBy.code).toBe('small-loop');
});

test('every limit of a band is told with how its number came in', () => {
  const { limits } = on(exposureFor({ ...dipole, bands: ['40m'], ruleSet: 'eu-1999-519' }), '40m');
  // Recommendation 1999/519/EC from memory: two fields; Directive 2013/35/EU: 610/f V/m read in the source, 1.6/f A/m from memory.
  expect(limits.map(({ tier, kind, provenance, averagingMin }) => [tier, kind, provenance, averagingMin])).toEqual([
    ['knowing', 'electric', 'found', 6],
    ['knowing', 'magnetic', 'memory', 6],
    ['public', 'electric', 'memory', 6],
    ['public', 'magnetic', 'memory', 6],
  ]);
});

test('that the Australian levels are the international ones is from memory, every one', () => {
  const { limits } = on(exposureFor({ ...dipole, bands: ['40m'], ruleSet: 'au-rps-s1' }), '40m');
  expect(limits.length).toBe(12);
  for (const { provenance } of limits) expect(provenance).toBe('memory');
});

// E = 20/d V/m and H = 0.02/d A/m per 100 W at every height, from the wire; half of it from the coax; a tenth on the ground.
const aroundM = [0.5, 1, 2, 4, 8];
const groundM = [0, ...aroundM];
const fall = (distancesM: readonly number[], at1m: number): number[] => distancesM.map((d) => at1m / Math.max(d, 0.5));
const part = (name: 'radiator' | 'coax', strength: number) => ({
  part: name,
  around: { electric: fall(aroundM, 20 * strength), magnetic: fall(aroundM, 0.02 * strength) },
  ground: { electric: fall(groundM, 2 * strength), magnetic: fall(groundM, 0.002 * strength) },
});
// At the radio 10 V/m and 0.01 A/m, under the wire a tenth of both.
const places = [
  { place: 'radio', electric: 10, magnetic: 0.01 },
  { place: 'under-wire', electric: 1, magnetic: 0.001 },
] as const;
const solvedOn = (band: '80m' | '40m' | '20m'): FieldFacts => ({
  bands: { [band]: { nearField: { aroundM, groundM, parts: [part('radiator', 1), part('coax', 0.5)], places } } },
});

const actedOn = (there: Exposure): (readonly [number | null, Working | null])[] => [
  [there.knowingM, there.knowingMWorking],
  [there.publicM, there.publicMWorking],
  [there.groundKnowingM, there.groundKnowingMWorking],
  [there.groundPublicM, there.groundPublicMWorking],
  [there.powerAtNearestPersonW, there.powerAtNearestPersonWWorking],
  ...there.parts.flatMap(
    (each) =>
      [
        [each.knowingM, each.knowingMWorking],
        [each.publicM, each.publicMWorking],
      ] as const,
  ),
  ...there.places.flatMap(
    (each) =>
      [
        [each.knowingMostW, each.knowingMostWWorking],
        [each.publicMostW, each.publicMostWWorking],
      ] as const,
  ),
];

describe('a solved field', () => {
  const us: Answers = { ...dipole, bands: ['20m'], ruleSet: 'us-fcc', focusMHz: { '20m': 14 } };

  test('replaces the formula: the last distance at which a limit is passed, with 10 % on the field, rounded up', () => {
    // Public limits at 14 MHz are 824/14 = 58.9 V/m and 2.19/14 = 0.156 A/m: 100 W meet both at 0.5 m; 2500 W make E pass to 1.1 · 5 · 20/58.9 = 1.87 m.
    const small = on(exposureFor(us, solvedOn('20m')), '20m');
    expect([small.publicM, small.groundPublicM, small.decidedBy.code, small.method]).toEqual([
      0.5,
      0,
      'solved-touching',
      'solved',
    ]);
    const large = on(exposureFor({ ...us, powerW: 2500 }, solvedOn('20m')), '20m');
    expect([large.publicM, large.decidedBy.code, large.part]).toEqual([2, 'solved', 'radiator']);
    expect(large.decidedBy.data.kind).toBe('electric');
    expect(large.parts.map(({ publicM }) => publicM)).toEqual([2, 1]);
    expectWorkingHolds(large.publicMWorking as NonNullable<typeof large.publicMWorking>);
  });

  test('gives no relief on the ground to who did not tell the height', () => {
    const { heightM: _height, ...untold } = us;
    const there = on(exposureFor({ ...untold, powerW: 2500 }, solvedOn('20m')), '20m');
    expect(there.groundPublicM).toBe(there.publicM);
  });

  test('is judged on the crest below 10 MHz, whatever the mode', () => {
    const speech: Answers = {
      ...dipole,
      bands: ['40m'],
      ruleSet: 'icnirp-2020',
      powerW: 2500,
      mode: 'voice',
      transmitShare: 0.01,
    };
    const there = on(exposureFor(speech, solvedOn('40m')), '40m');
    // 1.1 · 5 · 20/83 = 1.33 m.
    expect([there.publicM, there.decidedBy.code]).toEqual([1.5, 'solved-on-crest']);
  });

  test('names the power at which the nearest person is at the limit, and none nearer than an arm reaches', () => {
    const there = on(exposureFor({ ...us, nearestPersonM: 2 }, solvedOn('20m')), '20m');
    // (58.9 · 2/(1.1 · 20))² · 100 W = 2864 W, two figures down.
    expect(there.powerAtNearestPersonW).toBe(2800);
    expectWorkingHolds(there.powerAtNearestPersonWWorking as Working);
    const touching = on(exposureFor({ ...us, nearestPersonM: 0.3 }, solvedOn('20m')), '20m');
    expect(touching.powerAtNearestPersonW).toBe(0);
    expectWorkingHolds(touching.powerAtNearestPersonWWorking as Working);
  });

  test('says at each place what part of the limit its field is, and the power that brings it there', () => {
    const there = on(exposureFor({ ...us, powerW: 400 }, solvedOn('20m')), '20m');
    const [radio, under] = there.places;
    // 400 W double a field at 100 W: 1.1 · 2 · 10/58.9 = 0.374 for the public, 1.1 · 2 · 10/131.6 = 0.167 for who knows.
    expect(radio.publicPart).toBeCloseTo(0.374, 3);
    expect(radio.knowingPart).toBeCloseTo(0.167, 3);
    expect(under.publicPart).toBeCloseTo(0.0374, 4);
    // 100 W · (58.9/11)² = 2863 W and, for who knows, more than anything takes.
    expect([radio.publicMostW, radio.knowingMostW, under.publicMostW]).toEqual([2800, 3000, 3000]);
  });

  test('every number to act on has a working that evaluates to it', () => {
    for (const ruleSet of ruleSetIds)
      for (const [powerW, nearestPersonM] of [
        [5, 0.2],
        [400, 1.7],
        [2500, 3],
        [3000, 20],
      ] as const)
        for (const band of ['80m', '40m', '20m'] as const) {
          const answers: Answers = { ...dipole, bands: [band], ruleSet, powerW, nearestPersonM, mode: 'voice' };
          for (const field of [solvedOn(band), undefined]) {
            const there = on(exposureFor(answers, field), band);
            for (const [value, working] of actedOn(there)) {
              expect(working?.result.value).toBe(value);
              expectWorkingHolds(working as Working);
            }
          }
        }
  });

  test('never lets more power, or less told, bring anybody nearer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.constantFrom(...ruleSetIds),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (powerW, ruleSet, transmitShare) => {
          const told: Answers = { ...dipole, bands: ['80m'], ruleSet, powerW, mode: 'voice', transmitShare };
          const { mode: _mode, transmitShare: _share, ...less } = told;
          const [here, more, untold] = [told, { ...told, powerW: 1.5 * powerW }, less].map(
            (answers) => exposureFor(answers, solvedOn('80m'))[0],
          );
          expect(more.publicM as number).toBeGreaterThanOrEqual(here.publicM as number);
          expect(untold.publicM as number).toBeGreaterThanOrEqual(here.publicM as number);
          expect(here.knowingM as number).toBeLessThanOrEqual(here.publicM as number);
          expect(here.publicM as number).toBeGreaterThanOrEqual(0.5);
        },
      ),
    );
  });
});

test('distances are rounded up to half a metre', () => {
  expect([0.01, 0.5, 0.51, 3].map(roundUpM)).toEqual([0.5, 0.5, 1, 3]);
});

describe('laws', () => {
  const someAnswers = fc.record({
    ruleSet: fc.constantFrom(...ruleSetIds),
    powerW: fc.double({ min: 1, max: 3000, noNaN: true }),
    band: fc.constantFrom('160m', '80m', '60m', '40m', '30m', '20m', '17m', '15m', '12m', '10m', '6m'),
    mode: fc.constantFrom('voice', 'cw', 'data', 'fm', 'am'),
    transmitShare: fc.double({ min: 0, max: 1, noNaN: true }),
    nearestPersonM: fc.double({ min: 0, max: 60, noNaN: true }),
  });
  const build = ({ band, ...rest }: { band: string }): Answers => ({ ...dipole, bands: [band], ...rest }) as Answers;

  test('what is not told never brings people nearer', () => {
    fc.assert(
      fc.property(someAnswers, (given) => {
        const told = exposureFor(build(given))[0];
        const { mode: _mode, transmitShare: _share, ...less } = given;
        const untold = exposureFor(build(less))[0];
        expect(untold.publicM as number).toBeGreaterThanOrEqual(told.publicM as number);
        expect(untold.knowingM as number).toBeGreaterThanOrEqual(told.knowingM as number);
      }),
    );
  });

  test('people who know may be nearer, never have to stay farther; more power never brings anybody nearer', () => {
    fc.assert(
      fc.property(someAnswers, (given) => {
        const here = exposureFor(build(given))[0];
        const more = exposureFor(build({ ...given, powerW: Math.min(given.powerW * 1.5, 3000) } as typeof given))[0];
        expect(here.knowingM as number).toBeLessThanOrEqual(here.publicM as number);
        expect(more.publicM as number).toBeGreaterThanOrEqual(here.publicM as number);
      }),
    );
  });

  test('the power named for the nearest person keeps the distance', () => {
    fc.assert(
      fc.property(someAnswers, (given) => {
        const here = exposureFor(build(given))[0];
        expect(here.nearestPersonOk).toBe(given.nearestPersonM >= (here.publicM as number));
        const mostW = here.powerAtNearestPersonW as number;
        if (mostW < 1) return;
        // The stated distance is rounded up, so it may pass the person by less than that step.
        const then = exposureFor(build({ ...given, powerW: mostW } as typeof given))[0];
        expect((then.publicM as number) - given.nearestPersonM).toBeLessThan(0.5 + 1e-9);
      }),
    );
  });

  test('each working evaluates to the distance beside it', () => {
    fc.assert(
      fc.property(someAnswers, (given) => {
        const here = exposureFor(build(given))[0];
        for (const [metres, working] of [
          [here.publicM, here.publicMWorking],
          [here.knowingM, here.knowingMWorking],
        ] as const) {
          if (working === null) throw new Error('a computed distance has its working');
          expect(working.result.value).toBe(metres);
          expectWorkingHolds(working);
        }
      }),
      { numRuns: 40 },
    );
  });
});

test('every rule set judges both groups of people on every band, in words', () => {
  const format = createFormat('metric');
  const seen = new Set<string>();
  for (const ruleSet of ruleSetIds) {
    expect(limitSets[ruleSet].public.length).toBeGreaterThan(0);
    for (const powerW of [5, 100, 1500])
      for (const { decidedBy, publicM, knowingM } of exposureFor({
        ...dipole,
        bands: ['160m', '40m', '20m', '6m'],
        ruleSet,
        powerW,
        mode: 'voice',
      })) {
        seen.add(decidedBy.code);
        expect([publicM, knowingM].every((metres) => metres !== null && metres >= 0.5)).toBe(true);
        const sentence = render(exposureWords[decidedBy.code as keyof typeof exposureWords], decidedBy.data, format);
        expect(sentence).not.toMatch(/undefined|NaN|\bsafe/i);
      }
  }
  expect([...seen].sort()).toEqual(['end-of-near-field', 'near-wire', 'screen', 'screen-on-crest']);
});
