/** Field studies whose solutions come from a pool of solvers; calling one off calls off what the pool is doing for it. */
import type { FieldFacts } from '../advice/field-facts';
import type { Answers } from '../design/answers';
import type { Candidate } from '../plan/candidate-points';
import { type SearchOptions, searchCandidates } from '../plan/candidate-search';
import type { FieldInstrument } from '../plan/field/instrument';
import type { StudyOptions } from '../plan/field/watched';
import { studyField } from '../plan/field-study';
import { withLoads } from '../solver/prepared';
import type { Job, SolverPool } from './solver-pool';

/** What may be heard of a study while it runs. */
export type StudyWatch = Pick<StudyOptions, 'onProgress' | 'onPartial'>;

export function studyInPool(
  answers: Answers,
  pool: SolverPool,
  watch: StudyWatch,
  rest: () => Promise<void>,
): Job<FieldFacts | null> {
  return inPool(pool, rest, (instrument, isCancelled) => studyField(answers, instrument, { ...watch, isCancelled }));
}

export function searchInPool(
  answers: Answers,
  pool: SolverPool,
  options: Omit<SearchOptions, 'isCancelled' | 'atOnce'>,
  rest: () => Promise<void>,
): Job<readonly Candidate[]> {
  return inPool(pool, rest, (instrument, isCancelled) =>
    searchCandidates(answers, instrument, { ...options, isCancelled, atOnce: pool.size + 1 }),
  );
}

function inPool<Result>(
  pool: SolverPool,
  rest: () => Promise<void>,
  work: (instrument: FieldInstrument, isCancelled: () => boolean) => Promise<Result>,
): Job<Result> {
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
    result: work(instrument, () => isCancelled),
    cancel() {
      isCancelled = true;
      for (const job of jobs) job.cancel();
    },
  };
}
