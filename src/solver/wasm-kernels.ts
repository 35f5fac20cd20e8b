/** The WebAssembly kernels behind the interface of kernels.ts. */
import type { SymmetricMatrix } from './assemble';
import type { Kernels } from './kernels';
import { Filler } from './wasm-fields';
import type { KernelModules, LdltModule } from './wasm-modules';
import { nearSumsBy } from './wasm-near';
import { bandSumBy, Combiner, intensitiesBy } from './wasm-sums';

export function wasmKernels(name: 'simd' | 'relaxed-simd', { ldlt, fields, sums }: KernelModules): Kernels {
  fields.release(0);
  sums.release(0);
  const filler = new Filler(fields);
  const combiner = new Combiner(sums);
  return {
    name,
    fillPairs: (plan, k0, table) => filler.fillPairs(plan, k0, table),
    assemble: (plan, ends) => filler.assemble(plan, ends),
    combine: (...input) => combiner.combine(...input),
    bandSum: bandSumBy(sums),
    intensities: intensitiesBy(sums),
    nearSums: nearSumsBy(sums),
    factorAndSolve: (matrix, bRe, bIm) => factorAndSolve(ldlt, matrix, bRe, bIm),
  };
}

function factorAndSolve(ldlt: LdltModule, matrix: SymmetricMatrix, bRe: Float64Array, bIm: Float64Array): void {
  const { size } = matrix;
  const columns = bRe.length / size;
  ldlt.reserve(size, columns);
  const stride = ldlt.rowStride();
  const { buffer } = ldlt.memory;
  const re = new Float64Array(buffer, ldlt.matrixReAt(), size * stride);
  const im = new Float64Array(buffer, ldlt.matrixImAt(), size * stride);
  for (let row = 0, from = 0; row < size; from += ++row) {
    re.set(matrix.re.subarray(from, from + row + 1), row * stride);
    im.set(matrix.im.subarray(from, from + row + 1), row * stride);
  }
  const rightRe = new Float64Array(buffer, ldlt.rightReAt(), bRe.length);
  const rightIm = new Float64Array(buffer, ldlt.rightImAt(), bRe.length);
  rightRe.set(bRe);
  rightIm.set(bIm);
  ldlt.factor();
  ldlt.solve(columns);
  bRe.set(rightRe);
  bIm.set(rightIm);
}
