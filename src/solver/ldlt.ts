/**
 * Z = L D Lᵀ of a complex symmetric matrix, without pivoting, and the solution of Z x = b with it. Half the work of LU. Integral
 * equations for wires are dominated by their diagonal; `solveResidual` in the tests guards that no pivoting is needed.
 *
 * In place: the strict lower triangle becomes L, the diagonal D⁻¹. Source: Golub & Van Loan, Matrix Computations, 4.1.
 */
import type { SymmetricMatrix } from './assemble';

export function factorLdlt({ size, re, im }: SymmetricMatrix): void {
  for (let i = 0; i < size; i++) {
    const row = (i * (i + 1)) / 2;
    for (let j = 0; j < i; j++) {
      const other = (j * (j + 1)) / 2;
      let sumRe = re[row + j];
      let sumIm = im[row + j];
      for (let k = 0; k < j; k++) {
        const aRe = re[row + k];
        const aIm = im[row + k];
        const bRe = re[other + k];
        const bIm = im[other + k];
        sumRe -= aRe * bRe - aIm * bIm;
        sumIm -= aRe * bIm + aIm * bRe;
      }
      re[row + j] = sumRe;
      im[row + j] = sumIm;
    }
    finishRow(re, im, row, i);
  }
}

/** Row i holds L·D so far: divides by D and takes the diagonal's share off. */
function finishRow(re: Float64Array, im: Float64Array, row: number, i: number): void {
  let pivotRe = re[row + i];
  let pivotIm = im[row + i];
  for (let k = 0; k < i; k++) {
    const d = (k * (k + 1)) / 2 + k;
    const dRe = re[d];
    const dIm = im[d];
    const aRe = re[row + k];
    const aIm = im[row + k];
    const lRe = aRe * dRe - aIm * dIm;
    const lIm = aRe * dIm + aIm * dRe;
    pivotRe -= aRe * lRe - aIm * lIm;
    pivotIm -= aRe * lIm + aIm * lRe;
    re[row + k] = lRe;
    im[row + k] = lIm;
  }
  const squared = pivotRe * pivotRe + pivotIm * pivotIm;
  re[row + i] = pivotRe / squared;
  im[row + i] = -pivotIm / squared;
}

/** Overwrites b (re and im apart) with the solution. */
export function solveLdlt({ size, re, im }: SymmetricMatrix, bRe: Float64Array, bIm: Float64Array): void {
  for (let i = 0; i < size; i++) {
    const row = (i * (i + 1)) / 2;
    let sumRe = bRe[i];
    let sumIm = bIm[i];
    for (let k = 0; k < i; k++) {
      sumRe -= re[row + k] * bRe[k] - im[row + k] * bIm[k];
      sumIm -= re[row + k] * bIm[k] + im[row + k] * bRe[k];
    }
    bRe[i] = sumRe;
    bIm[i] = sumIm;
  }
  for (let i = 0; i < size; i++) {
    const d = (i * (i + 1)) / 2 + i;
    const real = bRe[i] * re[d] - bIm[i] * im[d];
    bIm[i] = bRe[i] * im[d] + bIm[i] * re[d];
    bRe[i] = real;
  }
  for (let i = size - 1; i > 0; i--) {
    const row = (i * (i + 1)) / 2;
    const xRe = bRe[i];
    const xIm = bIm[i];
    for (let k = 0; k < i; k++) {
      bRe[k] -= re[row + k] * xRe - im[row + k] * xIm;
      bIm[k] -= re[row + k] * xIm + im[row + k] * xRe;
    }
  }
}
