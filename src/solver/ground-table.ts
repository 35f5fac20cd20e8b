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
import { bandNodes, type Nodes } from './ground-nodes';
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
  sum: BandSum = plainBandSum,
): GroundTable {
  const { inverseScaleRho, rho, h } = gridOf(epsilon, hMin, hMax, rhoMax);
  const [countU, countV] = [rho.length, h.length];
  const values = new Float64Array(countU * countV * TABLE_WIDTH);
  let from = 0;
  while (from < countU) {
    let to = from + 1;
    const low = Math.max(rho[from], 0.5 * hMin);
    while (to < countU && rho[to] <= 2 * low) to++;
    fillBand(values, sum, epsilon, rho, h, from, to);
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

/** The distances and heights at which a table stands. */
function gridOf(epsilon: Complex, hMin: number, hMax: number, rhoMax: number) {
  const root = squareRoot(epsilon);
  const inverseScaleRho = Math.max(1, (BEAT * (root.re - 1)) / (1 + 4 * Math.abs(root.im))) / SCALE;
  const countU = Math.max(5, Math.ceil((Math.asinh(rhoMax / hMin) + rhoMax * inverseScaleRho) / STEP) + 2);
  // An even number of heights suits kernels that take two at a time.
  const countV = 2 * Math.ceil(Math.max(5, Math.ceil((Math.log(hMax / hMin) + (hMax - hMin) / SCALE) / STEP) + 2) / 2);
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
  return { inverseScaleRho, rho, h };
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
  sum: BandSum,
  epsilon: Complex,
  rho: Float64Array,
  h: Float64Array,
  from: number,
  to: number,
) {
  const low = Math.max(rho[from], 0.25 * h[0]);
  const nodes = bandNodes(epsilon, low, Math.max(rho[to - 1], 0.5 * h[0]), h[0], h[h.length - 1]);
  const spectrum = new Float64Array(TABLE_WIDTH * nodes.count);
  for (let n = 0; n < nodes.count; n++) {
    const isPropagating = n < nodes.propagating;
    spectrumInto(spectrum, TABLE_WIDTH * n, nodes.at[n], isPropagating, epsilon);
  }
  const width = h.length * TABLE_WIDTH;
  sum(values.subarray(from * width, to * width), rho.subarray(from, to), h, nodes, spectrum);
}

/** Adds the raw integrals of a band into rows of 8·(number of heights), from its nodes and the spectrum at them. */
export type BandSum = (
  out: Float64Array,
  rho: Float64Array,
  h: Float64Array,
  nodes: Nodes,
  spectrum: Float64Array,
) => void;

export const plainBandSum: BandSum = (out, rho, h, nodes, spectrum) => {
  const width = h.length * TABLE_WIDTH;
  const row = new Float64Array(width);
  for (let n = 0; n < nodes.count; n++) {
    const values = spectrum.subarray(TABLE_WIDTH * n, TABLE_WIDTH * (n + 1));
    heightRow(row, values, nodes.at[n], nodes.weight[n], h, n < nodes.propagating);
    for (let r = 0; r < rho.length; r++) {
      const x = nodes.k[n] * rho[r];
      const j0 = besselJ0(x);
      const j1 = besselJ1OverX(x);
      for (let c = 0, o = r * width; c < width; c += TABLE_WIDTH, o += TABLE_WIDTH) {
        for (let q = 0; q < 6; q++) out[o + q] += j0 * row[c + q];
        out[o + 6] += j1 * row[c + 6];
        out[o + 7] += j1 * row[c + 7];
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
