import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, type Complex, complex, magnitude, reciprocal, scale, subtract } from '../../src/base/complex';
import { lineIds } from '../../src/catalog/line-ids';
import { lines } from '../../src/catalog/lines';
import { screwPlugPeakV } from '../../src/catalog/screw-plug';
import { lineDataOf, lineLimitsOf, wetFilmOf } from '../../src/physics/catalogue-line';
import {
  attenuationDbPer100M,
  DB_PER_NEPER,
  gamma,
  impedanceOfGamma,
  inputImpedance,
  type LineData,
  lineConstants,
  lineLoss,
  swr,
} from '../../src/physics/line';
import { cascade } from '../../src/physics/line-cascade';
import { lineStress, lineUse } from '../../src/physics/line-stress';
import { longLineLossDb } from '../../src/physics/mismatch';
import { openWireLine } from '../../src/physics/open-wire-line';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const frequency = between(1.8e6, 54e6);
const load = fc.record({ re: between(1, 5e3), im: between(-5e3, 5e3) });
const catalogueLine = fc.constantFrom(...lineIds).map((id) => lineDataOf(lines[id]));
const lengthM = between(0, 120);
const lossless = (z0Ohm: number, velocityFactor = 0.66): LineData => ({
  z0Ohm,
  velocityFactor,
  k1: 0,
  k2: 0,
  clad: null,
});
const halfWave = (line: LineData, hz: number): number => Math.PI / lineConstants(line, hz).gammaPerM.im;
const near = (a: Complex, b: Complex, part: number): void =>
  expect(magnitude(subtract(a, b))).toBeLessThanOrEqual(part * magnitude(b));

describe('laws of every line', () => {
  test('zero length is no line', () => {
    fc.assert(
      fc.property(catalogueLine, frequency, load, (line, hz, z) => {
        const constants = lineConstants(line, hz);
        near(inputImpedance(constants, 0, z), z, 1e-12);
        expect(lineLoss(constants, 0, z).totalDb).toBeCloseTo(0, 9);
      }),
    );
  });

  test('half a wavelength of lossless line repeats its load, a quarter inverts it', () => {
    fc.assert(
      fc.property(between(10, 1e3), frequency, load, (z0, hz, z) => {
        const line = lossless(z0);
        const constants = lineConstants(line, hz);
        near(inputImpedance(constants, halfWave(line, hz), z), z, 1e-9);
        near(inputImpedance(constants, halfWave(line, hz) / 2, z), scale(reciprocal(z), z0 ** 2), 1e-9);
      }),
    );
  });

  test('a passive load is seen as a passive load, and no line gains', () => {
    fc.assert(
      fc.property(catalogueLine, frequency, lengthM, load, (line, hz, length, z) => {
        const constants = lineConstants(line, hz);
        const input = inputImpedance(constants, length, z);
        expect(input.re).toBeGreaterThan(0);
        expect(magnitude(gamma(input, complex(line.z0Ohm)))).toBeLessThanOrEqual(1);
        expect(lineLoss(constants, length, z).totalDb).toBeGreaterThanOrEqual(0);
        expect(constants.resistanceOhmPerM).toBeGreaterThanOrEqual(0);
        expect(constants.conductanceSPerM).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('loss grows with length', () => {
    fc.assert(
      fc.property(catalogueLine, frequency, lengthM, lengthM, load, (line, hz, a, b, z) => {
        const constants = lineConstants(line, hz);
        expect(lineLoss(constants, a + b, z).totalDb).toBeGreaterThanOrEqual(lineLoss(constants, a, z).totalDb - 1e-9);
      }),
    );
  });

  test('two lengths in a row are one line', () => {
    fc.assert(
      fc.property(catalogueLine, frequency, lengthM, lengthM, load, (line, hz, a, b, z) => {
        const constants = lineConstants(line, hz);
        const whole = lineLoss(constants, a + b, z);
        const parts = cascade(
          [
            { constants, lengthM: a },
            { constants, lengthM: b },
          ],
          z,
        );
        near(parts.input, inputImpedance(constants, a + b, z), 1e-6);
        expect(parts.totalDb).toBeCloseTo(whole.totalDb, 6);
      }),
    );
  });

  // Reciprocity: power sent from generator impedance a to load b is what b would send to a through the same line turned round.
  test('a line carries as well one way as the other', () => {
    const transducer = (line: LineData, hz: number, length: number, source: Complex, end: Complex): number => {
      const constants = lineConstants(line, hz);
      const input = inputImpedance(constants, length, end);
      const accepted = (4 * source.re * input.re) / magnitude(add(source, input)) ** 2;
      return 10 * Math.log10(accepted) - lineLoss(constants, length, end).totalDb;
    };
    fc.assert(
      fc.property(catalogueLine, frequency, lengthM, load, load, (line, hz, length, a, b) => {
        expect(transducer(line, hz, length, a, b)).toBeCloseTo(transducer(line, hz, length, b, a), 6);
      }),
    );
  });

  test('a matched load meets the matched loss', () => {
    fc.assert(
      fc.property(catalogueLine, frequency, lengthM, (line, hz, length) => {
        const constants = lineConstants(line, hz);
        const { totalDb, matchedDb } = lineLoss(constants, length, constants.z0);
        expect(totalDb).toBeCloseTo(matchedDb, 6);
        expect(matchedDb).toBeCloseTo((attenuationDbPer100M(line, hz) * length) / 100, 9);
        expect(constants.gammaPerM.re * DB_PER_NEPER * 100).toBeCloseTo(attenuationDbPer100M(line, hz), 9);
      }),
    );
  });

  test('averaged over a half-wave of positions, the loss is the long-line loss', () => {
    const line: LineData = { z0Ohm: 50, velocityFactor: 0.66, k1: 0.6, k2: 0, clad: null };
    const constants = lineConstants(line, 14e6);
    const wave = 2 * halfWave(line, 14e6);
    const length = 10 * wave;
    const sum = Array.from({ length: 64 }, (_, i) => {
      const turn = (2 * Math.PI * i) / 64;
      const z = impedanceOfGamma(complex(0.5 * Math.cos(turn), 0.5 * Math.sin(turn)), 50);
      return 10 ** (lineLoss(constants, length, z).totalDb / 10);
    }).reduce((a, b) => a + b, 0);
    const { matchedDb } = lineLoss(constants, length, complex(50));
    expect(10 * Math.log10(sum / 64)).toBeCloseTo(longLineLossDb(3, matchedDb), 2);
  });
});

describe('stress along the line', () => {
  test('no place carries more than the reported maxima', () => {
    fc.assert(
      fc.property(catalogueLine, frequency, between(1, 60), load, (line, hz, length, z) => {
        const constants = lineConstants(line, hz);
        const stress = lineStress(constants, length, z, 100);
        let worstV = 0;
        let worstA = 0;
        for (let i = 0; i <= 200; i++) {
          const d = (length * i) / 200;
          const seen = inputImpedance(constants, d, z);
          const watts = 100 / 10 ** ((lineLoss(constants, length, z).totalDb - lineLoss(constants, d, z).totalDb) / 10);
          const amps = Math.sqrt(watts / seen.re);
          worstA = Math.max(worstA, amps);
          worstV = Math.max(worstV, amps * magnitude(seen));
        }
        expect(worstV).toBeLessThanOrEqual(stress.maxVoltageV * 1.01);
        expect(worstA).toBeLessThanOrEqual(stress.maxCurrentA * 1.01);
      }),
      { numRuns: 60 },
    );
  });

  test('a lossless line with SWR 4 has √4 times the matched volts and amps, a quarter-wave apart', () => {
    const line = lossless(50);
    const constants = lineConstants(line, 14e6);
    const stress = lineStress(constants, 2 * halfWave(line, 14e6), complex(200), 100);
    expect(stress.maxVoltageV).toBeCloseTo(2 * Math.sqrt(100 * 50), 6);
    expect(stress.maxCurrentA).toBeCloseTo(2 * Math.sqrt(100 / 50), 6);
    expect(Math.abs(stress.maxVoltageAtM - stress.maxCurrentAtM) % halfWave(line, 14e6)).toBeCloseTo(
      halfWave(line, 14e6) / 2,
      6,
    );
  });

  test('a matched line uses its power rating as the maker rates it', () => {
    const rg58 = lines['rg-58'];
    const line = lineDataOf(rg58);
    const constants = lineConstants(line, 30e6);
    const stress = lineStress(constants, 10, complex(50), 450);
    const use = lineUse(line, lineLimitsOf(rg58), stress, 30e6, 1);
    expect(use.power).toBeGreaterThan(0.98);
    expect(use.power).toBeLessThan(1.05);
    expect(lineUse(line, lineLimitsOf(rg58), stress, 30e6, 0.2).power).toBeCloseTo((use.power ?? 0) / 5, 9);
  });

  // Common practice: 1 kW at SWR 3 puts 550 V on a plug, more than it is meant for; matched it stands.
  test('a plug at the voltage maximum of SWR 3 passes its peak voltage at 1 kW', () => {
    const constants = lineConstants(lossless(50), 14e6);
    const peakV = (loadOhm: number) => Math.SQRT2 * lineStress(constants, 10, complex(loadOhm), 1000).maxVoltageV;
    expect(peakV(50)).toBeLessThan(screwPlugPeakV.value);
    expect(peakV(150)).toBeCloseTo(547.7, 1);
    expect(peakV(150)).toBeGreaterThan(screwPlugPeakV.value);
  });
});

describe('weather and cladding', () => {
  test('rain slows window line and adds loss, and never more series resistance', () => {
    const line = lineDataOf(lines['window-line']);
    const film = wetFilmOf(lines['window-line']);
    if (film === undefined) throw new Error('the catalogue knows a wet window line');
    const dry = lineConstants(line, 7.1e6);
    const wet = lineConstants(line, 7.1e6, film);
    expect(wet.gammaPerM.im).toBeGreaterThan(dry.gammaPerM.im);
    expect(wet.gammaPerM.re).toBeCloseTo(3 * dry.gammaPerM.re, 9);
    expect(wet.resistanceOhmPerM).toBeLessThanOrEqual(dry.resistanceOhmPerM);
    expect(wetFilmOf(lines['rg-58'])).toBeUndefined();
  });

  test('copper-clad window line has its measured loss at 3.6 MHz and the table’s from 10 MHz up', () => {
    const line = lineDataOf(lines['window-line']);
    const solid = { ...line, clad: null };
    expect(attenuationDbPer100M(line, 3.6e6)).toBeCloseTo(0.75, 1);
    expect(attenuationDbPer100M(line, 14e6)).toBe(attenuationDbPer100M(solid, 14e6));
    fc.assert(
      fc.property(frequency, (hz) => {
        expect(attenuationDbPer100M(line, hz)).toBeGreaterThanOrEqual(attenuationDbPer100M(solid, hz) - 1e-12);
      }),
    );
  });
});

test('an SWR is never below 1, and nothing absorbed is infinite', () => {
  fc.assert(
    fc.property(load, (z) => {
      expect(swr(z, 50)).toBeGreaterThanOrEqual(1);
    }),
  );
  expect(swr(complex(0, 30), 50)).toBe(Number.POSITIVE_INFINITY);
  expect(lineLoss(lineConstants(lossless(50), 7e6), 10, complex(0, 5)).totalDb).toBe(Number.POSITIVE_INFINITY);
});

test('open wire from its geometry has the impedance of two wires, a little less with spacers', () => {
  const geometry = { spacingM: 0.1524, diameterM: 0.002053, conductivitySPerM: 5.8e7 };
  const bare = openWireLine({ ...geometry, velocityFactor: 1 });
  const spaced = openWireLine({ ...geometry, velocityFactor: 0.97 });
  expect(bare.z0Ohm).toBeCloseTo(600, 0);
  expect(spaced.z0Ohm).toBeCloseTo(0.97 * bare.z0Ohm, 6);
  expect(spaced.k1).toBeGreaterThan(bare.k1);
});
