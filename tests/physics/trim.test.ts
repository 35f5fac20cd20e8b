import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dipForLength, lengthForDip, trimStep, trimVerdict } from '../../src/physics/trim';

const wire = fc.double({ min: 2, max: 200, noNaN: true });
const mhz = fc.double({ min: 1.8, max: 54, noNaN: true });

test('the new length brings the dip exactly to the wanted frequency', () => {
  fc.assert(
    fc.property(wire, mhz, mhz, (wireM, dip, wanted) => {
      expect(dipForLength(dip, wireM, lengthForDip(wireM, dip, wanted)) / wanted).toBeCloseTo(1, 9);
    }),
  );
});

test('a step never overshoots: the dip comes nearer and stays on its side', () => {
  fc.assert(
    fc.property(wire, mhz, fc.double({ min: 0.8, max: 1.25, noNaN: true }), (wireM, wanted, off) => {
      const dip = wanted * off;
      const { dipAfterMHz } = trimStep(wireM, dip, wanted);
      expect(Math.abs(dipAfterMHz - wanted)).toBeLessThanOrEqual(Math.abs(dip - wanted) + 1e-9);
      // A whole step lands on the wanted frequency, to the last digits on either side of it.
      const restMHz = Math.abs(wanted - dipAfterMHz) < 1e-9 ? 0 : wanted - dipAfterMHz;
      expect(restMHz * (wanted - dip)).toBeGreaterThanOrEqual(0);
    }),
  );
});

test('half is taken, but all of what is too little to halve', () => {
  const far = trimStep(20.4, 6.9, 7.1);
  expect(far.nowM).toBeCloseTo(far.wholeM / 2, 12);
  const near = trimStep(20, 7.1 * 0.999, 7.1);
  expect(near.nowM).toBe(near.wholeM);
});

test.each([
  { dipMHz: 7.03, swr: undefined, verdict: 'stop' }, // 1 % below
  { dipMHz: 6.95, swr: undefined, verdict: 'may-stop' }, // 2.1 %
  { dipMHz: 6.88, swr: undefined, verdict: 'go-on' }, // 3.1 %
  { dipMHz: 6.88, swr: 1.9, verdict: 'stop' },
  { dipMHz: 6.88, swr: 2.1, verdict: 'go-on' },
])('dip at $dipMHz, SWR $swr: $verdict', ({ dipMHz, swr, verdict }) => {
  expect(trimVerdict({ dipMHz, wantedMHz: 7.1, swr })).toBe(verdict);
});
