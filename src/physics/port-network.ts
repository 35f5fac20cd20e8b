/**
 * An antenna seen from its ports alone: gaps that drive it, loads in its wires, probes that read a current. Y says how much current flows at
 * every port for a volt at each gap and load; any loads are then a small system:
 *
 *   I_gap, I_load from  (1 + Y_LL Z_L) I_L = Y_LG V_G ;   I = Y_G V_G − Y_L Z_L I_L
 *
 * (Schur complement on the load ports.) One choke gives the bilinear law Zin = Z11 − Z12²/(Z22 + ZL).
 */
import { add, type Complex, complex, divide, magnitude, multiply, scale, subtract } from '../base/complex';
import { InputError } from '../base/input-error';

/** Current at each port (row) for a volt at each driven port (column), row after row, re and im apart. Ports are in the order gaps, loads, probes. */
export interface PortMatrix {
  readonly count: number;
  /** The first so many ports, gaps and loads, can be driven; the rest, probes, are only read. */
  readonly driven: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
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

/** @throws InputError where gaps and loads are not the driven ports of `y` or some of its numbers are missing. */
export function excite(y: PortMatrix, { gapVolts, loadOhms }: Excitation): PortState {
  const ports = gapVolts.length + loadOhms.length;
  if (ports !== y.driven || y.count < ports) throw new InputError('array-size', { ports, driven: y.driven });
  const at = (p: number, q: number): Complex => complex(there(y.re, p * y.driven + q), there(y.im, p * y.driven + q));
  const gaps = gapVolts.length;
  const driven = (p: number): Complex =>
    gapVolts.reduce((sum: Complex, volts, g) => add(sum, multiply(at(p, g), volts)), complex(0));
  const rows = loadOhms.map((_, l) => [
    ...loadOhms.map((ohms, m) => add(complex(l === m ? 1 : 0), multiply(at(gaps + l, gaps + m), ohms))),
    driven(gaps + l),
  ]);
  const loadVolts = solveSmall(rows).map((current, l) => scale(multiply(there(loadOhms, l), current), -1));
  const volts = [...gapVolts, ...loadVolts];
  const currents = Array.from({ length: y.count }, (_, p) =>
    volts.reduce((sum: Complex, v, q) => add(sum, multiply(at(p, q), v)), complex(0)),
  );
  return { currents, volts };
}

/** @throws InputError where nothing stands. */
function there<T>(values: ArrayLike<T>, index: number): T {
  const value = values[index];
  if (value === undefined) throw new InputError('array-size', { index });
  return value;
}

/** Gaussian elimination with row exchange, for a handful of unknowns. A row is an equation's coefficients, then its right side; rows are used up. */
function solveSmall(rows: Complex[][]): Complex[] {
  const size = rows.length;
  const of = (i: number, j: number): Complex => there(there(rows, i), j);
  for (let k = 0; k < size; k++) {
    let best = k;
    for (let i = k + 1; i < size; i++) if (magnitude(of(i, k)) > magnitude(of(best, k))) best = i;
    const lead = rows[best] ?? [];
    rows[best] = rows[k] ?? [];
    rows[k] = lead;
    for (const row of rows.slice(k + 1)) {
      const factor = divide(there(row, k), there(lead, k));
      for (let j = k; j <= size; j++) row[j] = subtract(there(row, j), multiply(factor, there(lead, j)));
    }
  }
  const solution = new Array<Complex>(size);
  for (let i = size - 1; i >= 0; i--) {
    let sum = of(i, size);
    for (let j = i + 1; j < size; j++) sum = subtract(sum, multiply(of(i, j), there(solution, j)));
    solution[i] = divide(sum, of(i, i));
  }
  return solution;
}

/** Sum of the volts over the mean of the gap currents; for one gap simply V/I. */
export function feedOf(
  currents: readonly Complex[],
  gapVolts: readonly Complex[],
): { impedance: Complex; current: Complex } {
  const volts = gapVolts.reduce(add, complex(0));
  const amperes = currents.slice(0, gapVolts.length).reduce(add, complex(0));
  const current = scale(amperes, 1 / gapVolts.length);
  return { impedance: divide(volts, current), current };
}

/** One antenna over frequency, its gaps and loads still open. Plain arrays, so that it can be sent from a worker. */
export interface OpenAntenna {
  readonly frequenciesHz: Float64Array;
  readonly gapVolts: readonly Complex[];
  /** Impedances that were asked for, one for each load. */
  readonly loadOhms: readonly Complex[];
  readonly probeIds: readonly string[];
  readonly portCount: number;
  /** For each frequency portCount × (gaps + loads) numbers, row after row. */
  readonly yRe: Float64Array;
  readonly yIm: Float64Array;
}

/**
 * At its frequency number `f`, with these loads in place.
 * @throws InputError for a frequency or a number of loads that the antenna was not solved with.
 */
export function stateAt(antenna: OpenAntenna, f: number, loadOhms: readonly Complex[]) {
  const { frequenciesHz, portCount, gapVolts, yRe, yIm } = antenna;
  const driven = gapVolts.length + loadOhms.length;
  if (yRe.length !== frequenciesHz.length * portCount * driven) throw new InputError('array-size', { ports: driven });
  const [from, to] = [f * portCount * driven, (f + 1) * portCount * driven];
  const y = { count: portCount, driven, re: yRe.subarray(from, to), im: yIm.subarray(from, to) };
  const { currents } = excite(y, { gapVolts, loadOhms });
  return { feed: feedOf(currents, gapVolts), currents };
}
