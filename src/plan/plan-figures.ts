/** Single figures of a plan that several screens lead with. */
import type { Plan } from './plan-schema';

/** How far overhead lines must be from every part, m: nothing may fall on one. Null when the plan has no outdoor step. */
export const powerLineDistanceM = (plan: Plan): number | null =>
  plan.cautions.find(({ id, distanceM }) => id === 'fall-path' && distanceM !== null)?.distanceM ?? null;

const radiatorPieces: readonly string[] = ['wire', 'leg', 'short-leg', 'long-leg', 'vertical', 'folded-conductor'];

/** All the wire that sends, as it will hang, m; the longest of several wires on one feed point; null when the plan has none. */
export function radiatorM(plan: Plan): number | null {
  const lengths = new Map<string, number>();
  for (const { piece, count, finishedM, legM } of plan.cuts) {
    const [, name = '', band = ''] = /^(.*?)(?:-(\d+m))?$/.exec(piece) ?? [];
    if (legM !== null) lengths.set(band, count * legM); // the last one reaches to the end, closed links and all
    if (radiatorPieces.includes(name)) lengths.set(band, (lengths.get(band) ?? 0) + count * finishedM);
  }
  return lengths.size === 0 ? null : Math.max(...lengths.values());
}
