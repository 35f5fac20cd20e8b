import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { complex, magnitude } from '../../src/base/complex';
import { beadForCable, beads } from '../../src/catalog/beads';
import { coreIds } from '../../src/catalog/core-ids';
import { coreOf, ringSizes } from '../../src/catalog/cores';
import { muAt } from '../../src/catalog/ferrites';
import { coaxIds } from '../../src/catalog/line-ids';
import { closeWound, coilBand } from '../../src/physics/air-coil';
import { bandsInSeries, beadsBand, chokeBand, chokeDuty, chokeImpedance, sourceBehind } from '../../src/physics/choke';
import { bendRadiusM, conductorLengthM, turnLengthM, turnsThatFit } from '../../src/physics/conductor-on-core';
import { heatForRiseW, temperatureRiseK } from '../../src/physics/core-heat';
import { permeabilityTolerance } from '../../src/physics/core-tolerance';
import { stackSurfaceM2 } from '../../src/physics/toroid';
import { windingFactor } from '../../src/physics/winding-capacitance';
import { chokeConductors, coaxToWind, pairToWind, wireToWind } from '../../src/physics/wound-conductor';

const frequency = fc.double({ min: 1.8e6, max: 54e6, noNaN: true });
const core = fc.constantFrom(...coreIds).map(coreOf);
const stack = fc.integer({ min: 1, max: 4 });
const turns = fc.integer({ min: 1, max: 24 });
const conductor = fc.constantFrom(...coaxIds.map(coaxToWind), wireToWind('ptfe-awg22'), pairToWind('ptfe-awg22'));

describe('every catalogue ring, conductor and turns count from 1.8 to 54 MHz', () => {
  test('is passive and finite, and its band holds the nominal', () => {
    fc.assert(
      fc.property(core, stack, turns, conductor, frequency, (ring, count, n, wound, hz) => {
        const mu = muAt(ring.mix, hz);
        const winding = { ring, count, turns: n, conductor: wound };
        const z = chokeImpedance(winding, mu, hz);
        expect(z.re).toBeGreaterThan(0);
        expect(Number.isFinite(z.im)).toBe(true);
        const band = chokeBand(winding, mu, hz, permeabilityTolerance(ring));
        for (const [range, value] of [
          [band.rOhm, z.re],
          [band.xOhm, z.im],
          [band.ohm, magnitude(z)],
        ] as const) {
          expect(range[0]).toBeLessThanOrEqual(value);
          expect(range[1]).toBeGreaterThanOrEqual(value);
        }
        expect(band.rOhm[0]).toBeGreaterThan(0);
      }),
    );
  });

  test('in series is at least as resistive as either, and within its added band', () => {
    fc.assert(
      fc.property(core, turns, turns, conductor, frequency, (ring, a, b, wound, hz) => {
        const one = (n: number) =>
          chokeBand(
            { ring, count: 1, turns: n, conductor: wound },
            muAt(ring.mix, hz),
            hz,
            permeabilityTolerance(ring),
          );
        const both = bandsInSeries([one(a), one(b)]);
        expect(both.nominal.re).toBeGreaterThanOrEqual(one(a).nominal.re);
        expect(both.ohm[0]).toBeLessThanOrEqual(magnitude(both.nominal));
        expect(both.ohm[1]).toBeGreaterThanOrEqual(magnitude(both.nominal));
        expect(bandsInSeries([one(a)])).toEqual(one(a));
      }),
    );
  });
});

test('below resonance impedance grows with turns and with rings', () => {
  const at = (count: number, n: number): number => {
    const ring = coreOf('ft240-43');
    return magnitude(chokeImpedance({ ring, count, turns: n, conductor: coaxToWind('rg-58') }, muAt('43', 2e6), 2e6));
  };
  expect(at(1, 8)).toBeGreaterThan(at(1, 7));
  expect(at(2, 7)).toBeGreaterThan(at(1, 7));
});

test('beads add, and a bead is chosen by its hole', () => {
  const size = beads['bead-6mm'].size.value;
  const one = beadsBand(size, 1, muAt('31', 14e6), 14e6, { below: 0.25, above: 0.25 });
  const ten = beadsBand(size, 10, muAt('31', 14e6), 14e6, { below: 0.25, above: 0.25 });
  expect(ten.nominal.re).toBeCloseTo(10 * one.nominal.re, 6);
  expect(ten.ohm[0]).toBeCloseTo(0.75 * magnitude(ten.nominal), 6);
  expect(beadForCable(0.00495)?.id).toBe('bead-6mm');
  expect(beadForCable(0.0103)?.id).toBe('bead-13mm');
  expect(beadForCable(0.015)).toBeUndefined();
});

test('beads of negative reactance keep their band in order', () => {
  const band = beadsBand(ringSizes.ft140.value, 3, muAt('77', 14e6), 14e6, { below: 0.25, above: 0.25 });
  expect(band.xOhm[0]).toBeLessThan(band.nominal.im);
  expect(band.xOhm[1]).toBeGreaterThan(band.nominal.im);
});

test('a coil of coax is passive through its resonance', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 15 }), frequency, (n, hz) => {
      const band = coilBand(closeWound(n, 0.15, 0.0103), hz);
      expect(band.nominal.re).toBeGreaterThan(0);
      expect(band.ohm[0]).toBeLessThanOrEqual(magnitude(band.nominal));
    }),
  );
});

describe('duty', () => {
  test('heat peaks where the choke equals what drives it, and falls on either side', () => {
    const source = { openV: 400, impedance: complex(1000) };
    const heat = (ohm: number): number => chokeDuty(complex(ohm), source).heatW;
    expect(heat(1000)).toBeCloseTo(40, 6);
    expect(heat(200)).toBeLessThan(heat(1000));
    expect(heat(5000)).toBeLessThan(heat(1000));
  });

  test('a source worked back from a solved voltage gives that voltage again', () => {
    const source = sourceBehind(352, complex(5000), complex(900, -400));
    const duty = chokeDuty(complex(5000), source);
    expect(duty.voltageV).toBeCloseTo(352, 9);
    expect(duty.heatW).toBeCloseTo(352 ** 2 / 5000, 9);
  });
});

describe('heat', () => {
  test('rise and watts are one law', () => {
    fc.assert(
      fc.property(core, stack, fc.double({ min: 1, max: 100, noNaN: true }), (ring, count, riseK) => {
        const surface = stackSurfaceM2(ring, count);
        expect(temperatureRiseK(heatForRiseW(riseK, surface, 'closed-box'), surface, 'closed-box')).toBeCloseTo(
          riseK,
          6,
        );
      }),
    );
  });

  test('a closed box and a smaller stack are hotter', () => {
    const one = stackSurfaceM2(coreOf('ft240-43'), 1);
    const two = stackSurfaceM2(coreOf('ft240-43'), 2);
    expect(temperatureRiseK(5, one, 'closed-box')).toBeGreaterThan(temperatureRiseK(5, one, 'free-air'));
    expect(temperatureRiseK(5, two, 'free-air')).toBeLessThan(temperatureRiseK(5, one, 'free-air'));
  });
});

describe('cable on a ring', () => {
  test('turns fit until the hole is full', () => {
    const ring = coreOf('ft240-31');
    expect(turnsThatFit(ring, 0.00495)).toBe(17);
    expect(turnsThatFit(ring, 0.0103)).toBe(7);
    expect(turnsThatFit(coreOf('ft50-43'), 0.0103)).toBe(0);
    expect(() => turnsThatFit(ring, 0)).toThrow('diameter-not-positive');
  });

  test('what to cut is the turns and two tails', () => {
    const ring = coreOf('ft240-31');
    expect(conductorLengthM(ring, 2, 12, 0.005, 0.15)).toBeCloseTo(12 * turnLengthM(ring, 2, 0.005) + 0.3, 12);
    expect(turnLengthM(ring, 1, 0)).toBeCloseTo(0.05085, 6); // 2 · (12.7 + 12.725) mm
    expect(bendRadiusM(ring, 1, 0.005)).toBeCloseTo(0.00885, 5);
  });

  test('bare wire is refused', () => {
    expect(() => wireToWind('copper-1.0mm-bare')).toThrow('bare-wire-cannot-be-wound');
  });

  test('stray capacitance of many turns tends to 1.366 neighbours', () => {
    expect(windingFactor(1)).toBe(0);
    expect(windingFactor(2)).toBe(2);
    expect(windingFactor(20)).toBeCloseTo(1.366, 3);
    expect(windingFactor(21)).toBeCloseTo(1.366, 3);
  });
});

test('a choke is offered the feed line first, then what bends and stands heat', () => {
  const ids = (line: Parameters<typeof chokeConductors>[0]) => chokeConductors(line).map(({ id }) => id);
  expect(ids('rg-58')).toEqual(['rg-58', 'rg-400', 'rg-316']);
  expect(ids('rg-316')).toEqual(['rg-316', 'rg-400']);
  expect(ids('rg-6')).toEqual(['rg-6', 'rg-400', 'rg-316']);
  expect(ids('window-line')).toEqual(['pvc-awg14', 'ptfe-awg22']);
  expect(ids('none')).toEqual(['rg-400', 'rg-316']);
});
