/**
 * The solver as the app sees it: jobs that report progress, draw early and can be called off. Several workers (poolSize); a sweep is cut
 * among them by frequency. The caller starts the workers, because only the page knows their address.
 */
import { InputError } from '../base/input-error';
import type { Geometry, Solution } from '../solver/geometry';
import type { Prepared } from '../solver/prepared';
import { joinPrepared } from '../solver/prepared';
import type { SolverReply, SolverRequest } from '../solver/protocol';

/** The part of a Worker that is used. */
export interface WorkerLike {
  postMessage(message: SolverRequest): void;
  onmessage: ((event: { data: SolverReply }) => void) | null;
  onerror: ((event: { message?: string }) => void) | null;
  terminate(): void;
}

export interface Job<Result> {
  /** Fails with InputError: 'cancelled', a code of the geometry, or 'internal'. */
  readonly result: Promise<Result>;
  cancel(): void;
}

export interface SweepWatch {
  readonly mesh?: 'default' | 'fine';
  readonly onProgress?: (done: number, of: number) => void;
  /** A first sight of the sweep, before it is confirmed. */
  readonly onPartial?: (prepared: Prepared) => void;
}

interface Pending {
  readonly worker: WorkerLike;
  take(reply: SolverReply): void;
  fail(error: InputError): void;
}

/** A part of a sweep shorter than this is not worth a worker of its own. */
const LEAST_PART = 50;

type RequestBody<T> = T extends SolverRequest ? Omit<T, 'id'> : never;

export class SolverPool {
  private readonly workers: WorkerLike[] = [];
  private readonly pending = new Map<number, Pending>();
  private nextId = 1;
  private nextWorker = 0;

  constructor(
    private readonly startWorker: () => WorkerLike,
    readonly size: number,
  ) {}

  solve(geometry: Geometry, mesh: 'default' | 'fine' = 'default'): Job<Solution> {
    return this.ask({ kind: 'solve', geometry, mesh }, (reply, done) => {
      if (reply.kind === 'solved') done(reply.solution);
    });
  }

  prepare(geometry: Geometry, frequenciesHz: Float64Array, watch: SweepWatch = {}): Job<Prepared> {
    const meshHz = frequenciesHz.reduce((a, b) => Math.max(a, b), 0);
    const parts = Math.max(1, Math.min(this.size, Math.floor(frequenciesHz.length / LEAST_PART)));
    const shares = Array.from({ length: parts }, () => ({ done: 0, of: 1, seen: undefined as Prepared | undefined }));
    const jobs = shares.map((share, part) => {
      const [from, to] = [part, part + 1].map((n) => Math.round((n * frequenciesHz.length) / parts));
      const mesh = watch.mesh ?? 'default';
      const body = { kind: 'prepare', geometry, mesh, meshHz, frequenciesHz: frequenciesHz.slice(from, to) } as const;
      return this.ask<Prepared>(body, (reply, done) => {
        if (reply.kind === 'progress') {
          Object.assign(share, { done: reply.done, of: reply.of });
          const sum = (key: 'done' | 'of'): number => shares.reduce((all, one) => all + one[key], 0);
          watch.onProgress?.(sum('done'), sum('of'));
        }
        if (reply.kind === 'partial' || reply.kind === 'prepared') {
          share.seen = reply.prepared;
          const seen = shares.flatMap((one) => one.seen ?? []);
          if (reply.kind === 'partial' && seen.length === parts) watch.onPartial?.(joinPrepared(seen));
        }
        if (reply.kind === 'prepared') done(reply.prepared);
      });
    });
    const cancel = (): void => {
      for (const job of jobs) job.cancel();
    };
    const result = Promise.all(jobs.map((job) => job.result)).then(joinPrepared);
    result.catch(cancel); // one part failed: the others are of no use
    return { result, cancel };
  }

  /** Ends all workers; what is still running fails as cancelled. */
  close(): void {
    for (const worker of this.workers.splice(0)) worker.terminate();
    for (const { fail } of this.pending.values()) fail(new InputError('cancelled', {}));
    this.pending.clear();
  }

  private ask<Result>(
    body: RequestBody<SolverRequest>,
    read: (reply: SolverReply, done: (result: Result) => void) => void,
  ): Job<Result> {
    const id = this.nextId++;
    const worker = this.pickWorker();
    const result = new Promise<Result>((resolve, reject) => {
      const fail = (error: InputError): void => {
        this.pending.delete(id);
        reject(error);
      };
      const done = (value: Result): void => {
        this.pending.delete(id);
        resolve(value);
      };
      const take = (reply: SolverReply): void =>
        reply.kind === 'failed' ? fail(new InputError(reply.code, reply.data)) : read(reply, done);
      this.pending.set(id, { worker, take, fail });
    });
    worker.postMessage({ ...body, id } as SolverRequest);
    return { result, cancel: () => worker.postMessage({ id, kind: 'cancel' }) };
  }

  private pickWorker(): WorkerLike {
    const index = this.nextWorker++ % this.size;
    const known = this.workers[index];
    if (known) return known;
    const worker = this.startWorker();
    worker.onmessage = ({ data }) => this.pending.get(data.id)?.take(data);
    worker.onerror = ({ message }) => this.drop(worker, message ?? '');
    this.workers[index] = worker;
    return worker;
  }

  /** A worker that broke is put away with its jobs; the next job starts another. */
  private drop(worker: WorkerLike, detail: string): void {
    worker.terminate();
    const index = this.workers.indexOf(worker);
    if (index >= 0) delete this.workers[index];
    for (const pending of [...this.pending.values()]) {
      if (pending.worker === worker) pending.fail(new InputError('internal', { detail }));
    }
  }
}

/** One worker for each core but one, which stays with the screen; on two cores the screen, which does little, shares the second. */
export const poolSize = (cores = 2): number => (cores > 2 ? cores - 1 : Math.max(1, cores));
