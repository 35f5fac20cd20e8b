/** How far everybody stays away on the band that asks for most; null when a band has no result. */
import type { Plan } from '../../../plan/plan-schema';

export function keepOutOf({ exposure }: Plan): number | null {
  const known = exposure.flatMap(({ publicM }) => (publicM === null ? [] : [publicM]));
  return known.length === 0 || known.length < exposure.length ? null : Math.max(...known);
}
