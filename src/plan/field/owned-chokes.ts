/** The operator's own chokes on the coax: every way to place them at the plan's choke places is tried, the lowest entry current is kept. */
import type { Facts } from '../../advice/facts';
import type { Link } from '../../advice/finding';
import { type ImpedanceAt, partImpedanceAt } from '../../advice/part-impedance';
import type { PlacedChoke } from './field-site';

export interface OwnedChoke {
  readonly part: number;
  readonly zAt: ImpedanceAt;
}

export interface PlacedPart {
  readonly part: number;
  readonly distanceM: number;
  readonly zAt: ImpedanceAt;
}

/** More parts than these are not tried at every place. */
const MOST_PARTS = 4;

export const ownedChokes = ({ settled }: Facts): readonly OwnedChoke[] =>
  settled.onHand
    .flatMap((part, index) => {
      const zAt = partImpedanceAt(part);
      return zAt === null ? [] : [{ part: index, zAt }];
    })
    .slice(0, MOST_PARTS);

export const chokePlacesIn = (chain: readonly Link[]): readonly number[] =>
  chain.flatMap(({ device, distanceM }) => (device === 'choke' && distanceM !== null ? [distanceM] : []));

/** Every way to put parts at places, at most one to a place, with as many parts in use as there is room for. */
export function placements(
  parts: readonly OwnedChoke[],
  placesM: readonly number[],
): readonly (readonly PlacedPart[])[] {
  const [first, ...others] = parts;
  if (first === undefined || placesM.length === 0) return [[]];
  const used = placesM.flatMap((distanceM) =>
    placements(
      others,
      placesM.filter((metres) => metres !== distanceM),
    ).map((rest) => [{ ...first, distanceM }, ...rest]),
  );
  const unused = others.length >= placesM.length ? placements(others, placesM) : [];
  return [...used, ...unused];
}

export const placedAt = (placed: readonly PlacedPart[], frequencyMHz: number): readonly PlacedChoke[] =>
  placed.map(({ distanceM, zAt }) => ({ distanceM, z: zAt(frequencyMHz * 1e6) }));
