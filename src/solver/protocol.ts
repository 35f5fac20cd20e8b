/**
 * Messages between the solver's worker and whoever asks it. Every reply carries the id of its request; failure is a message like any
 * other. A sweep tells its progress and can be called off at every step.
 */
import type { Geometry, Solution } from './geometry';
import type { Prepared } from './prepared';

export type SolverRequest =
  | { readonly id: number; readonly kind: 'solve'; readonly geometry: Geometry; readonly mesh: 'default' | 'fine' }
  | {
      readonly id: number;
      readonly kind: 'prepare';
      readonly geometry: Geometry;
      readonly mesh: 'default' | 'fine';
      readonly frequenciesHz: Float64Array;
      /** The highest frequency of the whole sweep, of which this may be a part. */
      readonly meshHz: number;
    }
  | { readonly id: number; readonly kind: 'cancel' };

export type SolverReply =
  | { readonly id: number; readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly id: number; readonly kind: 'partial'; readonly prepared: Prepared }
  | { readonly id: number; readonly kind: 'solved'; readonly solution: Solution }
  | { readonly id: number; readonly kind: 'prepared'; readonly prepared: Prepared }
  | {
      readonly id: number;
      readonly kind: 'failed';
      /** A code of InputError ('cancelled' among them), or 'internal'. */
      readonly code: string;
      readonly data: Readonly<Record<string, number | string>>;
    };
