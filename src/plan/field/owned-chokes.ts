/**
 * The operator's own chokes on the coax: ways to put them at the plan's choke places are tried, at most one to a place and as many in use as
 * there is room for, and the lowest worst entry current is kept. Equal parts count as one kind, so that a drawer full of them costs nothing.
 * Of more kinds than can be tried those with the most ohms are; how many parts that leaves out is told.
 */
import type { Facts } from '../../advice/facts';
import { type ImpedanceAt, partImpedanceAt } from '../../advice/part-impedance';
import { magnitude } from '../../base/complex';
import type { PreparedBand } from './band-study';
import type { PlacedChoke } from './field-site';
import { operate } from './shield-currents';

export interface OwnedChoke {
  readonly part: number;
  /** The same for parts that are alike. */
  readonly kind: string;
  readonly zAt: ImpedanceAt;
}

export interface PlacedPart {
  readonly part: number;
  readonly distanceM: number;
  readonly zAt: ImpedanceAt;
}

/** Ways to place them that are tried; each takes tens of microseconds a band. */
const MOST_WAYS = 1000;

export const ownedChokes = ({ settled }: Facts): readonly OwnedChoke[] =>
  settled.onHand.flatMap((part, index) => {
    const zAt = partImpedanceAt(part);
    return zAt === null ? [] : [{ part: index, kind: JSON.stringify(part), zAt }];
  });

export interface BestPlacement {
  readonly placed: readonly PlacedPart[];
  /** Owned chokes left out of the trial. */
  readonly untried: number;
}

/** Null when nothing owned chokes, or no choke has a place. */
export function bestPlacement(
  bands: readonly PreparedBand[],
  owned: readonly OwnedChoke[],
  placesM: readonly number[],
): BestPlacement | null {
  const tried = mostWorthTrying(bands, owned, placesM.length);
  let best: { readonly placed: readonly PlacedPart[]; readonly worstMa: number } | null = null;
  for (const placed of placements(tried, placesM)) {
    if (placed.length === 0) continue;
    const worstMa = Math.max(
      ...bands.map(({ at, coax }) => operate(coax, placedAt(placed, at.focusMHz)).shield?.entryMa ?? 0),
    );
    if (best === null || worstMa < best.worstMa) best = { placed, worstMa };
  }
  return best === null ? null : { placed: best.placed, untried: owned.length - tried.length };
}

/** All of them if that is few enough ways, else the kinds that have the most ohms where they have fewest. */
function mostWorthTrying(
  bands: readonly PreparedBand[],
  owned: readonly OwnedChoke[],
  places: number,
): readonly OwnedChoke[] {
  const leastOhm = ({ zAt }: OwnedChoke): number =>
    Math.min(...bands.map(({ at }) => magnitude(zAt(at.focusMHz * 1e6))));
  const kinds = new Map<string, OwnedChoke[]>();
  for (const choke of [...owned].sort((a, b) => leastOhm(b) - leastOhm(a)))
    kinds.set(choke.kind, [...(kinds.get(choke.kind) ?? []), choke]);
  const kept: OwnedChoke[] = [];
  let count = 0;
  for (const alike of kinds.values()) {
    count++;
    if (count > 1 && (count + 1) ** places > MOST_WAYS) break;
    kept.push(...alike);
  }
  return kept;
}

/** Every way to put parts at places, parts of a kind in their order. */
export function placements(
  parts: readonly OwnedChoke[],
  placesM: readonly number[],
): readonly (readonly PlacedPart[])[] {
  const [distanceM, ...others] = placesM;
  if (distanceM === undefined || parts.length === 0) return [[]];
  const firstOfKind = parts.filter(({ kind }, i) => parts.findIndex((each) => each.kind === kind) === i);
  const used = firstOfKind.flatMap((choke) =>
    placements(
      parts.filter((each) => each !== choke),
      others,
    ).map((rest) => [{ part: choke.part, distanceM, zAt: choke.zAt }, ...rest]),
  );
  const left = parts.length <= others.length ? placements(parts, others) : [];
  return [...used, ...left];
}

export const placedAt = (placed: readonly PlacedPart[], frequencyMHz: number): readonly PlacedChoke[] =>
  placed.map(({ distanceM, zAt }) => ({ distanceM, z: zAt(frequencyMHz * 1e6) }));
