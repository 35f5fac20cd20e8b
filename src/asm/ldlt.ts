/**
 * Z = L D Lᵀ of a complex symmetric matrix and its solutions, in 128-bit SIMD. The same method as solver/ldlt.ts, in blocks:
 * a panel of 16 columns is factored row by row, then the rest is updated by 2 rows × 4 columns at a time held in registers.
 *
 * Memory: re and im apart, row after row, `stride` numbers to a row (a multiple of 4); only the lower triangle counts, but up to three
 * numbers beyond the diagonal are overwritten. After `factor` the strict lower triangle holds L, the diagonal D⁻¹.
 */
import { madd, nmadd } from './parts/simd-math';

const PANEL: i32 = 16;

let matrixRe: usize = 0;
let matrixIm: usize = 0;
let upperRe: usize = 0; // D·Lᵀ of the current panel: PANEL rows
let upperIm: usize = 0;
let rightRe: usize = 0;
let rightIm: usize = 0;
let size: i32 = 0;
let stride: i32 = 0;

/** Makes room for a matrix of n rows and `columns` right sides. Views on the memory must be made after this call. */
export function reserve(n: i32, columns: i32): void {
  size = n;
  stride = (n + 3) & ~3;
  const whole = <usize>(n + 1) * (<usize>stride + 4) * 8;
  const panel = <usize>PANEL * <usize>stride * 8 + 64;
  const right = <usize>n * <usize>columns * 8 + 64;
  matrixRe = (__heap_base + 15) & ~15;
  matrixIm = (matrixRe + whole + 15) & ~15;
  upperRe = (matrixIm + whole + 15) & ~15;
  upperIm = (upperRe + panel + 15) & ~15;
  rightRe = (upperIm + panel + 15) & ~15;
  rightIm = (rightRe + right + 15) & ~15;
  const end = rightIm + right;
  const pages = <i32>((end + 0xffff) >> 16) - memory.size();
  if (pages > 0) memory.grow(pages);
}

export function matrixReAt(): usize { return matrixRe; }
export function matrixImAt(): usize { return matrixIm; }
export function rightReAt(): usize { return rightRe; }
export function rightImAt(): usize { return rightIm; }
export function rowStride(): i32 { return stride; }

export function factor(): void {
  for (let k0 = 0; k0 < size; k0 += PANEL) {
    const k1 = min(k0 + PANEL, size);
    factorPanel(k0, k1);
    updateRest(k0, k1);
  }
}

/** Columns k0…k1 of every row from k0 down: L there, D⁻¹ on the diagonal, D·Lᵀ into the upper buffer. */
function factorPanel(k0: i32, k1: i32): void {
  const row: usize = <usize>stride << 3;
  memory.fill(upperRe, 0, <usize>PANEL * row);
  memory.fill(upperIm, 0, <usize>PANEL * row);
  for (let i = k0; i < size; i++) {
    const rowRe = matrixRe + <usize>i * row;
    const rowIm = matrixIm + <usize>i * row;
    const last = min(i, k1);
    for (let k = k0; k < last; k++) {
      const ok = <usize>k << 3;
      const up = <usize>(k - k0) * row;
      const aRe = load<f64>(rowRe + ok);
      const aIm = load<f64>(rowIm + ok);
      const dRe = load<f64>(matrixRe + <usize>k * row + ok);
      const dIm = load<f64>(matrixIm + <usize>k * row + ok);
      const lRe = aRe * dRe - aIm * dIm;
      const lIm = aRe * dIm + aIm * dRe;
      // The rest of this row's panel, two columns at a time; the upper buffer is zero up to its own diagonal.
      const vRe = f64x2.splat(lRe);
      const vIm = f64x2.splat(lIm);
      for (let j = (k + 1) & ~1; j < k1; j += 2) {
        const oj = <usize>j << 3;
        const uRe = v128.load(upperRe + up + oj);
        const uIm = v128.load(upperIm + up + oj);
        v128.store(rowRe + oj, madd(vIm, uIm, nmadd(vRe, uRe, v128.load(rowRe + oj))));
        v128.store(rowIm + oj, nmadd(vIm, uRe, nmadd(vRe, uIm, v128.load(rowIm + oj))));
      }
      store<f64>(upperRe + up + (<usize>i << 3), aRe);
      store<f64>(upperIm + up + (<usize>i << 3), aIm);
      store<f64>(rowRe + ok, lRe);
      store<f64>(rowIm + ok, lIm);
      if (i < k1) {
        const oi = <usize>i << 3;
        // This row's diagonal: the loop above used the buffer before its own entry was known.
        store<f64>(rowRe + oi, load<f64>(rowRe + oi) - (lRe * aRe - lIm * aIm));
        store<f64>(rowIm + oi, load<f64>(rowIm + oi) - (lRe * aIm + lIm * aRe));
      }
    }
    if (i < k1) {
      const oi = <usize>i << 3;
      const pRe = load<f64>(rowRe + oi);
      const pIm = load<f64>(rowIm + oi);
      const squared = pRe * pRe + pIm * pIm;
      store<f64>(rowRe + oi, pRe / squared);
      store<f64>(rowIm + oi, -pIm / squared);
    }
  }
}

/** A[i][j] −= Σ_k L[i][k] U[k][j] for k1 ≤ j ≤ i. */
function updateRest(k0: i32, k1: i32): void {
  const row: usize = <usize>stride << 3;
  let i = k1;
  for (; i + 1 < size; i += 2) {
    const rRe = matrixRe + <usize>i * row;
    const rIm = matrixIm + <usize>i * row;
    const sRe = rRe + row;
    const sIm = rIm + row;
    for (let j = k1 & ~3; j <= i + 1; j += 4) {
      const oj = <usize>j << 3;
      let a0 = v128.load(rRe + oj), a1 = v128.load(rRe + oj, 16), b0 = v128.load(rIm + oj), b1 = v128.load(rIm + oj, 16);
      let c0 = v128.load(sRe + oj), c1 = v128.load(sRe + oj, 16), d0 = v128.load(sIm + oj), d1 = v128.load(sIm + oj, 16);
      for (let k = k0; k < k1; k++) {
        const ok = <usize>k << 3;
        const up = <usize>(k - k0) * row + oj;
        const u0 = v128.load(upperRe + up), u1 = v128.load(upperRe + up, 16);
        const w0 = v128.load(upperIm + up), w1 = v128.load(upperIm + up, 16);
        let x = v128.load64_splat(rRe + ok), y = v128.load64_splat(rIm + ok);
        a0 = madd(y, w0, nmadd(x, u0, a0));
        a1 = madd(y, w1, nmadd(x, u1, a1));
        b0 = nmadd(y, u0, nmadd(x, w0, b0));
        b1 = nmadd(y, u1, nmadd(x, w1, b1));
        x = v128.load64_splat(sRe + ok);
        y = v128.load64_splat(sIm + ok);
        c0 = madd(y, w0, nmadd(x, u0, c0));
        c1 = madd(y, w1, nmadd(x, u1, c1));
        d0 = nmadd(y, u0, nmadd(x, w0, d0));
        d1 = nmadd(y, u1, nmadd(x, w1, d1));
      }
      v128.store(rRe + oj, a0); v128.store(rRe + oj, a1, 16); v128.store(rIm + oj, b0); v128.store(rIm + oj, b1, 16);
      v128.store(sRe + oj, c0); v128.store(sRe + oj, c1, 16); v128.store(sIm + oj, d0); v128.store(sIm + oj, d1, 16);
    }
  }
  if (i < size) updateLastRow(i, k0, k1);
}

function updateLastRow(i: i32, k0: i32, k1: i32): void {
  const row: usize = <usize>stride << 3;
  const rRe = matrixRe + <usize>i * row;
  const rIm = matrixIm + <usize>i * row;
  for (let j = k1 & ~1; j <= i; j += 2) {
    const oj = <usize>j << 3;
    let a = v128.load(rRe + oj);
    let b = v128.load(rIm + oj);
    for (let k = k0; k < k1; k++) {
      const ok = <usize>k << 3;
      const up = <usize>(k - k0) * row + oj;
      const u = v128.load(upperRe + up);
      const w = v128.load(upperIm + up);
      const x = v128.load64_splat(rRe + ok);
      const y = v128.load64_splat(rIm + ok);
      a = madd(y, w, nmadd(x, u, a));
      b = nmadd(y, u, nmadd(x, w, b));
    }
    v128.store(rRe + oj, a);
    v128.store(rIm + oj, b);
  }
}

/** Overwrites `columns` right sides, one after another, with solutions. */
export function solve(columns: i32): void {
  for (let c = 0; c < columns; c++) {
    const from = <usize>c * <usize>size * 8;
    solveOne(rightRe + from, rightIm + from);
  }
}

function solveOne(bRe: usize, bIm: usize): void {
  const row: usize = <usize>stride << 3;
  for (let i = 0; i < size; i++) {
    const lRe = matrixRe + <usize>i * row;
    const lIm = matrixIm + <usize>i * row;
    let re = f64x2.splat(0);
    let im = f64x2.splat(0);
    let k = 0;
    for (; k + 1 < i; k += 2) {
      const ok = <usize>k << 3;
      const x = v128.load(lRe + ok), y = v128.load(lIm + ok), p = v128.load(bRe + ok), q = v128.load(bIm + ok);
      re = nmadd(y, q, madd(x, p, re));
      im = madd(y, p, madd(x, q, im));
    }
    const oi = <usize>i << 3;
    let sumRe = load<f64>(bRe + oi) - f64x2.extract_lane(re, 0) - f64x2.extract_lane(re, 1);
    let sumIm = load<f64>(bIm + oi) - f64x2.extract_lane(im, 0) - f64x2.extract_lane(im, 1);
    if (k < i) {
      const ok = <usize>k << 3;
      const x = load<f64>(lRe + ok), y = load<f64>(lIm + ok), p = load<f64>(bRe + ok), q = load<f64>(bIm + ok);
      sumRe -= x * p - y * q;
      sumIm -= x * q + y * p;
    }
    store<f64>(bRe + oi, sumRe);
    store<f64>(bIm + oi, sumIm);
  }
  for (let i = 0; i < size; i++) {
    const oi = <usize>i << 3;
    const dRe = load<f64>(matrixRe + <usize>i * row + oi);
    const dIm = load<f64>(matrixIm + <usize>i * row + oi);
    const xRe = load<f64>(bRe + oi);
    const xIm = load<f64>(bIm + oi);
    store<f64>(bRe + oi, xRe * dRe - xIm * dIm);
    store<f64>(bIm + oi, xRe * dIm + xIm * dRe);
  }
  for (let i = size - 1; i > 0; i--) {
    const lRe = matrixRe + <usize>i * row;
    const lIm = matrixIm + <usize>i * row;
    const oi = <usize>i << 3;
    const xRe = v128.load64_splat(bRe + oi);
    const xIm = v128.load64_splat(bIm + oi);
    let k = 0;
    for (; k + 1 < i; k += 2) {
      const ok = <usize>k << 3;
      const y = v128.load(lRe + ok), z = v128.load(lIm + ok);
      v128.store(bRe + ok, madd(z, xIm, nmadd(y, xRe, v128.load(bRe + ok))));
      v128.store(bIm + ok, nmadd(z, xRe, nmadd(y, xIm, v128.load(bIm + ok))));
    }
    if (k < i) {
      const ok = <usize>k << 3;
      const y = load<f64>(lRe + ok), z = load<f64>(lIm + ok);
      const p = load<f64>(bRe + oi), q = load<f64>(bIm + oi);
      store<f64>(bRe + ok, load<f64>(bRe + ok) - (y * p - z * q));
      store<f64>(bIm + ok, load<f64>(bIm + ok) - (y * q + z * p));
    }
  }
}
