/** The heights that rules reckon with, the assumption listed and the checklist are those of the wire as it is laid out. Antennas are invented. */
import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '../../src/advice/dimensions';
import { endsReachedM, spanOf } from '../../src/advice/end-height';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import { heightOf } from '../../src/advice/wire-height';
import type { Answers } from '../../src/design/answers';
import { distance, type Vector } from '../../src/geometry/layout';
import { armsOf } from '../../src/geometry/radiator-wires';
import { layoutOf } from '../../src/plan/layout-of';
import { makePlan } from '../../src/plan/make-plan';

const radio = { bands: ['40m'], shackEnd: 'radio' } satisfies Partial<Answers>;
const vee: Answers = { ...radio, radiator: 'inverted-v', fedAt: 'centre', heightM: 10 };
const offCentre: Answers = { ...vee, fedAt: 'off-centre', shackEnd: 'wide-tuner' };
const sloper: Answers = { ...radio, radiator: 'sloper', fedAt: 'centre', heightM: 9, supportHeightM: 14 };
const endFed: Answers = { ...radio, bands: ['20m'], radiator: 'sloper', fedAt: 'end', heightM: 1, supportHeightM: 14 };
const over: Answers = { ...radio, radiator: 'inverted-v', fedAt: 'end', heightM: 1, supportHeightM: 12 };

const antennas: Readonly<Record<string, Answers>> = {
  'an inverted V': vee,
  'an inverted V told low': { ...vee, endHeightM: 1 },
  'an inverted V under a taller support': { ...vee, bands: ['10m'], supportHeightM: 18 },
  'an off-centre inverted V': offCentre,
  'an off-centre inverted V told low': { ...offCentre, heightM: 12, endHeightM: 1 },
  'a short off-centre inverted V': { ...offCentre, bands: ['10m'], heightM: 12, endHeightM: 1 },
  'a sloper': sloper,
  'a sloper told low': { ...sloper, bands: ['20m'], endHeightM: 1 },
  'a sloper off its centre': { ...sloper, fedAt: 'off-centre', shackEnd: 'wide-tuner' },
  'a sloper fed at its low end': { ...endFed, endHeightM: 14 },
  'a sloper fed at its high end': { ...endFed, heightM: 14, endHeightM: 1 },
  'a wire over a support': over,
  'a short wire over a support': { ...over, bands: ['10m'], endHeightM: 2 },
  'a level wire with low ends': { ...vee, radiator: 'straight-wire', endHeightM: 6 },
};

function hung(answers: Answers) {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error('no system');
  const dimensions = dimensionsOf(facts);
  const layout = layoutOf(facts, dimensions);
  const arms = (layout === null ? null : armsOf(layout)) ?? [];
  return { facts, dimensions, wholeM: dimensions.radiator.metres, arms: arms.map(({ points }) => points) };
}

const heights = (arms: readonly (readonly Vector[])[]): number[] =>
  arms.flatMap((points) => points.map(([, , z]) => z));

/** Along the wire from end to end, weighted with the current of a half-wave: nothing at its ends. */
function currentHeightM(arms: readonly (readonly Vector[])[]): number {
  const [first = [], second = []] = arms;
  const path = [...[...second].reverse(), ...first.slice(second.length === 0 ? 0 : 1)];
  const legs = path.slice(1).map((to, i) => ({ from: path[i] ?? to, to, lengthM: distance(path[i] ?? to, to) }));
  const wholeM = legs.reduce((sum, { lengthM }) => sum + lengthM, 0);
  let [sum, weight, startM] = [0, 0, 0];
  for (const { from, to, lengthM } of legs) {
    for (let i = 0.5; i < 200; i += 1) {
      const current = Math.sin((Math.PI * (startM + (i / 200) * lengthM)) / wholeM) * lengthM;
      sum += current * (from[2] + (i / 200) * (to[2] - from[2]));
      weight += current;
    }
    startM += lengthM;
  }
  return sum / weight;
}

describe.each(Object.entries(antennas))('%s', (_, answers) => {
  const { facts, dimensions, wholeM, arms } = hung(answers);
  const [long = [], short = long] = arms;

  test('ends where it is drawn', () => {
    const { farM, shortM } = endsReachedM(facts, wholeM);
    expect(farM).toBeCloseTo(long.at(-1)?.[2] ?? Number.NaN, 6);
    expect(shortM).toBeCloseTo(short.at(-1)?.[2] ?? Number.NaN, 6);
    const { lowM, highM } = spanOf(facts, wholeM);
    expect([lowM, highM].map((z) => z.toFixed(6))).toEqual(
      [Math.min(...heights(arms)), Math.max(...heights(arms))].map((z) => z.toFixed(6)),
    );
  });

  // The closed forms take a half-wave's current roughly: its mean height may be wrong by a tenth.
  test('carries its current about where it is drawn', () => {
    expect(Math.abs(heightOf(facts, wholeM) / currentHeightM(arms) - 1)).toBeLessThan(0.1);
  });

  test('takes the room in which it is drawn', () => {
    const xs = arms.flatMap((points) => points.map(([x]) => x));
    const runM = facts.settled.radiator === 'straight-wire' ? wholeM : Math.max(...xs) - Math.min(...xs);
    expect(dimensions.runM).toBeCloseTo(runM, 6);
  });
});

describe('ends that nobody told of', () => {
  const assumed = (answers: Answers) => {
    const each = makePlan(answers).assumed.find(({ key }) => key === 'endHeightM');
    return { value: Number(each?.value), why: (each?.why ?? '').replaceAll('\u00a0', ' ') };
  };

  test('are assumed at 3 m where the wire comes down to it', () => {
    const { value, why } = assumed({ ...vee, heightM: 8 });
    expect(value).toBe(3);
    expect(why).not.toContain('usual slope');
  });

  test('are told where they are drawn, by a wire that is too short for the height assumed', () => {
    const answers: Answers = { ...vee, bands: ['20m'] };
    const { value, why } = assumed(answers);
    expect(value).toBe(3);
    const drawnM = Math.min(...heights(hung(answers).arms));
    expect(drawnM).toBeGreaterThan(4);
    expect(why).toContain(`ends at ${drawnM.toFixed(2)} m`);
  });

  test('are both told where one leg is shorter', () => {
    const { arms } = hung(offCentre);
    const { value, why } = assumed(offCentre);
    const [long = Number.NaN, short = Number.NaN] = arms.map((points) => points.at(-1)?.[2] ?? Number.NaN);
    expect(value).toBeCloseTo(long, 6);
    expect(short - long).toBeGreaterThan(1);
    expect(why).toContain(`at ${short.toFixed(2)} m`);
    const raise = makePlan(offCentre)
      .steps.find(({ id }) => id === 'raise')
      ?.text.replaceAll('\u00a0', ' ');
    expect(raise).toContain(`the short leg ends at ${short.toFixed(2)} m`);
  });
});
