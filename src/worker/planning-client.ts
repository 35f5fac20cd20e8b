/**
 * A planning worker as the page sees it: plans and studies as promises. The worker is started by the first request and again after it broke,
 * which fails what it was asked; `afterwards` may end it, with its solvers, when nothing more is asked.
 */
import type { FieldFacts } from '../advice/field-facts';
import { InputError } from '../base/input-error';
import type { Answers } from '../design/answers';
import type { Candidate } from '../plan/candidate-points';
import type { Plan } from '../plan/plan-schema';
import type { PlanningReply, PlanningRequest } from './planning-protocol';
import type { StudyWatch } from './pool-study';
import type { Job } from './solver-pool';

/** The part of a Worker that is used. */
export interface PlanningWorkerLike {
  postMessage(message: PlanningRequest): void;
  onmessage: ((event: { data: PlanningReply; ports: readonly MessagePort[] }) => void) | null;
  onerror: ((event: { message?: string }) => void) | null;
  terminate(): void;
}

export interface Starters {
  planner(): PlanningWorkerLike;
  /** Starts a solver that listens to the port; `onBroken` is told why it broke. Gives what ends it. */
  solver(port: MessagePort | undefined, onBroken: (detail: string) => void): () => void;
}

type Asked = Extract<PlanningReply, { id: number }>;

type Body<T> = T extends PlanningRequest ? Omit<T, 'id'> : never;

interface Pending {
  take(reply: Asked): void;
  fail(error: InputError): void;
}

export class PlanningClient {
  private worker: PlanningWorkerLike | null = null;
  private readonly solvers = new Map<number, () => void>();
  private readonly pending = new Map<number, Pending>();
  private lastId = 0;

  constructor(
    private readonly start: Starters,
    /** Told each time when all is done; puts off what it is given, or drops it. */
    private readonly afterwards: (end: () => void) => void = () => {},
  ) {}

  plan(answers: Answers, field: FieldFacts | undefined): Promise<Plan> {
    const known = field === undefined ? {} : { field };
    return this.ask<Plan>({ kind: 'plan', answers, ...known }, (reply, done) => {
      if (reply.kind === 'planned') done(reply.plan);
    }).result;
  }

  study(answers: Answers, { onProgress, onPartial }: StudyWatch): Job<FieldFacts | null> {
    return this.ask<FieldFacts | null>({ kind: 'study', answers }, (reply, done) => {
      if (reply.kind === 'progress') onProgress?.(reply.done, reply.of);
      if (reply.kind === 'partial') onPartial?.(reply.facts);
      if (reply.kind === 'studied') done(reply.facts);
    });
  }

  /** Which antenna? `onFound` hears of the candidates so far, and of how many of them all is known. */
  search(
    answers: Answers,
    known: readonly Candidate[],
    onFound: (candidates: readonly Candidate[], done: number) => void,
  ): Job<readonly Candidate[]> {
    return this.ask<readonly Candidate[]>({ kind: 'search', answers, known }, (reply, done) => {
      if (reply.kind === 'found') onFound(reply.candidates, reply.done);
      if (reply.kind === 'searched') done(reply.candidates);
    });
  }

  private ask<Result>(
    body: Body<Extract<PlanningRequest, { answers: Answers }>>,
    read: (reply: Asked, done: (result: Result) => void) => void,
  ): Job<Result> {
    const id = ++this.lastId;
    const result = new Promise<Result>((resolve, reject) => {
      const settled = (): void => {
        this.pending.delete(id);
        const { lastId } = this; // requests may end in another order than they began
        if (this.pending.size === 0) this.afterwards(() => this.endIfIdle(lastId));
      };
      const fail = (error: InputError): void => {
        settled();
        reject(error);
      };
      const done = (value: Result): void => {
        settled();
        resolve(value);
      };
      const take = (reply: Asked): void =>
        reply.kind === 'failed' ? fail(new InputError(reply.code, reply.data)) : read(reply, done);
      this.pending.set(id, { take, fail });
      try {
        this.running().postMessage({ ...body, id });
      } catch (error) {
        this.drop(String(error)); // the browser starts no worker
      }
    });
    return { result, cancel: () => this.worker?.postMessage({ id, kind: 'cancel' }) };
  }

  private running(): PlanningWorkerLike {
    if (this.worker !== null) return this.worker;
    const worker = this.start.planner();
    worker.onmessage = ({ data, ports }) => {
      if ('id' in data) this.pending.get(data.id)?.take(data);
      else if (data.kind === 'solver-wanted')
        this.solvers.set(data.solver, this.startSolver(worker, data.solver, ports));
      else this.endSolver(data.solver);
    };
    worker.onerror = ({ message }) => this.drop(message ?? '');
    this.worker = worker;
    return worker;
  }

  private startSolver(worker: PlanningWorkerLike, solver: number, [port]: readonly MessagePort[]): () => void {
    const broken = (detail: string): void => worker.postMessage({ solver, kind: 'solver-broke', detail });
    try {
      return this.start.solver(port, broken);
    } catch (error) {
      broken(String(error));
      return () => {};
    }
  }

  private endSolver(solver: number): void {
    this.solvers.get(solver)?.();
    this.solvers.delete(solver);
  }

  private end(): void {
    this.worker?.terminate();
    this.worker = null;
    for (const solver of [...this.solvers.keys()]) this.endSolver(solver);
  }

  private endIfIdle(lastId: number): void {
    if (this.pending.size === 0 && this.lastId === lastId) this.end();
  }

  private drop(detail: string): void {
    this.end();
    for (const { fail } of [...this.pending.values()]) fail(new InputError('internal', { detail }));
  }
}
