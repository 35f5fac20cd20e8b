import { type Band, bandIds, type Region } from './band-ids';
import { found, recalled, type Sourced } from './sourced';

export interface BandEdges {
  readonly lowMHz: number;
  readonly highMHz: number;
}

type Row = Sourced<BandEdges>;
const edges = (lowMHz: number, highMHz: number): BandEdges => ({ lowMHz, highMHz });
const everywhere = (row: Row): Readonly<Record<Region | 'US', Row>> => ({ 1: row, 2: row, 3: row, US: row });
const remembered = (lowMHz: number, highMHz: number): Row => recalled(edges(lowMHz, highMHz), 'itu-radio-regulations');
const sixtyMetres: Row = found(edges(5.3515, 5.3665), 'wrc-2015-60m');

/**
 * Amateur allocations from 1.8 to 54 MHz, by ITU region and for the United States, MHz. A planning aid: national tables differ and change,
 * and sub-bands of licence classes are not in it. Sources and provenance stand beside each row.
 */
export const bandTable: Readonly<Record<Band, Readonly<Record<Region | 'US', Row>>>> = {
  '160m': {
    1: remembered(1.81, 1.85), // 1.85-2.0 MHz by national permission, see nationalPermission
    2: found(edges(1.8, 2), 'region-2-band-plan'),
    3: found(edges(1.8, 2), 'region-3-national-table'),
    US: remembered(1.8, 2),
  },
  '80m': {
    1: found(edges(3.5, 3.8), 'region-1-80m-table'),
    2: found(edges(3.5, 4), 'region-1-80m-table'),
    3: found(edges(3.5, 3.9), 'region-1-80m-table'),
    US: found(edges(3.5, 4), 'region-1-80m-table'),
  },
  '60m': { ...everywhere(sixtyMetres), US: found(edges(5.3515, 5.3665), 'us-60m-order') }, // four US channels beside it, below
  '40m': {
    1: found(edges(7, 7.2), 'region-1-40m-notice'),
    2: remembered(7, 7.3),
    3: found(edges(7, 7.2), 'region-3-40m-paper'),
    US: remembered(7, 7.3),
  },
  '30m': { ...everywhere(remembered(10.1, 10.15)), 3: found(edges(10.1, 10.15), 'region-3-national-table') },
  '20m': everywhere(remembered(14, 14.35)),
  '17m': everywhere(remembered(18.068, 18.168)),
  '15m': everywhere(remembered(21, 21.45)),
  '12m': everywhere(remembered(24.89, 24.99)),
  '10m': everywhere(remembered(28, 29.7)),
  '6m': {
    1: found(edges(50, 52), 'wrc-2019-6m'), // secondary; primary or narrower in named countries
    2: found(edges(50, 54), 'us-rules-part-97'),
    3: remembered(50, 54),
    US: found(edges(50, 54), 'us-rules-part-97'),
  },
};

/** Ranges that many administrations of region 1 grant at low power, without an allocation to the whole region (notes 5.96, 5.98-5.100). */
export const nationalPermission: readonly { readonly region: Region; readonly band: Band; readonly range: Row }[] = [
  { region: 1, band: '160m', range: remembered(1.85, 2) },
];

/** Channels of the United States on 60 m beside the common segment, 2.8 kHz wide, at most 100 W ERP. */
export const usSixtyMetreChannels: Sourced<{ readonly centresMHz: readonly number[]; readonly widthMHz: number }> =
  found({ centresMHz: [5.332, 5.348, 5.373, 5.405], widthMHz: 0.0028 }, 'us-60m-order');

/** Greatest equivalent isotropic power in the 60 m segment, W. 9.15 W ERP in the United States is the same 15 W. */
export const sixtyMetreEirpW: Sourced = found(15, 'wrc-2015-60m');

/** Power limits of the United States that are lower than the general one: 200 W PEP on 30 m. */
export const usThirtyMetrePepW: Sourced = recalled(200, 'us-rules-part-97');

const column = (region: Region, country?: string): Region | 'US' => (country === 'US' ? 'US' : region);

/** Edges of the band where the operator is, MHz. */
export const bandEdgesMHz = (band: Band, region: Region, country?: string): BandEdges =>
  bandTable[band][column(region, country)].value;

/** Middle of the band, MHz: the frequency cut for when the operator names none. */
export function bandCentreMHz(band: Band, region: Region, country?: string): number {
  const { lowMHz, highMHz } = bandEdgesMHz(band, region, country);
  return (lowMHz + highMHz) / 2;
}

/** `national-permission`: not allocated to the region, though many countries allow it. */
export type Allocation = 'amateur' | 'national-permission' | 'none';

const holds = ({ lowMHz, highMHz }: BandEdges, frequencyMHz: number): boolean =>
  frequencyMHz >= lowMHz - 1e-9 && frequencyMHz <= highMHz + 1e-9;

/** Whether amateurs may transmit at this frequency where the operator is. */
export function allocationAt(frequencyMHz: number, region: Region, country?: string): Allocation {
  if (bandIds.some((band) => holds(bandEdgesMHz(band, region, country), frequencyMHz))) return 'amateur';
  if (country === 'US') {
    const { centresMHz, widthMHz } = usSixtyMetreChannels.value;
    const channel = (centre: number): BandEdges => edges(centre - widthMHz / 2, centre + widthMHz / 2);
    return centresMHz.some((centre) => holds(channel(centre), frequencyMHz)) ? 'amateur' : 'none';
  }
  const allowed = nationalPermission.some((entry) => entry.region === region && holds(entry.range.value, frequencyMHz));
  return allowed ? 'national-permission' : 'none';
}

export const isAmateur = (frequencyMHz: number, region: Region, country?: string): boolean =>
  allocationAt(frequencyMHz, region, country) === 'amateur';

/** The band this frequency lies in, in any region; undefined outside all of them. */
export function bandOf(frequencyMHz: number): Band | undefined {
  const spans = (band: Band): boolean =>
    Object.values(bandTable[band]).some((row) => holds(row.value, frequencyMHz)) ||
    nationalPermission.some((entry) => entry.band === band && holds(entry.range.value, frequencyMHz));
  const channel = usSixtyMetreChannels.value.centresMHz.some(
    (centre) => Math.abs(frequencyMHz - centre) <= 0.0014 + 1e-9,
  );
  return bandIds.find(spans) ?? (channel ? '60m' : undefined);
}
