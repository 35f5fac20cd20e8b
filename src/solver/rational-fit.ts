/**
 * Rational interpolation of several complex functions of one real variable with common support points (AAA, set-valued):
 *
 *   r(x) = Σ w_j F_j/(x − x_j)  /  Σ w_j/(x − x_j)
 *
 * Support points are taken greedily where the fit is worst; the weights are the least singular vector of the stacked Loewner matrix,
 * found by QR and inverse iteration.
 * Source: Nakatsukasa, Sète & Trefethen, SIAM J. Sci. Comput. 40 (2018); Lietaert et al., arXiv:1801.08622, for the set-valued form.
 */
export interface Samples {
  readonly x: readonly number[];
  /** Functions of each sample, re and im in turn; all of one length. */
  readonly values: readonly Float64Array[];
}

export interface RationalFit {
  /** Which samples are support points. */
  readonly chosen: readonly number[];
  readonly support: readonly number[];
  readonly values: readonly Float64Array[];
  readonly weightRe: Float64Array;
  readonly weightIm: Float64Array;
}

/** Fits until no sample is off by more than `tolerance` of its function's size, or `mostSupports` points are used. */
export function fitRational(samples: Samples, tolerance: number, mostSupports: number): RationalFit {
  const { x, values } = samples;
  const width = values[0].length;
  const sizes = functionSizes(values);
  const rest = new Set(x.keys());
  const chosen: number[] = [];
  let fit: RationalFit = {
    chosen: [],
    support: [],
    values: [],
    weightRe: new Float64Array(0),
    weightIm: new Float64Array(0),
  };
  const guess = mean(values);
  const out = new Float64Array(width);
  while (rest.size > 1 && chosen.length < mostSupports) {
    let worst = -1;
    let worstError = -1;
    for (const i of rest) {
      if (chosen.length === 0) out.set(guess);
      else evaluateRational(out, fit, x[i]);
      const error = largestDifference(out, values[i], sizes);
      if (error > worstError) [worst, worstError] = [i, error];
    }
    if (worstError <= tolerance && chosen.length > 0) break;
    rest.delete(worst);
    chosen.push(worst);
    fit = weighted(samples, chosen, [...rest], sizes);
  }
  return fit;
}

/**
 * The fit again after samples were added at the end: with the same support points, or with the newest sample as one more, which is
 * what the greedy choice would do if that sample was the worst.
 */
export function refitRational(samples: Samples, fit: RationalFit, withNewest: boolean): RationalFit {
  const newest = samples.x.length - 1;
  const chosen = withNewest ? [...fit.chosen, newest] : fit.chosen;
  const rest = [...samples.x.keys()].filter((i) => !chosen.includes(i));
  return weighted(samples, chosen, rest, functionSizes(samples.values));
}

export function evaluateRational(out: Float64Array, fit: RationalFit, x: number): void {
  const { support, values, weightRe, weightIm } = fit;
  out.fill(0);
  let sumRe = 0;
  let sumIm = 0;
  for (let j = 0; j < support.length; j++) {
    const gap = x - support[j];
    if (gap === 0) {
      out.set(values[j]);
      return;
    }
    const re = weightRe[j] / gap;
    const im = weightIm[j] / gap;
    sumRe += re;
    sumIm += im;
    const f = values[j];
    for (let q = 0; q < out.length; q += 2) {
      out[q] += re * f[q] - im * f[q + 1];
      out[q + 1] += re * f[q + 1] + im * f[q];
    }
  }
  const squared = sumRe * sumRe + sumIm * sumIm;
  for (let q = 0; q < out.length; q += 2) {
    const re = (out[q] * sumRe + out[q + 1] * sumIm) / squared;
    out[q + 1] = (out[q + 1] * sumRe - out[q] * sumIm) / squared;
    out[q] = re;
  }
}

/** Largest |value| of each function over the samples. */
export function functionSizes(values: readonly Float64Array[]): Float64Array {
  const sizes = new Float64Array(values[0].length / 2);
  for (const f of values) {
    for (let q = 0; q < sizes.length; q++) sizes[q] = Math.max(sizes[q], Math.hypot(f[2 * q], f[2 * q + 1]));
  }
  return sizes.map((size) => size || 1);
}

export function largestDifference(a: Float64Array, b: Float64Array, sizes: Float64Array): number {
  let largest = 0;
  for (let q = 0; q < sizes.length; q++) {
    largest = Math.max(largest, Math.hypot(a[2 * q] - b[2 * q], a[2 * q + 1] - b[2 * q + 1]) / sizes[q]);
  }
  return largest;
}

function mean(values: readonly Float64Array[]): Float64Array {
  const sum = new Float64Array(values[0].length);
  for (const f of values) for (let q = 0; q < sum.length; q++) sum[q] += f[q] / values.length;
  return sum;
}

function weighted(
  samples: Samples,
  chosen: readonly number[],
  rest: readonly number[],
  sizes: Float64Array,
): RationalFit {
  const { x, values } = samples;
  const columns = chosen.length;
  const rows = rest.length * sizes.length;
  const re = new Float64Array(rows * columns);
  const im = new Float64Array(rows * columns);
  rest.forEach((i, r) => {
    chosen.forEach((j, c) => {
      const gap = x[i] - x[j];
      for (let q = 0; q < sizes.length; q++) {
        const scale = 1 / (gap * sizes[q]);
        re[c * rows + r * sizes.length + q] = (values[i][2 * q] - values[j][2 * q]) * scale;
        im[c * rows + r * sizes.length + q] = (values[i][2 * q + 1] - values[j][2 * q + 1]) * scale;
      }
    });
  });
  const { weightRe, weightIm } = leastSingularVector(re, im, rows, columns);
  return {
    chosen: [...chosen],
    support: chosen.map((j) => x[j]),
    values: chosen.map((j) => values[j]),
    weightRe,
    weightIm,
  };
}

/** v of least |A v|, |v| = 1; A in columns, used up. QR, then three steps of inverse iteration. */
function leastSingularVector(re: Float64Array, im: Float64Array, rows: number, columns: number) {
  const [rRe, rIm] = orthogonalise(re, im, rows, columns);
  const weightRe = new Float64Array(columns).fill(1);
  const weightIm = new Float64Array(columns);
  for (let step = 0; step < 3; step++) {
    solveUpperAdjoint(rRe, rIm, columns, weightRe, weightIm);
    solveUpper(rRe, rIm, columns, weightRe, weightIm);
    const size = Math.hypot(...weightRe, ...weightIm);
    for (let i = 0; i < columns; i++) {
      weightRe[i] /= size;
      weightIm[i] /= size;
    }
  }
  return { weightRe, weightIm };
}

/** A = Q R by modified Gram–Schmidt, twice over: Q overwrites A, R is returned, row after row. */
function orthogonalise(re: Float64Array, im: Float64Array, rows: number, columns: number) {
  const rRe = new Float64Array(columns * columns);
  const rIm = new Float64Array(columns * columns);
  let largest = 0;
  for (let j = 0; j < columns; j++) {
    const a = j * rows;
    for (let pass = 0; pass < 2; pass++) {
      for (let k = 0; k < j; k++) {
        const b = k * rows;
        let dotRe = 0;
        let dotIm = 0;
        for (let i = 0; i < rows; i++) {
          dotRe += re[b + i] * re[a + i] + im[b + i] * im[a + i];
          dotIm += re[b + i] * im[a + i] - im[b + i] * re[a + i];
        }
        rRe[k * columns + j] += dotRe;
        rIm[k * columns + j] += dotIm;
        for (let i = 0; i < rows; i++) {
          re[a + i] -= dotRe * re[b + i] - dotIm * im[b + i];
          im[a + i] -= dotRe * im[b + i] + dotIm * re[b + i];
        }
      }
    }
    let squared = 0;
    for (let i = 0; i < rows; i++) squared += re[a + i] ** 2 + im[a + i] ** 2;
    largest = Math.max(largest, Math.sqrt(squared));
    const size = Math.max(Math.sqrt(squared), 1e-15 * largest, 1e-300);
    rRe[j * columns + j] = size;
    for (let i = 0; i < rows; i++) {
      re[a + i] /= size;
      im[a + i] /= size;
    }
  }
  return [rRe, rIm] as const;
}

/** R x = b for upper triangular R with a real diagonal, in place. */
function solveUpper(rRe: Float64Array, rIm: Float64Array, n: number, xRe: Float64Array, xIm: Float64Array): void {
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) {
      const o = i * n + j;
      xRe[i] -= rRe[o] * xRe[j] - rIm[o] * xIm[j];
      xIm[i] -= rRe[o] * xIm[j] + rIm[o] * xRe[j];
    }
    xRe[i] /= rRe[i * n + i];
    xIm[i] /= rRe[i * n + i];
  }
}

/** Rᴴ x = b, in place. */
function solveUpperAdjoint(
  rRe: Float64Array,
  rIm: Float64Array,
  n: number,
  xRe: Float64Array,
  xIm: Float64Array,
): void {
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < i; j++) {
      const o = j * n + i;
      xRe[i] -= rRe[o] * xRe[j] + rIm[o] * xIm[j];
      xIm[i] -= rRe[o] * xIm[j] - rIm[o] * xRe[j];
    }
    xRe[i] /= rRe[i * n + i];
    xIm[i] /= rRe[i * n + i];
  }
}
