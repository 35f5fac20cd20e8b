/** What the plan says of a field study: every sentence filled, at the operator's power, and no figure finer than it bears. Invented antennas. */
import { beforeAll, describe, expect, test, vi } from 'vitest';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { studyField } from '../../src/plan/field-study';
import { makePlan } from '../../src/plan/make-plan';
import type { Plan } from '../../src/plan/plan-schema';
import { instrument } from './field-support';

// Whole antennas are solved here, in plain code.
vi.setConfig({ testTimeout: 120_000 });

const offCentre: Answers = {
  bands: ['80m', '40m'],
  radiator: 'straight-wire',
  fedAt: 'off-centre',
  shackEnd: 'radio-tuner',
  heightM: 9,
  feedLineLengthM: 25,
  powerW: 400,
  onHand: [{ part: 'beads', count: 20, line: 'rg-58' }],
};
const endFed: Answers = { ...offCentre, fedAt: 'end' };
const doublet: Answers = { ...offCentre, fedAt: 'centre', feedLine: 'open-wire', shackEnd: 'balanced-tuner' };

const facts = new Map<Answers, FieldFacts>();
beforeAll(async () => {
  for (const answers of [offCentre, endFed, doublet]) {
    const found = await studyField(answers, instrument);
    if (found !== null) facts.set(answers, found);
  }
}, 60_000);

function planOf(answers: Answers): Plan {
  const field = facts.get(answers);
  if (field === undefined) throw new Error('not solved');
  return makePlan(answers, { field });
}

const saidBy = ({ fieldStudy, disputes }: Plan): string[] => [
  ...(fieldStudy?.bands.flatMap(({ text }) => text) ?? []),
  ...(fieldStudy?.lengths?.text ?? []),
  ...(fieldStudy?.chokes?.text ?? []),
  ...(fieldStudy?.confidence ?? []),
  ...disputes.map(({ decides }) => decides),
];

test.each([offCentre, endFed, doublet])('$fedAt $feedLine: every sentence is whole', (answers) => {
  for (const sentence of saidBy(planOf(answers)))
    expect(sentence).toMatch(/^(?!.*(undefined|NaN|Infinity|null)).{20,}[.]$/);
});

test('on open-wire line with a tuner no dip is looked for', () => {
  const notes = (answers: Answers) => planOf(answers).bands.flatMap((band) => band.notes);
  expect(notes(doublet).filter((note) => /dip|lowest SWR/.test(note))).toEqual([]);
  expect(notes(offCentre).some((note) => /dip|lowest SWR/.test(note))).toBe(true);
});

describe('at 400 W', () => {
  test('the box of an end-fed is told to stand at no fewer volts than were solved on its lowest band', () => {
    const { chain, voltages } = planOf(endFed);
    const reason = chain.find(({ device }) => device === 'transformer')?.why[0]?.text ?? '';
    const said = Number((/about ([\d,]+) V peak/.exec(reason)?.[1] ?? '0').replace(',', ''));
    expect(said).toBeGreaterThan(0.95 * Math.SQRT2 * (voltages[0]?.feedPointV ?? Number.POSITIVE_INFINITY));
  });

  test('currents are twice those of 100 W, to one digit and a half', () => {
    const plan = planOf(offCentre);
    const none = plan.fieldStudy?.bands[0]?.noChoke?.entryMa ?? 0;
    const said = /with no choke about ([\d,]+) mA/.exec(plan.fieldStudy?.bands[0]?.text[0] ?? '')?.[1] ?? '';
    const figure = Number(said.replace(',', ''));
    expect(Math.abs(figure / (2 * none) - 1)).toBeLessThan(0.3);
    expect(figure.toString().replace(/0+$/, '')).toMatch(/^(\d|\d5)$/);
  });

  test('the table of bands stays at 100 W, as its key says', () => {
    const plan = planOf(offCentre);
    expect(plan.bands[0]?.entryCurrentMa).toBe(plan.fieldStudy?.bands[0]?.planned?.entryMa);
  });
});

test('each dispute that was settled here says so, and its source is the solution of this antenna', () => {
  const settled = (answers: Answers) =>
    planOf(answers)
      .disputes.filter(({ source }) => source.id === 'this-antenna-solved')
      .map(({ id }) => id);
  expect(settled(offCentre)).toEqual(['D1', 'D5']);
  expect(settled(endFed)).toEqual(['D2', 'D3', 'D5']);
  expect(settled(doublet)).toEqual(['D4']);
  const withoutField = makePlan(offCentre).disputes.map(({ decides }) => decides);
  expect(planOf(offCentre).disputes[0]?.decides).not.toBe(withoutField[0]);
});

test('100 W from the radio are told to the last: line, devices, ground and what is radiated', () => {
  for (const answers of [offCentre, endFed]) {
    const plan = planOf(answers);
    for (const [i, { radiatedW, efficiency }] of (plan.fieldStudy?.bands ?? []).entries()) {
      const { lineLossDb, deviceLossDb } = plan.bands[i] ?? {};
      const lostDb = (lineLossDb ?? 0) + (deviceLossDb ?? 0);
      expect(radiatedW).toBeCloseTo(100 * (efficiency ?? 0) * 10 ** (-lostDb / 10), 9);
    }
  }
});

test('where it sends: shares of what is radiated add up to all of it', () => {
  for (const { elevationShares, azimuth } of planOf(endFed).fieldStudy?.bands ?? []) {
    expect(elevationShares?.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(azimuth).toHaveLength(72);
    expect(Math.max(...(azimuth ?? []).map(({ db }) => db))).toBeLessThan(0.01);
  }
});

describe('what the solver doubts of the wires', () => {
  const doublet20: Answers = { bands: ['20m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };

  test('is said once for each code, and not at all where there is none', async () => {
    const warning = { wire: 'leg', data: {} };
    const found = await studyField(doublet20, {
      ...instrument,
      solve: async (geometry) => ({
        ...(await instrument.solve(geometry)),
        warnings: [
          { ...warning, code: 'ground-close' },
          { ...warning, code: 'ground-close' },
          { ...warning, code: 'wires-close' },
        ],
      }),
    });
    if (found === null) throw new Error('not solved');
    const confidence = makePlan(doublet20, { field: found }).fieldStudy?.confidence ?? [];
    expect(confidence.filter((text) => /almost on the ground/.test(text))).toHaveLength(1);
    expect(confidence.filter((text) => /nearer to each other/.test(text))).toHaveLength(1);
    expect(planOf(offCentre).fieldStudy?.confidence.join()).not.toMatch(/almost on the ground|nearer to each other/);
  });

  test('has words for every code', () => {
    for (const doubt of ['wires-close', 'segment-short', 'segment-thick', 'ground-close'] as const) {
      const [plain, doubted] = [{}, { doubts: [doubt] }].map(
        (band) => makePlan(doublet20, { field: { bands: { '20m': band } } }).fieldStudy?.confidence ?? [],
      );
      expect(doubted).toHaveLength((plain?.length ?? 0) + 1);
    }
  });
});
