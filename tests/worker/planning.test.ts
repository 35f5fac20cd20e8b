/** Plans and studies through the client, the protocol and the server of the real worker, with message queues between them. */
import { expect, test, vi } from 'vitest';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { plainKernels } from '../../src/solver/kernels';
import { SolverServer } from '../../src/solver/serve';
import { PlanningClient, type PlanningWorkerLike } from '../../src/worker/planning-client';
import type { PlanningReply } from '../../src/worker/planning-protocol';
import { PlanningServer } from '../../src/worker/planning-server';
import { SolverPool, type WorkerLike } from '../../src/worker/solver-pool';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

const dipole: Answers = { bands: ['20m'], radiator: 'straight-wire', fedAt: 'centre', shackEnd: 'radio' };
const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

function directSolver(): WorkerLike {
  const solver: WorkerLike = {
    onmessage: null,
    onerror: null,
    terminate: () => undefined,
    postMessage: (request) => void turn().then(() => server.answer(structuredClone(request))),
  };
  const server = new SolverServer(plainKernels, {
    send: (reply) => void setImmediate(() => solver.onmessage?.({ data: structuredClone(reply) })),
    rest: turn,
    now: () => 0,
  });
  return solver;
}

interface Started extends PlanningWorkerLike {
  ended: boolean;
  tell(reply: PlanningReply): void;
}

function startedClient(afterwards?: (end: () => void) => void) {
  const workers: Started[] = [];
  const solvers: { broken(detail: string): void; ended: boolean }[] = [];
  const heard: unknown[] = [];
  const client = new PlanningClient(
    {
      planner() {
        const tell = (reply: PlanningReply): void => {
          const data = structuredClone(reply);
          setImmediate(() => !worker.ended && worker.onmessage?.({ data, ports: [] }));
        };
        const server = new PlanningServer(new SolverPool(directSolver, 1), { send: tell, rest: turn });
        const worker: Started = {
          ended: false,
          tell,
          onmessage: null,
          onerror: null,
          terminate: () => {
            worker.ended = true;
          },
          postMessage(request) {
            heard.push(request);
            if (request.kind !== 'solver-broke') void turn().then(() => server.answer(structuredClone(request)));
          },
        };
        workers.push(worker);
        return worker;
      },
      solver(_, broken) {
        const solver = { broken, ended: false };
        solvers.push(solver);
        return () => {
          solver.ended = true;
        };
      },
    },
    afterwards,
  );
  return { client, workers, solvers, heard };
}

test('a plan comes back as it is made, with solved numbers and without', async () => {
  const { client, workers } = startedClient();
  const field: FieldFacts = { bands: { '20m': { feedPoint: { r: 61, x: 3 } } } };
  expect(await client.plan(dipole, undefined)).toEqual(makePlan(dipole));
  expect(await client.plan(dipole, field)).toEqual(makePlan(dipole, { field }));
  expect(workers).toHaveLength(1);
});

test('a study tells its progress and what it knows so far, and ends with the whole', async () => {
  const { client } = startedClient();
  const progress: number[] = [];
  const partial: FieldFacts[] = [];
  const watch = {
    onProgress: (done: number) => progress.push(done),
    onPartial: (facts: FieldFacts) => partial.push(facts),
  };
  const facts = await client.study(dipole, watch).result;
  expect(facts?.bands['20m']?.feedPoint?.r).toBeGreaterThan(30);
  expect(progress.length).toBeGreaterThan(3);
  expect(partial.length).toBeGreaterThan(0);
  expect(partial.at(-1)?.bands['20m']?.feedPoint).toEqual(facts?.bands['20m']?.feedPoint);
});

test('a study called off ends as cancelled', async () => {
  const { client } = startedClient();
  const study = client.study(dipole, { onProgress: () => study.cancel() });
  await expect(study.result).rejects.toMatchObject({ code: 'cancelled' });
});

test('what the rules refuse is told by its reason', async () => {
  const { client } = startedClient();
  const unheardOf = { ...dipole, bands: ['no-such-band'] } as unknown as Answers;
  await expect(client.plan(unheardOf, undefined)).rejects.toMatchObject({ code: 'internal' });
  expect((await client.plan(dipole, undefined)).system).toBe('centre-fed-half-wave');
});

test('a worker that breaks fails what it was asked, and the next request starts another', async () => {
  const { client, workers, solvers } = startedClient();
  const plan = client.plan(dipole, undefined);
  workers[0]?.onmessage?.({ data: { solver: 0, kind: 'solver-wanted' }, ports: [] });
  workers[0]?.onerror?.({ message: 'out of memory' });
  await expect(plan).rejects.toMatchObject({ code: 'internal', data: { detail: 'out of memory' } });
  expect(workers[0]?.ended).toBe(true);
  expect(solvers[0]?.ended).toBe(true);
  expect((await client.plan(dipole, undefined)).system).toBe('centre-fed-half-wave');
  expect(workers).toHaveLength(2);
});

test('a browser that starts no worker is said so', async () => {
  const client = new PlanningClient({
    planner: () => {
      throw new TypeError('refused by the policy');
    },
    solver: () => () => undefined,
  });
  await expect(client.plan(dipole, undefined)).rejects.toMatchObject({
    data: { detail: 'TypeError: refused by the policy' },
  });
});

test('a solver is started when asked for, told of when it breaks, and ended when no longer wanted', async () => {
  const { client, workers, solvers, heard } = startedClient();
  await client.plan(dipole, undefined);
  workers[0]?.tell({ solver: 4, kind: 'solver-wanted' });
  await turn();
  expect(solvers).toHaveLength(1);
  solvers[0]?.broken('out of memory');
  expect(heard.at(-1)).toEqual({ solver: 4, kind: 'solver-broke', detail: 'out of memory' });
  workers[0]?.tell({ solver: 4, kind: 'solver-unwanted' });
  await turn();
  expect(solvers[0]?.ended).toBe(true);
});

test('an idle worker is ended also when its last request to end was not the last to begin', async () => {
  const put: (() => void)[] = [];
  const { client, workers } = startedClient((end) => put.push(end));
  await Promise.all([client.study(dipole, {}).result, client.plan(dipole, undefined)]);
  expect(put).toHaveLength(1);
  put[0]?.();
  expect(workers[0]?.ended).toBe(true);
});

test('an idle worker is ended, and not when it was asked something meanwhile', async () => {
  const put: (() => void)[] = [];
  const { client, workers } = startedClient((end) => put.push(end));
  await client.plan(dipole, undefined);
  expect(put).toHaveLength(1);
  const next = client.plan(dipole, undefined);
  put[0]?.();
  expect(workers[0]?.ended).toBe(false);
  await next;
  put[0]?.();
  expect(workers[0]?.ended).toBe(false);
  put[1]?.();
  expect(workers[0]?.ended).toBe(true);
  await client.plan(dipole, undefined);
  expect(workers).toHaveLength(2);
});

test('a search of antennas hands out what it has found, solves no known one again, and can be called off', async () => {
  const { client } = startedClient();
  const site: Answers = { bands: ['20m'], shackEnd: 'radio', spanM: 4, supportHeightM: 9, radialCount: 2 };
  const heard: number[] = [];
  const search = client.search(site, [], (candidates, done) => {
    heard.push(done);
    if (candidates.some(({ solved }) => solved)) search.cancel();
  });
  await expect(search.result).rejects.toMatchObject({ code: 'cancelled' });
  expect(heard.length).toBeGreaterThan(1);
  const known = (makePlan(site).candidates ?? []).map((candidate) => ({ ...candidate, solved: true }));
  const again = await client.search(site, known, () => undefined).result;
  expect(again).toEqual(known);
});
