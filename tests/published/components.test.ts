import { expect, test } from 'vitest';
import { componentChecks } from './component-checks';

test.each(componentChecks.map((check) => [`${check.family}: ${check.what}`, check] as const))(
  '%s agrees with print',
  (_title, { expected, computed, tolerance, absolute }) => {
    const allowed = absolute ? tolerance : tolerance * Math.abs(expected);
    expect(Math.abs(computed() - expected)).toBeLessThanOrEqual(allowed);
  },
);
