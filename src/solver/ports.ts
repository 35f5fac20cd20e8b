/**
 * Ports: gaps, loads and probes as sparse vectors p over the unknown currents, so that a port's current is pᵀx and a voltage in it
 * drives p·V. With X = Z⁻¹P and Y = PᵀX known, loads are a small system and never need the large one again:
 *
 *   I_gap, I_load from  (1 + Y_LL Z_L) I_L = Y_LG V_G ;   x = X_G V_G − X_L Z_L I_L
 *
 * (Schur complement on the load ports.) One choke gives the bilinear law Zin = Z11 − Z12²/(Z22 + ZL).
 */
import { add, type Complex, complex, divide, multiply, scale, subtract } from '../base/complex';
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

/** Current at each port (row) for a volt at each driven port (column), row after row, re and im apart. */
export interface PortMatrix {
  readonly count: number;
  readonly driven: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
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

export interface Excitation {
  /** Volts of the first ports, the gaps. */
  readonly gapVolts: readonly Complex[];
  /** Impedances of the next ports, the loads. */
  readonly loadOhms: readonly Complex[];
}

export interface PortState {
  /** Current through each port, probes included. */
  readonly currents: readonly Complex[];
  /** Voltage that drives each gap and load port; what the whole solution is made of. */
  readonly volts: readonly Complex[];
}

/** Ports are in the order gaps, loads, probes. */
export function excite(y: PortMatrix, { gapVolts, loadOhms }: Excitation): PortState {
  const at = (p: number, q: number): Complex => complex(y.re[p * y.driven + q], y.im[p * y.driven + q]);
  const gaps = gapVolts.length;
  const driven = (p: number): Complex =>
    gapVolts.reduce((sum: Complex, volts, g) => add(sum, multiply(at(p, g), volts)), complex(0));
  const rows = loadOhms.map((_, l) =>
    loadOhms.map((ohms, m) => add(complex(l === m ? 1 : 0), multiply(at(gaps + l, gaps + m), ohms))),
  );
  const loadCurrents = solveSmall(
    rows,
    loadOhms.map((_, l) => driven(gaps + l)),
  );
  const volts = [...gapVolts, ...loadOhms.map((ohms, l) => scale(multiply(ohms, loadCurrents[l]), -1))];
  const currents = Array.from({ length: y.count }, (_, p) =>
    volts.reduce((sum: Complex, v, q) => add(sum, multiply(at(p, q), v)), complex(0)),
  );
  return { currents, volts };
}

/** Gaussian elimination with row exchange, for a handful of unknowns. Both arguments are used up. */
export function solveSmall(rows: Complex[][], right: Complex[]): Complex[] {
  const size = right.length;
  for (let k = 0; k < size; k++) {
    let best = k;
    for (let i = k + 1; i < size; i++) {
      if (Math.hypot(rows[i][k].re, rows[i][k].im) > Math.hypot(rows[best][k].re, rows[best][k].im)) best = i;
    }
    [rows[k], rows[best]] = [rows[best], rows[k]];
    [right[k], right[best]] = [right[best], right[k]];
    for (let i = k + 1; i < size; i++) {
      const factor = divide(rows[i][k], rows[k][k]);
      for (let j = k; j < size; j++) rows[i][j] = subtract(rows[i][j], multiply(factor, rows[k][j]));
      right[i] = subtract(right[i], multiply(factor, right[k]));
    }
  }
  const solution = new Array<Complex>(size);
  for (let i = size - 1; i >= 0; i--) {
    let sum = right[i];
    for (let j = i + 1; j < size; j++) sum = subtract(sum, multiply(rows[i][j], solution[j]));
    solution[i] = divide(sum, rows[i][i]);
  }
  return solution;
}
