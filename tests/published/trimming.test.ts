import { test } from 'vitest';
import { lengthForDip } from '../../src/physics/trim';
import { expectPublished, published, titled } from '../fixtures/published-checks';

const perKilohertzMm = (wireM: number, dipMHz: number): number =>
  1000 * (wireM - lengthForDip(wireM, dipMHz, dipMHz + 0.001));

const computed: Readonly<Record<string, () => readonly number[]>> = {
  'trim-01': () => [lengthForDip(20.4, 6.9, 7.1)],
  'trim-02': () => [perKilohertzMm(39.8, 3.6), perKilohertzMm(20.2, 7.1), perKilohertzMm(10.1, 14.15)],
};

test.each(titled(published('trimming.json')))('%s', (_title, check) => {
  expectPublished(check, computed[check.id]());
});
