import { expect, test } from 'vitest';
import { oneHopKm, roundKm, shareAt } from '../../src/app/screens/plan/sends';

test('one hop: nowhere straight up, the tangent to the Earth as the farthest', () => {
  expect(oneHopKm(90)).toBeCloseTo(0, 6);
  // Tangent ray: cos(half the arc) = R / (R + H), H = 300 km.
  expect(oneHopKm(0)).toBeCloseTo(2 * 6371 * Math.acos(6371 / 6671), 6);
  const hops = [5, 10, 20, 40, 60, 80].map(oneHopKm);
  expect([...hops].sort((a, b) => b - a)).toEqual(hops);
});

test('flat Earth, near the zenith: twice the height over the tangent', () => {
  expect(oneHopKm(75) / (600 / Math.tan((75 * Math.PI) / 180))).toBeCloseTo(1, 1);
});

test('kilometres are told as coarsely as they are known', () => {
  expect([1, 130, 430, 1730].map(roundKm)).toEqual([50, 150, 400, 1500]);
});

test('a share is that of the nearest direction solved', () => {
  const pattern = [
    { deg: 0, db: -10 },
    { deg: 90, db: 0 },
  ];
  expect(shareAt(pattern, 80)).toBe(1);
  expect(shareAt(pattern, 10)).toBeCloseTo(0.1, 9);
  expect(shareAt([], 10)).toBe(0);
});
