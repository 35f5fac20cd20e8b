/**
 * Internal impedance of a round wire for each metre of length, skin effect included:
 *
 *   Z′ = k J0(k a) / (2π a σ J1(k a)),   k = √(−jωµ0σ)      a  radius, m      σ  conductivity, S/m
 *
 * The ratio J0/J1 comes from the recurrence J_{n−1} + J_{n+1} = (2n/z) J_n, run downward, where it is stable.
 * Source: Ramo, Whinnery & Van Duzer, Fields and Waves in Communication Electronics, 3rd ed., section 4.9.
 */
import { type Complex, complex, divide, magnitude, multiply, reciprocal, scale, subtract } from '../base/complex';
import { MU0 } from '../base/constants';

export function wireImpedanceOhmPerM(frequencyHz: number, radiusM: number, conductivitySPerM: number): Complex {
  const size = Math.sqrt(2 * Math.PI * frequencyHz * MU0 * conductivitySPerM);
  const k = complex(size * Math.SQRT1_2, -size * Math.SQRT1_2);
  const z = scale(k, radiusM);
  return scale(multiply(k, ratioJ0J1(z)), 1 / (2 * Math.PI * radiusM * conductivitySPerM));
}

function ratioJ0J1(z: Complex): Complex {
  const start = Math.ceil(1.5 * magnitude(z)) + 30;
  const overZ = reciprocal(z);
  let ratio = scale(overZ, 2 * (start + 1)); // J_n / J_{n+1}
  for (let n = start - 1; n >= 0; n--) ratio = subtract(scale(overZ, 2 * (n + 1)), divide(complex(1), ratio));
  return ratio;
}
