/**
 * The hot loops behind one interface, so that a WebAssembly build can stand in for the plain one. The plain one is the check.
 */
import { assembleMatrix, type SymmetricMatrix } from './assemble';
import { type IntensitySum, plainIntensities } from './far-field';
import { fillPairs } from './fill';
import { type BandSum, type GroundTable, plainBandSum } from './ground-table';
import { factorLdlt, solveLdlt } from './ldlt';
import { type Combine, plainCombine } from './matrix-interpolation';
import { type NearSums, plainNearSums } from './near-waves';
import type { PairPlan } from './pair-plan';

export interface Kernels {
  readonly name: 'plain' | 'simd' | 'relaxed-simd';
  /** Impedances between element ends of every pair; see fill.ts. The array is good until the next call. */
  fillPairs(plan: PairPlan, k0: number, table: GroundTable | undefined): Float64Array;
  /** The matrix of the unknowns from those impedances; see assemble.ts. */
  assemble(plan: PairPlan, ends: Float64Array): SymmetricMatrix;
  /** The sum behind the interpolation over frequency; see matrix-interpolation.ts. */
  readonly combine: Combine;
  /** The sum over currents that makes a far field; see far-field.ts. */
  readonly intensities: IntensitySum;
  /** The sums that make a near field; see near-waves.ts. */
  readonly nearSums: NearSums;
  /** The sum that makes a ground table; see ground-table.ts. */
  readonly bandSum: BandSum;
  /** Factors the matrix (used up) and overwrites the columns of b, one after another, with solutions. */
  factorAndSolve(matrix: SymmetricMatrix, bRe: Float64Array, bIm: Float64Array): void;
}

export const plainKernels: Kernels = {
  name: 'plain',
  fillPairs,
  assemble: (plan, ends) => assembleMatrix(plan.mesh, ends),
  combine: plainCombine,
  intensities: plainIntensities,
  nearSums: plainNearSums,
  bandSum: plainBandSum,
  factorAndSolve(matrix, bRe, bIm) {
    factorLdlt(matrix);
    for (let from = 0; from < bRe.length; from += matrix.size) {
      solveLdlt(matrix, bRe.subarray(from, from + matrix.size), bIm.subarray(from, from + matrix.size));
    }
  },
};
