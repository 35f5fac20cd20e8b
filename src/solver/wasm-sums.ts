/** The long sums by asm/sums.ts. */
import { type IntensitySum, intensityDirections } from './far-field';
import type { BandSum } from './ground-table';
import type { Combine } from './matrix-interpolation';
import { place, type SumModule } from './wasm-modules';

export function bandSumBy(sums: SumModule): BandSum {
  return (out, rho, h, nodes, spectrum) => {
    const before = sums.mark();
    const { at, k, weight, count, propagating } = nodes;
    const [outAt, rhoAt, hAt, atAt, kAt, weightAt, spectrumAt] = place(sums, [out, rho, h, at, k, weight, spectrum]);
    const [j0, j1] = [0, 0].map(() => sums.reserve(8 * rho.length * count));
    const room = sums.reserve(64 * h.length * count);
    const { length: rows } = rho;
    sums.tableBand(
      outAt,
      rhoAt,
      rows,
      hAt,
      h.length,
      atAt,
      kAt,
      weightAt,
      spectrumAt,
      count,
      propagating,
      j0,
      j1,
      room,
    );
    out.set(new Float64Array(sums.memory.buffer, outAt, out.length));
    sums.release(before);
  };
}

export function intensitiesBy(sums: SumModule): IntensitySum {
  return (out, rows, k0, theta, vertical, horizontal, phis) => {
    const before = sums.mark();
    const points = rows.length / 9;
    const [rowsAt, directionsAt] = place(sums, [rows, intensityDirections(phis)]);
    const [outAt, scratch] = [sums.reserve(8 * phis.length), sums.reserve(48 * points)];
    const [c, s] = [Math.cos(theta), Math.sin(theta)];
    const [v, h] = [vertical, horizontal];
    sums.intensities(outAt, rowsAt, scratch, points, k0, c, s, v.re, v.im, h.re, h.im, directionsAt, phis.length);
    out.set(new Float64Array(sums.memory.buffer, outAt, phis.length));
    sums.release(before);
  };
}

/** A single node, in memory that is given back: what makes a node of an interpolant. */
function combineOne(sums: SumModule, ...[out, nodes, shares, k0, factor]: Parameters<Combine>): void {
  const before = sums.mark();
  const { length } = nodes.distanceM;
  const even = (length + 1) & ~1;
  const [reAt, imAt, distanceAt, outReAt, outImAt] = [0, 0, 0, 0, 0].map(() => sums.reserve(8 * even));
  const sharesAt = sums.reserve(16);
  const { buffer } = sums.memory;
  new Float64Array(buffer, reAt, length).set(nodes.re);
  new Float64Array(buffer, imAt, length).set(nodes.im);
  new Float64Array(buffer, distanceAt, length).set(nodes.distanceM);
  new Float64Array(buffer, sharesAt, 1).set(shares);
  sums.combine(outReAt, outImAt, reAt, imAt, distanceAt, sharesAt, 1, even, k0, factor);
  out.re.set(new Float64Array(buffer, outReAt, length));
  out.im.set(new Float64Array(buffer, outImAt, length));
  sums.release(before);
}

const HELD = 2;

/** Holds the nodes of the last two interpolants (a fine and a coarse mesh) in the module's memory. */
export class Combiner {
  private readonly loaded = new Map<Float64Array, { addresses: number[]; out: number[]; length: number }>();

  constructor(private readonly sums: SumModule) {}

  combine(...[out, nodes, shares, k0, factor]: Parameters<Combine>): void {
    if (shares.length === 1) {
      combineOne(this.sums, out, nodes, shares, k0, factor);
      return;
    }
    const { sums } = this;
    const { addresses, out: outAt, length } = this.loaded.get(nodes.re) ?? this.load(nodes);
    const before = sums.mark();
    const [sharesAt] = place(sums, [shares]);
    const [reAt, imAt, distanceAt] = addresses;
    sums.combine(outAt[0], outAt[1], reAt, imAt, distanceAt, sharesAt, shares.length, length, k0, factor);
    out.re.set(new Float64Array(sums.memory.buffer, outAt[0], out.re.length));
    out.im.set(new Float64Array(sums.memory.buffer, outAt[1], out.im.length));
    sums.release(before);
  }

  /** Rows are padded to an even length. */
  private load({ re, im, distanceM }: Parameters<Combine>[1]) {
    const { sums } = this;
    if (this.loaded.size === HELD) {
      this.loaded.clear();
      sums.release(0);
    }
    const length = (distanceM.length + 1) & ~1;
    const padded = (values: Float64Array): Float64Array => {
      if (length === distanceM.length) return values;
      const wide = new Float64Array((values.length / distanceM.length) * length);
      for (let row = 0; row * distanceM.length < values.length; row++) {
        wide.set(values.subarray(row * distanceM.length, (row + 1) * distanceM.length), row * length);
      }
      return wide;
    };
    const addresses = place(sums, [padded(re), padded(im), padded(distanceM)]);
    const out = [sums.reserve(8 * length), sums.reserve(8 * length)];
    const held = { addresses, out, length };
    this.loaded.set(re, held);
    return held;
  }
}
