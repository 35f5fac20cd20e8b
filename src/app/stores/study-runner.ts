/** Runs field studies in the solver's workers. Fetched when the first plan is opened; the study itself is small and runs beside the screen. */
import { studyField } from '../../plan/field-study';
import { withLoads } from '../../solver/prepared';
import { type Job, poolSize, SolverPool, type WorkerLike } from '../../worker/solver-pool';
import workerUrl from '../../worker/solver-worker?worker&url';
import { trustedScriptUrl } from '../trusted-types';
import type { StartStudy } from './field-store';

/** A worker's events carry more than the pool reads, which the types of their handlers do not forgive. */
const startWorker = (): WorkerLike =>
  new Worker(trustedScriptUrl('app-worker', workerUrl), { type: 'module' }) as unknown as WorkerLike;

/** Until the page has had its turn. */
const rest = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

export function createStudyRunner(): StartStudy {
  const pool = new SolverPool(startWorker, poolSize(navigator.hardwareConcurrency));
  return (answers, watch) => {
    const jobs = new Set<Job<unknown>>();
    let isCancelled = false;
    const resultOf = async <T>(job: Job<T>): Promise<T> => {
      jobs.add(job);
      try {
        return await job.result;
      } finally {
        jobs.delete(job);
      }
    };
    const instrument = {
      prepare: (...asked: Parameters<SolverPool['prepare']>) => resultOf(pool.prepare(...asked)),
      solve: (...asked: Parameters<SolverPool['solve']>) => resultOf(pool.solve(...asked)),
      withLoads,
      rest,
    };
    return {
      result: studyField(answers, instrument, { ...watch, isCancelled: () => isCancelled }),
      cancel() {
        isCancelled = true;
        for (const job of jobs) job.cancel();
      },
    };
  };
}
