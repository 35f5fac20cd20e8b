/**
 * Ground tables against the same integrals done slowly, each by itself: no window, no shared nodes, no taking out of images, straight
 * to where e^(−u0 h) has died. Published limits: perfect ground, and the static images −κ/R and 2κ/R.
 */
import { expect, test, vi } from 'vitest';
import { add, type Complex, complex, divide, multiply, scale, squareRoot, subtract } from '../../src/base/complex';
import { besselJ0, besselJ1OverX } from '../../src/solver/bessel';
import { soilPermittivity } from '../../src/solver/ground-spectrum';
import { buildGroundTable, readGroundTable } from '../../src/solver/ground-table';
import { gaussRule } from '../../src/solver/quadrature';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

/** The four kernels (lengths times k0) by brute force, from the formulas as they stand in the literature. */
function slowKernels(epsilon: Complex, rho: number, h: number): Complex[] {
  const rule = gaussRule(12);
  const sums = [complex(0), complex(0), complex(0), complex(0)];
  const addNode = (u0: Complex, k: number, weight: Complex): void => {
    const u1 = squareRoot(subtract(complex(k * k), epsilon));
    const gh = divide(subtract(u0, u1), add(u0, u1));
    const ge = divide(subtract(u1, multiply(epsilon, u0)), add(u1, multiply(epsilon, u0)));
    const d = divide(scale(subtract(epsilon, complex(1)), 2), multiply(add(u0, u1), add(u1, multiply(epsilon, u0))));
    const decay = complex(Math.exp(-u0.re * h) * Math.cos(u0.im * h), -Math.exp(-u0.re * h) * Math.sin(u0.im * h));
    const w = multiply(weight, decay);
    const j0 = besselJ0(k * rho);
    const values = [gh, add(ge, d), subtract(multiply(multiply(u0, u0), d), ge)].map((f) => scale(f, j0));
    values.push(scale(multiply(u0, d), -k * k * rho * besselJ1OverX(k * rho)));
    values.forEach((f, q) => {
      sums[q] = add(sums[q], multiply(w, f));
    });
  };
  const panels = (end: number, widest: number, use: (at: number, weight: number) => void): void => {
    for (let from = 0, to: number; from < end * (1 - 1e-12); from = to) {
      to = Math.min(end, from + Math.min(widest, Math.max(1e-4, 0.3 * from)));
      for (let i = 0; i < 12; i++) use(from + (to - from) * rule.points[i], (to - from) * rule.weights[i]);
    }
  };
  panels(Math.PI / 2, 4 / (rho + h), (t, weight) =>
    addNode(complex(0, Math.sin(t)), Math.cos(t), complex(0, -weight * Math.cos(t))),
  );
  const edge = Math.sqrt(Math.hypot(epsilon.re, epsilon.im));
  panels(36 / h, Math.min(4 / rho, 0.1 * edge), (t, weight) =>
    addNode(complex(t), Math.sqrt(1 + t * t), complex(weight)),
  );
  return sums;
}

test.each([
  { soil: 'average, 3.6 MHz', hz: 3.6e6, epsilonR: 13, sigma: 0.005 },
  { soil: 'average, 28.4 MHz', hz: 28.4e6, epsilonR: 13, sigma: 0.005 },
  { soil: 'poor', hz: 7.1e6, epsilonR: 4, sigma: 0.001 },
  { soil: 'sea', hz: 7.1e6, epsilonR: 81, sigma: 5 },
  { soil: 'fresh water', hz: 28e6, epsilonR: 80, sigma: 0.001 },
  { soil: 'dry sand', hz: 14e6, epsilonR: 3, sigma: 0.0001 },
])('tables over $soil agree with the integrals done one by one', ({ hz, epsilonR, sigma }) => {
  const k0 = (2 * Math.PI * hz) / 299792458;
  const epsilon = soilPermittivity(hz, epsilonR, sigma);
  const table = buildGroundTable(epsilon, 0.1 * k0, 20 * k0, 60 * k0);
  const out = new Float64Array(8);
  for (const [rhoM, hM] of [
    [0.03, 0.12],
    [0.5, 0.2],
    [2, 0.11],
    [1, 3],
    [7, 0.9],
    [20, 5],
    [4, 19],
    [33, 2],
  ]) {
    const [rho, h] = [rhoM * k0, hM * k0];
    const r = Math.hypot(rho, h);
    readGroundTable(out, table, rho, h);
    slowKernels(epsilon, rho, h).forEach((slow, q) => {
      const turned = multiply(scale(slow, r), complex(Math.cos(r), Math.sin(r)));
      // Cubic interpolation in the grid gives 1e-4, and 1e-3 where the wave in the soil beats; T itself is about 1.
      expect(Math.hypot(out[2 * q] - turned.re, out[2 * q + 1] - turned.im)).toBeLessThan(1e-3);
    });
  }
});
