/**
 * A few directions out of a solved pattern. How far one hop reaches from the height above the horizon it leaves at: over a round Earth with a
 * mirror H up the ground distance is 2 R (90° − e − asin(R cos e / (R + H))). Mirror at 300 km, a usual height of the layer that carries
 * short-wave; common practice, no source. Good to a fifth.
 */
import type { PatternPoint } from '../../../advice/field-facts';
import type { Spoke } from '../../../drawing/spokes';

const EARTH_KM = 6371;
const LAYER_KM = 300;

export function oneHopKm(elevationDeg: number): number {
  const e = (elevationDeg * Math.PI) / 180;
  const seen = Math.asin((EARTH_KM * Math.cos(e)) / (EARTH_KM + LAYER_KM));
  return 2 * EARTH_KM * (Math.PI / 2 - e - seen);
}

/** To one figure below 1000 km, to two above. */
export const roundKm = (km: number): number => {
  const step = km < 200 ? 50 : km < 1000 ? 100 : 500;
  return Math.max(Math.round(km / step), 1) * step;
};

export const shareAt = (pattern: readonly PatternPoint[], deg: number): number => {
  const nearest = pattern.reduce<PatternPoint | null>(
    (best, point) => (best === null || Math.abs(point.deg - deg) < Math.abs(best.deg - deg) ? point : best),
    null,
  );
  return nearest === null ? 0 : 10 ** (nearest.db / 10);
};

/** Low, middling, steep and overhead, to both sides. */
const SIDE_DEG = [10, 30, 60, 90, 120, 150, 170] as const;
const TOP_DEG = [0, 45, 90, 135, 180, 225, 270, 315] as const;

export const sideSpokes = (
  pattern: readonly PatternPoint[],
  words: (deg: number) => readonly string[],
): readonly Spoke[] => SIDE_DEG.map((deg) => ({ deg, share: shareAt(pattern, deg), words: words(deg) }));

export const topSpokes = (
  pattern: readonly PatternPoint[],
  words: (deg: number) => readonly string[],
): readonly Spoke[] => TOP_DEG.map((deg) => ({ deg, share: shareAt(pattern, deg), words: words(deg) }));
