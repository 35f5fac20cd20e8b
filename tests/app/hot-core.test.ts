import { expect, test } from 'vitest';
import { goOnW } from '../../src/app/screens/trim/hot-core';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

const endFed = (more: Partial<Answers>) =>
  makePlan({ bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio', ...more });

test('after a core got hot one goes on with half the power at most, and with no more than the plan says it stands', () => {
  for (const mode of ['voice', 'data'] as const) {
    const plan = endFed({ powerW: 100, mode });
    const watts = goOnW(plan)!;
    expect(watts).toBeGreaterThan(0);
    expect(watts).toBeLessThanOrEqual(50);
    for (const { figures } of plan.chain) {
      if (figures?.mostW != null) expect(watts).toBeLessThanOrEqual(figures.mostW);
    }
  }
});

test('where nothing is wound nothing can get hot', () => {
  const plan = endFed({});
  expect(goOnW({ ...plan, chain: [] })).toBeNull();
});
