/**
 * Messages between the page and its planning workers. Every reply carries the id of its request; failure is a message like any other. A study
 * needs solvers, which the page starts: the worker asks for one by a number and sends the port it will talk to it through.
 */
import type { FieldFacts } from '../advice/field-facts';
import type { Answers } from '../design/answers';
import type { Candidate } from '../plan/candidate-points';
import type { Plan } from '../plan/plan-schema';

export type PlanningRequest =
  | { readonly id: number; readonly kind: 'plan'; readonly answers: Answers; readonly field?: FieldFacts }
  | { readonly id: number; readonly kind: 'study'; readonly answers: Answers }
  /** Which antenna? `known` is what an earlier search of the same answers solved. */
  | { readonly id: number; readonly kind: 'search'; readonly answers: Answers; readonly known: readonly Candidate[] }
  | { readonly id: number; readonly kind: 'cancel' }
  | { readonly solver: number; readonly kind: 'solver-broke'; readonly detail: string };

export type PlanningReply =
  | { readonly id: number; readonly kind: 'planned'; readonly plan: Plan }
  | { readonly id: number; readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly id: number; readonly kind: 'partial'; readonly facts: FieldFacts }
  | { readonly id: number; readonly kind: 'studied'; readonly facts: FieldFacts | null }
  | { readonly id: number; readonly kind: 'found'; readonly candidates: readonly Candidate[]; readonly done: number }
  | { readonly id: number; readonly kind: 'searched'; readonly candidates: readonly Candidate[] }
  | {
      readonly id: number;
      readonly kind: 'failed';
      /** A code of InputError ('cancelled' among them), or 'internal'. */
      readonly code: string;
      readonly data: Readonly<Record<string, number | string>>;
    }
  | { readonly solver: number; readonly kind: 'solver-wanted' | 'solver-unwanted' };
