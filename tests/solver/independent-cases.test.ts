/**
 * Antennas solved by an independent integral-equation program, written in another language, converged and with stated uncertainty
 * (tests/fixtures/antenna-cases.json and choke-cases.json). Tolerances are those of the files: they hold the difference between two
 * feed models and the finite mesh. The fine mesh must do twice as well.
 */
import { expect, test, vi } from 'vitest';
import { divide, magnitude } from '../../src/base/complex';
import type { Geometry, Solution } from '../../src/solver/geometry';
import { solve } from '../../src/solver/solve';
import antennas from '../fixtures/antenna-cases.json';
import chokes from '../fixtures/choke-cases.json';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

interface Case {
  id: string;
  geometry: Geometry;
  expected: {
    impedance: { r: number; x: number };
    probes: { id: string; re: number; im: number; magnitude: number }[];
    powerShare: Partial<Solution['powerShare']>;
    gainDbi?: number;
  };
}

/** How far off, as a part of what is tolerated: below 600 Ω by impedance, above by admittance. */
function impedanceMiss(found: Solution['impedance'], wanted: Solution['impedance']): number {
  const sizeOhm = Math.hypot(wanted.r, wanted.x);
  if (sizeOhm < 600) {
    const r = Math.abs(found.r - wanted.r) / (0.03 * wanted.r + 0.5);
    return Math.max(r, Math.abs(found.x - wanted.x) / (0.03 * sizeOhm + 3));
  }
  const admittance = ({ r, x }: Solution['impedance']) => divide({ re: 1, im: 0 }, { re: r, im: x });
  const [a, b] = [admittance(found), admittance(wanted)];
  return Math.max(Math.abs(a.re - b.re) / (0.03 * magnitude(b)), Math.abs(a.im - b.im) / (0.08 * magnitude(b)));
}

const cases = [...antennas.cases, ...chokes.cases] as unknown as Case[];

test.each(cases)('$id agrees at the default and twice as well at the fine mesh', ({ geometry, expected }) => {
  for (const { mesh, part } of [
    { mesh: 'default', part: 1 },
    { mesh: 'fine', part: 0.5 },
  ] as const) {
    const found = solve(geometry, { mesh });
    expect(impedanceMiss(found.impedance, expected.impedance)).toBeLessThan(part);
    for (const wanted of expected.probes) {
      const probe = found.probes.find(({ id }) => id === wanted.id);
      const off = Math.hypot((probe?.re ?? NaN) - wanted.re, (probe?.im ?? NaN) - wanted.im);
      expect(off / wanted.magnitude).toBeLessThan(part * (wanted.magnitude < 0.01 ? 0.12 : 0.04));
    }
    // Shares follow from currents good to 4 %; a hundredth of the whole is a quarter of that.
    for (const [key, share] of Object.entries(expected.powerShare)) {
      expect(Math.abs(found.powerShare[key as keyof Solution['powerShare']] - share)).toBeLessThan(part * 0.01);
    }
    // The file's peak is the best of a grid of directions; 0.1 dB is what the steps between them can hide.
    if (expected.gainDbi !== undefined) expect(Math.abs(found.gainDbi - expected.gainDbi)).toBeLessThan(0.1);
    // The estimate must not flatter: the real error is at most three times it (or within the file's own uncertainty).
    const error = Math.hypot(found.impedance.r - expected.impedance.r, found.impedance.x - expected.impedance.x);
    const sizeOhm = Math.hypot(expected.impedance.r, expected.impedance.x);
    expect(error / sizeOhm).toBeLessThan(3 * found.errorEstimate + 0.01);
  }
});
