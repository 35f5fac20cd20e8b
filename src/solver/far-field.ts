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

const MOST_SUMMITS = 8;

/** Current moments I·u·weight at the Gauss points, ready for any direction. */
interface Sources {
  readonly count: number;
  readonly position: Float64Array;
  /** x, y, z of the real and then the imaginary moment: six numbers to a point. */
  readonly moment: Float64Array;
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
  const position = Float64Array.from(points);
  const moment = new Float64Array(6 * count);
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
      moment[6 * n + axis] = re * mesh.direction[3 * e + axis];
      moment[6 * n + 3 + axis] = im * mesh.direction[3 * e + axis];
    }
    position[3 * n] -= middle[0];
    position[3 * n + 1] -= middle[1];
    radiusM = Math.max(radiusM, Math.hypot(position[3 * n], position[3 * n + 1], position[3 * n + 2]));
  }
  return { count, position, moment, radiusM };
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
) {
  const { count, position, moment } = sources;
  const cosTheta = Math.cos(theta);
  const sinTheta = Math.sin(theta);
  const { vertical, horizontal } = reflection(ground, cosTheta);
  // Complex weights at each point for this zenith angle: level currents in Eθ, upright currents in Eθ, level currents in Eφ.
  const factors = new Float64Array(6 * count);
  for (let n = 0; n < count; n++) {
    const phase = k0 * position[3 * n + 2] * cosTheta;
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
  for (let p = 0; p < phis.length; p++) {
    const cosPhi = Math.cos(phis[p]);
    const sinPhi = Math.sin(phis[p]);
    let thetaRe = 0;
    let thetaIm = 0;
    let phiRe = 0;
    let phiIm = 0;
    for (let n = 0; n < count; n++) {
      const phase = k0 * sinTheta * (position[3 * n] * cosPhi + position[3 * n + 1] * sinPhi);
      const c = Math.cos(phase);
      const s = Math.sin(phase);
      const m = 6 * n;
      const alongRe = moment[m] * cosPhi + moment[m + 1] * sinPhi;
      const alongIm = moment[m + 3] * cosPhi + moment[m + 4] * sinPhi;
      const acrossRe = moment[m + 1] * cosPhi - moment[m] * sinPhi;
      const acrossIm = moment[m + 4] * cosPhi - moment[m + 3] * sinPhi;
      let re =
        alongRe * factors[m] -
        alongIm * factors[m + 1] +
        moment[m + 2] * factors[m + 2] -
        moment[m + 5] * factors[m + 3];
      let im =
        alongRe * factors[m + 1] +
        alongIm * factors[m] +
        moment[m + 2] * factors[m + 3] +
        moment[m + 5] * factors[m + 2];
      thetaRe += re * c - im * s;
      thetaIm += re * s + im * c;
      re = acrossRe * factors[m + 4] - acrossIm * factors[m + 5];
      im = acrossRe * factors[m + 5] + acrossIm * factors[m + 4];
      phiRe += re * c - im * s;
      phiIm += re * s + im * c;
    }
    // |E| r = (η k/4π)|Σ|, intensity = |E r|²/2η.
    out[p] = ((ETA0 * k0 * k0) / (32 * Math.PI * Math.PI)) * (thetaRe ** 2 + thetaIm ** 2 + phiRe ** 2 + phiIm ** 2);
  }
}

export function farField(plan: PairPlan, currents: Currents, k0: number, ground: FarGround): FarField {
  const sources = sourcesOf(plan, currents);
  const size = k0 * sources.radiusM;
  const phiCount = 4 * Math.ceil(0.75 * (size + 6)); // a multiple of four holds both axes
  const phis = Float64Array.from({ length: phiCount }, (_, p) => (2 * Math.PI * p) / phiCount);
  const zeniths = zenithNodes(ground, Math.ceil(size) + 12);
  const grid = zeniths.map(({ theta }) => {
    const row = new Float64Array(phiCount);
    intensities(row, sources, k0, ground, theta, phis);
    return row;
  });
  let radiatedW = 0;
  zeniths.forEach(({ weight }, t) => {
    radiatedW += (weight * grid[t].reduce((sum, x) => sum + x, 0) * 2 * Math.PI) / phiCount;
  });
  const highest = ground.kind === 'none' ? Math.PI : Math.PI / 2;
  const step = Math.max(Math.PI / zeniths.length, Math.PI / phiCount);
  const best = summits(grid)
    .map(([t, p]) =>
      climb(sources, k0, ground, { value: grid[t][p], theta: zeniths[t].theta, phi: phis[p] }, step, highest),
    )
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

/** Climbs to the peak from the best sample by looking round it with a halving step. */
function climb(
  sources: Sources,
  k0: number,
  ground: FarGround,
  from: { value: number; theta: number; phi: number },
  firstStep: number,
  highest: number,
): { value: number; theta: number; phi: number } {
  let best = from;
  const value = new Float64Array(1);
  for (let step = firstStep; step > 2e-4; ) {
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
      intensities(value, sources, k0, ground, theta, Float64Array.of(phi));
      if (value[0] > best.value * (1 + 1e-12)) {
        best = { value: value[0], theta, phi };
        moved = true;
      }
    }
    if (!moved) step /= 2;
  }
  return best;
}
