/** The WebAssembly kernels against the plain ones. Their last bits differ by design, so every comparison has a tolerance. */
import { expect, test, vi } from 'vitest';
import { startKernels } from '../../src/cli/start-kernels';
import type { SymmetricMatrix } from '../../src/solver/assemble';
import { chooseKernels } from '../../src/solver/choose-kernels';
import type { Geometry, Ground, Point } from '../../src/solver/geometry';
import { buildGroundTable } from '../../src/solver/ground-table';
import { plainKernels } from '../../src/solver/kernels';
import { solve } from '../../src/solver/solve';
import { sweep } from '../../src/solver/sweep';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

const kernels = await startKernels();

/** Numbers that look random and are the same every time. */
function noise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return state / 2 ** 31 - 1;
  };
}

function randomMatrix(size: number): SymmetricMatrix {
  const next = noise(size);
  const re = Float64Array.from({ length: (size * (size + 1)) / 2 }, next);
  const im = Float64Array.from({ length: (size * (size + 1)) / 2 }, next);
  for (let i = 0; i < size; i++) re[(i * (i + 1)) / 2 + i] += 3 + Math.sqrt(size);
  return { size, re, im };
}

const copyOf = ({ size, re, im }: SymmetricMatrix): SymmetricMatrix => ({ size, re: re.slice(), im: im.slice() });

/** Largest |Z x − b|. */
function residual({ size, re, im }: SymmetricMatrix, x: Float64Array[], b: Float64Array[]): number {
  let largest = 0;
  for (let i = 0; i < size; i++) {
    let [sumRe, sumIm] = [-b[0][i], -b[1][i]];
    for (let j = 0; j < size; j++) {
      const o = i >= j ? (i * (i + 1)) / 2 + j : (j * (j + 1)) / 2 + i;
      sumRe += re[o] * x[0][j] - im[o] * x[1][j];
      sumIm += re[o] * x[1][j] + im[o] * x[0][j];
    }
    largest = Math.max(largest, Math.hypot(sumRe, sumIm));
  }
  return largest;
}

test('this engine runs the fast kernels, so the tests below mean something', () => {
  expect(kernels.name).toMatch(/simd/);
});

test.each([1, 2, 3, 4, 5, 15, 16, 17, 31, 33, 50, 64, 101, 130])(
  'a symmetric system of %i unknowns is solved',
  (size) => {
    const matrix = randomMatrix(size);
    const next = noise(7);
    const right = [Float64Array.from({ length: 2 * size }, next), Float64Array.from({ length: 2 * size }, next)];
    for (const one of [kernels, plainKernels]) {
      const x = right.map((part) => part.slice());
      one.factorAndSolve(copyOf(matrix), x[0], x[1]);
      for (const column of [0, 1]) {
        const cut = (parts: Float64Array[]) => parts.map((part) => part.slice(column * size, (column + 1) * size));
        expect(residual(matrix, cut(x), cut(right))).toBeLessThan(1e-12 * size);
      }
    }
  },
);

test.each([
  { epsilon: { re: 13, im: -6 }, reach: [0.05, 6, 20] },
  { epsilon: { re: 81, im: -9000 }, reach: [0.01, 3, 9] },
  { epsilon: { re: 3, im: -0.1 }, reach: [0.5, 30, 40] },
] as const)('ground tables agree, soil $epsilon', ({ epsilon, reach }) => {
  const [fast, slow] = [kernels.bandSum, plainKernels.bandSum].map((sum) =>
    buildGroundTable(epsilon, reach[0], reach[1], reach[2], sum),
  );
  let largest = 0;
  slow.values.forEach((value, i) => {
    largest = Math.max(largest, Math.abs(fast.values[i] - value));
  });
  expect(largest).toBeLessThan(1e-9);
});

test.each([40, 41])('the sum over frequency nodes agrees with the plain sum, %i entries', (length) => {
  const next = noise(length);
  const make = (count: number) => Float64Array.from({ length: count }, next);
  const nodes = { re: make(5 * length), im: make(5 * length), distanceM: make(length).map(Math.abs) };
  const out = () => ({ size: 8, re: new Float64Array(length), im: new Float64Array(length) });
  const [fast, slow] = [out(), out()];
  for (const k0 of [3, -3]) {
    kernels.combine(fast, nodes, Float64Array.of(0.3, -0.2, 0.5, 0.1, 0.3), k0, 2);
    plainKernels.combine(slow, nodes, Float64Array.of(0.3, -0.2, 0.5, 0.1, 0.3), k0, 2);
    for (let i = 0; i < length; i++) {
      expect(fast.re[i]).toBeCloseTo(slow.re[i], 12);
      expect(fast.im[i]).toBeCloseTo(slow.im[i], 12);
    }
  }
});

const soil: Ground = { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 };
const near = (ground: Ground): Geometry => ({
  frequencyMHz: 14.2,
  ground,
  wires: [
    { id: 'arm1', from: [-5, 0, 6], to: [0, 0, 7], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'arm2', from: [0, 0, 7], to: [5, 0.5, 6], radiusM: 0.001, insulation: { epsilonR: 3, thicknessM: 0.001 } },
    { id: 'drop', from: [0, 0, 7], to: [1, -3, 0.1], radiusM: 0.0025 },
    { id: 'run', from: [1, -3, 0.1], to: [2, -12, 0.05], radiusM: 0.0025 },
  ],
  source: { wire: 'arm2', at: 'from' },
  loads: [{ wire: 'drop', distanceM: 1, impedance: { r: 500, x: 300 } }],
  probes: [{ id: 'foot', wire: 'run', at: 'from' }],
});

// Tables are held in single precision here: 1e-6 of a kernel, far below their grid's 1e-4.
test.each([{ kind: 'none' }, { kind: 'perfect-conductor' }, soil] as Ground[])(
  'a whole antenna agrees, $kind',
  (ground) => {
    const geometry = near(ground);
    const [fast, slow] = [solve(geometry, { kernels }), solve(geometry)];
    const size = Math.hypot(slow.impedance.r, slow.impedance.x);
    expect(Math.abs(fast.impedance.r - slow.impedance.r)).toBeLessThan(1e-5 * size);
    expect(Math.abs(fast.impedance.x - slow.impedance.x)).toBeLessThan(1e-5 * size);
    expect(fast.probes[0].re).toBeCloseTo(slow.probes[0].re, 5);
    expect(fast.powerShare.radiated).toBeCloseTo(slow.powerShare.radiated, 5);
  },
);

// Points near and far, on a wire's axis, and one on the soil; from few sources to many, odd and even in number.
const around: Point[] = [
  [0, 0, 9.6],
  [0.05, 0, 8],
  [0.3, 0.1, 4],
  [2, -11, 0.02],
  [-3, 2, 1.8],
  [40, 60, 2],
];
test.each([
  { ground: { kind: 'none' }, within: 1e-10 },
  { ground: { kind: 'perfect-conductor' }, within: 1e-10 },
  { ground: soil, within: 1e-4 }, // of tables in single precision
] as { ground: Ground; within: number }[])('near fields agree, $ground.kind', ({ ground, within }) => {
  const upright = { id: 'mast', from: [0, 0, 7.05], to: [0, 0, 9.05], radiusM: 0.001 } as const;
  const antenna = { ...near(ground), wires: [...near(ground).wires, upright], fieldPoints: around };
  const slow = solve(antenna, { kernels: { ...kernels, nearSums: plainKernels.nearSums } }).fields;
  solve(antenna, { kernels }).fields.forEach((field, n) => {
    expect(Math.abs(field.electricVPerM / slow[n].electricVPerM - 1)).toBeLessThan(within);
    expect(Math.abs(field.magneticAPerM / slow[n].magneticAPerM - 1)).toBeLessThan(within);
  });
});

test('a sweep agrees', () => {
  const hz = Float64Array.from({ length: 60 }, (_, i) => 1e6 * (6 + 0.15 * i));
  const [fast, slow] = [sweep(near(soil), hz, { kernels }), sweep(near(soil), hz)];
  for (let i = 0; i < 120; i++) {
    const size = Math.hypot(slow.impedance[i & ~1], slow.impedance[i | 1]);
    expect(Math.abs(fast.impedance[i] - slow.impedance[i])).toBeLessThan(1e-3 * size);
  }
});

test('an engine without SIMD gets the plain kernels', async () => {
  const none = new Uint8Array();
  const modules = { ldlt: none, fields: none, sums: none };
  const bytes = { simd: modules, relaxed: modules };
  const engine = { validate: () => false, instantiate: () => Promise.reject(new Error('not asked for')) };
  expect(await chooseKernels(bytes, engine)).toBe(plainKernels);
});
