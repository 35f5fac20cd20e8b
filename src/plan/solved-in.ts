/** Lengths as a field solution found them, out of the plan that tells them. */
import type { SolvedDimensions } from '../advice/dimensions';
import type { Plan } from './plan-schema';
import { solvedOf } from './state-lengths';

export function solvedIn({ fieldStudy }: Pick<Plan, 'fieldStudy'>): SolvedDimensions {
  const lengths = fieldStudy?.lengths ?? null;
  return lengths === null ? {} : { lengths: solvedOf(lengths) };
}
