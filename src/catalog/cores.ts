import { InputError } from '../base/input-error';
import { type CoreId, type CoreSize, coreSizes, type Mix, mixIds } from './core-ids';
import { found, recalled, type Sourced } from './sourced';

/**
 * Ferrite rings in the trade's code: FT, outside diameter in hundredths of an inch, mix (`ft240-43`).
 *
 *   C1 = 2π / (h · ln(OD/ID))     C2 = 4π · (1/ID − 1/OD) / (h² · ln³(OD/ID))
 *   le = C1² / C2     Ae = C1 / C2     Ve = le · Ae
 *
 * Exact for a ring with sharp corners; real corners take up to 2 %. Source: IEC 60205, ring cores.
 */
export interface RingSize {
  readonly outsideDiameterM: number;
  readonly insideDiameterM: number;
  readonly heightM: number;
}

export interface Core extends RingSize {
  readonly id: CoreId;
  readonly size: CoreSize;
  readonly mix: Mix;
  /** Effective area, m², length, m, and volume, m³, of one ring. */
  readonly areaM2: number;
  readonly lengthM: number;
  readonly volumeM3: number;
}

const ring = (outsideMm: number, insideMm: number, heightMm: number): RingSize => ({
  outsideDiameterM: outsideMm / 1000,
  insideDiameterM: insideMm / 1000,
  heightM: heightMm / 1000,
});

export const ringSizes: Readonly<Record<CoreSize, Sourced<RingSize>>> = {
  ft50: recalled(ring(12.7, 7.14, 4.78), 'maker-ferrite-catalogue'),
  ft82: recalled(ring(21, 13.2, 6.35), 'maker-ferrite-catalogue'),
  ft114: recalled(ring(29, 19, 7.5), 'maker-ferrite-catalogue'),
  ft140: found(ring(35.55, 23, 12.7), 'magnetics-database'),
  ft240: found(ring(61, 35.55, 12.7), 'magnetics-database'), // coated ones 61.5 to 62 / 34 / 13.5
  ft290: found(ring(73.65, 38.85, 12.7), 'magnetics-database'),
  ft400: found(ring(102, 65.8, 15), 'magnetics-database'), // not one agreed size: see fourInchMix31
};

/** In mix 31 the 102 mm ring is sold as a taller cable core with a wider hole. Low confidence. */
export const fourInchMix31: Sourced<RingSize> = found(ring(101.6, 75.2, 24.75), 'magnetics-database');

/** Takes a trade code apart; undefined when it is none of the catalogue's. */
export function parseCoreId(id: string): { size: CoreSize; mix: Mix } | undefined {
  const [sizeText, mixText, ...rest] = id.split('-');
  const size = coreSizes.find((known) => known === sizeText);
  const mix = mixIds.find((known) => known === mixText);
  return size === undefined || mix === undefined || rest.length > 0 ? undefined : { size, mix };
}

export function ringConstants({ outsideDiameterM, insideDiameterM, heightM }: RingSize) {
  const log = Math.log(outsideDiameterM / insideDiameterM);
  const c1 = (2 * Math.PI) / (heightM * log);
  const c2 = (4 * Math.PI * (1 / insideDiameterM - 1 / outsideDiameterM)) / (heightM ** 2 * log ** 3);
  return { areaM2: c1 / c2, lengthM: c1 ** 2 / c2, volumeM3: c1 ** 3 / c2 ** 2 };
}

/** The ring of this trade code, with its effective dimensions. */
export function coreOf(id: string): Core {
  const parts = parseCoreId(id);
  if (parts === undefined) throw new InputError('unknown-core', { id });
  const size = id === 'ft400-31' ? fourInchMix31.value : ringSizes[parts.size].value;
  return { id: `${parts.size}-${parts.mix}`, ...parts, ...size, ...ringConstants(size) };
}
