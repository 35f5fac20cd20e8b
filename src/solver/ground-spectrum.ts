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
import { add, type Complex, complex, divide, multiply, scale, squareRoot, subtract } from '../base/complex';
import { EPSILON0 } from '../base/constants';

export function soilPermittivity(frequencyHz: number, epsilonR: number, sigmaSPerM: number): Complex {
  return complex(epsilonR, -sigmaSPerM / (2 * Math.PI * frequencyHz * EPSILON0));
}

export const staticImage = (epsilon: Complex): Complex =>
  divide(subtract(epsilon, complex(1)), add(epsilon, complex(1)));

/** The four functions at u0 (in units of k0), as re, im pairs into `out`. */
export function spectrumInto(out: Float64Array, u0: Complex, epsilon: Complex): void {
  const one = complex(1);
  const u0Squared = multiply(u0, u0);
  const contrast = subtract(epsilon, one);
  const kSquared = add(u0Squared, one);
  // Re u1 ≥ 0; on the edge Re u1 = 0 (soil without loss) the wave leaves: Im u1 ≥ 0.
  let u1 = squareRoot(subtract(u0Squared, contrast));
  if (u1.re < 1e-14 && u1.im < 0) u1 = scale(u1, -1);
  const sum = add(u0, u1);
  const electric = add(u1, multiply(epsilon, u0));
  const kappa = staticImage(epsilon);
  const gh = divide(contrast, multiply(sum, sum)); // u0² − u1² = ε − 1
  const ge = divide(subtract(u1, multiply(epsilon, u0)), electric);
  const d = divide(scale(contrast, 2), multiply(sum, electric));
  out[0] = gh.re;
  out[1] = gh.im;
  out[2] = ge.re + d.re + kappa.re;
  out[3] = ge.im + d.im + kappa.im;
  const vertical = multiply(u0Squared, d);
  out[4] = vertical.re - ge.re - 2 * kappa.re;
  out[5] = vertical.im - ge.im - 2 * kappa.im;
  const coupling = subtract(multiply(multiply(u0, d), kSquared), multiply(kappa, u0));
  out[6] = coupling.re;
  out[7] = coupling.im;
}
