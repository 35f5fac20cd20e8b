/** The field solver for headless commands: every solution at once, in this thread. */
import type { FieldInstrument } from '../plan/field/instrument';
import type { Kernels } from '../solver/kernels';
import { withLoads } from '../solver/prepared';
import { solve } from '../solver/solve';
import { prepare } from '../solver/sweep';

export const directInstrument = (kernels: Kernels): FieldInstrument => ({
  prepare: async (geometry, frequenciesHz) => prepare(geometry, frequenciesHz, { kernels }),
  solve: async (geometry) => solve(geometry, { kernels }),
  withLoads,
});
