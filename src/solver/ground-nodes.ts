/**
 * Quadrature nodes for the Sommerfeld integrals of one band of distances ρa…ρb (all lengths times k0).
 *
 *   propagating:  u0 = j cos θ, 0 < θ < π/2          evanescent:  u0 = t > 0, k = √(1 + t²)
 *
 * Panels are graded toward u0 = 0 and toward the branch point u1 = 0, and none spans more than 8 radians of phase. The evanescent
 * part ends where e^(−u0 h) has died at the least height, or earlier at a smooth edge: what a window erfc((t − tc)/s) cuts off
 * oscillates and is of the size e^(−(ρs/2)²), provided the spectrum is smooth on the scale s beyond the edge.
 */
import { type Complex, complex, squareRoot } from '../base/complex';
import { gaussRule } from './quadrature';

export interface Nodes {
  readonly count: number;
  /** cos θ for propagating nodes, t for evanescent ones. */
  readonly at: Float64Array;
  readonly k: Float64Array;
  readonly weight: Float64Array;
  /** The first so many are propagating. */
  readonly propagating: number;
}

const PHASE_OF_PANEL = 8;
const WINDOW = 7.4;
const rule = gaussRule(8);

export function bandNodes(epsilon: Complex, rhoLow: number, rhoHigh: number, hMin: number, hMax: number): Nodes {
  const edge = squareRoot(complex(epsilon.re - 1, epsilon.im));
  const fineness = 0.25 / Math.sqrt(Math.hypot(epsilon.re, epsilon.im));
  const thetaPanels = gradedFromZero(Math.PI / 2, fineness, PHASE_OF_PANEL / (rhoHigh + hMax));
  const { end, center, width } = evanescentEnd(edge, rhoLow, hMin);
  const first = Math.min(fineness, 0.5 / hMax, end / 4);
  const tPanels = splitNear(gradedFromZero(end, first, PHASE_OF_PANEL / rhoHigh), edge);
  const panels = [...thetaPanels.slice(1), ...tPanels.slice(1)];
  const count = panels.length * rule.points.length;
  const nodes = { at: new Float64Array(count), k: new Float64Array(count), weight: new Float64Array(count) };
  let n = 0;
  for (let p = 1; p < thetaPanels.length; p++) {
    for (let i = 0; i < rule.points.length; i++, n++) {
      const span = thetaPanels[p] - thetaPanels[p - 1];
      const fromGrazing = thetaPanels[p - 1] + span * rule.points[i]; // π/2 − θ
      nodes.at[n] = Math.sin(fromGrazing);
      nodes.k[n] = Math.cos(fromGrazing);
      nodes.weight[n] = rule.weights[i] * span * nodes.k[n];
    }
  }
  const propagating = n;
  for (let p = 1; p < tPanels.length; p++) {
    for (let i = 0; i < rule.points.length; i++, n++) {
      const span = tPanels[p] - tPanels[p - 1];
      const t = tPanels[p - 1] + span * rule.points[i];
      nodes.at[n] = t;
      nodes.k[n] = Math.sqrt(1 + t * t);
      nodes.weight[n] = rule.weights[i] * span * (width > 0 ? halfErfc((t - center) / width) : 1);
    }
  }
  return { count, ...nodes, propagating };
}

function evanescentEnd(edge: Complex, rhoLow: number, hMin: number): { end: number; center: number; width: number } {
  const dead = 14 / hMin;
  const width = WINDOW / rhoLow;
  const reach = 3.3 * width;
  const smoothFrom = Math.abs(edge.im) > 3 * width ? 1 : Math.abs(edge.re) + 1;
  const center = smoothFrom + reach;
  return center + reach < dead ? { end: center + reach, center, width } : { end: dead, center: 0, width: 0 };
}

/** Panel edges 0, first, 2·first, … doubling up to `widest`, then uniform to the end. */
function gradedFromZero(end: number, first: number, widest: number): number[] {
  const edges = [0];
  let at = 0;
  while (at < end * (1 - 1e-9)) {
    at = Math.min(end, at + Math.min(widest, Math.max(at, first)));
    edges.push(at);
  }
  return edges;
}

/** Splits panels until each is no wider than its distance from the branch point u1 = 0, or than that point's distance off the path. */
function splitNear(edges: number[], branch: Complex): number[] {
  const off = Math.max(Math.abs(branch.im), 1e-3 * branch.re, 1e-4);
  const out = [0];
  const add = (from: number, to: number): void => {
    const away = Math.max(0, from - branch.re, branch.re - to);
    if (to - from > 1.5 * Math.max(off, away)) {
      add(from, (from + to) / 2);
      add((from + to) / 2, to);
    } else out.push(to);
  };
  for (let p = 1; p < edges.length; p++) add(edges[p - 1], edges[p]);
  return out;
}

/** ½ erfc(x); Abramowitz & Stegun 7.1.26, error below 1e-7. */
function halfErfc(x: number): number {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const tail =
    0.5 *
    ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) *
    t *
    Math.exp(-x * x);
  return x > 0 ? tail : 1 - tail;
}
