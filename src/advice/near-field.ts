/**
 * Reading a solved near field: where a limit is met, and what a place allows.
 *
 *   F(d) = F1 (d/d1)^n between two distances, n from their fields (straight on log-log paper); beyond the last F falls as 1/d
 *
 * The field at a distance counts as at least what any greater distance has, so the distance found is the last at which the limit is passed. A
 * margin on the field covers what falls between points, 5 % seen against blind points (geometry/near-places); the solver's own error adds to it.
 */
import type { AntennaPart } from '../design/antenna-part';
import type { NearField } from './field-facts';

export const FIELD_MARGIN = 1.1;
export const FIELD_POWER_W = 100;

export type Family = 'around' | 'ground';
export type SolvedKind = 'electric' | 'magnetic';

/** Strongest field of all parts, or of one, at every distance, counted from outside; no margin yet. */
export function envelopeOf(near: NearField, family: Family, kind: SolvedKind, part?: AntennaPart): readonly number[] {
  const lists = near.parts.filter((entry) => part === undefined || entry.part === part).map((e) => e[family][kind]);
  const distances = family === 'around' ? near.aroundM : near.groundM;
  let outer = 0;
  return distances
    .map((_, k) => Math.max(0, ...lists.map((list) => list[k] ?? 0)))
    .reverse()
    .map((value) => {
      outer = Math.max(outer, value);
      return outer;
    })
    .reverse();
}

export interface Crossing {
  readonly metres: number;
  /** Number of the last distance at which the limit is passed. */
  readonly last: number;
}

/** Null where the limit is met at every distance. `scale` turns a field at 100 W into the one judged. */
export function crossingOf(
  distancesM: readonly number[],
  fields: readonly number[],
  scale: number,
  limit: number,
): Crossing | null {
  const last = fields.findLastIndex((value) => value * scale > limit);
  if (last < 0) return null;
  const [here, field] = [distancesM[last] ?? 0, (fields[last] ?? 0) * scale];
  const [next, nextField] = [distancesM[last + 1], (fields[last + 1] ?? 0) * scale];
  if (next === undefined) return { metres: (here * field) / limit, last };
  if (here === 0 || nextField === 0) return { metres: next, last };
  return { metres: here * (next / here) ** (Math.log(field / limit) / Math.log(field / nextField)), last };
}

/** Field at a distance not less than the first. */
export function fieldAtDistance(distancesM: readonly number[], fields: readonly number[], metres: number): number {
  const next = distancesM.findIndex((each) => each > metres);
  const last = distancesM.length - 1;
  if (next < 0) return ((fields[last] ?? 0) * (distancesM[last] ?? 0)) / metres;
  const before = Math.max(next - 1, 0);
  const [d1, d2, f1, f2] = [distancesM[before] ?? 0, distancesM[next] ?? 0, fields[before] ?? 0, fields[next] ?? 0];
  if (d1 === 0 || f2 === 0 || next === 0) return f1;
  return f1 * (f2 / f1) ** (Math.log(metres / d1) / Math.log(d2 / d1));
}

/** The part whose field is the strongest at that distance or beyond. */
export function strongestPart(near: NearField, family: Family, kind: SolvedKind, from: number): AntennaPart | null {
  let best: { readonly part: AntennaPart; readonly field: number } | null = null;
  for (const { part } of near.parts) {
    const field = envelopeOf(near, family, kind, part)[from] ?? 0;
    if (best === null || field > best.field) best = { part, field };
  }
  return best?.part ?? null;
}
