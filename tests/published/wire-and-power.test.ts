import { test } from 'vitest';
import { KILOGRAMS_PER_POUND, METRES_PER_FOOT, METRES_PER_INCH, NEWTONS_PER_POUND_FORCE } from '../../src/base/convert';
import { gaugeDiameterM } from '../../src/catalog/wire-gauge';
import { wireMetals, wires } from '../../src/catalog/wires';
import { DIPOLE_GAIN_DBI, eirpW, erpW } from '../../src/physics/radiated-power';
import { directResistanceOhmPerM, skinDepthM } from '../../src/physics/skin-effect';
import { sagM, windPressurePa } from '../../src/physics/wire-mechanics';
import { expectPublished, published, titled } from '../fixtures/published-checks';

const COPPER = wireMetals['soft-copper'].conductivitySPerM.value;
const METRES_PER_1000_FEET = 1000 * METRES_PER_FOOT;
const section = (gauge: number): number => (Math.PI / 4) * gaugeDiameterM(gauge) ** 2;
const millimetresAndInches = (gauge: number) => [gaugeDiameterM(gauge) * 1000, gaugeDiameterM(gauge) / METRES_PER_INCH];
const ohmPer1000Feet = (gauge: number, conductivity: number): number =>
  directResistanceOhmPerM(gaugeDiameterM(gauge), conductivity) * METRES_PER_1000_FEET;
const poundsPer1000Feet = (gauge: number, densityKgPerM3: number): number =>
  (section(gauge) * densityKgPerM3 * METRES_PER_1000_FEET) / KILOGRAMS_PER_POUND;

/** Breaking load, lb, of a solid wire of this gauge at the stress the catalogue gives a wire of that metal. */
function breakingPounds(like: keyof typeof wires, gauge: number): number {
  const { breakN, sectionM2 } = wires[like];
  return ((breakN.value / sectionM2.value) * section(gauge)) / NEWTONS_PER_POUND_FORCE;
}

const computed: Readonly<Record<string, () => readonly number[]>> = {
  'wire-01': () => millimetresAndInches(-3),
  'wire-03': () => millimetresAndInches(12),
  'wire-05': () => millimetresAndInches(16),
  'wire-07': () => millimetresAndInches(36),
  'wire-08': () => [ohmPer1000Feet(-3, COPPER), poundsPer1000Feet(-3, wireMetals['soft-copper'].densityKgPerM3.value)],
  'wire-09': () => [
    breakingPounds('pe-awg14-copper-clad', 12),
    poundsPer1000Feet(12, wireMetals['copper-clad-steel'].densityKgPerM3.value),
  ],
  'wire-10': () => [0.392, 0.294].map((share) => ohmPer1000Feet(12, share * COPPER)),
  'wire-11': () => [wires['pvc-awg14'].breakN.value / NEWTONS_PER_POUND_FORCE],
  'skin-03': () => [(skinDepthM(14e6, COPPER) / METRES_PER_INCH) * 1000],
  'skin-04': () => [skinDepthM(200e3, 1 / 1.7e-8) * 1000],
  'skin-05': () => [3.816e7, 5.813e7, 4.098e7, 6.173e7].map((sigma) => skinDepthM(10e9, sigma) * 1e6),
  'sag-01': () => [sagM(500, 1, 10_000)],
  'sag-05': () => [windPressurePa(26.82)],
  'power-01': () => [erpW(150, 7 + DIPOLE_GAIN_DBI, 4.2)],
  'power-02': () => [erpW(200, 10 + DIPOLE_GAIN_DBI, 8)],
  'power-03': () => [eirpW(200, 7, 6)],
};

test.each(titled(published('wire-and-power.json')))('%s', (_title, check) =>
  expectPublished(check, computed[check.id]()),
);
