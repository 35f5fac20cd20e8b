/** Fields close to wires against print and against hand formulas. */
import { expect, test, vi } from 'vitest';
import { ETA0 } from '../../src/base/constants';
import type { Geometry, Point } from '../../src/solver/geometry';
import { solve } from '../../src/solver/solve';
import bulletin from '../fixtures/exposure-dipoles.json';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

const halfWave = (
  frequencyMHz: number,
  heightM: number,
  ground: Geometry['ground'],
  fieldPoints: Point[],
): Geometry => {
  const half = (0.239 * 299.792458) / frequencyMHz; // 95.6 % of half a wavelength, near resonance
  return {
    frequencyMHz,
    ground,
    wires: [{ id: 'd', from: [-half, 0, heightM], to: [half, 0, heightM], radiusM: 0.001, conductivitySPerM: null }],
    source: { wire: 'd', fraction: 0.5 },
    fieldPoints,
    powerW: 1,
  };
};

const setups = [...new Set(bulletin.rows.map((row) => `${row.f_mhz} ${row.height_m} ${row.exposure_height_m}`))];

// US exposure bulletin (full citation in the fixture): distances at which a moment-method model met the limits of 47 CFR 1.1310, in
// steps of 0.15 m. 0.35 m is two steps and the unknown wire radius; where the field falls slowly a distance says little, so there
// the field at the printed place must be within 5 % of the limit.
test.each(setups)('keep-out distances of the half-wave dipole (MHz, its height, place height) %s', (setup) => {
  const [frequencyMHz, heightM, placeM] = setup.split(' ').map(Number) as [number, number, number];
  const rows = bulletin.rows.filter((row) => `${row.f_mhz} ${row.height_m} ${row.exposure_height_m}` === setup);
  const outM = Array.from({ length: 400 }, (_, i) => 0.05 + 0.05 * i);
  const ground = { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 } as const;
  const { fields } = solve(
    halfWave(
      frequencyMHz,
      heightM,
      ground,
      outM.map((y) => [0, y, placeM]),
    ),
  );
  for (const row of rows) {
    for (const [printedM, electric, magnetic] of [
      [row.con_m, 1842 / frequencyMHz, 4.89 / frequencyMHz],
      [row.unc_m, 824 / frequencyMHz, 2.19 / frequencyMHz],
    ] as const) {
      const ratios = fields.map(
        (field) => Math.max(field.electricVPerM / electric, field.magneticAPerM / magnetic) * Math.sqrt(row.power_w),
      );
      const last = ratios.findLastIndex((ratio) => ratio > 1);
      const foundM = last < 0 ? 0 : outM[last];
      const atPrint = ratios[Math.min(ratios.length - 1, Math.round(printedM / 0.05))];
      expect(Math.abs(foundM - printedM) < 0.35 || Math.abs(atPrint - 1) < 0.05, `${row.id}: ${foundM} m`).toBe(true);
    }
  }
});

// Balanis, Antenna Theory, 4th ed., eq. 4-84 to 4-92: E = 60 I/r broadside of a half-wave with P = 73 I²/2: 70.1 mV/m rms for
// 100 W at 1000 m. 1 %: the wire is 4 % shorter than half a wave, which takes 0.03 dB.
test('100 W in a half-wave dipole give 70.1 mV/m a kilometre away, and E/H is that of free space', () => {
  const { fields } = solve({ ...halfWave(7.1, 0, { kind: 'none' }, [[0, 1000, 0]]), powerW: 100 });
  expect(Math.abs(fields[0].electricVPerM / 0.0701 - 1)).toBeLessThan(0.01);
  expect(fields[0].electricVPerM / fields[0].magneticAPerM / ETA0).toBeCloseTo(1, 3); // 1/(kr)² is 5e-5
});

// Ampère: H = I/2πρ close to a wire. At 0.44 m of 72 m of wire the current's bend adds less than 1 %.
test('close to the middle of a long half-wave H is that of a straight current', () => {
  const s = solve({
    ...halfWave(2, 0, { kind: 'none' }, [
      [0, 0.44, 0],
      [0, 0.05, 0],
    ]),
    powerW: 1500,
  });
  const currentA = Math.sqrt(1500 / s.impedance.r);
  expect(Math.abs(s.fields[0].magneticAPerM / (currentA / (2 * Math.PI * 0.44)) - 1)).toBeLessThan(0.01);
  expect(Math.abs(s.fields[1].magneticAPerM / (currentA / (2 * Math.PI * 0.05)) - 1)).toBeLessThan(0.01);
});

// Gauss: E = λ/2πε0ρ with λ = |dI/dz|/ω; for a standing wave I0 cos kz that is 60 I0 sin kz/ρ (Balanis eq. 4-62 with ρ → 0).
test('close to the outer half of a half-wave E is that of the charge on the wire', () => {
  const at = 30; // m from the middle, of 35.8
  const s = solve({ ...halfWave(2, 0, { kind: 'none' }, [[at, 0.1, 0]]), powerW: 100 });
  const currentA = Math.sqrt(100 / s.impedance.r);
  const k = (2 * Math.PI * 2e6) / 299792458;
  const half = (0.239 * 299.792458) / 2;
  // Current of a wire that is not quite half a wave: sin k(half − z)/sin k half; its slope is the charge.
  const hand = (60 * currentA * Math.cos(k * (half - at))) / Math.sin(k * half) / 0.1;
  // A real wire's charge bunches toward its ends by some per cent against the sine.
  expect(Math.abs(s.fields[0].electricVPerM / hand - 1)).toBeLessThan(0.1);
});

test('on the surface of an excellent conductor fields are those over perfect ground', () => {
  const points: Point[] = [
    [2, 3, 0],
    [6, 8, 0],
  ];
  const perfect = solve(halfWave(14, 4, { kind: 'perfect-conductor' }, points));
  const sea = solve(halfWave(14, 4, { kind: 'soil', epsilonR: 81, sigmaSPerM: 1e5 }, points));
  points.forEach((_, i) => {
    expect(sea.fields[i].electricVPerM / perfect.fields[i].electricVPerM).toBeCloseTo(1, 1);
    expect(sea.fields[i].magneticAPerM / perfect.fields[i].magneticAPerM).toBeCloseTo(1, 1);
  });
});
