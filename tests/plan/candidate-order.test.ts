/** The order of candidates and what each counts for, with made-up scores. */
import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { orderCandidates } from '../../src/plan/candidate-order';
import { type Candidate, entryPoints, pointsOf, type Score } from '../../src/plan/candidate-points';
import { usefulDb } from '../../src/plan/candidate-score';
import { makePlan } from '../../src/plan/make-plan';
import { thingsToBuy } from '../../src/plan/things-to-buy';
import { createFormat } from '../../src/words/format';

const format = createFormat('metric');
const plain = {
  stops: 0,
  supportM: 8,
  tooHigh: false,
  bandsServed: 2,
  bandsWithoutTuner: 2,
  bandsBeyondTuner: 0,
  bandsByHand: 0,
  usefulDb: 0,
  radiatedShare: 0.5,
  entryCurrentMa: 5,
  partsToBuy: 6,
};

function candidate(system: Candidate['system'], more: Partial<Score> = {}, solved = true): Candidate {
  const parts = { ...plain, ...more };
  const answers: Candidate['answers'] = { bands: ['40m', '20m'], shackEnd: 'radio-tuner', name: system };
  const score = { ...parts, points: pointsOf(parts) };
  return { system, answers, rank: 0, solved, score, bands: [], place: '', reasons: [] };
}

const ordered = (...list: Candidate[]) => orderCandidates(list, format);
const systems = (list: readonly Candidate[]) => list.map(({ system }) => system);

describe('points', () => {
  test('a decibel is one; a tuner band one, a band set by hand one; another tuner three; a kind of thing a half', () => {
    const base = pointsOf(plain);
    expect(base).toBe(-3);
    expect(pointsOf({ ...plain, usefulDb: 2.4 }) - base).toBe(2);
    expect(pointsOf({ ...plain, bandsWithoutTuner: 1 }) - base).toBe(-1);
    expect(pointsOf({ ...plain, bandsWithoutTuner: 0, bandsBeyondTuner: 2 }) - base).toBe(-5);
    expect(pointsOf({ ...plain, bandsByHand: 2 }) - base).toBe(-2);
    expect(pointsOf({ ...plain, partsToBuy: 3 }) - base).toBe(1.5);
  });

  test('current at the house costs from 30 mA on, one for each doubling begun', () => {
    expect([null, 5, 30, 31, 59, 61, 240].map(entryPoints)).toEqual([0, 0, 0, 1, 1, 2, 4]);
  });

  test('80 m counts what goes up, 20 m what goes low, 40 m both in equal parts', () => {
    const zone = { far: 2, near: 0.5 };
    expect(usefulDb('80m', 50, zone)).toBeCloseTo(-6.02, 2);
    expect(usefulDb('20m', 50, zone)).toBeCloseTo(0, 9);
    expect(usefulDb('40m', 50, zone)).toBeCloseTo(-3.01, 2);
  });
});

describe('order', () => {
  test('what stops it weighs most, then height, then bands, then points, then shopping', () => {
    const list = ordered(
      candidate('sloper', { stops: 1, usefulDb: 9 }),
      candidate('full-wave-loop', { tooHigh: true, usefulDb: 8 }),
      candidate('inverted-v', { bandsServed: 1, bandsWithoutTuner: 1, usefulDb: 7 }),
      candidate('folded-dipole', { usefulDb: 1, partsToBuy: 8 }),
      candidate('centre-fed-half-wave', { partsToBuy: 6 }),
      candidate('off-centre-fed', { usefulDb: 3 }),
    );
    expect(systems(list)).toEqual([
      'off-centre-fed',
      'centre-fed-half-wave',
      'folded-dipole',
      'inverted-v',
      'full-wave-loop',
      'sloper',
    ]);
    expect(list.map(({ rank }) => rank)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  test('each place says what the worse of two neighbours lacks, the weightiest first', () => {
    const [first, second, third] = ordered(
      candidate('off-centre-fed', { usefulDb: 4 }),
      candidate('inverted-v', { usefulDb: 1, bandsWithoutTuner: 1 }),
      candidate('sloper', { stops: 1 }),
    );
    expect(first?.place).toBe(
      'First: the next one is 3 dB weaker in the directions that count and needs a tuner on 1 band more.',
    );
    expect(second?.place).toBe(
      'After the one above: it is 3 dB weaker in the directions that count and needs a tuner on 1 band more.',
    );
    expect(third?.place).toBe('Cannot be built as it stands.');
  });

  test('who has no tuner is told so, who has one hears that it does not reach', () => {
    const beyond = { bandsWithoutTuner: 1, bandsBeyondTuner: 1 };
    const withRadio = (each: Candidate): Candidate => ({ ...each, answers: { ...each.answers, shackEnd: 'radio' } });
    const list = [candidate('sloper'), candidate('inverted-v', beyond)];
    expect(ordered(...list)[1]?.place).toBe('After the one above: it needs another tuner than yours.');
    expect(ordered(...list.map(withRadio))[1]?.place).toBe(
      'After the one above: it needs a tuner that you do not have.',
    );
  });

  test('equals are called equal', () => {
    const [first, second] = ordered(candidate('sloper'), candidate('inverted-v'));
    expect([first?.place, second?.place]).toEqual(['First, but the next one is as good.', 'As good as the one above.']);
  });

  test('one that alone can be built is said to', () => {
    const [first] = ordered(candidate('sloper'), candidate('inverted-v', { stops: 1 }, false));
    expect(first?.place).toBe('The only one that can be built here.');
  });

  test('one that is not solved keeps its place, whatever the solved ones about it do', () => {
    const list = ordered(
      candidate('sloper', { usefulDb: -9 }),
      candidate('inverted-v', { usefulDb: null }, false),
      candidate('off-centre-fed', { usefulDb: 5 }),
    );
    expect(systems(list)).toEqual(['off-centre-fed', 'inverted-v', 'sloper']);
    expect(list[1]?.place).toBe('Its place is by the rules alone: its field is not worked out.');
  });
});

describe('things to buy', () => {
  const answers: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio' };

  test('are counted by kind, with a number only for rings and boxes', () => {
    const plan = makePlan(answers);
    const things = thingsToBuy(plan);
    const rings = plan.parts.filter(({ kind }) => kind === 'ring').reduce((sum, { quantity }) => sum + quantity, 0);
    expect(things).toContainEqual({ thing: 'rings', count: rings });
    expect(things.map(({ thing }) => thing)).toEqual(expect.arrayContaining(['wire', 'coax', 'boxes', 'rope']));
    expect(things.length).toBeLessThan(plan.parts.length / 2);
  });

  test('leave out what is on hand', () => {
    const bare = thingsToBuy(makePlan(answers)).map(({ thing }) => thing);
    const plan = makePlan({
      ...answers,
      onHand: [
        { part: 'wire', wire: 'pvc-1.5mm2', lengthM: 60 },
        { part: 'line', line: 'rg-58', lengthM: 60 },
      ],
    });
    expect(thingsToBuy(plan).map(({ thing }) => thing)).toEqual(
      bare.filter((thing) => thing !== 'wire' && thing !== 'coax'),
    );
  });
});
