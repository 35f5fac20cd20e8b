/** Sources as a plan states them: short title for screens, full citation one tap further. */

import type { Working } from '../base/working';
import { type SourceId, sources } from '../catalog/sources';
import type { Plan } from './plan-schema';

export type StatedSource = Plan['cuts'][number]['working']['source'];
export type StatedWorking = Plan['cuts'][number]['working'];

/** An id without an entry would be a fault of the rules; tests hold that there is none. */
export function stateSource(id: string): StatedSource {
  const source = sources[id as SourceId];
  return { id, title: source.title, citation: source.citation };
}

export const stateWorking = ({ formula, inputs, result, source }: Working): StatedWorking => ({
  formula,
  inputs: { ...inputs },
  result: { ...result },
  source: stateSource(source),
});

export const stateWorkingOrNull = (working: Working | null): StatedWorking | null =>
  working === null ? null : stateWorking(working);
