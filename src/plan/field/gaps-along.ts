/**
 * One wire fed at many places from one solution: with a gap at each place, all closed but one, the wire fed at place p shows
 *
 *   Z(p) = 1 / Y(p, p)         Y: current at a gap for a volt at another, all others closed
 *
 * Exact for a straight wire; one that bends at its feed point keeps the bend where it is. Coax is left out, since it would move along.
 */
import type { BandFacts, Facts } from '../../advice/facts';
import { type Complex, complex, reciprocal } from '../../base/complex';
import type { Layout } from '../../geometry/layout';
import { fieldSite, geometryOf } from './field-site';
import type { FieldInstrument } from './instrument';

/** `places`: shorter arm's part of the whole, the layout's own first. One row to a place, one number to a frequency; null without a shape. */
export async function impedancesAlong(
  facts: Facts,
  layout: Layout,
  instrument: FieldInstrument,
  at: BandFacts,
  { places, frequenciesHz }: { readonly places: readonly number[]; readonly frequenciesHz: readonly number[] },
): Promise<readonly (readonly Complex[])[] | null> {
  const site = fieldSite({ ...layout, coax: null, shieldAtMidGap: false }, facts.settled.ground, []);
  if (site === null) return null;
  const { feedFraction, radiatorM } = layout;
  const loads = places.slice(1).map((place) => ({
    wire: place > feedFraction ? 'arm2' : 'arm1',
    distanceM: Math.abs(place - feedFraction) * radiatorM,
    impedance: { r: 0, x: 0 },
  }));
  const geometry = { ...geometryOf(site, at.focusMHz), loads };
  const { yRe, yIm, portCount } = await instrument.prepare(geometry, Float64Array.from(frequenciesHz));
  const gaps = places.length;
  return places.map((_, place) =>
    frequenciesHz.map((_frequency, f) => {
      const own = (f * portCount + place) * gaps + place;
      return reciprocal(complex(yRe[own] ?? 0, yIm[own] ?? 0));
    }),
  );
}
