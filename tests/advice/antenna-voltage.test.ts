import { expect, test } from 'vitest';
import { antennaVoltages, greatestVoltage } from '../../src/advice/antenna-voltage';
import { dimensionsOf } from '../../src/advice/dimensions';
import { type Facts, factsOf } from '../../src/advice/facts';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { expectWorkingHolds } from '../fixtures/evaluate-working';

function voltagesFor(answers: Answers, field?: FieldFacts) {
  const facts = factsOf(answers) as Facts;
  const list = antennaVoltages(facts, dimensionsOf(facts), field);
  return { list, greatest: greatestVoltage(facts, list) };
}
const endFed: Answers = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio', powerW: 100 };
const solved = (r: number, x: number): FieldFacts => ({ bands: { '40m': { feedPoint: { r, x } } } });

// Handbook practice: 2450 ohm at 100 W is 495 V rms, 5 kohm 707 V.
test.each([
  [2450, 495],
  [5000, 707],
])('an end of %d ohm carries %d V with 100 W at the box', (ohm, volts) => {
  const [there] = voltagesFor(endFed, solved(ohm, 0)).list;
  expect(Math.round(there.feedPointV as number)).toBe(volts);
  // The far end of a half-wave carries what the near end does and little more: its current minimum is small.
  expect((there.wireEndV as number) / volts).toBeGreaterThan(1);
  expect((there.wireEndV as number) / volts).toBeLessThan(1.1);
});

// An open half-wave is a line of Z0 = 60 (ln(2 l/a) − 1): 100 W in 73 ohm are 1.17 A, at its ends some 500 to 700 V (antenna texts).
test('the ends of a dipole carry hundreds of volts though its feed point carries 85', () => {
  const { list, greatest } = voltagesFor({ ...endFed, fedAt: 'centre' }, solved(73, 0));
  expect(Math.round(list[0].feedPointV as number)).toBe(85);
  expect(list[0].wireEndV as number).toBeGreaterThan(500);
  expect(list[0].wireEndV as number).toBeLessThan(750);
  expect(greatest).toBe(list[0].wireEndV);
});

test('without a solution the careful resistance stands, for a loop too', () => {
  expect(Math.round(voltagesFor(endFed).list[0].wireEndV as number)).toBe(495);
  const loop = voltagesFor({ ...endFed, radiator: 'loop', fedAt: 'corner' }, solved(110, 0));
  expect([loop.list[0].wireEndV, Math.round(loop.greatest)]).toEqual([null, 495]);
});

test('each working evaluates to the volts beside it', () => {
  for (const { feedPointVWorking, wireEndVWorking } of voltagesFor(endFed, solved(1800, -700)).list) {
    for (const working of [feedPointVWorking, wireEndVWorking]) {
      if (working === null) throw new Error('solved volts have their working');
      expectWorkingHolds(working);
    }
  }
});
