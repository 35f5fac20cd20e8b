import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wireIds } from '../../src/catalog/wire-ids';
import { wires } from '../../src/catalog/wires';
import {
  catenaryFromPull,
  loadInWindNPerM,
  pullN,
  safetyFactor,
  sagM,
  weightNPerM,
} from '../../src/physics/wire-mechanics';

const span = fc.double({ min: 2, max: 200, noNaN: true });
const weight = fc.double({ min: 0.005, max: 5, noNaN: true });
const pull = fc.double({ min: 5, max: 2000, noNaN: true });

describe('hanging wire', () => {
  test('pull from sag undoes sag from pull', () => {
    fc.assert(
      fc.property(span, weight, pull, (l, w, t) => {
        expect(pullN(l, w, sagM(l, w, t)) / t).toBeCloseTo(1, 9);
      }),
    );
  });

  test('the catenary sags a little more than the parabola, by less than 2.2 % while the sag is under an eighth of the span', () => {
    fc.assert(
      fc.property(span, weight, pull, (l, w, t) => {
        const { sagM: exact } = catenaryFromPull(l, w, t);
        if (exact > l / 8) return;
        const parabola = sagM(l, w, t);
        expect(exact / parabola).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(exact / parabola).toBeLessThan(1.022);
      }),
    );
  });

  // Laws of the catenary with parameter c, any statics text: (length / 2)² = (c + sag)² − c², and the end pulls with weight × (c + sag).
  test('length, sag and end pull of the catenary belong together', () => {
    fc.assert(
      fc.property(span, weight, pull, (l, w, t) => {
        const { parameterM: c, sagM: sag, lengthM, endPullN } = catenaryFromPull(l, w, t);
        expect((lengthM / 2) ** 2 / (sag * (sag + 2 * c))).toBeCloseTo(1, 9);
        expect(endPullN / (w * (c + sag))).toBeCloseTo(1, 9);
      }),
    );
  });

  test('wind adds to weight, and none adds nothing', () => {
    expect(loadInWindNPerM(0.3, 0.003, 0)).toBe(0.3);
    expect(loadInWindNPerM(0.3, 0.003, 30)).toBeGreaterThan(1.6);
  });
});

// Common practice: 40 m of 2 mm copper with 1 m of sag pulls with about 55 N.
test('40 m of 2 mm copper with 1 m of sag pulls with 55 N', () => {
  const wire = wires['copper-2.0mm-bare'];
  const newton = pullN(40, weightNPerM(wire.massKgPerM.value), 1);
  expect(Math.abs(newton - 55)).toBeLessThan(0.5);
  expect(safetyFactor(wire.breakN.value, newton)).toBeGreaterThan(10);
});

test('every wire of the catalogue carries 20 m of itself ten times over at 2 % sag', () => {
  for (const id of wireIds) {
    const wire = wires[id];
    expect(safetyFactor(wire.breakN.value, pullN(20, weightNPerM(wire.massKgPerM.value), 0.4))).toBeGreaterThan(10);
  }
});
