/**
 * The impedance matrix over a range of frequencies from a few exact fills. Each entry times f·e^(+jkd), d the distance between the
 * middles of its two unknowns, is smooth, and is interpolated between Chebyshev points by the barycentric formula
 *
 *   p(f) = Σ w_i p_i/(f − f_i) / Σ w_i/(f − f_i),   w_i = (−1)^i sin((2i + 1)π/2n)
 *
 * What is left of the phase is that of the reflected wave, at most k·2·height; it and the range decide how many points are needed.
 * Source: Berrut & Trefethen, SIAM Review 46 (2004).
 */
import { C0 } from '../base/constants';
import type { SymmetricMatrix } from './assemble';
import type { Mesh } from './mesh';

export interface MatrixInterpolant {
  readonly size: number;
  readonly nodesHz: Float64Array;
  readonly weights: Float64Array;
  /** Packed triangles one after another, with f·e^(+jkd) taken in. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** d of each packed entry. */
  readonly distanceM: Float64Array;
}

/**
 * out = (1/f) e^(−jkd) Σ_i share_i·node_i for every packed entry: the sum behind the interpolation, as a kernel may do it. `nodes` stays
 * the same from call to call.
 */
export type Combine = (
  out: SymmetricMatrix,
  nodes: Pick<MatrixInterpolant, 're' | 'im' | 'distanceM'>,
  shares: Float64Array,
  k0: number,
  factor: number,
) => void;

export const plainCombine: Combine = (out, nodes, shares, k0, factor) => {
  const { distanceM } = nodes;
  const length = distanceM.length;
  out.re.fill(0);
  out.im.fill(0);
  shares.forEach((share, i) => {
    const from = i * length;
    for (let n = 0; n < length; n++) {
      out.re[n] += share * nodes.re[from + n];
      out.im[n] += share * nodes.im[from + n];
    }
  });
  for (let n = 0; n < length; n++) {
    const c = factor * Math.cos(k0 * distanceM[n]);
    const s = -factor * Math.sin(k0 * distanceM[n]);
    const re = out.re[n];
    out.re[n] = re * c - out.im[n] * s;
    out.im[n] = re * s + out.im[n] * c;
  }
};

/** Points needed for a relative error of about 1e-5. */
export function interpolationNodes(fromHz: number, toHz: number, highestM: number): Float64Array {
  const middle = (toHz + fromHz) / 2;
  const half = (toHz - fromHz) / 2;
  const phase = (2 * Math.PI * half * 2 * highestM) / C0;
  // Soil and skin effect are singular at f = 0: how fast that is forgotten is set by the ellipse through 0 round the range.
  const away = middle / half;
  const decay = Math.log(away + Math.sqrt(away * away - 1));
  const count = Math.ceil(Math.max(3, 10 / decay, 4 + phase + 3 / decay));
  return Float64Array.from(
    { length: count },
    (_, i) => middle + half * Math.cos(((2 * i + 1) * Math.PI) / (2 * count)),
  );
}

/** Made for a list of nodes; each is to be set before the interpolant is used. */
export function emptyInterpolant(mesh: Mesh, nodesHz: Float64Array): MatrixInterpolant {
  const count = nodesHz.length;
  const distanceM = unknownDistances(mesh);
  const weights = nodesHz.map((_, i) => (i % 2 === 0 ? 1 : -1) * Math.sin(((2 * i + 1) * Math.PI) / (2 * count)));
  const [re, im] = [new Float64Array(count * distanceM.length), new Float64Array(count * distanceM.length)];
  return { size: mesh.unknownCount, nodesHz, weights, re, im, distanceM };
}

export function setNode(interpolant: MatrixInterpolant, i: number, matrix: SymmetricMatrix, combine: Combine): void {
  const { nodesHz, distanceM } = interpolant;
  const [from, to] = [i * distanceM.length, (i + 1) * distanceM.length];
  const out = { size: matrix.size, re: interpolant.re.subarray(from, to), im: interpolant.im.subarray(from, to) };
  // The same sum with one node and the phase the other way round.
  const k0 = (2 * Math.PI * nodesHz[i]) / C0;
  combine(out, { re: matrix.re, im: matrix.im, distanceM }, Float64Array.of(1), -k0, nodesHz[i]);
}

export function matrixAt(interpolant: MatrixInterpolant, frequencyHz: number, combine: Combine): SymmetricMatrix {
  const { size, distanceM } = interpolant;
  const out = { size, re: new Float64Array(distanceM.length), im: new Float64Array(distanceM.length) };
  const k0 = (2 * Math.PI * frequencyHz) / C0;
  combine(out, interpolant, nodeShares(interpolant, frequencyHz), k0, 1 / frequencyHz);
  return out;
}

function nodeShares({ nodesHz, weights }: MatrixInterpolant, frequencyHz: number): Float64Array {
  const hit = nodesHz.indexOf(frequencyHz);
  if (hit >= 0) return nodesHz.map((_, i) => (i === hit ? 1 : 0));
  const terms = weights.map((weight, i) => weight / (frequencyHz - nodesHz[i]));
  const sum = terms.reduce((a, b) => a + b, 0);
  return terms.map((term) => term / sum);
}

/** Distance between the middles of two unknowns, each the mean place of the element ends it lives on; packed lower triangle. */
function unknownDistances(mesh: Mesh): Float64Array {
  const size = mesh.unknownCount;
  const place = new Float64Array(3 * size);
  const ends = new Float64Array(size);
  for (let end = 0; end < 2 * mesh.elementCount; end++) {
    const e = end >> 1;
    for (let m = mesh.offset[end]; m < mesh.offset[end + 1]; m++) {
      const unknown = mesh.unknown[m];
      ends[unknown]++;
      for (let axis = 0; axis < 3; axis++) {
        place[3 * unknown + axis] +=
          mesh.start[3 * e + axis] + (end & 1) * mesh.lengthM[e] * mesh.direction[3 * e + axis];
      }
    }
  }
  const distances = new Float64Array((size * (size + 1)) / 2);
  for (let row = 0, n = 0; row < size; row++) {
    for (let column = 0; column <= row; column++, n++) {
      let squared = 0;
      for (let axis = 0; axis < 3; axis++) {
        squared += (place[3 * row + axis] / ends[row] - place[3 * column + axis] / ends[column]) ** 2;
      }
      distances[n] = Math.sqrt(squared);
    }
  }
  return distances;
}
