/** The field solver for headless commands: every solution at once, in this thread. */
import type { FieldInstrument } from '../plan/field/instrument';
import { withLoads } from '../solver/prepared';
import { solve } from '../solver/solve';
import { prepare } from '../solver/sweep';

export const directInstrument: FieldInstrument = {
  prepare: async (geometry, frequenciesHz) => prepare(geometry, frequenciesHz),
  solve: async (geometry) => solve(geometry),
  withLoads,
};
