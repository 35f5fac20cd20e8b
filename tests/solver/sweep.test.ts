/** Sweeps against single solutions: the fit must not be seen. */
import { expect, test, vi } from 'vitest';
import type { Geometry } from '../../src/solver/geometry';
import { withLoads } from '../../src/solver/prepared';
import { evaluateRational, fitRational } from '../../src/solver/rational-fit';
import { solve } from '../../src/solver/solve';
import { prepare, sweep } from '../../src/solver/sweep';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

/** An invented off-centre-fed wire with its coax, choke and a probe at the foot. */
const offCentre: Geometry = {
  frequencyMHz: 7.1,
  ground: { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 },
  wires: [
    { id: 'short', from: [-7, 0, 8], to: [0, 0, 8], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'long', from: [0, 0, 8], to: [13.5, 0, 8], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'shield', from: [0, 0, 8], to: [0, 0, 0.1], radiusM: 0.0025, conductivitySPerM: 5.8e7 },
  ],
  source: { wire: 'long', at: 'from' },
  loads: [{ wire: 'shield', distanceM: 0.5, impedance: { r: 1500, x: 800 } }],
  probes: [{ id: 'foot', wire: 'shield', fraction: 0.9 }],
};
const frequencies = (fromMHz: number, toMHz: number, points: number): Float64Array =>
  Float64Array.from({ length: points }, (_, i) => 1e6 * (fromMHz + ((toMHz - fromMHz) * i) / (points - 1)));

/** Γ on 200 Ω of R + jX. */
function gamma(r: number, x: number): [number, number] {
  const squared = (r + 200) ** 2 + x * x;
  return [(r * r + x * x - 200 * 200) / squared, (400 * x) / squared];
}

test.each([
  { fromMHz: 3, toMHz: 30, points: 400 },
  { fromMHz: 14, toMHz: 14.35, points: 100 },
])('from $fromMHz to $toMHz MHz Γ and currents are those of every frequency solved by itself', (range) => {
  const hz = frequencies(range.fromMHz, range.toMHz, range.points);
  const fitted = sweep(offCentre, hz);
  // The mesh of a sweep is that of its highest frequency; three at a time are few enough to be solved one by one.
  for (let i = 5; i < range.points - 1; i += Math.floor(range.points / 12)) {
    const exact = sweep(offCentre, Float64Array.of(hz[i], hz[range.points - 1]));
    const [a, b] = [
      gamma(fitted.impedance[2 * i], fitted.impedance[2 * i + 1]),
      gamma(exact.impedance[0], exact.impedance[1]),
    ];
    expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThan(5e-4);
    const [p, q] = [fitted.probes[0].current, exact.probes[0].current];
    expect(Math.hypot(p[2 * i] - q[0], p[2 * i + 1] - q[1])).toBeLessThan(2e-3 * Math.max(1, Math.hypot(q[0], q[1])));
  }
  expect(fitted.fitError).toBeLessThan(1e-3);
});

test('a wide sweep needs few solutions', () => {
  const prepared = prepare(offCentre, frequencies(3, 30, 1000));
  expect(prepared.solves).toBeLessThan(32);
});

test('another choke on a prepared antenna gives what solving again gives', () => {
  const hz = frequencies(7, 7.2, 3);
  const prepared = prepare(offCentre, hz);
  const ohms = Float64Array.of(3000, -500, 3100, -700, 3200, -900);
  const changed = withLoads(prepared, [ohms]);
  const again = solve({
    ...offCentre,
    frequencyMHz: 7.2,
    loads: [{ wire: 'shield', distanceM: 0.5, impedance: { r: 3200, x: -900 } }],
  });
  expect(changed.impedance[4]).toBeCloseTo(again.impedance.r, 6);
  expect(changed.impedance[5]).toBeCloseTo(again.impedance.x, 6);
  expect(changed.probes[0].current[4]).toBeCloseTo(again.probes[0].re, 6);
  expect(() => withLoads(prepared, [])).toThrow(/array-size/);
});

test('progress runs up to its end, partial results come on the way, and a sweep can be called off', () => {
  const hz = frequencies(3, 30, 200);
  const seen: number[] = [];
  let partials = 0;
  sweep(offCentre, hz, {
    onProgress: ({ done, of, partial }) => {
      seen.push(done / of);
      if (partial) partials += withLoads(partial()).impedance.length === 400 ? 1 : 0;
    },
  });
  expect(seen.every((share) => share > 0 && share <= 1)).toBe(true);
  expect(partials).toBeGreaterThan(2);
  let steps = 0;
  expect(() => sweep(offCentre, hz, { isCancelled: () => ++steps > 3 })).toThrow(/cancelled/);
  expect(steps).toBe(4);
});

test('a rational function of low degree is found exactly from few samples', () => {
  const poles = [
    [0.3, 0.05],
    [0.7, -0.1],
  ];
  const value = (x: number): Float64Array => {
    let [re, im] = [1, 0.5];
    for (const [at, off] of poles) {
      const squared = (x - at) ** 2 + off ** 2;
      re += (x - at) / squared;
      im += off / squared;
    }
    return Float64Array.of(re, im);
  };
  const x = Array.from({ length: 9 }, (_, i) => i / 8);
  const fit = fitRational({ x, values: x.map(value) }, 1e-10, 9);
  expect(fit.support.length).toBeLessThanOrEqual(4);
  const out = new Float64Array(2);
  for (const at of [0.01, 0.29, 0.305, 0.69, 0.93]) {
    evaluateRational(out, fit, at);
    expect(Math.hypot(out[0] - value(at)[0], out[1] - value(at)[1])).toBeLessThan(1e-7);
  }
});
