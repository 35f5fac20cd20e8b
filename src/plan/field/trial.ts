/** One antenna with other lengths than the rules', as the solver takes it: planned chokes in place, nothing else changed. */
import { dimensionsOf } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { type Complex, complex } from '../../base/complex';
import { layoutOf } from '../layout-of';
import { houseChokes } from './choke-places';
import { resistive } from './choke-search';
import { fieldSite, geometryOf } from './field-site';
import type { FieldInstrument } from './instrument';

/** Impedance at the feed point of a trial over frequencies, Hz. Null where the wires cannot be solved. */
export async function trialImpedance(
  facts: Facts,
  lengths: SolvedLengths | undefined,
  instrument: FieldInstrument,
  at: BandFacts,
  frequenciesHz: readonly number[],
): Promise<readonly Complex[] | null> {
  const dimensions = dimensionsOf(facts, lengths === undefined ? {} : { lengths });
  const layout = layoutOf(facts, dimensions);
  if (layout === null) return null;
  const chokes = houseChokes(facts, dimensions);
  const site = fieldSite(
    layout,
    facts.settled.ground,
    chokes.map(({ distanceM }) => distanceM),
  );
  if (site === null) return null;
  const geometry = geometryOf(site, at.focusMHz, resistive(chokes));
  const prepared = await instrument.prepare(geometry, Float64Array.from(frequenciesHz));
  const { impedance } = instrument.withLoads(prepared, prepared.loadOhms);
  return frequenciesHz.map((_, i) => complex(impedance[2 * i] ?? 0, impedance[2 * i + 1] ?? 0));
}
