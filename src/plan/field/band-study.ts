/** One band at its focus: what the antenna, its coax and its chokes do, from two solutions: one with open ports, one whole. */
import type { BandFacts } from '../../advice/facts';
import type { BandField, ChosenChoke, OpenCoax, OwnedState } from '../../advice/field-facts';
import { type BandShield, resistive } from './choke-search';
import { type FieldSite, geometryOf, type PlacedChoke } from './field-site';
import type { FieldInstrument } from './instrument';
import { nearFieldOf, placesNear } from './near-field-study';
import { type PlacedPart, placedAt } from './owned-chokes';
import { operate, POWER_W, sourceBehindChoke } from './shield-currents';

/** A band with its antenna solved and every choke place still open. */
export interface PreparedBand {
  readonly at: BandFacts;
  readonly coax: OpenCoax;
}

export const prepareBand = async (
  instrument: FieldInstrument,
  site: FieldSite,
  at: BandFacts,
): Promise<PreparedBand> => ({
  at,
  coax: await openAt(instrument, site, at, [at.focusMHz]),
});

async function openAt(
  instrument: FieldInstrument,
  site: FieldSite,
  { focusMHz }: BandFacts,
  mhz: readonly number[],
): Promise<OpenCoax> {
  const hz = Float64Array.from(mhz, (f) => f * 1e6);
  const { siteOhms, portsM } = site;
  const { frequenciesHz, gapVolts, loadOhms, probeIds, portCount, yRe, yIm } = await instrument.prepare(
    geometryOf(site, focusMHz),
    hz,
  );
  return { siteOhms, portsM, antenna: { frequenciesHz, gapVolts, loadOhms, probeIds, portCount, yRe, yIm } };
}

export const bandShield = ({ at, coax }: PreparedBand): BandShield => ({
  band: at.band,
  with: (chokes) => operate(coax, chokes).shield,
});

/** What the ports alone tell, with the chosen chokes at the least ohms they need. */
export function bandFieldOf(
  { at, coax }: PreparedBand,
  chosen: readonly ChosenChoke[],
  placed: readonly PlacedPart[] | null,
): BandField {
  const planned = resistive(chosen);
  const now = operate(coax, planned);
  const none = operate(coax, []);
  const sources = chosen.flatMap(({ role }, i) => {
    const source = sourceBehindChoke(coax, planned, i);
    return source === null ? [] : [[role, source] as const];
  });
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
          owned: placed === null ? null : ownedState({ at, coax }, placed),
          openCoax: coax,
        }),
    ...(sources.length === 0 ? {} : { chokeSources: Object.fromEntries(sources) }),
  };
}

function ownedState({ at, coax }: PreparedBand, placed: readonly PlacedPart[]): OwnedState | null {
  const { shield } = operate(coax, placedAt(placed, at.focusMHz));
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

/** Impedance over the whole band with the planned chokes at their least ohms, and the same with their places open. */
export async function sweepOf(
  instrument: FieldInstrument,
  site: FieldSite,
  at: BandFacts,
  planned: readonly PlacedChoke[],
): Promise<BandField> {
  const { lowMHz, highMHz } = at.edgesMHz;
  const mhz = Array.from({ length: SWEEP_POINTS }, (_, i) => lowMHz + ((highMHz - lowMHz) * i) / (SWEEP_POINTS - 1));
  const coax = await openAt(instrument, site, at, mhz);
  return { sweep: sweepWith(coax, () => planned), openSweep: coax };
}

/** `chokesAt`: the chokes at a frequency, Hz. */
export const sweepWith = (
  coax: OpenCoax,
  chokesAt: (hz: number) => readonly PlacedChoke[],
): NonNullable<BandField['sweep']> =>
  Array.from(coax.antenna.frequenciesHz, (hz, f) => {
    const { re, im } = operate(coax, chokesAt(hz), f).z;
    return { mhz: hz / 1e6, r: re, x: im };
  });
