import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Before, Caution, Step } from '../../src/advice/finding';
import { powerLineVerdict } from '../../src/advice/power-line';
import { cautionsBefore, type StepId, stepGates } from '../../src/advice/steps';
import { feedPositionsOf } from '../../src/advice/system';
import { wireEndVoltage } from '../../src/advice/wire-end-voltage';
import { bandIds } from '../../src/catalog/band-ids';
import { feedLineIds } from '../../src/catalog/line-ids';
import { sources } from '../../src/catalog/sources';
import { wireIds } from '../../src/catalog/wire-ids';
import { lengthChoiceIds, radiatorIds, returnPathIds, ruleSetIds, shackEndIds } from '../../src/design/choices';
import { cautionLines, cautionNames } from '../../src/words/en/cautions';
import { stepNames, steps as stepWords } from '../../src/words/en/steps';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { everyCombination } from './combinations';
import { mandatoryCautions } from './mandatory-cautions';
import { type GivenAnswers, wholePlan } from './whole-plan';

/** Thousands of antennas, each with its parts designed, on a machine that may be busy. */
const MANY_MS = 120_000;

const formats = [createFormat('metric'), createFormat('imperial')];
/** First line of each mandatory caution, by the project's own list of cautions. */
const firstLine: Readonly<Record<string, number>> = {
  'power-lines': 1,
  'fall-path': 2,
  'rf-exposure': 8,
  'not-alone': 9,
  climbing: 11,
  launching: 17,
  'trip-and-tread': 29,
  'wire-ends-voltage': 34,
  lightning: 43,
  'local-codes': 44,
};
const distanceOf = (cautions: readonly Caution[]): number | null | undefined =>
  cautions.find(({ distanceM }) => distanceM !== null)?.distanceM;

describe('distance to overhead lines', () => {
  // CPSC instructions printed with antennas (16 CFR 1402.4): twice the mast and antenna; 29 CFR 1926.1408(a)(2): 20 ft, 6 m, where the
  // voltage is not known. A 20 m wire over an 8 m support: 2 (8 + 20.8) + 6 = 63.6, rounded up.
  test('is twice support and cut wire, and 6 m more, rounded up', () => {
    const { cautions, cuts } = wholePlan({ supportHeightM: 8, heightM: 1.5 });
    const cutM = cuts.find(({ piece }) => piece === 'wire')?.cutM ?? Number.NaN;
    expect(distanceOf(cautions)).toBe(Math.ceil(2 * (8 + cutM) + 6));
  });

  test('counts both legs where they go up as one, and one leg under an inverted V', () => {
    const straight = wholePlan({ fedAt: 'centre', heightM: 8 });
    const legM = straight.cuts.find(({ piece }) => piece === 'leg')?.cutM ?? Number.NaN;
    expect(distanceOf(straight.cautions)).toBe(Math.ceil(2 * (8 + 2 * legM) + 6));
    const bent = wholePlan({ radiator: 'inverted-v', fedAt: 'centre', heightM: 8 });
    expect(distanceOf(bent.cautions)).toBe(Math.ceil(2 * (8 + legM) + 6));
  });

  test('decides: stop away from home, ask the operator at home, clear beyond it', () => {
    const verdictFor = (given: GivenAnswers): string => {
      const { facts, cautions } = wholePlan(given);
      return powerLineVerdict(facts, cautions).verdict;
    };
    expect(verdictFor({})).toBe('not-told');
    expect(verdictFor({ nearestPowerLineM: 30 })).toBe('ask-operator');
    expect(verdictFor({ nearestPowerLineM: 30, station: 'portable' })).toBe('stop');
    expect(verdictFor({ nearestPowerLineM: 200, station: 'portable' })).toBe('clear');
  });
});

// Ohm's law: 100 W into 2450 Ω is 495 V rms, 5 W is 111 V rms.
test.each([
  { powerW: 100, volts: 495 },
  { powerW: 5, volts: 111 },
])('a wire end at $powerW W stands at $volts V', ({ powerW, volts }) => {
  expect(Math.round(wireEndVoltage(powerW, true).volts)).toBe(volts);
});

describe('cautions', () => {
  test('all 49 lines are worded with a known source, both ways of writing lengths', () => {
    const [{ data } = { data: {} }] = wholePlan({}).cautions;
    expect(Object.keys(cautionLines)).toHaveLength(49);
    for (const [number, { act, reason, source }] of Object.entries(cautionLines)) {
      expect(Object.keys(sources), number).toContain(source);
      for (const format of formats) {
        const text = `${render(act, data, format)} ${render(reason, data, format)}`;
        expect(text, number).not.toMatch(/NaN|undefined|null|Infinity|\bsafe\b/);
      }
    }
  });

  test('the lines that carry numbers say those of the plan', () => {
    const { cautions } = wholePlan({ powerW: 100, mode: 'data' }, 4.2);
    const [{ data } = { data: {} }] = cautions;
    const [metric] = formats;
    const said = (number: number): string =>
      render(cautionLines[number].act, data, metric) + render(cautionLines[number].reason, data, metric);
    expect(said(2)).toContain(`${distanceOf(cautions)}.0\u00a0m`);
    expect(said(8)).toContain('4.20\u00a0m');
    expect(said(28)).toContain('14 AWG');
    expect(said(31)).toContain('100 W digital');
    expect(said(34)).toContain('about 490 volts');
    expect(said(43)).toContain('30 minutes');
  });

  test.each<[GivenAnswers, string]>([
    [{ radiator: 'straight-wire', fedAt: 'centre' }, 'Put the wire ends beyond reach.'],
    [{ radiator: 'inverted-v', fedAt: 'end' }, 'Put the wire ends and the feed point beyond reach.'],
    [{ radiator: 'loop', fedAt: 'corner' }, 'Put the whole loop beyond reach.'],
    [
      { radiator: 'linked-wire', fedAt: 'centre', bands: ['40m', '20m'] },
      'Put the wire ends and the open links beyond reach.',
    ],
    [{ radiator: 'linked-wire', fedAt: 'centre', bands: ['40m'] }, 'Put the wire ends beyond reach.'],
    [
      { radiator: 'straight-wire', fedAt: 'centre', feedLine: 'window-line', shackEnd: 'wide-tuner' },
      'Put the wire ends and the open-wire line beyond reach.',
    ],
    [{ radiator: 'vertical', fedAt: 'base' }, 'Put the wire ends beyond reach.'],
    [
      { radiator: 'vertical', fedAt: 'base', lengthChoice: 'non-resonant', shackEnd: 'wide-tuner' },
      'Put the wire ends and the feed point beyond reach.',
    ],
  ])('high voltage is named where this antenna has it: %o', (given, said) => {
    const [{ data } = { data: {} }] = wholePlan(given).cautions;
    expect(render(cautionLines[34].act, data, formats[0])).toBe(said);
  });

  test('the wire size that the code asks stands only where wire hangs between supports', () => {
    const linesOf = (given: GivenAnswers): number[] => wholePlan(given).cautions.flatMap(({ lines }) => lines);
    expect(linesOf({})).toContain(28);
    expect(linesOf({ radiator: 'vertical', fedAt: 'base' })).not.toContain(28);
  });

  test('an airfield is named from 6 m up, nerve limits where the rule set has one below 10 MHz', () => {
    const linesOf = (given: GivenAnswers): number[] => wholePlan(given).cautions.flatMap(({ lines }) => lines);
    expect(linesOf({ supportHeightM: 5, heightM: 5 })).not.toContain(7);
    expect(linesOf({ supportHeightM: 7, heightM: 5 })).toContain(7);
    expect(linesOf({ ruleSet: 'icnirp-2020' })).toContain(33);
    expect(linesOf({ ruleSet: 'us-fcc' })).not.toContain(33);
    expect(linesOf({ ruleSet: 'icnirp-2020', bands: ['20m'] })).not.toContain(33);
  });

  test('leaving belongs to a portable station', () => {
    const ids = (given: GivenAnswers): string[] => wholePlan(given).cautions.map(({ id }) => id);
    expect(ids({ station: 'portable' })).toContain('leaving');
    expect(ids({})).not.toContain('leaving');
  });
});

const gatesOf = (id: string): readonly Before[] => stepGates[id as StepId];

const said = new Map<string, number>();

/** Renders the first plans that reach a sentence; of all the others the numbers alone are looked at, which is a thousand times quicker. */
function sayStep({ code, data }: Step): void {
  for (const value of Object.values(data))
    if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${code} carries ${value}`);
  const times = (said.get(code) ?? 0) + 1;
  said.set(code, times);
  if (times > 50) return;
  for (const format of formats) {
    const text = render(stepWords[code], data, format);
    if (/NaN|undefined|null|Infinity/.test(text) || text.length < 3) throw new Error(`${code}: ${text}`);
  }
}

/** What must hold of every plan: complete cautions, each on a gate of at most three lines, before the step it belongs to. */
function holds({ cautions, steps }: { cautions: readonly Caution[]; steps: readonly Step[] }): void {
  const outdoors = steps.some(({ outdoor }) => outdoor);
  if (outdoors) {
    for (const id of mandatoryCautions) {
      const lines = cautions.filter((each) => each.id === id).flatMap((each) => each.lines);
      if (!lines.includes(firstLine[id])) throw new Error(`${id} lacks its first line`);
    }
    if (!cautions.some(({ distanceM }) => distanceM !== null)) throw new Error('no distance to overhead lines');
  }
  for (const { id, lines, distanceM } of cautions) {
    if (lines.length < 1 || lines.length > 3) throw new Error(`${id} has ${lines.length} lines`);
    if (distanceM !== null && !(Number.isInteger(distanceM) && distanceM > 6)) throw new Error(`${id}: ${distanceM}`);
    for (const value of Object.values(cautions[0].data))
      if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${id} carries ${value}`);
  }
  const reached = new Set(steps.flatMap(({ id }) => cautionsBefore(id as StepId, cautions)));
  const missed = cautions.find((caution) => !reached.has(caution));
  if (missed !== undefined) throw new Error(`${missed.id} before ${missed.before} stands before no step`);
  for (const [index, step] of steps.entries()) {
    if (step.outdoor && step.cautions.length === 0) throw new Error(`${step.id} opens without a caution`);
    if (step.outdoor && index > 0 && !steps.slice(0, index + 1).some(({ id }) => gatesOf(id).includes('site')))
      throw new Error(`${step.id} comes before the site was looked at`);
    sayStep(step);
    if (stepNames[step.id] === undefined) throw new Error(`${step.id} has no name`);
  }
}

describe('steps', () => {
  test('in order: site before cutting, cutting before raising, test before full power, leaving last', () => {
    const ids = wholePlan({ station: 'portable' }).steps.map(({ id }) => id);
    expect(ids).toEqual([
      'make-boxes',
      'pack',
      'walk-site',
      'thunder',
      'cut-wire',
      'lay-out',
      'plan-lift',
      'launch',
      'raise',
      'connect',
      'mark',
      'measure',
      'trim',
      'transmit-test',
      'leave',
    ]);
  });

  test('a non-resonant wire is tuned, not trimmed, and only behind the cautions for transmitting', () => {
    const { steps } = wholePlan({ lengthChoice: 'non-resonant', shackEnd: 'wide-tuner' });
    expect(steps.some(({ id }) => id === 'trim')).toBe(false);
    expect(steps.find(({ id }) => id === 'set-tuner')?.cautions).toContain('rf-exposure');
  });

  const stepText = (given: GivenAnswers, wanted: StepId): string => {
    const step = wholePlan(given).steps.find(({ id }) => id === wanted)!;
    return render(stepWords[step.code], step.data, createFormat('metric'));
  };

  test('a transformer at the end of the line is named with the choke there', () => {
    const twin = stepText({ radiator: 'folded-wire', fedAt: 'centre', feedLine: 'twin-lead' }, 'connect');
    expect(twin).toContain('Transformer and choke go at');
    expect(stepText({ fedAt: 'centre' }, 'connect')).toContain('Chokes go at the feed point and at');
  });

  test('a loop has no ends to mark', () => {
    expect(stepText({ fedAt: 'centre' }, 'mark')).toMatch(/\bends\b/);
    const loop = stepText({ radiator: 'loop', fedAt: 'corner' }, 'mark');
    expect(loop).toContain('the lowest run of the wire');
    expect(loop).not.toMatch(/\bends?\b/);
  });

  test('the first test is at 10 W, or all that there is', () => {
    expect(stepText({ powerW: 100 }, 'transmit-test')).toContain('Then go up to 100 W.');
    expect(stepText({ powerW: 10 }, 'transmit-test')).not.toContain('Then go up');
    const firstW = (powerW: number): unknown =>
      wholePlan({ powerW }).steps.find(({ id }) => id === 'transmit-test')?.data.firstW;
    expect(firstW(100)).toBe(10);
    expect(firstW(5)).toBe(5);
  });

  test(
    'every combination has its cautions before its steps, and every sentence is reached',
    () => {
      const codes = new Set<string>();
      const ids = new Set<string>();
      const lines = new Set<number>();
      for (const answers of everyCombination()) {
        const plan = wholePlan(answers);
        holds(plan);
        for (const { id, code } of plan.steps) codes.add(code).add(id);
        for (const { id, lines: shown } of plan.cautions) {
          ids.add(id);
          for (const each of shown) lines.add(each);
        }
      }
      expect(Object.keys(stepWords).filter((code) => !codes.has(code))).toEqual([]);
      expect(Object.keys(stepNames).filter((id) => !codes.has(id))).toEqual([]);
      expect([...ids].sort()).toEqual(Object.keys(cautionNames).sort());
      expect(Object.keys(cautionLines).filter((number) => !lines.has(Number(number)))).toEqual([]);
    },
    MANY_MS,
  );

  const metres = (most: number): fc.Arbitrary<number> => fc.double({ min: 0.5, max: most, noNaN: true });
  const site = fc.record(
    {
      bands: fc.uniqueArray(fc.constantFrom(...bandIds), { minLength: 1, maxLength: 6 }),
      lengthChoice: fc.constantFrom(...lengthChoiceIds),
      wireLengthM: metres(120),
      feedFraction: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      spanM: metres(90),
      heightM: fc.double({ min: 0, max: 40, noNaN: true }),
      endHeightM: fc.double({ min: 0, max: 40, noNaN: true }),
      supportHeightM: fc.double({ min: 0, max: 40, noNaN: true }),
      wire: fc.constantFrom(...wireIds),
      returnPath: fc.constantFrom(...returnPathIds),
      radialCount: fc.integer({ min: 0, max: 120 }),
      feedLine: fc.constantFrom(...feedLineIds),
      feedLineLengthM: metres(60),
      entryDistanceM: fc.double({ min: 0, max: 60, noNaN: true }),
      ruleSet: fc.constantFrom(...ruleSetIds),
      station: fc.constantFrom('home' as const, 'portable' as const),
      indoors: fc.boolean(),
      powerW: fc.double({ min: 0.1, max: 3000, noNaN: true }),
      shackEnd: fc.constantFrom(...shackEndIds),
      loopShape: fc.constantFrom('square' as const, 'triangle' as const),
      loopPlane: fc.constantFrom('upright' as const, 'flat' as const),
    },
    { requiredKeys: ['bands', 'shackEnd'] },
  );
  const fed = fc.constantFrom(
    ...radiatorIds.flatMap((radiator) => feedPositionsOf[radiator].map((fedAt) => ({ radiator, fedAt }))),
  );

  test(
    'any site and any wire: numbers stay finite and cautions complete',
    () => {
      fc.assert(
        fc.property(fed, site, fc.option(metres(50)), (feed, given, keepOutM) => {
          const plan = wholePlan({ ...feed, ...given }, keepOutM);
          holds(plan);
          const numbers = [
            ...plan.cuts.flatMap(({ finishedM, cutM, toleranceM, marksM }) => [finishedM, cutM, toleranceM, ...marksM]),
            ...plan.parts.map(({ quantity }) => quantity),
          ];
          expect(numbers.every((n) => Number.isFinite(n) && n > 0)).toBe(true);
        }),
        { numRuns: 400 },
      );
    },
    MANY_MS,
  );
});
