/** How far people stay from each part of an antenna, as stretches of the site with their own distance; where each is told apart in a drawing. */
import type { AntennaPart } from '../design/antenna-part';
import type { Vector } from '../geometry/layout';
import type { Site } from './site';

export interface SiteKeepOut {
  /** At any height, from each part, m. */
  readonly parts: readonly { readonly part: AntennaPart; readonly metres: number }[];
  /** From where on a body stands on the ground, seen from above, m; 0 where it may stand everywhere. */
  readonly groundM: number;
  /** The part whose distance is the greatest. */
  readonly decides: AntennaPart | null;
}

export interface Zone {
  readonly points: readonly Vector[];
  readonly metres: number;
}

const stretchesOf = (site: Site, part: AntennaPart): readonly (readonly Vector[])[] => {
  const coax = site.line === 'coax' ? site.coax.map(({ point }) => point) : [];
  switch (part) {
    case 'radiator':
      return site.arms;
    case 'wire-end':
      return site.ends.map((end) => [end]);
    case 'feed-point':
      return [[site.feed]];
    case 'counterpoise':
    case 'radials':
      return site.returns;
    case 'coax':
      return coax.length > 0 ? [coax] : [];
    case 'house':
      return coax.slice(-1).map((radio) => [radio]);
  }
};

export const zonesOf = (site: Site, { parts }: SiteKeepOut): readonly Zone[] =>
  parts.flatMap(({ part, metres }) =>
    metres > 0 ? stretchesOf(site, part).map((points): Zone => ({ points, metres })) : [],
  );

/** The ground round each part, as far as the ground asks for it but no farther than the part itself does at any height. */
export const groundZonesOf = (site: Site, { groundM, parts }: SiteKeepOut): readonly Zone[] =>
  groundM > 0
    ? parts.flatMap(({ part, metres }) =>
        stretchesOf(site, part).map((points): Zone => ({ points, metres: Math.min(groundM, metres) })),
      )
    : [];

/** Where the deciding distance is drawn from, and how far it is. */
export function decidingPlace(site: Site, { parts, decides }: SiteKeepOut): { at: Vector; metres: number } | null {
  const metres = parts.find(({ part }) => part === decides)?.metres ?? 0;
  const [stretch] = decides === null ? [] : stretchesOf(site, decides);
  const [first, second] = stretch ?? [];
  if (first === undefined || metres === 0) return null;
  if (second === undefined) return { at: first, metres };
  return { at: [(first[0] + second[0]) / 2, (first[1] + second[1]) / 2, (first[2] + second[2]) / 2], metres };
}
