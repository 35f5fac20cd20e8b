/** The field solver in this thread, and layouts of our own choke computations, for the tests of the study. */
import type { OpenCoax } from '../../src/advice/field-facts';
import type { Layout } from '../../src/geometry/layout';
import { type FieldSite, fieldSite, geometryOf, type PlacedChoke } from '../../src/plan/field/field-site';
import type { FieldInstrument } from '../../src/plan/field/instrument';
import { operate } from '../../src/plan/field/shield-currents';
import { withLoads } from '../../src/solver/prepared';
import { solve } from '../../src/solver/solve';
import { prepare } from '../../src/solver/sweep';
import { squareCoax, wireBetween } from '../geometry/half-wave';

export const instrument: FieldInstrument = {
  prepare: async (geometry, frequenciesHz) => prepare(geometry, frequenciesHz),
  solve: async (geometry) => solve(geometry),
  withLoads,
};

/** A half-wave at 9 m with coax at a right angle, down to 0.1 m and along it for `runM`, up to 1 m, 4 m indoors. */
export function siteLayout(runM: number, more: Partial<Layout> = {}): Layout {
  const heightM = more.heightM ?? 9;
  const entryDistanceM = heightM - 0.1 + runM + 0.9;
  return {
    ...wireBetween(heightM, 20.2),
    riseM: 8,
    ...more,
    coax: { ...squareCoax(entryDistanceM), ...more.coax },
  };
}

export const HOUSE_ENDS = ['open', 'mains', 'earth', 'both'] as const;

/** Entry current, mA per 100 W, for each set of chokes on one layout. */
export async function entryMa(
  layout: Layout,
  mhz: number,
  sets: readonly (readonly PlacedChoke[])[],
): Promise<readonly number[]> {
  const places = sets.flatMap((set) => set.map(({ distanceM }) => distanceM));
  const site = fieldSite(layout, 'average', places);
  if (site === null) throw new Error('no shape');
  const coax = await openCoax(site, mhz);
  return sets.map((set) => operate(coax, set).shield?.entryMa ?? Number.NaN);
}

/** A site solved with its choke places open. */
export const openCoax = async (site: FieldSite, mhz: number): Promise<OpenCoax> => ({
  siteOhms: site.siteOhms,
  portsM: site.portsM,
  antenna: prepare(geometryOf(site, mhz), Float64Array.of(mhz * 1e6)),
});

export const resistive = (distanceM: number, ohm: number): PlacedChoke => ({ distanceM, z: { re: ohm, im: 0 } });

export const worstAndMedian = (values: readonly number[]): readonly [number, number] => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const median = ((sorted[Math.floor(middle - 0.5)] ?? 0) + (sorted[Math.ceil(middle - 0.5)] ?? 0)) / 2;
  return [sorted.at(-1) ?? 0, median];
};

export const decibels = (ratio: number): number => 20 * Math.log10(ratio);
