/**
 * The field study of the plans that are open: run in the solver's workers, called off when nobody looks at the plan any more, and kept in memory
 * by what decides it (not by name, units, power or rule set). Partial results count at once; while more is on the way the state says so.
 */
import { type ReadonlySignal, signal } from '@preact/signals';
import type { FieldFacts } from '../../advice/field-facts';
import { isCancelled } from '../../base/input-error';
import type { Answers } from '../../design/answers';
import type { StudyWatch } from '../../worker/pool-study';
import type { Job } from '../../worker/solver-pool';

interface Progress {
  readonly done: number;
  readonly of: number;
}

export type FieldState =
  | { readonly kind: 'idle' }
  /** Progress is a signal of its own: who only waits for facts does not hear of every step. */
  | { readonly kind: 'working'; readonly progress: ReadonlySignal<Progress>; readonly facts: FieldFacts | null }
  | { readonly kind: 'solved'; readonly facts: FieldFacts }
  /** No antenna chosen, or one whose shape is not known. */
  | { readonly kind: 'nothing-to-solve' }
  | { readonly kind: 'failed'; readonly detail: string };

export type StartStudy = (answers: Answers, watch: StudyWatch) => Job<FieldFacts | null>;

export const idle: FieldState = { kind: 'idle' };
/** Studies kept at hand. */
const KEPT = 40;

/** What no current and no length depends on. */
const beside: ReadonlySet<string> = new Set([
  'schema',
  'name',
  'units',
  'country',
  'ruleSet',
  'indoors',
  'powerW',
  'mode',
  'transmitShare',
  'nearestPersonM',
  'nearestPowerLineM',
]);

/** The same for all answers that give the same field; where the band edges are a country's own, that country is told by the focus. */
export const studyKey = (answers: Answers): string =>
  JSON.stringify(
    Object.entries(answers)
      .filter(([key]) => !beside.has(key))
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );

/** From one screen of a plan to the next nobody looks at it for a moment. */
const LINGER_MS = 1500;
const lingering = (work: () => void): void => void setTimeout(work, LINGER_MS);

/** `later` puts off calling a study off. */
export function createFieldStore(fetchStart: () => Promise<StartStudy>, later: (work: () => void) => void = lingering) {
  const states = signal<ReadonlyMap<string, FieldState>>(new Map());
  const followers = new Map<string, number>();
  const running = new Map<string, ReturnType<StartStudy>>();

  const stateAt = (key: string): FieldState => states.value.get(key) ?? idle;

  function put(key: string, state: FieldState): void {
    const next = new Map(states.peek());
    next.delete(key);
    next.set(key, state);
    for (const old of next.keys()) {
      if (next.size <= KEPT) break;
      if (!running.has(old)) next.delete(old);
    }
    states.value = next;
  }

  async function run(key: string, answers: Answers): Promise<void> {
    const progress = signal<Progress>({ done: 0, of: 0 });
    put(key, { kind: 'working', progress, facts: null });
    try {
      const start = await fetchStart();
      if (!followers.has(key)) return put(key, idle);
      const study = start(answers, {
        onProgress(done, of) {
          progress.value = { done, of };
        },
        onPartial: (facts) => put(key, { kind: 'working', progress, facts }),
      });
      running.set(key, study);
      const facts = await study.result;
      running.delete(key);
      put(key, facts === null ? { kind: 'nothing-to-solve' } : { kind: 'solved', facts });
    } catch (error) {
      running.delete(key);
      put(key, isCancelled(error) ? idle : { kind: 'failed', detail: String(error) });
      if (isCancelled(error) && followers.has(key)) void run(key, answers); // somebody came back meanwhile
    }
  }

  return {
    /** Reading this in a component subscribes it. */
    stateOf: (answers: Answers): FieldState => stateAt(studyKey(answers)),

    /** What is known of this antenna so far. */
    factsOf(answers: Answers): FieldFacts | undefined {
      const state = stateAt(studyKey(answers));
      return state.kind === 'solved' || state.kind === 'working' ? (state.facts ?? undefined) : undefined;
    },

    /** Starts the study unless it is there already. Call what it returns when the plan is no longer looked at. */
    follow(answers: Answers): () => void {
      const key = studyKey(answers);
      followers.set(key, (followers.get(key) ?? 0) + 1);
      const { kind } = states.peek().get(key) ?? idle;
      if (kind === 'idle' || kind === 'failed') void run(key, answers);
      return () => {
        const left = (followers.get(key) ?? 1) - 1;
        if (left > 0) return void followers.set(key, left);
        followers.delete(key);
        later(() => {
          if (!followers.has(key)) running.get(key)?.cancel();
        });
      };
    },
  };
}
