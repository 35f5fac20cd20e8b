/** Laws that hold for every antenna, whatever the numbers. Tolerances are those of quadrature and tables, not of the mesh. */
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { complex, divide, multiply, subtract } from '../../src/base/complex';
import { C0, EPSILON0, ETA0 } from '../../src/base/constants';
import type { Geometry, Ground, Point, Solution } from '../../src/solver/geometry';
import { soilPermittivity } from '../../src/solver/ground-spectrum';
import { gaussRule } from '../../src/solver/quadrature';
import { solve } from '../../src/solver/solve';
import { drivenCurrents } from './currents';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

const soil: Ground = { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 };

/** An invented sloping antenna with a coax that falls aslant and runs along the ground: nothing in it is symmetrical. */
const slanted = (ground: Ground): Geometry => ({
  frequencyMHz: 7.1,
  ground,
  wires: [
    { id: 'long', from: [0, 0, 7], to: [14, 3, 9], radiusM: 0.001, conductivitySPerM: null },
    { id: 'short', from: [-5, 1, 5], to: [0, 0, 7], radiusM: 0.001, conductivitySPerM: null },
    { id: 'drop', from: [0, 0, 7], to: [-1, -3, 0.3], radiusM: 0.0025, conductivitySPerM: null },
    { id: 'run', from: [-1, -3, 0.3], to: [-2, -11, 0.2], radiusM: 0.0025, conductivitySPerM: null },
  ],
  source: { wire: 'long', at: 'from' },
  probes: [{ id: 'bend', wire: 'run', at: 'from' }],
});

const moved = (geometry: Geometry, move: (p: Point) => Point): Geometry => ({
  ...geometry,
  wires: geometry.wires.map((wire) => ({ ...wire, from: move(wire.from), to: move(wire.to) })),
});

function expectSame(a: Solution, b: Solution, relative: number): void {
  const size = Math.hypot(a.impedance.r, a.impedance.x);
  expect(Math.hypot(a.impedance.r - b.impedance.r, a.impedance.x - b.impedance.x) / size).toBeLessThan(relative);
  a.probes.forEach((probe, i) => {
    expect(Math.hypot(probe.re - b.probes[i].re, probe.im - b.probes[i].im)).toBeLessThan(relative * 3);
  });
}

test.each([{ kind: 'none' }, { kind: 'perfect-conductor' }] as const)(
  'without loss all power is radiated, $kind',
  (ground) => {
    const { radiated, wire, loads } = solve(slanted(ground)).powerShare;
    expect({ wire, loads }).toEqual({ wire: 0, loads: 0 });
    expect(Math.abs(radiated - 1)).toBeLessThan(1e-5);
  },
);

test('without loss in the ground, power in is radiated plus wire plus loads', () => {
  const lossy = slanted({ kind: 'perfect-conductor' });
  const { radiated, wire, loads } = solve({
    ...lossy,
    wires: lossy.wires.map((w) => ({ ...w, conductivitySPerM: 1e6 })),
    loads: [{ wire: 'drop', distanceM: 2, impedance: { r: 300, x: -200 } }],
  }).powerShare;
  expect(wire).toBeGreaterThan(0.01);
  expect(loads).toBeGreaterThan(0.005);
  expect(Math.abs(radiated + wire + loads - 1)).toBeLessThan(1e-4);
});

/**
 * Power that goes into the soil from the plane-wave spectrum of the currents, with no use of the solver's tables. At z = 0, for waves
 * e^(−jk·ρ) with k along ρ̂ and Y the admittances looking up and down,
 *   E_TE = −J⊥/(Y0 + Y1), Y = u/jωµ0      E_TM = −[J∥ + (jk/u0) Jz]/(Y0 + Y1), Y = jωε/u      P = ∬ ½ Re(Y1)|E|² d²k/(2π)²
 */
function groundPowerW(geometry: Geometry & { ground: { kind: 'soil'; epsilonR: number; sigmaSPerM: number } }): number {
  const { system, currents } = drivenCurrents(geometry);
  const { mesh, plan } = system;
  const omega = 2 * Math.PI * geometry.frequencyMHz * 1e6;
  const k0 = omega / C0;
  const epsilon = soilPermittivity(geometry.frequencyMHz * 1e6, geometry.ground.epsilonR, geometry.ground.sigmaSPerM);
  const sqrt = (z: { re: number; im: number }) => {
    const size = Math.hypot(z.re, z.im);
    return complex(Math.sqrt((size + z.re) / 2), (z.im < 0 ? -1 : 1) * Math.sqrt(Math.max(0, (size - z.re) / 2)));
  };
  const rule = gaussRule(2);
  const azimuths = 96;
  const ring = (u0: { re: number; im: number }, k: number): number => {
    const u1 = sqrt(subtract(complex(k * k), multiply(complex(k0 * k0), epsilon)));
    const jOmegaMu = complex(0, k0 * ETA0);
    const jOmegaEpsilon = complex(0, omega * EPSILON0);
    const [te0, te1] = [divide(u0, jOmegaMu), divide(u1, jOmegaMu)];
    const [tm0, tm1] = [divide(jOmegaEpsilon, u0), divide(multiply(jOmegaEpsilon, epsilon), u1)];
    let power = 0;
    for (let a = 0; a < azimuths; a++) {
      const [cx, cy] = [Math.cos((2 * Math.PI * a) / azimuths), Math.sin((2 * Math.PI * a) / azimuths)];
      const sums = { across: complex(0), along: complex(0) };
      for (let e = 0; e < mesh.elementCount; e++) {
        const [ux, uy, uz] = mesh.direction.subarray(3 * e, 3 * e + 3);
        for (let p = 0; p < 2; p++) {
          const [x, y, z] = plan.points.subarray(6 * e + 3 * p, 6 * e + 3 * p + 3);
          const share = rule.points[p];
          const weight = (mesh.lengthM[e] / 2) * Math.exp(-u0.re * z);
          const phase = k * (cx * x + cy * y) - u0.im * z;
          const i = complex(
            (1 - share) * currents.re[2 * e] + share * currents.re[2 * e + 1],
            (1 - share) * currents.im[2 * e] + share * currents.im[2 * e + 1],
          );
          const wave = multiply(i, complex(weight * Math.cos(phase), weight * Math.sin(phase)));
          const level = complex(ux * cx + uy * cy);
          const upright = divide(complex(0, k * uz), u0);
          const along = multiply(wave, complex(level.re + upright.re, upright.im));
          const across = multiply(wave, complex(uy * cx - ux * cy));
          sums.along = complex(sums.along.re + along.re, sums.along.im + along.im);
          sums.across = complex(sums.across.re + across.re, sums.across.im + across.im);
        }
      }
      const te = divide(sums.across, complex(te0.re + te1.re, te0.im + te1.im));
      const tm = divide(sums.along, complex(tm0.re + tm1.re, tm0.im + tm1.im));
      power += (te1.re * (te.re ** 2 + te.im ** 2) + tm1.re * (tm.re ** 2 + tm.im ** 2)) / (2 * azimuths);
    }
    return power / (2 * Math.PI); // the azimuth's 2π over (2π)²
  };
  let power = 0;
  const panels = [0, 0.02, 0.08, 0.2, 0.4, 0.7, 1];
  const fine = gaussRule(16);
  for (let p = 1; p < panels.length; p++) {
    for (let i = 0; i < 16; i++) {
      const c = panels[p - 1] + (panels[p] - panels[p - 1]) * fine.points[i];
      const weight = fine.weights[i] * (panels[p] - panels[p - 1]);
      power += weight * ring(complex(0, k0 * c), k0 * Math.sqrt(1 - c * c)) * k0 * k0 * c; // k dk = k0² c dc
    }
  }
  const steps = [0, 0.02, 0.1, 0.4, 1, 2, 4, 7, 12, 20, 32];
  for (let p = 1; p < steps.length; p++) {
    for (let i = 0; i < 16; i++) {
      const t = steps[p - 1] + (steps[p] - steps[p - 1]) * fine.points[i];
      const weight = fine.weights[i] * (steps[p] - steps[p - 1]);
      power += weight * ring(complex(k0 * t, 0), k0 * Math.sqrt(1 + t * t)) * k0 * k0 * t;
    }
  }
  return power;
}

test.each([
  { epsilonR: 13, sigmaSPerM: 0.005 },
  { epsilonR: 4, sigmaSPerM: 0.001 },
])(
  'over soil ($epsilonR, $sigmaSPerM) radiated and ground power, each by its own integral, add up to the input',
  (constants) => {
    const ground = { kind: 'soil', ...constants } as const;
    const geometry = {
      ...slanted(ground),
      ground,
      wires: [
        { id: 'long', from: [0, 0, 2], to: [10, 3, 3], radiusM: 0.001, conductivitySPerM: null },
        { id: 'short', from: [0, 0, 2], to: [-2, 0, 8], radiusM: 0.001, conductivitySPerM: null },
      ] satisfies Geometry['wires'],
      probes: [],
    };
    const share = groundPowerW(geometry) / drivenCurrents(geometry).inputW;
    const { radiated } = solve(geometry).powerShare;
    expect(share).toBeGreaterThan(0.3);
    expect(Math.abs(radiated + share - 1)).toBeLessThan(1e-4);
  },
);

test('reciprocity: the current that a volt in one wire drives in another is the same the other way round', () => {
  const there = solve({
    ...slanted(soil),
    source: { wire: 'long', distanceM: 4 },
    probes: [{ id: 'p', wire: 'run', distanceM: 3 }],
    loads: [{ wire: 'run', distanceM: 3, impedance: { r: 0, x: 0 } }],
  });
  const back = solve({
    ...slanted(soil),
    source: { wire: 'run', distanceM: 3 },
    probes: [{ id: 'p', wire: 'long', distanceM: 4 }],
    loads: [{ wire: 'long', distanceM: 4, impedance: { r: 0, x: 0 } }],
  });
  const transfer = (s: Solution) =>
    divide(complex(s.probes[0].re, s.probes[0].im), complex(s.impedance.r, s.impedance.x));
  const [a, b] = [transfer(there), transfer(back)];
  expect(Math.hypot(a.re - b.re, a.im - b.im) / Math.hypot(a.re, a.im)).toBeLessThan(1e-8);
});

test('turning about the vertical and moving along the ground change nothing', () => {
  const whole = solve(slanted(soil));
  fc.assert(
    fc.property(
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.double({ min: -50, max: 50, noNaN: true }),
      (angle, shift) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const other = moved(slanted(soil), ([x, y, z]) => [c * x - s * y + shift, s * x + c * y - 2 * shift, z]);
        expectSame(whole, solve(other), 2e-4); // the table's reach, and so its grid, changes with the angle
      },
    ),
    { numRuns: 4 },
  );
});

test('in free space any turn changes nothing', () => {
  const turned = moved(slanted({ kind: 'none' }), ([x, y, z]) => [z, 0.6 * x - 0.8 * y, 0.8 * x + 0.6 * y]);
  expectSame(solve(slanted({ kind: 'none' })), solve(turned), 1e-7);
});

test.each([{ kind: 'none' }, { kind: 'perfect-conductor' }] as const)(
  'length, radius and wavelength scaled together change nothing, $kind',
  (ground) => {
    const small = moved({ ...slanted(ground), frequencyMHz: 28.4 }, ([x, y, z]) => [x / 4, y / 4, z / 4]);
    const scaled = { ...small, wires: small.wires.map((wire) => ({ ...wire, radiusM: wire.radiusM / 4 })) };
    expectSame(solve(slanted(ground)), solve(scaled), 1e-7);
  },
);

test('over soil scaling holds when conductivity goes with frequency', () => {
  const small = moved({ ...slanted({ ...soil, sigmaSPerM: 0.02 } as Ground), frequencyMHz: 28.4 }, ([x, y, z]) => [
    x / 4,
    y / 4,
    z / 4,
  ]);
  const scaled = { ...small, wires: small.wires.map((wire) => ({ ...wire, radiusM: wire.radiusM / 4 })) };
  expectSame(solve(slanted(soil)), solve(scaled), 1e-6);
});

test('soil of great conductivity tends to perfect ground, soil like air to free space', () => {
  const close = (a: Solution, b: Solution, relative: number) =>
    expect(Math.hypot(a.impedance.r - b.impedance.r, a.impedance.x - b.impedance.x)).toBeLessThan(
      relative * Math.hypot(b.impedance.r, b.impedance.x),
    );
  close(
    solve(slanted({ kind: 'soil', epsilonR: 10, sigmaSPerM: 1e7 })),
    solve(slanted({ kind: 'perfect-conductor' })),
    5e-4,
  );
  close(solve(slanted({ kind: 'soil', epsilonR: 1, sigmaSPerM: 0 })), solve(slanted({ kind: 'none' })), 1e-6);
  close(solve(slanted({ kind: 'soil', epsilonR: 1.002, sigmaSPerM: 0 })), solve(slanted({ kind: 'none' })), 2e-3);
});

test('the feed impedance with a choke obeys Z11 − Z12²/(Z22 + ZL): three values give every other', () => {
  const at = (ohms: { r: number; x: number }) => {
    const loads = [{ wire: 'drop', distanceM: 1, impedance: ohms }];
    const { impedance } = solve({ ...slanted(soil), loads });
    return complex(impedance.r, impedance.x);
  };
  const open = at({ r: 1e12, x: 0 });
  const short = at({ r: 0, x: 0 });
  const middle = at({ r: 500, x: 200 });
  // Z = open − a/(b + ZL): a/b = open − short, a/(b + Zm) = open − middle.
  const ratio = divide(subtract(open, middle), subtract(open, short)); // b/(b + Zm)
  const b = divide(multiply(ratio, complex(500, 200)), subtract(complex(1), ratio));
  const a = multiply(b, subtract(open, short));
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 9000, noNaN: true }),
      fc.double({ min: -6000, max: 6000, noNaN: true }),
      (r, x) => {
        const law = subtract(open, divide(a, complex(b.re + r, b.im + x)));
        const found = at({ r, x });
        expect(Math.hypot(found.re - law.re, found.im - law.im)).toBeLessThan(1e-6 * Math.hypot(law.re, law.im));
      },
    ),
    { numRuns: 5 },
  );
});

test('a wire cut in two at a node is the same wire', () => {
  const geometry = slanted(soil);
  const [long, ...rest] = geometry.wires;
  const middle: Point = [5.6, 1.2, 7.8];
  const cut = { ...geometry, wires: [{ ...long, to: middle }, { ...long, id: 'rest', from: middle }, ...rest] };
  // The node is graded, so the meshes differ: the tolerance is the mesh error of one element more or less.
  expectSame(solve(cut, { mesh: 'fine' }), solve(geometry, { mesh: 'fine' }), 5e-3);
});

test('a wire told from its other end is the same wire, its probes with the sign turned', () => {
  const geometry = slanted(soil);
  const run = geometry.wires[3];
  const back = {
    ...geometry,
    wires: [...geometry.wires.slice(0, 3), { ...run, from: run.to, to: run.from }],
    probes: [{ id: 'bend', wire: 'run', at: 'to' as const }],
  };
  const [a, b] = [solve(geometry), solve(back)];
  expect(b.impedance.r).toBeCloseTo(a.impedance.r, 5);
  expect(b.probes[0].re).toBeCloseTo(-a.probes[0].re, 7);
  expect(b.probes[0].im).toBeCloseTo(-a.probes[0].im, 7);
});

test('the error estimate falls with the mesh and is never zero', () => {
  const [coarse, fine] = (['default', 'fine'] as const).map((mesh) => solve(slanted(soil), { mesh }).errorEstimate);
  expect(coarse).toBeGreaterThan(fine);
  expect(fine).toBeGreaterThan(0);
});

test('wires that come close and wires near the soil are warned of, with the wire', () => {
  const geometry = slanted(soil);
  const near: Geometry['wires'][number] = { id: 'near', from: [0.5, 0, 7.001], to: [14.5, 3, 9.001], radiusM: 0.05 };
  const { warnings } = solve({
    ...geometry,
    wires: [...geometry.wires, { ...near, from: [0, -0.15, 7], to: [14, 2.85, 9] }],
  });
  expect(warnings.map(({ code, wire }) => [code, wire])).toContainEqual(['wires-close', 'near']);
  const low = solve({
    ...geometry,
    wires: [...geometry.wires, { id: 'low', from: [3, 3, 0.006], to: [6, 3, 0.006], radiusM: 0.002 }],
  });
  expect(low.warnings.map(({ code, wire }) => [code, wire])).toContainEqual(['ground-close', 'low']);
  const stub: Geometry['wires'][number] = { id: 'stub', from: [14, 3, 9], to: [14, 3, 9.01], radiusM: 0.002 };
  const short = solve({ ...geometry, wires: [...geometry.wires, stub] });
  expect(short.warnings.map(({ code, wire }) => [code, wire])).toContainEqual(['segment-short', 'stub']);
});
