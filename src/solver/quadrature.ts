/**
 * Gauss–Legendre quadrature on 0…1: the roots of P_n by Newton from Tricomi's estimate, weights 2/((1−x²)P_n′²).
 * Exact for polynomials up to degree 2n − 1. Source: Abramowitz & Stegun, 25.4.29.
 */
export interface Rule {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

const rules = new Map<number, Rule>();

export function gaussRule(count: number): Rule {
  const known = rules.get(count);
  if (known) return known;
  const points = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step++) {
      const [value, derivative] = legendre(count, x);
      slope = derivative;
      const change = value / derivative;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    points[count - 1 - i] = 0.5 + 0.5 * x;
    weights[count - 1 - i] = 1 / ((1 - x * x) * slope * slope);
  }
  const rule = { points, weights };
  rules.set(count, rule);
  return rule;
}

/** P_n(x) and its derivative by the three-term recurrence. */
function legendre(n: number, x: number): [number, number] {
  let before = 1;
  let value = x;
  for (let k = 2; k <= n; k++) {
    const next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
    before = value;
    value = next;
  }
  return [value, (n * (x * value - before)) / (x * x - 1)];
}
