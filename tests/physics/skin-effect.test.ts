import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wireIds } from '../../src/catalog/wire-ids';
import { wires } from '../../src/catalog/wires';
import { insulatedWireFactor } from '../../src/physics/insulated-wire';
import { directResistanceOhmPerM, skinDepthM, wireResistanceOhmPerM } from '../../src/physics/skin-effect';
import { twoWireZ0Ohm } from '../../src/physics/two-wire-line';

// Exact resistance, Ω/m, of round wire with 58 MS/m at 1.8 MHz: Re(k J0(ka) / 2πaσ J1(ka)), k = (1 − j)/δ, summed from the series of the
// Bessel functions (S. Ramo, J. Whinnery, T. Van Duzer, Fields and Waves, round wires, for the formula). The tolerance is the claim of the module.
test.each([
  { depths: 6, exactOhmPerM: 0.4443799528, within: 0.02 },
  { depths: 8, exactOhmPerM: 0.3214510527, within: 0.01 },
  { depths: 10, exactOhmPerM: 0.2504524753, within: 0.01 },
  { depths: 16, exactOhmPerM: 0.1506163155, within: 0.01 },
])('a wire $depths skin depths thick agrees with the exact solution', ({ depths, exactOhmPerM, within }) => {
  const ohmPerM = wireResistanceOhmPerM(1.8e6, depths * skinDepthM(1.8e6, 58e6), 58e6);
  expect(Math.abs(ohmPerM / exactOhmPerM - 1)).toBeLessThan(within);
});

test('every wire of the catalogue is thick enough for that form within 1 % at 1.8 MHz', () => {
  for (const id of wireIds)
    expect(wires[id].diameterM.value / skinDepthM(1.8e6, wires[id].conductivitySPerM.value)).toBeGreaterThan(8);
});

test('resistance never falls below that of direct current, and rises with frequency', () => {
  const frequency = fc.double({ min: 1e3, max: 54e6, noNaN: true });
  const diameter = fc.double({ min: 1e-4, max: 5e-3, noNaN: true });
  fc.assert(
    fc.property(frequency, diameter, (hz, d) => {
      const ohm = wireResistanceOhmPerM(hz, d, 58e6);
      expect(ohm).toBeGreaterThanOrEqual(directResistanceOhmPerM(d, 58e6) * (1 - 1e-12));
      expect(wireResistanceOhmPerM(2 * hz, d, 58e6)).toBeGreaterThanOrEqual(ohm * (1 - 1e-12));
    }),
  );
});

test('wires that touch are no line', () => {
  expect(() => twoWireZ0Ohm(0.002, 0.002)).toThrow('wires-touch');
});

test('the wire factors of the catalogue lie between the layer alone and 5 % shortening, as print reports', () => {
  for (const id of wireIds) {
    const { insulation, diameterM, velocityFactor } = wires[id];
    if (insulation === null) continue;
    const outsideM = diameterM.value + 2 * insulation.thicknessM.value;
    const layer = insulatedWireFactor({
      heightM: 10,
      conductorM: diameterM.value,
      outsideM,
      epsilonR: insulation.epsilonR.value,
    });
    expect(velocityFactor.value).toBeLessThanOrEqual(layer + 0.001);
    expect(velocityFactor.value).toBeGreaterThanOrEqual(0.95);
  }
});
