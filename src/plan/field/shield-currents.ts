/**
 * Currents on the outside of the coax and the duty of chokes, from a prepared solution: rms with 100 W accepted at the feed gap.
 *
 *   I_feed = √(100 W / R)      I = |I / I_feed| · I_feed      choke: U = I |Z|, P = I² R_choke
 *
 * Source behind a choke: with the feed voltage held, I(Z) = U₀ / (Z₀ + Z) at the choke's port, so two choke values give U₀ and Z₀; U₀ is then
 * scaled so that the planned choke carries its current at 100 W. Exact there, and near it while the feed resistance stays put.
 */
import type { ShieldState } from '../../advice/field-facts';
import { add, type Complex, complex, divide, magnitude, multiply, subtract } from '../../base/complex';
import type { CommonModeSource } from '../../physics/choke';
import type { Prepared, Sweep } from '../../solver/prepared';
import { type FieldSite, loadsOf, type PlacedChoke } from './field-site';
import type { FieldInstrument } from './instrument';

export const POWER_W = 100;
/** Below this part of the feed current there is none to speak of. */
const NONE = 1e-9;

export interface Operation {
  readonly z: Complex;
  readonly feedCurrentA: number;
  /** Null without coax. */
  readonly shield: ShieldState | null;
}

const at = (values: Float64Array, f: number): Complex => complex(values[2 * f] ?? 0, values[2 * f + 1] ?? 0);

/** One prepared antenna with a set of chokes on it, at frequency number `f`. */
export function operate(
  instrument: FieldInstrument,
  site: FieldSite,
  prepared: Prepared,
  chokes: readonly PlacedChoke[],
  f = 0,
): Operation {
  const loads = loadsOf(site, chokes);
  const sweep = instrument.withLoads(prepared, loads);
  const z = at(sweep.impedance, f);
  const feedCurrentA = Math.sqrt(POWER_W / z.re);
  return { z, feedCurrentA, shield: shieldState(site, sweep, loads, feedCurrentA, f) };
}

function shieldState(
  site: FieldSite,
  sweep: Sweep,
  loads: readonly Complex[],
  feedCurrentA: number,
  f: number,
): ShieldState | null {
  const part = (id: string): number | null => {
    const probe = sweep.probes.find((entry) => entry.id === id);
    return probe === undefined ? null : magnitude(at(probe.current, f));
  };
  const entry = part('entry');
  if (entry === null) return null;
  const radio = part('radio') ?? entry;
  const own = site.wires.loads.length;
  const chokes = site.portsM.flatMap((distanceM, i) => {
    const z = loads[own + i];
    const current = sweep.loadCurrents[own + i];
    if (z === undefined || current === undefined || magnitude(z) === 0) return [];
    const amperes = magnitude(at(current, f)) * feedCurrentA;
    return [{ distanceM, ohm: magnitude(z), voltageV: amperes * magnitude(z), heatW: amperes ** 2 * z.re }];
  });
  return {
    entryMa: 1000 * entry * feedCurrentA,
    entryDb: 20 * Math.log10(Math.max(entry, NONE)),
    radioMa: radio < NONE ? 0 : 1000 * radio * feedCurrentA,
    radioDb: radio < NONE ? null : 20 * Math.log10(radio),
    chokes,
  };
}

/** What drives the first of these chokes, the others in their places; null where no choke stands. */
export function sourceOfFirst(
  instrument: FieldInstrument,
  site: FieldSite,
  prepared: Prepared,
  chokes: readonly PlacedChoke[],
): CommonModeSource | null {
  const [first, ...others] = chokes;
  const planned = first === undefined ? undefined : operate(instrument, site, prepared, chokes).shield?.chokes[0];
  if (first === undefined || planned === undefined) return null;
  const port = site.wires.loads.length + site.portsM.indexOf(planned.distanceM);
  const amperes = (z: Complex): Complex => {
    const sweep = instrument.withLoads(prepared, loadsOf(site, [{ ...first, z }, ...others]));
    const current = sweep.loadCurrents[port];
    return current === undefined ? complex(0) : divide(at(current, 0), at(sweep.impedance, 0)); // of one volt
  };
  const [za, zb] = [first.z, multiply(first.z, complex(0.5))];
  const [ia, ib] = [amperes(za), amperes(zb)];
  const change = subtract(ib, ia);
  if (magnitude(change) < NONE * magnitude(ia) || magnitude(ia) === 0) return null;
  const behind = divide(subtract(multiply(ia, za), multiply(ib, zb)), change);
  const currentA = planned.voltageV / planned.ohm;
  return { openV: currentA * magnitude(add(behind, za)), impedance: behind };
}
