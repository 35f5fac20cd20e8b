/** A height that was told and that the wire does not come to is said, with the very height at which it is drawn. */
import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '../../src/advice/dimensions';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import type { Answers } from '../../src/design/answers';
import { armsOf } from '../../src/geometry/radiator-wires';
import { layoutOf } from '../../src/plan/layout-of';
import { makePlan } from '../../src/plan/make-plan';

const radio = { bands: ['20m'], shackEnd: 'radio' } satisfies Partial<Answers>;
const vee: Answers = { ...radio, radiator: 'inverted-v', fedAt: 'centre', heightM: 10, endHeightM: 2 };
const sloper: Answers = {
  ...radio,
  radiator: 'sloper',
  fedAt: 'centre',
  heightM: 9,
  supportHeightM: 14,
  endHeightM: 1,
};
const endFed: Answers = { ...radio, radiator: 'sloper', fedAt: 'end', heightM: 1, endHeightM: 14, supportHeightM: 14 };
const over: Answers = { ...radio, radiator: 'inverted-v', fedAt: 'end', heightM: 1, endHeightM: 2, supportHeightM: 12 };
const offCentre: Answers = { ...vee, fedAt: 'off-centre', shackEnd: 'wide-tuner', bands: ['40m'], heightM: 12 };

const found = (answers: Answers) => makePlan(answers).warnings.filter(({ id }) => id === 'end-out-of-reach');
/** With plain spaces. */
const textOf = (answers: Answers): string => (found(answers)[0]?.text ?? '').replaceAll('\u00a0', ' ');

/** Heights of the wire's corners and ends as it is laid out. */
function drawn(answers: Answers): number[] {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) throw new Error('no system');
  const layout = layoutOf(facts, dimensionsOf(facts));
  return (layout === null ? null : armsOf(layout))!.flatMap(({ points }) => points.map(([, , z]) => z));
}

describe.each(Object.entries({ vee, sloper, endFed, over, offCentre }))('%s', (_, answers) => {
  test('says both heights and the cure', () => {
    expect(textOf(answers)).toMatch(/ at [\d.]+ m \(.*not at [\d.]+ m/);
    expect(found(answers)[0]?.waysOut[0]).toMatch(/rope/);
  });

  test('is drawn at the height that is said', () => {
    const [, told] = /(?:is|are|hangs) at ([\d.]+) m/.exec(textOf(answers)) ?? [];
    expect(drawn(answers).some((z) => Math.abs(z - Number(told)) < 0.06)).toBe(true);
  });

  test('says so no more once the height is told as it is', () => {
    const warning = found(answers)[0]!;
    const change = warning.wayAnswers.find((each) => each !== null);
    const after = { ...answers, ...change } as Answers;
    const changed = Object.keys(change ?? {})[0];
    expect(change).toBeDefined();
    expect(found(after).filter(({ text }) => text === warning.text)).toEqual([]);
    expect(changed).toMatch(/HeightM|heightM/);
  });
});

test.each<[string, Answers]>([
  ['legs that come down to where they were told to end', { ...vee, endHeightM: 7 }],
  ['an end nobody told of', { ...radio, radiator: 'inverted-v', fedAt: 'centre', heightM: 10 }],
  ['a level wire', { ...radio, radiator: 'straight-wire', fedAt: 'centre', heightM: 10, endHeightM: 10 }],
  ['a vertical', { ...radio, radiator: 'vertical', fedAt: 'base', endHeightM: 2 }],
])('%s: nothing to say', (_, answers) => expect(found(answers)).toEqual([]));
