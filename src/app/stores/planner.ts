/**
 * Plans made from answers, with the code that makes them fetched after the first screen. Until it is there a plan is null; so is one that
 * could not be made, and then `failed` says so.
 *
 * When a field study brings numbers, the plan at hand stays in sight until the new one is made, in a task of its own: making it and drawing it
 * in one go would keep a tap waiting. Numbers that arrive meanwhile are taken along.
 */
import { computed, signal } from '@preact/signals';
import type { FieldFacts } from '../../advice/field-facts';
import type { Answers } from '../../design/answers';
import type { Plan } from '../../plan/plan-schema';

export type MakePlan = (answers: Answers, options?: { readonly field?: FieldFacts }) => Plan;

/** What a field study has found of these answers so far. */
export type FieldOf = (answers: Answers) => FieldFacts | undefined;

interface Made {
  readonly plan: Plan;
  readonly field: FieldFacts | undefined;
}

const inOwnTask = (work: () => void): void => void setTimeout(work);

/** Plans kept at hand: enough for a list and the questions' comparisons. */
const kept = 200;

/** `later` puts off making a plan anew. */
export function createPlanner(
  fetchMaker: () => Promise<MakePlan>,
  fieldOf: FieldOf = () => undefined,
  later: (work: () => void) => void = inOwnTask,
) {
  const maker = signal<MakePlan | null>(null);
  const failed = signal<string | null>(null);
  /** Counts the plans made anew, so that who reads one hears of it. */
  const remade = signal(0);
  const made = new Map<string, Made>();
  const waiting = new Set<string>();
  let fetching: Promise<void> | null = null;

  function put(make: MakePlan, name: string, answers: Answers): void {
    const field = fieldOf(answers);
    try {
      const plan = make(answers, field === undefined ? {} : { field });
      if (made.size >= kept) made.delete(made.keys().next().value ?? '');
      made.set(name, { plan, field });
    } catch (error) {
      made.delete(name);
      queueMicrotask(() => {
        failed.value = String(error);
      });
    }
  }

  function putLater(make: MakePlan, name: string, answers: Answers): void {
    if (waiting.has(name)) return;
    waiting.add(name);
    later(() => {
      waiting.delete(name);
      put(make, name, answers);
      remade.value += 1;
    });
  }

  return {
    ready: computed(() => maker.value !== null),
    /** Why plans cannot be made at all, for a report; null while they can. */
    failed: computed(() => failed.value),

    fetch(): Promise<void> {
      fetching ??= fetchMaker().then(
        (found) => {
          maker.value = found;
        },
        (error: unknown) => {
          failed.value = String(error);
          fetching = null; // may be asked again
        },
      );
      return fetching;
    },

    /** Reading this in a component or a computed value subscribes it to the maker's arrival, and to that of solved numbers. */
    planOf(answers: Answers | null): Plan | null {
      const [make] = [maker.value, remade.value] as const; // both are read, so that either's change is heard of
      if (make === null || answers === null) return null;
      const name = JSON.stringify(answers);
      const known = made.get(name);
      if (known === undefined) put(make, name, answers);
      else if (known.field !== fieldOf(answers)) putLater(make, name, answers);
      return made.get(name)?.plan ?? null;
    },
  };
}
export type Planner = ReturnType<typeof createPlanner>;
