/**
 * Tables of the four reflected kernels over soil for one frequency, on a grid in ρ and h = z + z′ (lengths times k0):
 *
 *   T = R e^(jR) g(ρ, h),   g = Gxx, K_Φ, Gzz, ∂Q/∂ρ,   R = √(ρ² + h²)
 *
 * The grid is uniform in asinh(ρ/hMin) + ρ/s and in ln(h/hMin) + (h − hMin)/s, s = 0.625 wavelengths; read by cubic interpolation. Where
 * the soil hardly damps the wave that runs in it (fresh water), T beats in ρ at the difference of the two wave numbers; s follows that.
 * All integrals of a band of ρ share their nodes, so a table is a product of matrices: Bessel functions × (spectrum · e^(−u0 h)).
 */
import { type Complex, squareRoot } from '../base/complex';
import { besselJ0, besselJ1OverX } from './bessel';
import { bandNodes } from './ground-nodes';
import { spectrumInto, staticImage } from './ground-spectrum';

export interface GroundTable {
  readonly hMin: number;
  readonly hMax: number;
  readonly rhoMax: number;
  readonly inverseScaleRho: number;
  readonly inverseScaleH: number;
  readonly stepU: number;
  readonly stepV: number;
  readonly countU: number;
  readonly countV: number;
  /** Row u, column v, eight numbers: re and im of the four kernels. */
  readonly values: Float64Array;
  readonly kappa: Complex;
}

const SCALE = 0.625 * 2 * Math.PI;
const STEP = 0.22;
/** Share of the beat's wave number that a grid step must follow. */
const BEAT = 0.8;
export const TABLE_WIDTH = 8;

export function buildGroundTable(
  epsilon: Complex,
  hMin: number,
  hMax: number,
  rhoMax: number,
  product: TableProduct = plainTableProduct,
): GroundTable {
  const root = squareRoot(epsilon);
  const inverseScaleRho = Math.max(1, (BEAT * (root.re - 1)) / (1 + 4 * Math.abs(root.im))) / SCALE;
  const countU = Math.max(5, Math.ceil((Math.asinh(rhoMax / hMin) + rhoMax * inverseScaleRho) / STEP) + 2);
  const countV = Math.max(5, Math.ceil((Math.log(hMax / hMin) + (hMax - hMin) / SCALE) / STEP) + 2);
  const rho = gridPoints(
    countU,
    (x) => Math.asinh(x / hMin) + x * inverseScaleRho,
    (x) => 1 / Math.hypot(x, hMin) + inverseScaleRho,
    0,
  );
  const h = gridPoints(
    countV,
    (x) => Math.log(x / hMin) + (x - hMin) / SCALE,
    (x) => 1 / x + 1 / SCALE,
    hMin,
  );
  const values = new Float64Array(countU * countV * TABLE_WIDTH);
  let from = 0;
  while (from < countU) {
    let to = from + 1;
    const low = Math.max(rho[from], 0.5 * hMin);
    while (to < countU && rho[to] <= 2 * low) to++;
    fillBand(values, product, epsilon, rho, h, from, to);
    from = to;
  }
  const kappa = staticImage(epsilon);
  for (let i = 0; i < countU; i++) {
    for (let j = 0; j < countV; j++) restoreImages(values, (i * countV + j) * TABLE_WIDTH, rho[i], h[j], kappa);
  }
  return {
    hMin,
    hMax,
    rhoMax,
    inverseScaleRho,
    inverseScaleH: 1 / SCALE,
    stepU: STEP,
    stepV: STEP,
    countU,
    countV,
    values,
    kappa,
  };
}

/** Solves map(x) = n·STEP for n = 0, 1, …, from the exact first point, by Newton. */
function gridPoints(
  count: number,
  map: (x: number) => number,
  slope: (x: number) => number,
  first: number,
): Float64Array {
  const points = new Float64Array(count);
  points[0] = first;
  for (let n = 1; n < count; n++) {
    let x = points[n - 1] + STEP / slope(points[n - 1]);
    for (let i = 0; i < 50; i++) {
      const change = (map(x) - n * STEP) / slope(x);
      x -= change;
      if (Math.abs(change) < 1e-13 * x) break;
    }
    points[n] = x;
  }
  return points;
}

/** Sums the raw integrals of the rows `from` to `to`, which share their nodes. */
function fillBand(
  values: Float64Array,
  product: TableProduct,
  epsilon: Complex,
  rho: Float64Array,
  h: Float64Array,
  from: number,
  to: number,
) {
  const low = Math.max(rho[from], 0.25 * h[0]);
  const nodes = bandNodes(epsilon, low, Math.max(rho[to - 1], 0.5 * h[0]), h[0], h[h.length - 1]);
  const width = h.length * TABLE_WIDTH;
  const spectrum = new Float64Array(TABLE_WIDTH);
  const heights = new Float64Array(nodes.count * width);
  const j0 = new Float64Array((to - from) * nodes.count);
  const j1 = new Float64Array((to - from) * nodes.count);
  for (let n = 0; n < nodes.count; n++) {
    const at = nodes.at[n];
    const isPropagating = n < nodes.propagating;
    spectrumInto(spectrum, isPropagating ? { re: 0, im: at } : { re: at, im: 0 }, epsilon);
    heightRow(heights.subarray(n * width, (n + 1) * width), spectrum, at, nodes.weight[n], h, isPropagating);
    for (let i = from; i < to; i++) {
      const x = nodes.k[n] * rho[i];
      j0[(i - from) * nodes.count + n] = besselJ0(x);
      j1[(i - from) * nodes.count + n] = besselJ1OverX(x);
    }
  }
  product(values.subarray(from * width, to * width), j0, j1, heights, to - from, nodes.count, width);
}

/**
 * out[r][c] += Σ_n j(r, n)·m[n][c] for `rows` rows of `width` columns: of each eight columns the first six with j0, the last two
 * with j1.
 */
export type TableProduct = (
  out: Float64Array,
  j0: Float64Array,
  j1: Float64Array,
  m: Float64Array,
  rows: number,
  nodes: number,
  width: number,
) => void;

export const plainTableProduct: TableProduct = (out, j0, j1, m, rows, nodes, width) => {
  for (let r = 0; r < rows; r++) {
    for (let n = 0; n < nodes; n++) {
      const a = j0[r * nodes + n];
      const b = j1[r * nodes + n];
      for (let c = 0; c < width; c += TABLE_WIDTH) {
        const o = r * width + c;
        const i = n * width + c;
        for (let q = 0; q < 6; q++) out[o + q] += a * m[i + q];
        out[o + 6] += b * m[i + 6];
        out[o + 7] += b * m[i + 7];
      }
    }
  }
};

/** weight · spectrum · e^(−u0 h) for every height; du0 is −j sin θ dθ for propagating waves. */
function heightRow(
  row: Float64Array,
  spectrum: Float64Array,
  at: number,
  weight: number,
  h: Float64Array,
  turns: boolean,
) {
  for (let j = 0; j < h.length; j++) {
    let re: number;
    let im: number;
    if (turns) {
      re = -weight * Math.sin(at * h[j]);
      im = -weight * Math.cos(at * h[j]);
    } else {
      re = weight * Math.exp(-at * h[j]);
      im = 0;
    }
    const o = j * TABLE_WIDTH;
    for (let q = 0; q < TABLE_WIDTH; q += 2) {
      row[o + q] = re * spectrum[q] - im * spectrum[q + 1];
      row[o + q + 1] = re * spectrum[q + 1] + im * spectrum[q];
    }
  }
}

/** From raw integrals to T: the static images come back, and all is multiplied by R e^(jR). */
function restoreImages(values: Float64Array, o: number, rho: number, h: number, kappa: Complex): void {
  const r = Math.hypot(rho, h);
  const cos = Math.cos(r);
  const sin = Math.sin(r);
  // ∂Q/∂ρ = −ρ·(integral) − κ (e^(−jh) − (h/R) e^(−jR))/ρ; near the axis the last term tends to κ·ρ-linear zero.
  let imageRe = 0;
  let imageIm = 0;
  if (rho > 1e-6 * h) {
    imageRe = (Math.cos(h) - (h / r) * cos) / rho;
    imageIm = (-Math.sin(h) + (h / r) * sin) / rho;
  }
  const qRe = -rho * values[o + 6] - (kappa.re * imageRe - kappa.im * imageIm);
  const qIm = -rho * values[o + 7] - (kappa.re * imageIm + kappa.im * imageRe);
  values[o + 6] = qRe;
  values[o + 7] = qIm;
  for (let q = 0; q < TABLE_WIDTH; q += 2) {
    const re = values[o + q];
    const im = values[o + q + 1];
    values[o + q] = r * (re * cos - im * sin);
    values[o + q + 1] = r * (re * sin + im * cos);
  }
  values[o + 2] -= kappa.re;
  values[o + 3] -= kappa.im;
  values[o + 4] += 2 * kappa.re;
  values[o + 5] += 2 * kappa.im;
}

/** T of the four kernels at (ρ, h), into `out` (eight numbers); outside the grid the nearest cubic is continued. */
export function readGroundTable(out: Float64Array, table: GroundTable, rho: number, h: number): void {
  const u = (Math.asinh(rho / table.hMin) + rho * table.inverseScaleRho) / table.stepU;
  const v = (Math.log(h / table.hMin) + (h - table.hMin) * table.inverseScaleH) / table.stepV;
  const iu = Math.min(Math.max(Math.floor(u), 1), table.countU - 3);
  const iv = Math.min(Math.max(Math.floor(v), 1), table.countV - 3);
  const a = u - iu;
  const b = v - iv;
  const v0 = (-b * (b - 1) * (b - 2)) / 6;
  const v1 = ((b * b - 1) * (b - 2)) / 2;
  const v2 = (-b * (b + 1) * (b - 2)) / 2;
  const v3 = (b * (b * b - 1)) / 6;
  const row = table.countV * TABLE_WIDTH;
  const base = ((iu - 1) * table.countV + iv - 1) * TABLE_WIDTH;
  const values = table.values;
  const weights = [
    (-a * (a - 1) * (a - 2)) / 6,
    ((a * a - 1) * (a - 2)) / 2,
    (-a * (a + 1) * (a - 2)) / 2,
    (a * (a * a - 1)) / 6,
  ];
  out.fill(0);
  for (let i = 0; i < 4; i++) {
    const o = base + i * row;
    for (let q = 0; q < TABLE_WIDTH; q++) {
      out[q] +=
        weights[i] * (v0 * values[o + q] + v1 * values[o + 8 + q] + v2 * values[o + 16 + q] + v3 * values[o + 24 + q]);
    }
  }
}
