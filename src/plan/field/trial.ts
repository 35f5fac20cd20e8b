/** One antenna with other lengths than the rules', as the solver takes it: planned chokes in place, nothing else changed. */
import { dimensionsOf } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { needsOf, swrBehind } from '../../advice/needs';
import { type Complex, complex, magnitude } from '../../base/complex';
import type { Layout } from '../../geometry/layout';
import type { Sweep } from '../../solver/prepared';
import { layoutOf } from '../layout-of';
import { houseChokes } from './choke-places';
import { resistive } from './choke-search';
import { type FieldSite, fieldSite, geometryOf, type PlacedChoke } from './field-site';
import type { FieldInstrument } from './instrument';
import { POWER_W } from './shield-currents';

interface Trial {
  readonly site: FieldSite;
  readonly chokes: readonly PlacedChoke[];
}

function trialOf(facts: Facts, lengths: SolvedLengths | undefined, at: BandFacts): Trial | null {
  const dimensions = dimensionsOf(facts, lengths === undefined ? {} : { lengths });
  const layout = layoutOf(facts, dimensions, at);
  if (layout === null) return null;
  const chokes = resistive(houseChokes(facts, dimensions));
  const site = fieldSite(
    layout,
    facts.settled.ground,
    chokes.map(({ distanceM }) => distanceM),
  );
  return site === null ? null : { site, chokes };
}

/** Impedance at the feed point of a trial over frequencies, Hz. Null where the wires cannot be solved. */
export async function trialImpedance(
  facts: Facts,
  lengths: SolvedLengths | undefined,
  instrument: FieldInstrument,
  at: BandFacts,
  frequenciesHz: readonly number[],
): Promise<readonly Complex[] | null> {
  const trial = trialOf(facts, lengths, at);
  return trial === null ? null : impedanceOver(trial, instrument, at, frequenciesHz);
}

/** Reactance at the focus of a band, over the factor on what is looked for. */
export const trialReactance =
  (facts: Facts, at: BandFacts, lengthsOf: (factor: number) => SolvedLengths, instrument: FieldInstrument) =>
  async (factor: number): Promise<number | null> => {
    const z = await trialImpedance(facts, lengthsOf(factor), instrument, at, [at.focusMHz * 1e6]);
    return z?.[0]?.im ?? null;
  };

/** The same of a layout without coax. */
export async function bareImpedance(
  facts: Facts,
  layout: Layout,
  instrument: FieldInstrument,
  at: BandFacts,
): Promise<Complex | null> {
  const site = fieldSite({ ...layout, coax: null }, facts.settled.ground, []);
  if (site === null) return null;
  const [z] = await impedanceOver({ site, chokes: [] }, instrument, at, [at.focusMHz * 1e6]);
  return z ?? null;
}

/** Antenna and chokes of a trial over frequencies. */
async function sweepOver(
  { site, chokes }: Trial,
  instrument: FieldInstrument,
  at: BandFacts,
  frequenciesHz: readonly number[],
): Promise<Sweep & { readonly loads: readonly Complex[] }> {
  const geometry = geometryOf(site, at.focusMHz, chokes);
  const prepared = await instrument.prepare(geometry, Float64Array.from(frequenciesHz));
  return { ...instrument.withLoads(prepared, prepared.loadOhms), loads: prepared.loadOhms };
}

const numberAt = (values: Float64Array, i: number): Complex => complex(values[2 * i] ?? 0, values[2 * i + 1] ?? 0);

async function impedanceOver(
  trial: Trial,
  instrument: FieldInstrument,
  at: BandFacts,
  frequenciesHz: readonly number[],
): Promise<readonly Complex[]> {
  const { impedance } = await sweepOver(trial, instrument, at, frequenciesHz);
  return frequenciesHz.map((_, i) => numberAt(impedance, i));
}

/** A trial at the focus of a band, with what its chokes take of 100 W accepted; no heat where no choke stands. */
export async function trialDuty(
  facts: Facts,
  lengths: SolvedLengths,
  instrument: FieldInstrument,
  at: BandFacts,
): Promise<{ readonly z: Complex; readonly heatW: readonly number[] } | null> {
  const trial = trialOf(facts, lengths, at);
  if (trial === null) return null;
  const { impedance, loadCurrents, loads } = await sweepOver(trial, instrument, at, [at.focusMHz * 1e6]);
  const z = numberAt(impedance, 0);
  const feedA = Math.sqrt(POWER_W / z.re);
  const heatW = loads.map(
    (load, i) => (magnitude(numberAt(loadCurrents[i] ?? new Float64Array(2), 0)) * feedA) ** 2 * load.re,
  );
  return { z, heatW: heatW.slice(trial.site.wires.loads.length) };
}

/**
 * SWR on 50 Ω behind the feed point's transformer, one to a band, lowest band first: its impedance decides the ratio where nothing else does.
 */
export function swrsBehind(facts: Facts, impedances: readonly Complex[]): readonly number[] {
  const ohms = impedances.map((z) => ({ r: z.re, x: z.im }));
  const ratio = needsOf(facts, ohms[0] ?? null).transformation?.ratio ?? 1;
  return ohms.map((z) => swrBehind(z, ratio, 50));
}

/** SWR of a trial at the focus of each band; null where one cannot be solved. */
export async function swrAtFocus(
  facts: Facts,
  served: readonly BandFacts[],
  lengths: SolvedLengths,
  instrument: FieldInstrument,
): Promise<readonly number[] | null> {
  const all = await Promise.all(
    served.map((at) => trialImpedance(facts, lengths, instrument, at, [at.focusMHz * 1e6])),
  );
  const known = all.flatMap((z) => z ?? []);
  return known.length < served.length ? null : swrsBehind(facts, known);
}

/** The worst band decides, and between equals the mean. */
export const badness = (swrs: readonly number[]): number =>
  Math.max(...swrs) + (0.1 * swrs.reduce((sum, swr) => sum + swr, 0)) / swrs.length;

/** The band that is worst off. */
export function worstOf(
  bands: readonly BandFacts[],
  swrs: readonly number[],
): { readonly band: BandFacts['band']; readonly swr: number } | null {
  const rows = bands.flatMap(({ band }, i) => (swrs[i] === undefined ? [] : [{ band, swr: swrs[i] }]));
  return rows.length === 0 ? null : rows.reduce((most, each) => (each.swr > most.swr ? each : most));
}
