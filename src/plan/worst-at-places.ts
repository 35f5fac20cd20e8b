/** Of all bands the one that brings each place where people may be nearest to its limit, for both groups of people. */
import type { Plan } from './plan-schema';

type Entry = Plan['exposure'][number];

interface WorstBand {
  readonly band: Entry['band'];
  /** Of the limit: 1 at the limit. */
  readonly part: number;
  readonly mostW: number;
}

export interface WorstAtPlace {
  readonly place: Entry['places'][number]['place'];
  readonly knowing: WorstBand;
  readonly everyone: WorstBand;
}

export function worstAtPlaces(exposure: readonly Entry[]): WorstAtPlace[] {
  const found = new Map<WorstAtPlace['place'], WorstAtPlace>();
  const worse = (a: WorstBand | undefined, b: WorstBand): WorstBand => (a === undefined || b.part > a.part ? b : a);
  for (const { band, places } of exposure)
    for (const { place, knowingPart, knowingMostW, publicPart, publicMostW } of places) {
      const before = found.get(place);
      found.set(place, {
        place,
        knowing: worse(before?.knowing, { band, part: knowingPart, mostW: knowingMostW }),
        everyone: worse(before?.everyone, { band, part: publicPart, mostW: publicMostW }),
      });
    }
  return [...found.values()];
}
