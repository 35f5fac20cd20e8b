/**
 * Plans made from answers, by a worker that is started after the first screen. Until the first one is there a plan is null; so is one that could
 * not be made, and then `failed` says so until a screen is opened that asks again.
 *
 * When a field study brings numbers, the plan at hand stays in sight until the new one is made. Numbers that arrive meanwhile are taken along.
 */
import { computed, type Signal, signal } from '@preact/signals';
import type { FieldFacts } from '../../advice/field-facts';
import type { Answers } from '../../design/answers';
import type { Plan } from '../../plan/plan-schema';

export type MakePlan = (answers: Answers, field: FieldFacts | undefined) => Promise<Plan>;

/** What a field study has found of these answers so far. */
export type FieldOf = (answers: Answers) => FieldFacts | undefined;

interface Made {
  readonly plan: Plan;
  readonly field: FieldFacts | undefined;
}

/** Plans kept at hand: enough for a list and the questions' comparisons. */
const KEPT = 200;

export function createPlanner(fetchMaker: () => Promise<MakePlan>, fieldOf: FieldOf = () => undefined) {
  const maker = signal<MakePlan | null>(null);
  const failed = signal<string | null>(null);
  /** One signal to a plan, so that who reads one hears of no other. */
  const made = new Map<string, Signal<Made | null>>();
  const underway = new Map<string, Promise<void>>();
  /** Not asked for again before the next `fetch`. */
  const refused = new Set<string>();
  let fetching: Promise<void> | null = null;

  function placeOf(name: string): Signal<Made | null> {
    const known = made.get(name);
    if (known !== undefined) return known;
    const place = signal<Made | null>(null);
    if (made.size >= KEPT) made.delete(made.keys().next().value ?? '');
    made.set(name, place);
    return place;
  }

  function ask(make: MakePlan, name: string, answers: Answers, field: FieldFacts | undefined): void {
    if (underway.has(name) || refused.has(name)) return;
    const place = placeOf(name);
    const work = make(answers, field).then(
      (plan) => {
        underway.delete(name);
        place.value = { plan, field };
      },
      (error: unknown) => {
        underway.delete(name);
        refused.add(name);
        place.value = null;
        failed.value = String(error);
      },
    );
    underway.set(name, work);
  }

  /** Asks for the plan unless it is there with all that is known of its field. */
  function lookFor(answers: Answers): Signal<Made | null> {
    const name = JSON.stringify(answers);
    const place = placeOf(name);
    const field = fieldOf(answers);
    const now = place.peek();
    if (maker.value !== null && (now === null || now.field !== field)) ask(maker.value, name, answers, field);
    return place;
  }

  function fetch(): Promise<void> {
    refused.clear();
    failed.value = null;
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
  }

  return {
    /** Why plans cannot be made at all, for a report; null while they can. */
    failed: computed(() => failed.value),
    fetch,

    /** Reading this in a component or a computed value subscribes it to the plan's arrival, and to that of solved numbers. */
    planOf: (answers: Answers | null): Plan | null =>
      answers === null ? null : (lookFor(answers).value?.plan ?? null),

    /** Whether the plan at hand holds all that is known of its field. */
    isUpToDate: (answers: Answers): boolean => {
      const now = lookFor(answers).value;
      return now !== null && now.field === fieldOf(answers);
    },

    /** The plan for who can wait; null when it could not be made. */
    async planFor(answers: Answers): Promise<Plan | null> {
      await fetch();
      const place = lookFor(answers);
      await underway.get(JSON.stringify(answers));
      return place.peek()?.plan ?? null;
    },
  };
}
