/** The thin shell that makes plans and studies fields in a Web Worker: passes messages, and asks the page for solvers. */
import type { PlanningReply, PlanningRequest } from './planning-protocol';
import { PlanningServer } from './planning-server';
import { poolSize, SolverPool, type WorkerLike } from './solver-pool';
import { rest } from './turn';

declare const self: DedicatedWorkerGlobalScope;

const send = (reply: PlanningReply, ports: MessagePort[] = []): void => self.postMessage(reply, ports);

const solvers: WorkerLike[] = [];

/** A worker of the page's own, talked to directly: not every browser lets a worker start another. */
function startSolver(): WorkerLike {
  const { port1, port2 } = new MessageChannel();
  const number = solvers.length;
  const solver: WorkerLike = {
    postMessage: (request) => port1.postMessage(request),
    onmessage: null,
    onerror: null,
    terminate: () => send({ solver: number, kind: 'solver-unwanted' }),
  };
  port1.onmessage = (event) => solver.onmessage?.(event);
  solvers.push(solver);
  send({ solver: number, kind: 'solver-wanted' }, [port2]);
  return solver;
}

const pool = new SolverPool(startSolver, poolSize(navigator.hardwareConcurrency));
const server = new PlanningServer(pool, { send, rest });

self.onmessage = ({ data }: MessageEvent<PlanningRequest>) => {
  if (data.kind === 'solver-broke') solvers[data.solver]?.onerror?.({ message: data.detail });
  else void server.answer(data);
};
