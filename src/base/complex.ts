/**
 * Complex numbers as plain records: `re` and `im` in the same unit. Time is e^(+jωt), so an inductor has im > 0.
 * For formulas evaluated a few times; loops over many frequencies or segments keep real and imaginary parts in typed arrays instead.
 */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
export const scale = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });
export const conjugate = (a: Complex): Complex => ({ re: a.re, im: -a.im });
export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im);

/** Quotient by Smith's method, which neither overflows nor loses the smaller part. Division by zero gives infinities. */
export function divide(a: Complex, b: Complex): Complex {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const ratio = b.re === 0 ? 0 : b.im / b.re;
    const whole = b.re + b.im * ratio;
    return { re: (a.re + a.im * ratio) / whole, im: (a.im - a.re * ratio) / whole };
  }
  const ratio = b.re / b.im;
  const whole = b.re * ratio + b.im;
  return { re: (a.re * ratio + a.im) / whole, im: (a.im * ratio - a.re) / whole };
}

export const reciprocal = (a: Complex): Complex => divide({ re: 1, im: 0 }, a);

/** Square root with the real part zero or positive. */
export function squareRoot(a: Complex): Complex {
  const size = magnitude(a);
  if (size === 0) return { re: 0, im: 0 };
  if (size < 1e-290) return scale(squareRoot(scale(a, 2 ** 200)), 2 ** -100); // halves would be lost below the least number
  const re = Math.sqrt((size + Math.abs(a.re)) / 2);
  const im = Math.abs(a.im) / (2 * re);
  const sign = a.im < 0 ? -1 : 1;
  return a.re >= 0 ? { re, im: sign * im } : { re: im, im: sign * re };
}

export function exponential(a: Complex): Complex {
  const size = Math.exp(a.re);
  return { re: size * Math.cos(a.im), im: size * Math.sin(a.im) };
}

/** Hyperbolic cosine. */
export const cosh = (a: Complex): Complex => ({
  re: Math.cosh(a.re) * Math.cos(a.im),
  im: Math.sinh(a.re) * Math.sin(a.im),
});

/** Hyperbolic sine. */
export const sinh = (a: Complex): Complex => ({
  re: Math.sinh(a.re) * Math.cos(a.im),
  im: Math.cosh(a.re) * Math.sin(a.im),
});
