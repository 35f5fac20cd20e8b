/**
 * What our own field solutions found, for words and disputes until the antenna itself is solved: rms mA at the building entry with 100 W
 * accepted at the feed point, worst of coax runs of 5 to 25 m and four house ends; choke heat as part of the power, 5 kΩ resistive.
 *
 * Geometry: 41 m wire at 9 m over average ground, coax 15 to 35 m along the ground. With two chokes good to 3 dB, with one to 6 dB, choke
 * heat to 25 %. Other wires, bands and grounds only by likeness. Source: own-field-solutions.
 */
import type { Band } from '../catalog/band-ids';

export type FigureBand = '80m' | '40m' | '20m' | '10m';
type ByBand = Readonly<Record<FigureBand, number>>;
const byBand = (b80: number, b40: number, b20: number, b10: number): ByBand => ({
  '80m': b80,
  '40m': b40,
  '20m': b20,
  '10m': b10,
});

/** The solved band nearest to this one. */
export function figureBand(band: Band): FigureBand {
  if (band === '160m' || band === '80m') return '80m';
  if (band === '60m' || band === '40m') return '40m';
  return band === '30m' || band === '20m' || band === '17m' ? '20m' : '10m';
}

/** Entry current, mA per 100 W. */
export const entryMa = {
  dipoleSquare: {
    none: byBand(228, 197, 162, 135),
    feed: byBand(24, 15, 13, 6),
    entry: byBand(23, 10, 17, 7),
    both: byBand(1, 2, 1, 1),
  },
  dipoleAlong: {
    none: byBand(316, 318, 249, 232),
    feed: byBand(315, 290, 291, 171),
    entry: byBand(26, 15, 32, 12),
    both: byBand(19, 26, 14, 18),
  },
  offCentre: {
    none: byBand(813, 640, 381, 205),
    feed: byBand(281, 195, 90, 56),
    entry: byBand(79, 41, 25, 16),
    both: byBand(9, 23, 8, 6),
    currentAlone: byBand(400, 205, 133, 54),
    currentAndEntry: byBand(16, 23, 12, 5),
  },
  endFed: {
    none: byBand(482, 373, 330, 240),
    wireAndBox: byBand(404, 232, 112, 26),
    feed: byBand(182, 108, 136, 74),
    entry: byBand(26, 47, 27, 22),
    both: byBand(8, 7, 6, 6),
  },
  /** Radials at the base; 80 m like 40 m. */
  upright: { both: byBand(6, 6, 6, 6) },
  nonResonant: {
    none: byBand(1068, 48, 194, 137),
    feed: byBand(101, 51, 62, 38),
    both: byBand(3, 6, 4, 3),
  },
} as const;

/** Heat as part of the power at the antenna. */
export const heatShare = {
  /** 5 kΩ choke 1 m below a voltage transformer, the band being the wire's lowest. */
  offCentreChoke: byBand(0.25, 0.15, 0.09, 0.09),
  /** 4:1 current transformer of 2.5 kΩ alone. */
  offCentreCurrentType: byBand(0.34, 0.2, 0.13, 0.13),
  /** 5 kΩ choke at an end-fed's box that has no counterpoise. */
  boxWithoutCounterpoise: byBand(0.62, 0.66, 0.83, 0.87),
  /** 5 kΩ choke at 0.05 λ of the lowest band. */
  endFedChoke: byBand(0.08, 0.07, 0.07, 0.18),
} as const;

/** A current at `powerW`: it grows with the square root. */
export const scaledMa = (mAPer100W: number, powerW: number): number => mAPer100W * Math.sqrt(powerW / 100);

/** One digit and a half, which is all that such figures bear: 281 → 300, 23 → 25. */
export function roughly(value: number): number {
  if (value <= 0) return 0;
  const step = 10 ** Math.floor(Math.log10(value)) / 2;
  return Number((Math.round(value / step) * step).toPrecision(3));
}
