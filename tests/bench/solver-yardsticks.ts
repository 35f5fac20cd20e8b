/** In a worker: WebAssembly kernels against the plain ones in one run, and where the time of the wide sweep goes. */
import type { SymmetricMatrix } from '../../src/solver/assemble';
import { chooseKernels } from '../../src/solver/choose-kernels';
import { soilPermittivity } from '../../src/solver/ground-spectrum';
import { buildGroundTable } from '../../src/solver/ground-table';
import { type Kernels, plainKernels } from '../../src/solver/kernels';
import { interpolationNodes } from '../../src/solver/matrix-interpolation';
import { prepare } from '../../src/solver/sweep';
import { makeSystem, sharedGround, solvePorts } from '../../src/solver/system';
import { offCentre, range } from './solver-antennas';
import { choosingEngine, started } from './solver-engine';

/** Least milliseconds of several runs, each with fresh input. */
function leastMs<T>(make: () => T, run: (input: T) => void, runs: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const input = make();
    const start = performance.now();
    run(input);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

function testMatrix(size: number): SymmetricMatrix {
  const length = (size * (size + 1)) / 2;
  const re = Float64Array.from({ length }, (_, i) => Math.sin(i));
  const im = Float64Array.from({ length }, (_, i) => Math.cos(3 * i));
  for (let i = 0; i < size; i++) re[(i * (i + 1)) / 2 + i] += 40;
  return { size, re, im };
}

function measure(kernels: Kernels) {
  const antenna = offCentre(10);
  const system = makeSystem(antenna, 40, 30e6);
  const soil = { epsilonR: 13, sigmaSPerM: 0.005 };
  const epsilon = soilPermittivity(20e6, soil.epsilonR, soil.sigmaSPerM);
  const { hMinM, hMaxM, rhoMaxM } = system.reach;
  const build = (k: number): unknown => buildGroundTable(epsilon, k * hMinM, k * hMaxM, k * rhoMaxM, kernels.bandSum);
  const table = sharedGround.table(20e6, soil, system.reach, kernels.bandSum);
  const k0 = (2 * Math.PI * 20e6) / 299792458;
  const tableMs = leastMs(() => k0, build, 12);
  const fillMs = leastMs(
    () => k0,
    (k) => kernels.fillPairs(system.plan, k, table),
    30,
  );
  const factor = [100, 200, 400].map((size) => {
    const matrix = testMatrix(size);
    const copy = () => ({
      matrix: { size, re: matrix.re.slice(), im: matrix.im.slice() },
      re: new Float64Array(size).fill(1),
      im: new Float64Array(size),
    });
    const ms = leastMs(copy, (x) => kernels.factorAndSolve(x.matrix, x.re, x.im), size > 300 ? 12 : 60);
    return { size, ms, gflops: ((4 / 3) * size ** 3) / ms / 1e6 };
  });
  return { name: kernels.name, unknowns: system.mesh.unknownCount, tableMs, fillMs, factor };
}

/** Time inside each kernel during one wide sweep, warmed up; tables are timed apart. */
function shares(kernels: Kernels) {
  const spent: Record<string, number> = {};
  const timed =
    <A extends unknown[], R>(name: string, run: (...args: A) => R) =>
    (...args: A): R => {
      const start = performance.now();
      const result = run(...args);
      spent[name] = (spent[name] ?? 0) + performance.now() - start;
      return result;
    };
  const watched: Kernels = {
    name: kernels.name,
    fillPairs: timed('fill', kernels.fillPairs),
    assemble: timed('assemble', kernels.assemble),
    combine: timed('interpolate', kernels.combine),
    bandSum: kernels.bandSum,
    intensities: kernels.intensities,
    nearSums: kernels.nearSums,
    factorAndSolve: timed('factor', kernels.factorAndSolve),
  };
  prepare(offCentre(10), range(3, 30, 1000), { kernels }); // warm, and its tables stay
  const start = performance.now();
  prepare(offCentre(10), range(3, 30, 1000), { kernels: watched });
  const total = performance.now() - start;
  const { reach } = makeSystem(offCentre(10), 40, 30e6);
  const nodes = interpolationNodes(3e6, 30e6, 10);
  const buildAll = (): void => {
    const soil = { epsilonR: 13.001, sigmaSPerM: 0.005 }; // of its own, so that none is kept from before
    for (const hz of nodes) sharedGround.table(hz, soil, reach, kernels.bandSum);
  };
  const tables = leastMs(() => undefined, buildAll, 1);
  return { ...spent, tables, 'mesh, pairs, fit': total - Object.values(spent).reduce((a, b) => a + b, 0) };
}

const kernels = await chooseKernels(...choosingEngine());
const result = { fast: measure(kernels), plain: measure(plainKernels), shares: shares(kernels) };
// Bytes the modules hold after an antenna of 400 unknowns.
const large = makeSystem(offCentre(10), 72, 30e6);
solvePorts(large, 30e6, kernels);
const moduleBytes = started.reduce((sum, { memory }) => sum + memory.buffer.byteLength, 0);
self.postMessage({ ...result, large: { unknowns: large.mesh.unknownCount, moduleBytes } });
