/** Progress, calling off, and what a refusal of the solver means. */
import type { BandFacts } from '../../advice/facts';
import type { FieldFacts } from '../../advice/field-facts';
import { InputError } from '../../base/input-error';
import type { FieldInstrument } from './instrument';

export interface StudyOptions {
  /** Told after every solution; `of` grows while more turns out to be needed. */
  readonly onProgress?: (done: number, of: number) => void;
  /** Facts so far, after each part of the work. */
  readonly onPartial?: (facts: FieldFacts) => void;
  /** Asked before and after every solution; a study called off throws InputError 'cancelled'. */
  readonly isCancelled?: () => boolean;
}

/** The instrument with progress counted and cancelling looked after. */
export function watch(instrument: FieldInstrument, { onProgress, isCancelled }: StudyOptions): FieldInstrument {
  let done = 0;
  let of = 0;
  const counted = async <T>(work: () => Promise<T>): Promise<T> => {
    if (isCancelled?.()) throw new InputError('cancelled');
    of++;
    const result = await work();
    done++;
    onProgress?.(done, of);
    if (isCancelled?.()) throw new InputError('cancelled');
    return result;
  };
  return {
    prepare: (geometry, frequenciesHz) => counted(() => instrument.prepare(geometry, frequenciesHz)),
    solve: (geometry) => counted(() => instrument.solve(geometry)),
    withLoads: instrument.withLoads,
    ...(instrument.rest === undefined ? {} : { rest: instrument.rest }),
  };
}

/** No refusals: the study was called off, or the solver itself broke. */
const ends: readonly string[] = ['cancelled', 'internal'];

/** Wires that the solver refuses are left to the rules. */
export async function orNull<T>(work: Promise<T>): Promise<T | null> {
  try {
    return await work;
  } catch (error) {
    if (error instanceof InputError && !ends.includes(error.code)) return null;
    throw error;
  }
}

export interface OnBand<T> {
  readonly at: BandFacts;
  readonly found: T;
}

export async function onEach<T>(
  bands: readonly BandFacts[],
  work: (at: BandFacts) => Promise<T>,
  rest: () => Promise<void> = async () => {},
): Promise<readonly OnBand<T>[]> {
  let turn = Promise.resolve();
  const begun = bands.map((at) => {
    turn = turn.then(rest);
    return turn.then(async () => ({ at, found: await orNull(work(at)) }));
  });
  const all = await Promise.all(begun);
  return all.flatMap(({ at, found }) => (found === null ? [] : [{ at, found }]));
}
