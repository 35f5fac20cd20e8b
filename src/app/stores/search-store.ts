/**
 * The search for an antenna that is looked at: one at a time, run in the planning worker, called off when nobody looks any more or the operator
 * says so. What it has solved by then is kept, and is not solved again when it goes on.
 *
 * What is shown keeps its order and its sentences; only figures are filled in as they come, until the operator puts the list in order anew.
 */
import { signal } from '@preact/signals';
import { isCancelled } from '../../base/input-error';
import type { Answers } from '../../design/answers';
import type { Candidate } from '../../plan/candidate-points';
import type { Job } from '../../worker/solver-pool';

export type StartSearch = (
  answers: Answers,
  known: readonly Candidate[],
  onFound: (candidates: readonly Candidate[], done: number) => void,
) => Job<readonly Candidate[]>;

export interface SearchState {
  readonly kind: 'working' | 'stopped' | 'done' | 'failed';
  /** In the order of the list; null until the rules have put them in one. */
  readonly shown: readonly Candidate[] | null;
  /** Whether the list stands in the order of all that is known. */
  readonly isSettled: boolean;
  readonly done: number;
}

interface Search extends SearchState {
  readonly key: string;
  /** As found, with all that is known of each. */
  readonly found: readonly Candidate[];
}

type Order = (found: readonly Candidate[]) => readonly Candidate[];

const nothingYet: SearchState = { kind: 'working', shown: null, isSettled: false, done: 0 };

const nameOf = ({ answers }: Candidate): string => JSON.stringify(answers);

/** Figures come in, and nothing else moves. */
function filledIn(shown: readonly Candidate[], found: readonly Candidate[]): readonly Candidate[] {
  const latest = new Map(found.map((candidate) => [nameOf(candidate), candidate]));
  return shown.map((candidate) => {
    const now = latest.get(nameOf(candidate));
    return now === undefined ? candidate : { ...candidate, solved: now.solved, bands: now.bands };
  });
}

export function createSearchStore(fetchStart: () => Promise<StartSearch>) {
  const search = signal<Search | null>(null);
  let running: Job<readonly Candidate[]> | null = null;

  const change = (key: string, by: Partial<Search>): void => {
    const now = search.peek();
    if (now?.key === key) search.value = { ...now, ...by };
  };

  async function run(key: string, answers: Answers): Promise<void> {
    const hear = (found: readonly Candidate[], done: number): void => {
      const shown = search.peek()?.shown;
      change(key, { found, done, shown: shown ? filledIn(shown, found) : found, isSettled: false });
    };
    let job: Job<readonly Candidate[]> | null = null;
    try {
      const start = await fetchStart();
      const now = search.peek();
      if (now?.key !== key || now.kind !== 'working' || running !== null) return;
      job = start(answers, now.found, hear);
      running = job;
      await job.result;
      change(key, { kind: 'done' });
    } catch (error) {
      if (!isCancelled(error)) change(key, { kind: 'failed' });
    } finally {
      if (running === job) running = null;
    }
  }

  function callOff(): void {
    running?.cancel();
    running = null;
  }

  return {
    /** Reading this in a component subscribes it. */
    stateOf: (key: string): SearchState => (search.value?.key === key ? search.value : nothingYet),

    /** Starts the search, or goes on with it unless the operator stopped it. Call what it returns when nobody looks any more. */
    look(key: string, answers: Answers): () => void {
      if (search.peek()?.key !== key) {
        callOff();
        search.value = { ...nothingYet, key, found: [] };
      }
      if (search.peek()?.kind === 'failed') change(key, { kind: 'working' });
      if (search.peek()?.kind === 'working') void run(key, answers);
      return callOff;
    },

    stop(key: string): void {
      callOff();
      change(key, { kind: 'stopped' });
    },

    goOn(key: string, answers: Answers): void {
      change(key, { kind: 'working' });
      void run(key, answers);
    },

    /** How many stand elsewhere in the order of what is known now, which `order` finds. */
    movesIn(key: string, order: Order): number {
      const now = search.value;
      if (now?.key !== key || now.shown === null) return 0;
      const names = order(now.found).map(nameOf);
      return now.shown.filter((candidate, index) => nameOf(candidate) !== names[index]).length;
    },

    /** Puts the list in that order. */
    settle(key: string, order: Order): void {
      const now = search.peek();
      if (now?.key === key) change(key, { shown: order(now.found), isSettled: true });
    },
  };
}
