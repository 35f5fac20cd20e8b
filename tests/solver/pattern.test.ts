/** Where an antenna sends, against patterns in closed form: Balanis, Antenna Theory, 4th ed., eq. 4-7 (short dipole, sin² θ) and sec. 4.7. */
import { expect, test } from 'vitest';
import type { Geometry } from '../../src/solver/geometry';
import { solve } from '../../src/solver/solve';

const wire = (from: [number, number, number], to: [number, number, number]): Pick<Geometry, 'wires' | 'source'> => ({
  wires: [{ id: 'w', from, to, radiusM: 0.001, conductivitySPerM: null }],
  source: { wire: 'w', fraction: 0.5 },
});

const patternOf = (geometry: Geometry) => {
  const { pattern } = solve({ ...geometry, pattern: true });
  if (pattern === undefined) throw new Error('no pattern');
  return pattern;
};

test('a short upright dipole in free space radiates as sin² θ: 38, 39, 21 and 3 % of the power by height', () => {
  const { elevationShares, zoneGain, azimuth } = patternOf({
    frequencyMHz: 3,
    ground: { kind: 'none' },
    ...wire([0, 0, 0], [0, 0, 2]),
  });
  // ∫cos³ from a to b over 2/3, both halves of the sky alike.
  const upTo = (deg: number) => 1.5 * Math.sin((deg * Math.PI) / 180) - 0.5 * Math.sin((deg * Math.PI) / 180) ** 3;
  const bounds = [0, 15, 35, 60, 90];
  elevationShares.forEach((share, i) => {
    expect(share).toBeCloseTo(upTo(bounds[i + 1] ?? 90) - upTo(bounds[i] ?? 0), 3);
  });
  const sine = (deg: number) => Math.sin((deg * Math.PI) / 180);
  expect(zoneGain.far).toBeCloseTo((upTo(20) - upTo(5)) / (sine(20) - sine(5)), 2);
  expect(zoneGain.near).toBeCloseTo((1 - upTo(30)) / (1 - sine(30)), 2);
  expect(Math.min(...azimuth.map(({ db }) => db))).toBeGreaterThan(-0.01);
});

test('a level half-wave over perfect ground sends across itself and nothing along the ground', () => {
  const { elevation, azimuth } = patternOf({
    frequencyMHz: 7.1,
    ground: { kind: 'perfect-conductor' },
    ...wire([-10.2, 0, 10.6], [10.2, 0, 10.6]),
  });
  expect(elevation[0]?.db).toBeLessThan(-40);
  expect(elevation.at(-1)?.db).toBeLessThan(-40);
  expect(elevation.map(({ deg }) => deg)).toEqual(Array.from({ length: 37 }, (_, i) => 5 * i));
  const at = (deg: number) => azimuth.find((point) => point.deg === deg)?.db ?? 0;
  expect(at(90) - at(0)).toBeGreaterThan(3);
  expect(at(90)).toBeCloseTo(at(270), 3);
});

test('nobody asks, nothing is told', () => {
  const plain: Geometry = { frequencyMHz: 3, ground: { kind: 'none' }, ...wire([0, 0, 0], [0, 0, 2]) };
  expect('pattern' in solve(plain)).toBe(false);
});
