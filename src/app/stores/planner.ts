/**
 * Plans made from answers, with the code that makes them fetched after the first screen. Until it is there a plan is null; so is one that
 * could not be made, and then `failed` says so.
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

/** Plans kept at hand: enough for a list and the questions' comparisons. */
const kept = 200;

export function createPlanner(fetchMaker: () => Promise<MakePlan>, fieldOf: FieldOf = () => undefined) {
  const maker = signal<MakePlan | null>(null);
  const failed = signal<string | null>(null);
  const made = new Map<string, Made>();
  let fetching: Promise<void> | null = null;

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
      const make = maker.value;
      if (make === null || answers === null) return null;
      const name = JSON.stringify(answers);
      const field = fieldOf(answers);
      const known = made.get(name);
      if (known !== undefined && known.field === field) return known.plan;
      try {
        const plan = make(answers, field === undefined ? {} : { field });
        if (made.size >= kept) made.delete(made.keys().next().value ?? '');
        made.set(name, { plan, field });
        return plan;
      } catch (error) {
        queueMicrotask(() => {
          failed.value = String(error);
        });
        return null;
      }
    },
  };
}
export type Planner = ReturnType<typeof createPlanner>;
