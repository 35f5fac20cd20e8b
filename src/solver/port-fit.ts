/**
 * The admittances between the ports of one mesh over a range of frequencies, from solutions placed where two fits of different order disagree
 * most. Each new solution is first predicted: the fit is settled when three predictions in a row were within tolerance.
 */
import type { PortMatrix } from '../physics/port-network';
import {
  evaluateRational,
  fitRational,
  functionSizes,
  largestDifference,
  type RationalFit,
  refitRational,
} from './rational-fit';

const CONFIRMATIONS = 3;
const MOST_SAMPLES = 100;

export class PortFit {
  private readonly x: number[] = [];
  private readonly values: Float64Array[] = [];
  private confirmed = 0;
  private fits: { readonly now: RationalFit; readonly before: RationalFit } | null = null;
  /** Largest error of the last predictions in a row that were right; 1 before there was one. */
  error = 1;

  /** `tolerance` is relative to the greatest admittance of each port. */
  constructor(private readonly tolerance: number) {}

  get solves(): number {
    return this.x.length;
  }

  get isSettled(): boolean {
    return this.confirmed >= CONFIRMATIONS || this.x.length >= MOST_SAMPLES;
  }

  add(frequencyHz: number, { re, im }: PortMatrix): Float64Array {
    const row = new Float64Array(2 * re.length);
    for (let i = 0; i < re.length; i++) {
      row[2 * i] = re[i];
      row[2 * i + 1] = im[i];
    }
    this.x.push(frequencyHz);
    this.values.push(row);
    return row;
  }

  /** The fit so far. */
  get now(): RationalFit {
    return this.begun().now;
  }

  /** One more solution, where it is needed most. */
  refine(solveAt: (frequencyHz: number) => PortMatrix): void {
    const { x, values, tolerance } = this;
    const fits = this.begun();
    const next = this.nextFrequency(fits.now, fits.before);
    const predicted = new Float64Array(values[0].length);
    evaluateRational(predicted, fits.now, next);
    const found = this.add(next, solveAt(next));
    const error = largestDifference(predicted, found, functionSizes(values));
    this.error = this.confirmed === 0 ? error : Math.max(this.error, error);
    this.confirmed = error < tolerance ? this.confirmed + 1 : 0;
    // One more support point where the fit was wrong, as long as enough other samples are left to settle the weights.
    const spare = (x.length - fits.now.support.length - 1) * (found.length / 2);
    const grows = error > tolerance / 20 && spare > fits.now.support.length;
    this.fits = { now: refitRational({ x, values }, fits.now, grows), before: fits.now };
  }

  private begun() {
    if (this.fits !== null) return this.fits;
    const samples = { x: this.x, values: this.values };
    const now = fitRational(samples, this.tolerance / 100, MOST_SAMPLES);
    this.fits = { now, before: fitRational(samples, this.tolerance / 100, now.support.length - 1) };
    return this.fits;
  }

  /** Where two fits differ most, among frequencies not next to a sample; every other time the middle of the widest gap. */
  private nextFrequency(now: RationalFit, before: RationalFit): number {
    const sorted = [...this.x].sort((a, b) => a - b);
    if (this.confirmed % 2 === 1) {
      const gaps = sorted.slice(1).map((to, i) => to - sorted[i]);
      const widest = gaps.indexOf(Math.max(...gaps));
      return (sorted[widest] + sorted[widest + 1]) / 2;
    }
    const sizes = functionSizes(this.values);
    const [a, b] = [new Float64Array(2 * sizes.length), new Float64Array(2 * sizes.length)];
    let best = { at: (sorted[0] + sorted[1]) / 2, value: -1 };
    for (let i = 1; i < sorted.length; i++) {
      for (const share of [0.25, 0.5, 0.75]) {
        const at = sorted[i - 1] + share * (sorted[i] - sorted[i - 1]);
        evaluateRational(a, now, at);
        evaluateRational(b, before, at);
        const value = largestDifference(a, b, sizes);
        if (value > best.value) best = { at, value };
      }
    }
    return best.at;
  }
}
