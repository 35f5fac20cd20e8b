/**
 * Exponential integral E1 of a complex argument, and the integrals of antenna theory that follow from it.
 *
 *   E1(z) = ∫z∞ e^(−t)/t dt      E1(jx) = −Ci(x) + j (Si(x) − π/2)      Cin(x) = γ + ln x − Ci(x)
 *
 * Power series up to |z| = 6, continued fraction beyond. Limits: Re z ≥ 0, where both converge to about twelve figures.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 5.1.11, 5.1.22, 5.2.
 */
import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  magnitude,
  multiply,
  reciprocal,
  scale,
} from '../base/complex';

const EULER = 0.577_215_664_901_532_9;
const SERIES_UP_TO = 6;

export function expIntegral1(z: Complex): Complex {
  return magnitude(z) <= SERIES_UP_TO ? series(z) : continuedFraction(z);
}

function series(z: Complex): Complex {
  let term = complex(-1);
  let sum = complex(-EULER - Math.log(magnitude(z)), -Math.atan2(z.im, z.re));
  for (let n = 1; n < 80; n++) {
    term = scale(multiply(term, z), -1 / n);
    sum = add(sum, scale(term, 1 / n));
    if (magnitude(term) < 1e-17 * magnitude(sum)) break;
  }
  return sum;
}

/** e^(−z) / (z + 1 − 1/(z + 3 − 4/(z + 5 − …))), from the tail forwards. */
function continuedFraction(z: Complex): Complex {
  let tail = complex(0);
  for (let n = 120; n >= 1; n--) {
    tail = divide(complex(n * n), add(complex(z.re + 2 * n + 1, z.im), scale(tail, -1)));
  }
  const whole = add(complex(z.re + 1, z.im), scale(tail, -1));
  return multiply(exponential(scale(z, -1)), reciprocal(whole));
}

export const cosineIntegral = (x: number): number => -expIntegral1(complex(0, x)).re;
export const sineIntegral = (x: number): number => Math.PI / 2 + expIntegral1(complex(0, x)).im;

/** Cin(x): even, 0 at 0. */
export const cosineIntegralEntire = (x: number): number =>
  x < 1e-6 ? x ** 2 / 4 : EULER + Math.log(x) - cosineIntegral(x);
