import type { CoreSize } from '../catalog/core-ids';

/** The item for which `of` is lowest; the first of equals; undefined of none. */
export function least<T>(items: readonly T[], of: (item: T) => number): T | undefined {
  let best: T | undefined;
  let lowest = Number.POSITIVE_INFINITY;
  for (const item of items) {
    const value = of(item);
    if (value < lowest) {
      best = item;
      lowest = value;
    }
  }
  return best;
}

/** What a list of designs is judged by: weight in steps of 10 g, and within a step the one that is farthest from its limits. */
export const byWeight = ({ massKg, excess }: { readonly massKg: number; readonly excess: number }): number =>
  Math.round(massKg * 100) + Math.min(excess, 1) / 2;

const RARE: readonly CoreSize[] = ['ft290', 'ft400'];

/** Few shops have rings of 74 and 102 mm. */
export const isRare = (size: CoreSize): boolean => RARE.includes(size);

/** The nearest miss; one of rare rings only where it misses by less than half as much. */
export const nearestMiss = <T extends { readonly size: CoreSize; readonly shortage: number }>(
  misses: readonly T[],
): T | undefined => least(misses, ({ size, shortage }) => shortage * (isRare(size) ? 2 : 1));

interface Built {
  readonly size: CoreSize;
  /** Rings in all. */
  readonly coreCount: number;
  readonly massKg: number;
  readonly excess: number;
}

/** Rings that few shops have last, then fewest rings, then weight: each step outweighs all of the next. */
export const byCoreCount = (built: Built): number =>
  (isRare(built.size) ? 1e8 : 0) + built.coreCount * 1e6 + byWeight(built);
