/**
 * A wire with links: one wire to a leg, with a plug and an insulator where each band but the lowest ends. On a band the links inside its own are
 * closed, its own and all beyond it open, so that one link in each leg changes from a band to the next.
 */
import type { Band } from '../catalog/band-ids';
import type { Dimensions } from './dimensions';

/**
 * What a closed link adds to a leg, and the gap that an open one leaves, m. Common practice, no source: 1 to 3 cm, by the plugs and the loops
 * through the insulator.
 */
export const LINK_M = 0.02;

export interface LinkedLeg {
  readonly band: Band;
  /** One leg from the feed point to the open link of the band, or to its end. */
  readonly legM: number;
}

/** Legs of a linked wire, highest band first; empty for every other antenna. */
export function linkedLegs({ pieces }: Pick<Dimensions, 'pieces'>): readonly LinkedLeg[] {
  let legM = -LINK_M;
  return pieces.flatMap(({ piece, band, length }) => {
    if (piece !== 'leg-piece' || band === null) return [];
    legM += LINK_M + length.metres;
    return [{ band, legM }];
  });
}

/** Links in both legs. */
export const linkCount = (dimensions: Pick<Dimensions, 'pieces'>): number =>
  2 * Math.max(linkedLegs(dimensions).length - 1, 0);

/** Wire that works on a band, m: both legs up to the open links, or the whole radiator where there are none. */
export function conductorM(dimensions: Pick<Dimensions, 'pieces' | 'radiator'>, band: Band): number {
  const leg = linkedLegs(dimensions).find((each) => each.band === band);
  return leg === undefined ? dimensions.radiator.metres : 2 * leg.legM;
}
