/**
 * Tuner loss. Own computation by an independent program, not published: a 20.4 m doublet on 80 m with 10 to 20 m of 400 Ω line loses up to 1.05 dB
 * in a T-network (coil Q 200, 12 to 250 pF) through a 1:1 where a 4:1 costs 3.2 dB; a 4:1 is never better by more than about 0.1 dB there.
 */
import { expect, test } from 'vitest';
import { complex, divide, magnitude, scale } from '../../src/base/complex';
import { lines } from '../../src/catalog/lines';
import { lineDataOf } from '../../src/physics/catalogue-line';
import { inputImpedance, lineConstants } from '../../src/physics/line';
import { tNetworkLossDb } from '../../src/physics/t-network';

/** Feed point of a 20.4 m doublet 9 m up on 3.6 MHz: this project's solver, average ground. */
const doublet = complex(12, -1030);

test('a short doublet on 80 m: a 4:1 before the tuner costs decibels, a 1:1 about one', () => {
  const constants = lineConstants(lineDataOf(lines['window-line']), 3.6e6);
  const losses = [10, 12.5, 15, 17.5, 20].map((lengthM) => {
    const end = inputImpedance(constants, lengthM, doublet);
    return { one: tNetworkLossDb(end, 3.6e6), four: tNetworkLossDb(scale(end, 0.25), 3.6e6) };
  });
  const costs = losses.flatMap(({ one, four }) => (one === null || four === null ? [] : [four - one]));
  expect(Math.max(...costs)).toBeGreaterThan(1);
  expect(Math.max(...costs)).toBeLessThan(4);
});

test('loses little into a few hundred ohms, and more the farther a load lies from 50 Ω', () => {
  const at = (ohms: number) => tNetworkLossDb(complex(ohms), 7.1e6) ?? Number.NaN;
  expect(at(200)).toBeLessThan(0.2);
  expect(at(5)).toBeGreaterThan(at(25));
  expect(at(25)).toBeGreaterThan(at(50));
});

test('a pure reactance cannot be matched', () => {
  expect(tNetworkLossDb(complex(0, 500), 7.1e6)).toBeNull();
});

test('what it says is lost agrees with the currents of the network, solved the long way', () => {
  // One setting by hand: C2 250 pF, L and C1 as the least-loss search would choose for 100 Ω on 7.1 MHz; power into load over power into coil.
  const omega = 2 * Math.PI * 7.1e6;
  const branch = complex(100, -1 / (omega * 250e-12));
  const coilOhm = 60;
  const coil = complex(coilOhm / 200, coilOhm);
  const currentRatio = magnitude(divide(branch, coil)); // of coil to load, same voltage
  const lost = (currentRatio ** 2 * coil.re) / (currentRatio ** 2 * coil.re + 100);
  expect(tNetworkLossDb(complex(100), 7.1e6) ?? 1).toBeLessThan(-10 * Math.log10(1 - lost));
});
