/**
 * An antenna solved once for a list of frequencies, its gaps and loads still open: how much current flows at every port for a volt at
 * each gap and load. A load or choke is then a matter of microseconds (physics/port-network.ts).
 */
import { type Complex, complex, divide } from '../base/complex';
import { InputError } from '../base/input-error';
import { type OpenAntenna, stateAt } from '../physics/port-network';

export interface Prepared extends OpenAntenna {
  /** Largest relative error seen when a new sample was predicted by the fit; 0 where every frequency was solved. */
  readonly fitError: number;
  /** Frequencies really solved. */
  readonly solves: number;
  readonly segments: number;
}

export interface Sweep {
  readonly frequenciesHz: Float64Array;
  /** [R0, X0, R1, X1, …], Ω. */
  readonly impedance: Float64Array;
  /** One to a probe: [re0, im0, re1, im1, …], relative to the feed current. */
  readonly probes: readonly { readonly id: string; readonly current: Float64Array }[];
  /** One to a load: [re0, im0, …], relative to the feed current: what a choke carries. */
  readonly loadCurrents: readonly Float64Array[];
  readonly fitError: number;
}

/** A load's impedance: one for all frequencies, or [R0, X0, R1, X1, …] with one pair to a frequency. */
export type LoadOverFrequency = Complex | Float64Array;

/** The sweep with the loads the geometry named, or others in their places. */
export function withLoads(prepared: Prepared, loads: readonly LoadOverFrequency[] = prepared.loadOhms): Sweep {
  const { frequenciesHz, gapVolts, probeIds } = prepared;
  const count = frequenciesHz.length;
  if (loads.length !== prepared.loadOhms.length) throw new InputError('array-size', { loads: loads.length });
  for (const load of loads) {
    if (load instanceof Float64Array && load.length !== 2 * count)
      throw new InputError('array-size', { load: load.length });
  }
  const impedance = new Float64Array(2 * count);
  const probes = probeIds.map((id) => ({ id, current: new Float64Array(2 * count) }));
  const loadCurrents = loads.map(() => new Float64Array(2 * count));
  for (let f = 0; f < count; f++) {
    const loadOhms = loads.map((load) => (load instanceof Float64Array ? complex(load[2 * f], load[2 * f + 1]) : load));
    const { feed, currents } = stateAt(prepared, f, loadOhms);
    impedance[2 * f] = feed.impedance.re;
    impedance[2 * f + 1] = feed.impedance.im;
    const put = (to: Float64Array, port: number): void => {
      const relative = divide(currents[port], feed.current);
      to[2 * f] = relative.re;
      to[2 * f + 1] = relative.im;
    };
    for (let l = 0; l < loads.length; l++) put(loadCurrents[l], gapVolts.length + l);
    for (let p = 0; p < probes.length; p++) put(probes[p].current, gapVolts.length + loads.length + p);
  }
  return { frequenciesHz, impedance, probes, loadCurrents, fitError: prepared.fitError };
}

/** Parts of one sweep, in order of frequency, as one. */
export function joinPrepared(parts: readonly Prepared[]): Prepared {
  const join = (key: 'frequenciesHz' | 'yRe' | 'yIm'): Float64Array => {
    const whole = new Float64Array(parts.reduce((sum, part) => sum + part[key].length, 0));
    let at = 0;
    for (const part of parts) {
      whole.set(part[key], at);
      at += part[key].length;
    }
    return whole;
  };
  return {
    ...parts[0],
    frequenciesHz: join('frequenciesHz'),
    yRe: join('yRe'),
    yIm: join('yIm'),
    fitError: Math.max(...parts.map((part) => part.fitError)),
    solves: parts.reduce((sum, part) => sum + part.solves, 0),
  };
}
