/** In the browser: the standard jobs of the field solver, through the real worker, timed from the outside. */
import { withLoads } from '../../src/solver/prepared';
import { SolverPool, type WorkerLike } from '../../src/worker/solver-pool';
import { offCentre, oneFrequency, range, shortDipole } from './solver-antennas';

const median = (values: number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1];

function startSolver(): WorkerLike {
  const worker = new Worker(new URL('../../src/worker/solver-worker.ts', import.meta.url), { type: 'module' });
  const { port1, port2 } = new MessageChannel();
  worker.postMessage(null, [port2]);
  return Object.assign(port1, { onerror: null, terminate: () => worker.terminate() }) as unknown as WorkerLike;
}

const startPool = (): SolverPool => new SolverPool(startSolver, 1);

/** Milliseconds of a job in a fresh worker each time, from its start to the result; then again in the same worker. */
async function coldAndWarm(job: (pool: SolverPool, turn: number) => Promise<unknown>, runs = 5) {
  const cold: number[] = [];
  const warm: number[] = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    const pool = startPool();
    await job(pool, 0);
    cold.push(performance.now() - start);
    for (let turn = 1; turn <= 3; turn++) {
      const again = performance.now();
      await job(pool, turn);
      warm.push(performance.now() - again);
    }
    pool.close();
  }
  return { coldMs: median(cold), warmMs: median(warm) };
}

async function jobs() {
  const wide = range(3, 30, 1000);
  const band = range(14, 14.35, 100);
  const pool = startPool();
  const prepared = await pool.prepare(offCentre(10), wide).result;
  pool.close();
  const choke: number[] = [];
  for (let run = 0; run < 9; run++) {
    const start = performance.now();
    withLoads(prepared, [{ re: 300 * run, im: 2000 - 300 * run }]);
    choke.push(performance.now() - start);
  }
  return {
    start: await coldAndWarm((p) => p.solve(shortDipole).result),
    a: await coldAndWarm((p) => p.solve(oneFrequency).result),
    b: await coldAndWarm((p) => p.prepare(oneFrequency, band).result),
    c: await coldAndWarm((p) => p.prepare(offCentre(10), wide).result, 3),
    d: { coldMs: choke[0], warmMs: median(choke) },
    e: await coldAndWarm((p, turn) => p.prepare(offCentre(8.5 + 0.5 * turn), band).result),
    solves: prepared.solves,
    fitError: prepared.fitError,
    segments: prepared.segments,
  };
}

/** Runs the yardsticks in their own worker, so that nothing of the page is in the way. */
const yardsticks = (): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./solver-yardsticks.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }) => resolve(data);
    worker.onerror = ({ message }) => reject(new Error(message));
  });

Object.assign(globalThis, { runJobs: jobs, runYardsticks: yardsticks });
