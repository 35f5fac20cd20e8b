/** The screen's calculator is a part of mathjs: it must know every function and unit that some working uses. */
import { expect, test } from 'vitest';
import { evaluateWorking, type ShownWorking } from '../../src/app/working/evaluate-working';
import { makePlan } from '../../src/plan/make-plan';
import { everyAnswer } from '../plan/every-answer';

const formulas = new Map<string, ShownWorking>();
for (const answers of everyAnswer().filter((_, n) => n % 7 === 0)) {
  const plan = makePlan(answers);
  const workings = [
    ...plan.cuts.map(({ working }) => working),
    ...plan.chain.map(({ distanceMWorking }) => distanceMWorking),
    ...plan.cautions.map(({ distanceMWorking }) => distanceMWorking),
    ...plan.exposure.flatMap(({ knowingMWorking, publicMWorking }) => [knowingMWorking, publicMWorking]),
  ];
  for (const working of workings) if (working !== null) formulas.set(working.formula, working);
}

test('there are many formulas', () => {
  expect(formulas.size).toBeGreaterThan(8);
});

test.each([...formulas])('%s', (_formula, working) => {
  const value = evaluateWorking(working);
  expect(Math.abs(value - working.result.value)).toBeLessThanOrEqual(
    1e-9 * Math.max(1, Math.abs(working.result.value)),
  );
});

test('a formula whose units do not fit is refused', () => {
  const [working] = formulas.values();
  const wrong = {
    ...working,
    formula: 'a + b',
    inputs: {
      a: { value: 1, unit: 'm', from: 'assumed' as const },
      b: { value: 1, unit: 'W', from: 'assumed' as const },
    },
  };
  expect(() => evaluateWorking(wrong)).toThrow();
});
