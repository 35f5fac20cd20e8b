/** The length at which a trial shows no reactance, by the secant method on the factor to its rule's length. */

/** Furthest that a solved length may lie from its rule: beyond that another resonance was caught. */
const FURTHEST = 0.08;
const CLOSE_ENOUGH = 5e-4;
const MOST_TRIALS = 6;
const FIRST_STEP = 0.02;

export const held = (factor: number): number => Math.min(Math.max(factor, 1 - FURTHEST), 1 + FURTHEST);

/** Factor on the rule's length at which `reactance` is nothing; null when none lies near it. */
export async function rootFactor(reactance: (factor: number) => Promise<number | null>): Promise<number | null> {
  let [a, b] = [1, 1];
  let xa = await reactance(a);
  if (xa === null) return null;
  b = held(a - Math.sign(xa) * FIRST_STEP);
  for (let trial = 0; trial < MOST_TRIALS; trial++) {
    const xb = await reactance(b);
    if (xb === null || xb === xa) return null;
    const next: number = b - (xb * (b - a)) / (xb - xa);
    if (!Number.isFinite(next) || Math.abs(next - 1) > FURTHEST) return null;
    if (Math.abs(next - b) < CLOSE_ENOUGH) return next;
    [a, xa, b] = [b, xb, next];
  }
  return null;
}
