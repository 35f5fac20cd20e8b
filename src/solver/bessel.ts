/**
 * Bessel functions of the first kind, orders 0 and 1, for real x ≥ 0. Polynomials of Abramowitz & Stegun 9.4.1 to 9.4.6;
 * absolute error below 1.1e-7.
 */
const small0 = [2.1e-4, -0.0039444, 0.0444479, -0.3163866, 1.2656208, -2.2499997, 1];
const small1 = [1.109e-5, -3.1761e-4, 0.00443319, -0.03954289, 0.21093573, -0.56249985, 0.5];
const size0 = [1.4476e-4, -7.2805e-4, 0.00137237, -9.512e-5, -0.0055274, -7.7e-7, 0.79788456];
const angle0 = [1.3558e-4, -2.9333e-4, -5.4125e-4, 0.00262573, -3.954e-5, -0.04166397, -0.78539816];
const size1 = [-2.0033e-4, 0.00113653, -0.00249511, 1.7105e-4, 0.01659667, 1.56e-6, 0.79788456];
const angle1 = [-2.9166e-4, 7.9824e-4, 7.4348e-4, -0.00637879, 5.65e-5, 0.12499612, -2.35619449];

function polynomial(c: readonly number[], x: number): number {
  return (((((c[0] * x + c[1]) * x + c[2]) * x + c[3]) * x + c[4]) * x + c[5]) * x + c[6];
}

export function besselJ0(x: number): number {
  if (x <= 3) return polynomial(small0, (x * x) / 9);
  const inverse = 3 / x;
  return (polynomial(size0, inverse) * Math.cos(x + polynomial(angle0, inverse))) / Math.sqrt(x);
}

/** J1(x)/x, which is ½ at x = 0. */
export function besselJ1OverX(x: number): number {
  if (x <= 3) return polynomial(small1, (x * x) / 9);
  const inverse = 3 / x;
  return (polynomial(size1, inverse) * Math.cos(x + polynomial(angle1, inverse))) / (Math.sqrt(x) * x);
}
