import { expect, test } from 'vitest';
import { budgetOf } from '../../src/app/screens/plan/budget';

test('a hundred watts are shared out whole', () => {
  const { lineW, devicesW, nearW, radiatedW } =
    budgetOf({ lineLossDb: 3.0103, deviceLossDb: 3.0103 }, { radiatedW: 20 }) ?? {};
  expect(lineW).toBeCloseTo(50, 2);
  expect(devicesW).toBeCloseTo(25, 2);
  expect(nearW).toBeCloseTo(5, 2);
  expect((lineW ?? 0) + (devicesW ?? 0) + (nearW ?? 0) + (radiatedW ?? 0)).toBeCloseTo(100, 9);
  expect(budgetOf({ lineLossDb: null, deviceLossDb: null }, null)).toBeNull();
});
