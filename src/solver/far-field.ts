/**
 * Radiation intensity and radiated power of the solved currents. Over ground the wave reflected by a flat earth is added with
 * Fresnel's coefficients; with c = cos θ and q = √(ε − sin² θ)
 *
 *   Γv = (εc − q)/(εc + q)   Γh = (c − q)/(c + q)        (perfect conductor: +1 and −1)
 *   Eθ ∝ Σ I [ (u·ρ̂ c)(e⁺ − Γv e⁻) − u_z sin θ (e⁺ + Γv e⁻) ]     Eφ ∝ Σ I (u·φ̂)(e⁺ + Γh e⁻)     e^± = e^(jk(ρ·r̂ ± z c))
 *
 * Source: Balanis, Antenna Theory, 4th ed., section 4.8. Power is the integral over the sphere (upper half over ground) by Gauss
 * points in the zenith angle and equal steps in azimuth, as many as the antenna's size in wavelengths asks for.
 */
import { add, type Complex, complex, divide, scale, squareRoot, subtract } from '../base/complex';
import { ETA0 } from '../base/constants';
import type { Mesh } from './mesh';
import type { PairPlan } from './pair-plan';
import { gaussRule } from './quadrature';

export interface Currents {
  /** Current at both ends of each element, A. */
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Ground as far fields see it: none, perfect, or the relative permittivity of soil. */
export type FarGround = { kind: 'none' } | { kind: 'perfect-conductor' } | { kind: 'soil'; epsilon: Complex };

const MOST_SUMMITS = 5;
/** Of the climb to the peak, rad: 0.06°. */
const LEAST_STEP = 1e-3;

/** Current moments I·u·weight at the Gauss points, ready for any direction. */
interface Sources {
  /** Nine rows with a number for each point: x, y, z, the real moment by axis, the imaginary moment by axis. */
  readonly rows: Float64Array;
  readonly radiusM: number;
}

export interface FarField {
  readonly radiatedW: number;
  /** Greatest intensity, W/sr, and its direction. */
  readonly peakWPerSr: number;
  readonly thetaDeg: number;
  readonly phiDeg: number;
}

export function endCurrents(mesh: Mesh, xRe: Float64Array, xIm: Float64Array): Currents {
  const re = new Float64Array(2 * mesh.elementCount);
  const im = new Float64Array(2 * mesh.elementCount);
  for (let end = 0; end < re.length; end++) {
    for (let m = mesh.offset[end]; m < mesh.offset[end + 1]; m++) {
      re[end] += mesh.sign[m] * xRe[mesh.unknown[m]];
      im[end] += mesh.sign[m] * xIm[mesh.unknown[m]];
    }
  }
  return { re, im };
}

export function sourcesOf(plan: PairPlan, currents: Currents): Sources {
  const { mesh, points } = plan;
  const count = 2 * mesh.elementCount;
  const rows = new Float64Array(9 * count);
  const rule = gaussRule(2);
  const middle = [0, 1].map((axis) => {
    let low = Infinity;
    let high = -Infinity;
    for (let n = 0; n < count; n++) {
      low = Math.min(low, points[3 * n + axis]);
      high = Math.max(high, points[3 * n + axis]);
    }
    return (low + high) / 2;
  });
  let radiusM = 0;
  for (let n = 0; n < count; n++) {
    const e = n >> 1;
    const share = rule.points[n & 1];
    const weight = rule.weights[n & 1] * mesh.lengthM[e];
    const re = weight * ((1 - share) * currents.re[2 * e] + share * currents.re[2 * e + 1]);
    const im = weight * ((1 - share) * currents.im[2 * e] + share * currents.im[2 * e + 1]);
    for (let axis = 0; axis < 3; axis++) {
      rows[axis * count + n] = points[3 * n + axis] - (axis < 2 ? middle[axis] : 0);
      rows[(3 + axis) * count + n] = re * mesh.direction[3 * e + axis];
      rows[(6 + axis) * count + n] = im * mesh.direction[3 * e + axis];
    }
    radiusM = Math.max(radiusM, Math.hypot(rows[n], rows[count + n], rows[2 * count + n]));
  }
  return { rows, radiusM };
}

function reflection(ground: FarGround, cosTheta: number): { vertical: Complex; horizontal: Complex } {
  if (ground.kind === 'none') return { vertical: complex(0), horizontal: complex(0) };
  if (ground.kind === 'perfect-conductor') return { vertical: complex(1), horizontal: complex(-1) };
  const q = squareRoot(subtract(ground.epsilon, complex(1 - cosTheta * cosTheta)));
  const c = complex(cosTheta);
  const ec = scale(ground.epsilon, cosTheta);
  return { vertical: divide(subtract(ec, q), add(ec, q)), horizontal: divide(subtract(c, q), add(c, q)) };
}

/** Intensities, W/sr, at one zenith angle for each azimuth. */
export function intensities(
  out: Float64Array,
  sources: Sources,
  k0: number,
  ground: FarGround,
  theta: number,
  phis: Float64Array,
  sum: IntensitySum = plainIntensities,
): void {
  const { vertical, horizontal } = reflection(ground, Math.cos(theta));
  sum(out, sources.rows, k0, theta, vertical, horizontal, phis);
  // |E| r = (η k/4π)|Σ|, intensity = |E r|²/2η.
  for (let p = 0; p < phis.length; p++) out[p] *= (ETA0 * k0 * k0) / (32 * Math.PI * Math.PI);
}

/** |Σ|² of both components of E at one zenith angle for each azimuth, from the nine rows of the sources. */
export type IntensitySum = (
  out: Float64Array,
  rows: Float64Array,
  k0: number,
  theta: number,
  vertical: Complex,
  horizontal: Complex,
  phis: Float64Array,
) => void;

/** cos φ, sin φ of each azimuth. */
export function intensityDirections(phis: Float64Array): Float64Array {
  const directions = new Float64Array(2 * phis.length);
  phis.forEach((phi, p) => {
    directions[2 * p] = Math.cos(phi);
    directions[2 * p + 1] = Math.sin(phi);
  });
  return directions;
}

export const plainIntensities: IntensitySum = (out, rows, k0, theta, vertical, horizontal, phis) => {
  const count = rows.length / 9;
  const row = (index: number): Float64Array => rows.subarray(index * count, (index + 1) * count);
  const [x, y] = [row(0), row(1)];
  const [mx, my, mz, nx, ny, nz] = [3, 4, 5, 6, 7, 8].map(row);
  const factors = zenithFactors(row(2), k0, theta, vertical, horizontal);
  const sinTheta = Math.sin(theta);
  for (let p = 0; p < phis.length; p++) {
    const cosPhi = Math.cos(phis[p]);
    const sinPhi = Math.sin(phis[p]);
    let thetaRe = 0;
    let thetaIm = 0;
    let phiRe = 0;
    let phiIm = 0;
    for (let n = 0; n < count; n++) {
      const phase = k0 * sinTheta * (x[n] * cosPhi + y[n] * sinPhi);
      const c = Math.cos(phase);
      const s = Math.sin(phase);
      const f = 6 * n;
      const alongRe = mx[n] * cosPhi + my[n] * sinPhi;
      const alongIm = nx[n] * cosPhi + ny[n] * sinPhi;
      const acrossRe = my[n] * cosPhi - mx[n] * sinPhi;
      const acrossIm = ny[n] * cosPhi - nx[n] * sinPhi;
      let re = alongRe * factors[f] - alongIm * factors[f + 1] + mz[n] * factors[f + 2] - nz[n] * factors[f + 3];
      let im = alongRe * factors[f + 1] + alongIm * factors[f] + mz[n] * factors[f + 3] + nz[n] * factors[f + 2];
      thetaRe += re * c - im * s;
      thetaIm += re * s + im * c;
      re = acrossRe * factors[f + 4] - acrossIm * factors[f + 5];
      im = acrossRe * factors[f + 5] + acrossIm * factors[f + 4];
      phiRe += re * c - im * s;
      phiIm += re * s + im * c;
    }
    out[p] = thetaRe ** 2 + thetaIm ** 2 + phiRe ** 2 + phiIm ** 2;
  }
};

/** Complex weights at each point for one zenith angle: level currents in Eθ, upright currents in Eθ, level currents in Eφ. */
function zenithFactors(
  z: Float64Array,
  k0: number,
  theta: number,
  vertical: Complex,
  horizontal: Complex,
): Float64Array {
  const cosTheta = Math.cos(theta);
  const sinTheta = Math.sin(theta);
  const factors = new Float64Array(6 * z.length);
  for (let n = 0; n < z.length; n++) {
    const phase = k0 * z[n] * cosTheta;
    const c = Math.cos(phase);
    const s = Math.sin(phase);
    const downRe = vertical.re * c + vertical.im * s;
    const downIm = vertical.im * c - vertical.re * s;
    factors[6 * n] = cosTheta * (c - downRe);
    factors[6 * n + 1] = cosTheta * (s - downIm);
    factors[6 * n + 2] = -sinTheta * (c + downRe);
    factors[6 * n + 3] = -sinTheta * (s + downIm);
    factors[6 * n + 4] = c + horizontal.re * c + horizontal.im * s;
    factors[6 * n + 5] = s + horizontal.im * c - horizontal.re * s;
  }
  return factors;
}

export function farField(
  plan: PairPlan,
  currents: Currents,
  k0: number,
  ground: FarGround,
  sum: IntensitySum = plainIntensities,
): FarField {
  const sources = sourcesOf(plan, currents);
  const size = k0 * sources.radiusM;
  const phiCount = 4 * Math.ceil(0.75 * (size + 6)); // a multiple of four holds both axes
  const phis = Float64Array.from({ length: phiCount }, (_, p) => (2 * Math.PI * p) / phiCount);
  const zeniths = zenithNodes(ground, Math.ceil(size) + 12);
  const grid = zeniths.map(({ theta }) => {
    const row = new Float64Array(phiCount);
    intensities(row, sources, k0, ground, theta, phis, sum);
    return row;
  });
  let radiatedW = 0;
  zeniths.forEach(({ weight }, t) => {
    radiatedW += (weight * grid[t].reduce((sum, x) => sum + x, 0) * 2 * Math.PI) / phiCount;
  });
  const highest = ground.kind === 'none' ? Math.PI : Math.PI / 2;
  const step = Math.max(Math.PI / zeniths.length, Math.PI / phiCount);
  const look: Look = (theta, phi) => {
    const value = new Float64Array(1);
    intensities(value, sources, k0, ground, theta, Float64Array.of(phi), sum);
    return value[0];
  };
  const best = summits(grid)
    .map(([t, p]) => climb(look, { value: grid[t][p], theta: zeniths[t].theta, phi: phis[p] }, step, highest))
    .reduce((a, b) => (b.value > a.value * (1 + 1e-6) ? b : a));
  const degrees = (angle: number): number => (angle * 180) / Math.PI;
  const phiDeg = ((degrees(best.phi) % 360) + 360) % 360;
  return { radiatedW, peakWPerSr: best.value, thetaDeg: degrees(best.theta), phiDeg };
}

/** The highest samples that are no lower than their neighbours: where a peak may hide between samples. */
function summits(grid: readonly Float64Array[]): [number, number][] {
  const found: [number, number][] = [];
  grid.forEach((row, t) => {
    for (let p = 0; p < row.length; p++) {
      const around = [row[(p + 1) % row.length], row.at(p - 1)!, grid[t - 1]?.[p] ?? 0, grid[t + 1]?.[p] ?? 0];
      if (around.every((x) => row[p] >= x * (1 - 1e-9))) found.push([t, p]);
    }
  });
  return found.sort(([t, p], [u, q]) => grid[u][q] - grid[t][p]).slice(0, MOST_SUMMITS);
}

/** Zenith angles and weights sin θ dθ; over ground squeezed toward grazing, where Fresnel's coefficients turn fast. */
function zenithNodes(ground: FarGround, count: number): { theta: number; weight: number }[] {
  const rule = gaussRule(count);
  return Array.from(rule.points, (x, i) => {
    const isFree = ground.kind === 'none';
    const cosTheta = isFree ? 2 * x - 1 : x * x;
    return { theta: Math.acos(cosTheta), weight: rule.weights[i] * (isFree ? 2 : 2 * x) };
  });
}

/** Intensity in one direction. */
type Look = (theta: number, phi: number) => number;

/** Climbs to the peak from a sample by looking round it with a halving step. */
function climb(
  look: Look,
  from: { value: number; theta: number; phi: number },
  firstStep: number,
  highest: number,
): { value: number; theta: number; phi: number } {
  let best = from;
  for (let step = firstStep; step > LEAST_STEP; ) {
    let moved = false;
    for (const [dTheta, dPhi] of [
      [step, 0],
      [-step, 0],
      [0, step],
      [0, -step],
      [step, Math.PI / 2], // sideways: at the pole azimuth alone moves nothing
      [-step, Math.PI / 2],
    ]) {
      const theta = Math.min(highest, Math.max(0, best.theta + dTheta));
      const phi = best.phi + dPhi;
      const value = look(theta, phi);
      if (value > best.value * (1 + 1e-12)) {
        best = { value, theta, phi };
        moved = true;
      }
    }
    if (!moved) step /= 2;
  }
  return best;
}
