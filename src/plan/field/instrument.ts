/**
 * The field solver as the study sees it. Whoever runs the study hands it in: a command solves at once, the app sends the work to its workers.
 * A solution called off rejects with InputError 'cancelled'; wires that cannot be solved reject with another InputError.
 */
import type { Geometry, Solution } from '../../solver/geometry';
import type { LoadOverFrequency, Prepared, Sweep } from '../../solver/prepared';

export interface FieldInstrument {
  /** Currents at all ports of one geometry over frequency, its loads still open. */
  prepare(geometry: Geometry, frequenciesHz: Float64Array): Promise<Prepared>;
  /** One frequency whole: where the power goes, gain, direction, error. */
  solve(geometry: Geometry): Promise<Solution>;
  /** Other loads in the places of a prepared antenna: microseconds, done where it is asked. */
  withLoads(prepared: Prepared, loads: readonly LoadOverFrequency[]): Sweep;
  /** Waited for before the work on each band, so that a page can answer a tap in between; a command has no need of it. */
  rest?(): Promise<void>;
}
