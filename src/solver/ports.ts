/**
 * Ports: gaps, loads and probes as sparse vectors p over the unknown currents, so that a port's current is pᵀx and a voltage in it
 * drives p·V. With X = Z⁻¹P and Y = PᵀX known, loads never need the large system again (physics/port-network.ts).
 */
import type { PortMatrix } from '../physics/port-network';
import type { Mesh, Port } from './mesh';

export interface PortVectors {
  readonly count: number;
  /** The first so many ports, gaps and loads, can be driven; the rest, probes, are only read. */
  readonly driven: number;
  readonly size: number;
  /** Column after column. */
  readonly values: Float64Array;
}

export function portVectors(mesh: Mesh, ports: readonly Port[], driven: number): PortVectors {
  const size = mesh.unknownCount;
  const values = new Float64Array(size * ports.length);
  ports.forEach(({ element, startShare, endShare }, port) => {
    for (const [end, share] of [
      [2 * element, startShare],
      [2 * element + 1, endShare],
    ]) {
      for (let m = mesh.offset[end]; m < mesh.offset[end + 1]; m++) {
        values[port * size + mesh.unknown[m]] += share * mesh.sign[m];
      }
    }
  });
  return { count: ports.length, driven, size, values };
}

/** Y = PᵀX, with X the solutions for unit voltage at each driven port, column after column. */
export function portAdmittance(vectors: PortVectors, xRe: Float64Array, xIm: Float64Array): PortMatrix {
  const { count, driven, size, values } = vectors;
  const re = new Float64Array(count * driven);
  const im = new Float64Array(count * driven);
  for (let p = 0; p < count; p++) {
    for (let i = 0; i < size; i++) {
      const share = values[p * size + i];
      if (share === 0) continue;
      for (let q = 0; q < driven; q++) {
        re[p * driven + q] += share * xRe[q * size + i];
        im[p * driven + q] += share * xIm[q * size + i];
      }
    }
  }
  return { count, driven, re, im };
}
