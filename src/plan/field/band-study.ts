/** One band at its focus: what the antenna, its coax and its chokes do, from two solutions: one with open ports, one whole. */
import type { BandFacts } from '../../advice/facts';
import type { BandField, OwnedState } from '../../advice/field-facts';
import type { Prepared, Sweep } from '../../solver/prepared';
import type { BandShield } from './choke-search';
import { type FieldSite, geometryOf, type PlacedChoke } from './field-site';
import type { FieldInstrument } from './instrument';
import { nearFieldOf, placesNear } from './near-field-study';
import { type OwnedChoke, type PlacedPart, placedAt, placements } from './owned-chokes';
import { operate, POWER_W, sourceOfFirst } from './shield-currents';

/** A band with its antenna solved and every choke place still open. */
export interface PreparedBand {
  readonly at: BandFacts;
  readonly prepared: Prepared;
}

export const prepareBand = async (
  instrument: FieldInstrument,
  site: FieldSite,
  at: BandFacts,
): Promise<PreparedBand> => ({
  at,
  prepared: await instrument.prepare(geometryOf(site, at.focusMHz), Float64Array.of(at.focusMHz * 1e6)),
});

export const bandShield = (
  instrument: FieldInstrument,
  site: FieldSite,
  { at, prepared }: PreparedBand,
): BandShield => ({
  band: at.band,
  with: (chokes) => operate(instrument, site, prepared, chokes).shield,
});

/** The placing of owned chokes with the lowest worst entry current; null when nothing owned chokes, or there is no coax. */
export function bestPlacement(
  instrument: FieldInstrument,
  site: FieldSite,
  bands: readonly PreparedBand[],
  owned: readonly OwnedChoke[],
  placesM: readonly number[],
): readonly PlacedPart[] | null {
  let best: { readonly placed: readonly PlacedPart[]; readonly worstMa: number } | null = null;
  for (const placed of placements(owned, placesM)) {
    if (placed.length === 0) continue;
    const worstMa = Math.max(
      ...bands.map(({ at, prepared }) => {
        const { shield } = operate(instrument, site, prepared, placedAt(placed, at.focusMHz));
        return shield?.entryMa ?? 0;
      }),
    );
    if (best === null || worstMa < best.worstMa) best = { placed, worstMa };
  }
  return best?.placed ?? null;
}

/** What the ports alone tell. */
export function bandFieldOf(
  instrument: FieldInstrument,
  site: FieldSite,
  { at, prepared }: PreparedBand,
  planned: readonly PlacedChoke[],
  placed: readonly PlacedPart[] | null,
): BandField {
  const now = operate(instrument, site, prepared, planned);
  const none = operate(instrument, site, prepared, []);
  const source = sourceOfFirst(instrument, site, prepared, planned);
  return {
    feedPoint: { r: now.z.re, x: now.z.im },
    feedCurrentA: now.feedCurrentA,
    ...(now.shield === null || none.shield === null
      ? {}
      : {
          entryCurrentMa: now.shield.entryMa,
          shieldCurrentDb: now.shield.entryDb,
          noChoke: none.shield,
          planned: now.shield,
          owned: placed === null ? null : ownedState(instrument, site, { at, prepared }, placed),
        }),
    ...(source === null ? {} : { chokeSource: source }),
  };
}

function ownedState(
  instrument: FieldInstrument,
  site: FieldSite,
  { at, prepared }: PreparedBand,
  placed: readonly PlacedPart[],
): OwnedState | null {
  const { shield } = operate(instrument, site, prepared, placedAt(placed, at.focusMHz));
  return shield === null ? null : { ...shield, places: placed.map(({ part, distanceM }) => ({ part, distanceM })) };
}

/** Where the power goes, with the planned chokes in place, and the fields as far as people are looked for. */
export async function radiationOf(
  instrument: FieldInstrument,
  site: FieldSite,
  at: BandFacts,
  planned: readonly PlacedChoke[],
  reachM: number,
): Promise<BandField> {
  const places = placesNear(site, at.focusMHz, reachM);
  const geometry = geometryOf(site, at.focusMHz, planned);
  const solution = await instrument.solve({ ...geometry, fieldPoints: places.points, powerW: POWER_W, pattern: true });
  return {
    nearField: nearFieldOf(places, solution),
    efficiency: solution.powerShare.radiated,
    gainDbi: solution.gainDbi,
    takeOffDeg: 90 - solution.gainThetaDeg,
    errorEstimate: solution.errorEstimate,
    doubts: [...new Set(solution.warnings.map(({ code }) => code))],
    ...solution.pattern,
  };
}

/** Frequencies over a band, edges included. */
const SWEEP_POINTS = 21;

/** Impedance over the whole band with the planned chokes; these are taken as resistive and level over one band. */
export async function sweepOf(
  instrument: FieldInstrument,
  site: FieldSite,
  at: BandFacts,
  planned: readonly PlacedChoke[],
): Promise<BandField> {
  const { lowMHz, highMHz } = at.edgesMHz;
  const mhz = Array.from({ length: SWEEP_POINTS }, (_, i) => lowMHz + ((highMHz - lowMHz) * i) / (SWEEP_POINTS - 1));
  const geometry = geometryOf(site, at.focusMHz, planned);
  const prepared = await instrument.prepare(
    geometry,
    Float64Array.from(mhz, (f) => f * 1e6),
  );
  const { impedance } = instrument.withLoads(prepared, prepared.loadOhms);
  return { sweep: sweepPoints(mhz, impedance) };
}

const sweepPoints = (mhz: readonly number[], impedance: Sweep['impedance']) =>
  mhz.map((at, i) => ({ mhz: at, r: impedance[2 * i] ?? 0, x: impedance[2 * i + 1] ?? 0 }));
