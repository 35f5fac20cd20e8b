/**
 * Counterpoise wires of a non-resonant end-fed wire: 0.05 to 0.25 λ of the lowest band, kept as clear of half-waves as the wire itself.
 * Counterpoises lie near ground, where resonances are broad and low; the same clearance is used. Source: common practice.
 */
import type { Dimension } from '../base/working';
import { partOfWave } from './lengths';
import {
  type ClearWindow,
  clearWindows,
  type LengthSearch,
  nearestResonance,
  resonances,
  type WantedBand,
} from './non-resonant-length';

const WAVE = 299.8;
export const counterpoiseWaves = { least: 0.05, most: 0.25 } as const;
/** Aims, in waves of the lowest band: a short wire for the higher bands, a longer one that carries the lowest. */
export const counterpoiseAims = { short: 0.057, long: 0.105 } as const;

export interface Counterpoise {
  readonly length: Dimension;
  readonly nearest: ClearWindow['nearest'];
  /** False when no length of the range is clear and the aim itself was taken. */
  readonly clear: boolean;
}

const middleMHz = ({ lowMHz, highMHz }: WantedBand): number => (lowMHz + highMHz) / 2;

/** Search over the counterpoise's range, at the middle of the lowest band. */
export function counterpoiseSearch(bands: readonly WantedBand[], wireFactor: number): LengthSearch {
  const lowestMHz = Math.min(...bands.map(middleMHz));
  return {
    bands,
    wireFactor,
    shortestM: (counterpoiseWaves.least * WAVE) / lowestMHz,
    longestM: (counterpoiseWaves.most * WAVE) / lowestMHz,
  };
}

/** The clear length nearest to `aim` waves of the lowest band. */
export function counterpoiseLength(bands: readonly WantedBand[], wireFactor: number, aim: number): Counterpoise {
  const search = counterpoiseSearch(bands, wireFactor);
  const list = resonances(search);
  const lowestMHz = Math.min(...bands.map(middleMHz));
  const aimed = partOfWave(aim, { value: lowestMHz, from: 'assumed' });
  const nearestIn = ({ fromM, toM, below, above }: ClearWindow): number => {
    const inset = Math.min(0.02 * toM, (toM - fromM) / 2);
    const [low, high] = [below === null ? fromM : fromM + inset, above === null ? toM : toM - inset];
    return Math.min(Math.max(aimed.metres, low), high);
  };
  const lengths = clearWindows(search)
    .map(nearestIn)
    .sort((a, b) => Math.abs(a - aimed.metres) - Math.abs(b - aimed.metres));
  const metres = lengths[0] ?? aimed.metres;
  return {
    length: partOfWave((metres * lowestMHz) / WAVE, { value: lowestMHz, from: 'assumed' }),
    nearest: nearestResonance(list, metres),
    clear: lengths.length > 0,
  };
}
