/**
 * The four reflected kernels over soil with their slopes in ρ and h, read from a ground table by one pass of its cubic interpolation and the
 * derivative of that cubic:
 *
 *   g = T w,  w = e^(−jkR)/R,  ∂g/∂x = [∂T/∂x − (jk + 1/R) T ∂R/∂x] w
 */
import { type GroundTable, TABLE_WIDTH } from './ground-table';

/** Each re and im of Gxx, K_Φ, Gzz, ∂Q/∂ρ. */
export interface ReflectedKernels {
  readonly value: Float64Array;
  readonly byRho: Float64Array;
  readonly byHeight: Float64Array;
}

export const emptyKernels = (): ReflectedKernels => ({
  value: new Float64Array(TABLE_WIDTH),
  byRho: new Float64Array(TABLE_WIDTH),
  byHeight: new Float64Array(TABLE_WIDTH),
});

const weightU = new Float64Array(4);
const slopeU = new Float64Array(4);
const weightV = new Float64Array(4);
const slopeV = new Float64Array(4);

/** Lagrange's cubic through −1, 0, 1, 2 and its derivative. */
function cubic(weight: Float64Array, slope: Float64Array, a: number): void {
  weight[0] = (-a * (a - 1) * (a - 2)) / 6;
  weight[1] = ((a * a - 1) * (a - 2)) / 2;
  weight[2] = (-a * (a + 1) * (a - 2)) / 2;
  weight[3] = (a * (a * a - 1)) / 6;
  slope[0] = -(3 * a * a - 6 * a + 2) / 6;
  slope[1] = (3 * a * a - 4 * a - 1) / 2;
  slope[2] = -(3 * a * a - 2 * a - 2) / 2;
  slope[3] = (3 * a * a - 1) / 6;
}

/** ρ and h in metres; outside the grid the nearest cubic is continued, as in the table itself. */
export function readReflected(out: ReflectedKernels, table: GroundTable, k0: number, rho: number, h: number): void {
  const x = k0 * rho;
  const y = k0 * h;
  const u = (Math.asinh(x / table.hMin) + x * table.inverseScaleRho) / table.stepU;
  const v = (Math.log(y / table.hMin) + (y - table.hMin) * table.inverseScaleH) / table.stepV;
  const iu = Math.min(Math.max(Math.floor(u), 1), table.countU - 3);
  const iv = Math.min(Math.max(Math.floor(v), 1), table.countV - 3);
  cubic(weightU, slopeU, u - iu);
  cubic(weightV, slopeV, v - iv);
  const uByRho = (k0 * (1 / Math.sqrt(x * x + table.hMin * table.hMin) + table.inverseScaleRho)) / table.stepU;
  const vByHeight = (k0 * (1 / y + table.inverseScaleH)) / table.stepV;
  const base = ((iu - 1) * table.countV + iv - 1) * TABLE_WIDTH;
  interpolate(out, table.values, base, table.countV * TABLE_WIDTH, uByRho, vByHeight);
  timesWave(out, k0, rho, h);
}

function interpolate(
  { value, byRho, byHeight }: ReflectedKernels,
  values: Float64Array,
  base: number,
  row: number,
  uByRho: number,
  vByHeight: number,
): void {
  // Read one by one: taking arrays apart costs more than the sums.
  const v0 = weightV[0];
  const v1 = weightV[1];
  const v2 = weightV[2];
  const v3 = weightV[3];
  const s0 = slopeV[0];
  const s1 = slopeV[1];
  const s2 = slopeV[2];
  const s3 = slopeV[3];
  for (let q = 0; q < TABLE_WIDTH; q++) {
    let sum = 0;
    let alongU = 0;
    let alongV = 0;
    for (let i = 0; i < 4; i++) {
      const o = base + i * row + q;
      const a = values[o];
      const b = values[o + 8];
      const c = values[o + 16];
      const d = values[o + 24];
      const here = v0 * a + v1 * b + v2 * c + v3 * d;
      sum += weightU[i] * here;
      alongU += slopeU[i] * here;
      alongV += weightU[i] * (s0 * a + s1 * b + s2 * c + s3 * d);
    }
    value[q] = sum;
    byRho[q] = alongU * uByRho;
    byHeight[q] = alongV * vByHeight;
  }
}

function timesWave({ value, byRho, byHeight }: ReflectedKernels, k0: number, rho: number, h: number): void {
  const distance = Math.sqrt(rho * rho + h * h);
  const wRe = Math.cos(k0 * distance) / distance;
  const wIm = -Math.sin(k0 * distance) / distance;
  const cosine = rho / distance;
  const sine = h / distance;
  for (let q = 0; q < TABLE_WIDTH; q += 2) {
    const tRe = value[q];
    const tIm = value[q + 1];
    const fallRe = -tRe / distance + k0 * tIm;
    const fallIm = -tIm / distance - k0 * tRe;
    const rhoRe = byRho[q] + fallRe * cosine;
    const rhoIm = byRho[q + 1] + fallIm * cosine;
    const heightRe = byHeight[q] + fallRe * sine;
    const heightIm = byHeight[q + 1] + fallIm * sine;
    value[q] = tRe * wRe - tIm * wIm;
    value[q + 1] = tRe * wIm + tIm * wRe;
    byRho[q] = rhoRe * wRe - rhoIm * wIm;
    byRho[q + 1] = rhoRe * wIm + rhoIm * wRe;
    byHeight[q] = heightRe * wRe - heightIm * wIm;
    byHeight[q + 1] = heightRe * wIm + heightIm * wRe;
  }
}
