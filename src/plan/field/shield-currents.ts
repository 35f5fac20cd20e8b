/**
 * Currents on the outside of the coax and the duty of chokes, from a prepared solution: rms with 100 W accepted at the feed gap.
 *
 *   I_feed = √(100 W / R)      I = |I / I_feed| · I_feed      choke: U = I |Z|, P = I² R_choke
 *
 * Source behind a choke: with the feed voltage held, I(Z) = U₀ / (Z₀ + Z) at the choke's port, so two choke values give U₀ and Z₀; U₀ is then
 * scaled so that the planned choke carries its current at 100 W. Exact there, and near it while the feed resistance stays put.
 */
import type { OpenCoax, ShieldState } from '../../advice/field-facts';
import { add, type Complex, complex, divide, magnitude, multiply, subtract } from '../../base/complex';
import type { CommonModeSource } from '../../physics/choke';
import { stateAt } from '../../physics/port-network';
import { loadsOf, type PlacedChoke, portOf } from './field-site';

export const POWER_W = 100;
/** Below this part of the feed current there is none to speak of. */
const NONE = 1e-9;

export interface Operation {
  readonly z: Complex;
  readonly feedCurrentA: number;
  /** Null without coax. */
  readonly shield: ShieldState | null;
}

/** One antenna with a set of chokes on its coax, at frequency number `f`. */
export function operate(coax: OpenCoax, chokes: readonly PlacedChoke[], f = 0): Operation {
  const loads = loadsOf(coax, chokes);
  const { feed, currents } = stateAt(coax.antenna, f, loads);
  const feedCurrentA = Math.sqrt(POWER_W / feed.impedance.re);
  const relative = currents.map((current) => magnitude(current) / magnitude(feed.current));
  return { z: feed.impedance, feedCurrentA, shield: shieldState(coax, loads, relative, feedCurrentA) };
}

/** `relative`: current at every port against the feed current. */
function shieldState(
  { antenna, siteOhms, portsM }: OpenCoax,
  loads: readonly Complex[],
  relative: readonly number[],
  feedCurrentA: number,
): ShieldState | null {
  const firstLoad = antenna.gapVolts.length;
  const probe = (id: string): number | undefined => {
    const index = antenna.probeIds.indexOf(id);
    return index < 0 ? undefined : relative[firstLoad + loads.length + index];
  };
  const entry = probe('entry');
  if (entry === undefined) return null;
  const chokes = portsM.flatMap((distanceM, i) => {
    const z = loads[siteOhms.length + i];
    const current = relative[firstLoad + siteOhms.length + i];
    if (z === undefined || current === undefined || magnitude(z) === 0) return [];
    const amperes = current * feedCurrentA;
    return [{ distanceM, ohm: magnitude(z), voltageV: amperes * magnitude(z), heatW: amperes ** 2 * z.re }];
  });
  const foot = probe('foot');
  return {
    ...shieldCurrent(entry, probe('radio') ?? entry, feedCurrentA),
    ...(foot === undefined ? {} : { footMa: 1000 * foot * feedCurrentA }),
    chokes,
  };
}

/** In mA and dB, from parts of the feed current. */
export const shieldCurrent = (entry: number, radio: number, feedCurrentA: number) => ({
  entryMa: 1000 * entry * feedCurrentA,
  entryDb: 20 * Math.log10(Math.max(entry, NONE)),
  radioMa: radio < NONE ? 0 : 1000 * radio * feedCurrentA,
  radioDb: radio < NONE ? null : 20 * Math.log10(radio),
});

/** What drives the choke number `index` of these, the others in their places; null where no choke stands. */
export function sourceBehindChoke(
  coax: OpenCoax,
  chokes: readonly PlacedChoke[],
  index: number,
): CommonModeSource | null {
  const choke = chokes[index];
  const port = choke === undefined ? -1 : portOf(coax, choke.distanceM);
  if (choke === undefined || port < 0 || magnitude(choke.z) === 0) return null;
  const place = coax.antenna.gapVolts.length + coax.siteOhms.length + port;
  const withZ = (z: Complex) =>
    stateAt(
      coax.antenna,
      0,
      loadsOf(
        coax,
        chokes.map((each, i) => (i === index ? { ...each, z } : each)),
      ),
    );
  const [za, zb] = [choke.z, multiply(choke.z, complex(0.5))];
  const now = withZ(za);
  const [ia, ib] = [now.currents[place] ?? complex(0), withZ(zb).currents[place] ?? complex(0)];
  const change = subtract(ib, ia);
  if (magnitude(change) < NONE * magnitude(ia) || magnitude(ia) === 0) return null;
  const behind = divide(subtract(multiply(ia, za), multiply(ib, zb)), change);
  const feedCurrentA = Math.sqrt(POWER_W / now.feed.impedance.re);
  const currentA = (magnitude(ia) / magnitude(now.feed.current)) * feedCurrentA;
  return { openV: currentA * magnitude(add(behind, za)), impedance: behind };
}
