/** Jobs through the pool and the protocol, with the server of the real worker behind a pair of message queues. */
import { expect, test, vi } from 'vitest';
import type { Geometry } from '../../src/solver/geometry';
import { plainKernels } from '../../src/solver/kernels';
import { withLoads } from '../../src/solver/prepared';
import type { SolverReply } from '../../src/solver/protocol';
import { SolverServer } from '../../src/solver/serve';
import { solve } from '../../src/solver/solve';
import { poolSize, SolverPool, type WorkerLike } from '../../src/worker/solver-pool';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

/** An invented half-wave. */
const dipole: Geometry = {
  frequencyMHz: 14,
  ground: { kind: 'none' },
  wires: [{ id: 'd', from: [-5, 0, 8], to: [5, 0, 8], radiusM: 0.001 }],
  source: { wire: 'd', fraction: 0.5 },
};
const hz = Float64Array.from({ length: 200 }, (_, i) => 1e6 * (3 + (27 * i) / 199));
const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

function startedPool(size: number) {
  const started: WorkerLike[] = [];
  const seen: SolverReply['kind'][] = [];
  const pool = new SolverPool(() => {
    let clock = 0;
    const worker: WorkerLike = {
      onmessage: null,
      onerror: null,
      terminate: () => undefined,
      postMessage: (request) => void turn().then(() => server.answer(structuredClone(request))),
    };
    const send = (reply: SolverReply): void => {
      seen.push(reply.kind);
      const data = structuredClone(reply);
      setImmediate(() => worker.onmessage?.({ data }));
    };
    // The clock is told, so that every partial result is due.
    const server = new SolverServer(plainKernels, { send, rest: turn, now: () => (clock += 100) });
    started.push(worker);
    return worker;
  }, size);
  return { pool, started, seen };
}

test('a single solution comes back as solve gives it', async () => {
  const { pool } = startedPool(1);
  const { millis: _, ...found } = await pool.solve(dipole).result;
  const { millis: __, ...wanted } = solve(dipole);
  expect(found).toEqual(wanted);
});

test('a sweep cut among three workers is one sweep, with progress and first sights on the way', async () => {
  const { pool, started } = startedPool(3);
  const shares: number[] = [];
  let partials = 0;
  const watch = { onProgress: (done: number, of: number) => shares.push(done / of), onPartial: () => partials++ };
  const whole = withLoads(await pool.prepare(dipole, hz, watch).result);
  const single = withLoads(await startedPool(1).pool.prepare(dipole, hz).result);
  expect(started.length).toBe(3);
  expect(whole.frequenciesHz).toEqual(hz);
  expect(partials).toBeGreaterThan(0);
  expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  whole.impedance.forEach((value, i) => {
    const size = Math.hypot(single.impedance[i & ~1], single.impedance[i | 1]);
    expect(Math.abs(value - single.impedance[i])).toBeLessThan(2e-3 * size);
  });
});

test('a job that is called off fails as cancelled and stops working', async () => {
  const { pool, seen } = startedPool(1);
  const job = pool.prepare(dipole, hz, { onProgress: (done) => done === 2 && job.cancel() });
  await expect(job.result).rejects.toMatchObject({ code: 'cancelled' });
  expect(seen).not.toContain('prepared');
  expect(seen.at(-1)).toBe('failed');
});

test('bad geometry fails with its code and data, and the worker goes on', async () => {
  const { pool } = startedPool(1);
  const bad = pool.solve({ ...dipole, source: { wire: 'mast', at: 'from' } });
  await expect(bad.result).rejects.toMatchObject({ code: 'place-on-no-wire', data: { wire: 'mast' } });
  expect((await pool.solve(dipole).result).segments).toBeGreaterThan(10);
});

test('a worker that breaks fails its jobs, and the next job starts another', async () => {
  const { pool, started } = startedPool(1);
  const job = pool.solve(dipole);
  started[0].onerror?.({ message: 'out of memory' });
  await expect(job.result).rejects.toMatchObject({ code: 'internal', data: { detail: 'out of memory' } });
  await pool.solve(dipole).result;
  expect(started.length).toBe(2);
});

test('closing fails what still runs', async () => {
  const { pool } = startedPool(1);
  const job = pool.prepare(dipole, hz);
  pool.close();
  await expect(job.result).rejects.toMatchObject({ code: 'cancelled' });
});

test('one core is left to the screen where there are more than two', () => {
  expect([undefined, 1, 2, 3, 8].map(poolSize)).toEqual([2, 1, 2, 2, 7]);
});
