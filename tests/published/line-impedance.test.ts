import { test } from 'vitest';
import { C0 } from '../../src/base/constants';
import type { LineId } from '../../src/catalog/line-ids';
import { lines } from '../../src/catalog/lines';
import { twoWireZ0Ohm } from '../../src/physics/two-wire-line';
import { expectPublished, published, titled } from '../fixtures/published-checks';

const windowLine = [lines['window-line'].z0Ohm.value, lines['window-line'].velocityFactor.value];
const picofaradPerM = (id: LineId): number => 1e12 / (lines[id].z0Ohm.value * lines[id].velocityFactor.value * C0);

const computed: Readonly<Record<string, () => readonly number[]>> = {
  'line-z0-10': () => [picofaradPerM('rg-58')],
  'line-z0-12': () => windowLine,
  'line-z0-13': () => windowLine,
  'line-z0-14': () => windowLine,
  'line-z0-15': () => windowLine,
  'line-z0-16': () => [twoWireZ0Ohm(0.3048, 0.004115)],
};

const checks = published('line-impedance.json');

test.each(titled(checks))('%s', (_title, check) => expectPublished(check, computed[check.id]()));

test('capacitance of RG-213 is that of RG-58 (dealer cable table, 101 pF/m for both)', () => {
  expectPublished(checks[0], [picofaradPerM('rg-213')]);
});
