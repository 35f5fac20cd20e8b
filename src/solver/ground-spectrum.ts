/**
 * Spectral functions of the reflected field over soil, source and observer in air (Formulation C), with
 *
 *   u0 = √(k² − k0²)   u1 = √(k² − εk0²)   ε = εr − jσ/ωε0   Re u ≥ 0
 *   Gh = (u0 − u1)/(u0 + u1)    Ge = (u1 − εu0)/(u1 + εu0)    D = 2(ε − 1)/[(u0 + u1)(u1 + εu0)]    κ = (ε − 1)/(ε + 1)
 *
 * k dk / u0 = du0, so each integral runs over u0: from jk0 to 0 (propagating), then from 0 to ∞ (evanescent). In units of k0:
 *
 *   S{f} = ∫ f e^(−u0 h) J0(kρ) du0        ∂Q/∂ρ = −∫ u0 D k² e^(−u0 h) [J1(kρ)/k] du0
 *
 * The values filled here have their limits for k → ∞ taken out, which are images in closed form:
 *   0: Gh      1: Ge + D + κ      2: −Ge + u0² D − 2κ      3: u0 D k² − κ u0  (goes with J1(kρ)/k)
 * Source: Michalski & Zheng, IEEE Trans. AP 38 (1990); Michalski & Mosig, IEEE Trans. AP 45 (1997).
 */
import { add, type Complex, complex, divide, subtract } from '../base/complex';
import { EPSILON0 } from '../base/constants';

export function soilPermittivity(frequencyHz: number, epsilonR: number, sigmaSPerM: number): Complex {
  return complex(epsilonR, -sigmaSPerM / (2 * Math.PI * frequencyHz * EPSILON0));
}

export const staticImage = (epsilon: Complex): Complex =>
  divide(subtract(epsilon, complex(1)), add(epsilon, complex(1)));

/**
 * The four functions as re, im pairs from `out[o]` on, at u0 = j·at (propagating) or at (evanescent), in units of k0. Written out in
 * real numbers, since a table needs some thousands.
 */
export function spectrumInto(out: Float64Array, o: number, at: number, isPropagating: boolean, epsilon: Complex): void {
  const uRe = isPropagating ? 0 : at;
  const uIm = isPropagating ? at : 0;
  const uSquared = isPropagating ? -at * at : at * at;
  const cRe = epsilon.re - 1;
  const cIm = epsilon.im;
  // u1 = √(u0² − (ε − 1)), Re u1 ≥ 0; without loss Im u1 ≥ 0, since Im ε ≤ 0 puts the square in the upper half.
  const sRe = uSquared - cRe;
  const size = Math.hypot(sRe, cIm);
  const vRe = Math.sqrt(Math.max(0, (size + sRe) / 2));
  const vIm = Math.sqrt(Math.max(0, (size - sRe) / 2));
  const sumRe = uRe + vRe;
  const sumIm = uIm + vIm;
  const euRe = epsilon.re * uRe - epsilon.im * uIm;
  const euIm = epsilon.re * uIm + epsilon.im * uRe;
  const elRe = vRe + euRe;
  const elIm = vIm + euIm;
  const sumSquared = sumRe * sumRe + sumIm * sumIm;
  const elSquared = elRe * elRe + elIm * elIm;
  // 1/(u0 + u1) and 1/(u1 + εu0); contrast/(u0 + u1) is used by Gh and D.
  const pRe = (cRe * sumRe + cIm * sumIm) / sumSquared;
  const pIm = (cIm * sumRe - cRe * sumIm) / sumSquared;
  const qRe = elRe / elSquared;
  const qIm = -elIm / elSquared;
  out[o] = (pRe * sumRe + pIm * sumIm) / sumSquared; // Gh = (ε − 1)/(u0 + u1)²
  out[o + 1] = (pIm * sumRe - pRe * sumIm) / sumSquared;
  const geRe = (vRe - euRe) * qRe - (vIm - euIm) * qIm;
  const geIm = (vRe - euRe) * qIm + (vIm - euIm) * qRe;
  const dRe = 2 * (pRe * qRe - pIm * qIm);
  const dIm = 2 * (pRe * qIm + pIm * qRe);
  const kappaSize = (epsilon.re + 1) ** 2 + cIm * cIm;
  const kRe = (cRe * (epsilon.re + 1) + cIm * cIm) / kappaSize;
  const kIm = (cIm * (epsilon.re + 1) - cRe * cIm) / kappaSize;
  out[o + 2] = geRe + dRe + kRe;
  out[o + 3] = geIm + dIm + kIm;
  out[o + 4] = uSquared * dRe - geRe - 2 * kRe;
  out[o + 5] = uSquared * dIm - geIm - 2 * kIm;
  const kdRe = (uSquared + 1) * dRe - kRe; // k² D − κ
  const kdIm = (uSquared + 1) * dIm - kIm;
  out[o + 6] = uRe * kdRe - uIm * kdIm;
  out[o + 7] = uRe * kdIm + uIm * kdRe;
}
