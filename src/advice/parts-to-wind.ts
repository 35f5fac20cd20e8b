/** What each device of the chain is made of, or the device itself where the operator owns one that fits or it is bought whole. */
import { coaxIds } from '../catalog/line-ids';
import type { Dimensions } from './dimensions';
import type { Facts } from './facts';
import type { BuildFinding, Data, Link, Part, Said } from './finding';
import { type Drawer, partLine, say } from './part-line';
import { verdictsOf } from './verdicts';

/** Bond from the arrester to the main earth when nobody measured it, m; it should be as short as the wall allows. */
const BOND_M = 3;
/** Resistors in series across the feed line, for voltage and heat. Common practice. */
const DRAIN_RESISTORS = 3;

export function deviceParts(facts: Facts, dimensions: Dimensions, chain: readonly Link[], drawer: Drawer): Part[] {
  const owned = ownedDevices(facts, dimensions, chain);
  return chain.flatMap((link) => {
    if (owned.links.has(link)) return [whole(link, 1, owned.fitting[link.device])];
    if (link.build !== null) return wound(link, link.build, drawer, facts, meetsWire(link, chain));
    if (link.device === 'arrester') return arresterParts(facts, link);
    const isBought = link.device === 'choke' || link.device === 'transformer' || link.device === 'tuner';
    return isBought && link.buy.code !== 'buy-nothing' ? [whole(link, 0)] : []; // a tuner inside the radio is no part
  });
}

interface OwnedDevices {
  readonly links: ReadonlySet<Link>;
  /** Parts on hand that fit, used or not, by device. */
  readonly fitting: Readonly<Partial<Record<Link['device'], number>>>;
}

/** Devices that a part on hand fits, each part used once. */
function ownedDevices(facts: Facts, dimensions: Dimensions, chain: readonly Link[]): OwnedDevices {
  const owned = new Set<Link>();
  const fitting: Partial<Record<Link['device'], number>> = {};
  for (const { part, verdict } of verdictsOf(facts, chain, dimensions)) {
    const kind = facts.settled.onHand[part]?.part;
    if (verdict !== 'fits' || kind === undefined) continue;
    const device = kind === 'transformer' || kind === 'two-in-one' ? 'transformer' : 'choke';
    if (kind === 'core' || kind === 'wire' || kind === 'line') continue;
    fitting[device] = (fitting[device] ?? 0) + 1;
    const link = chain.find((each) => each.device === device && !owned.has(each));
    if (link !== undefined) owned.add(link);
  }
  return { links: owned, fitting };
}

const placeOf = ({ device, at, ratio, distanceM }: Link): Said =>
  say('for-device', { device, at, ratio: ratio ?? 0, distanceM: distanceM ?? 0 });

const whole = (link: Link, have: number, owned = have): Part =>
  partLine({
    item: say(`device-${link.device}`, { ratio: link.ratio ?? 0 }),
    quantity: 1,
    have,
    owned,
    for: placeOf(link),
    where: link.device === 'tuner' ? 'radio' : 'made',
  });

/** Wires, not coax, end at the antenna side of a transformer, of a choke for open-wire line, and of a choke with nothing before it. */
const meetsWire = (link: Link, [first]: readonly Link[]): boolean =>
  link.device === 'transformer' || link.ports?.in === 'balanced' || link === first;

/** Above it BNC gets warm, W. Common practice. */
const BNC_MOST_W = 100;

function wound(link: Link, build: BuildFinding, drawer: Drawer, { settled }: Facts, isAtWire: boolean): Part[] {
  const place = placeOf(link);
  const electrical = (
    item: Said,
    quantity: number,
    more: { unit?: Part['unit']; have?: number; owned?: number; or?: Said } = {},
  ): Part => partLine({ item, quantity, for: place, where: 'electrical', ...more });
  const parts: Part[] = [];
  if (build.core !== null) {
    const count = build.count ?? 1;
    const or = ringSubstitute(link);
    const owned = drawer.rings(build.core);
    const have = drawer.takeRings(build.core, count);
    parts.push(electrical(say('ring', { core: build.core }), count, { have, owned, or }));
  }
  if (build.conductor !== null && build.conductorLengthM !== null) {
    const coax = coaxIds.some((id) => id === build.conductor);
    const item = say(coax ? 'winding-coax' : 'winding-wire', { conductor: build.conductor });
    parts.push(
      electrical(item, build.conductorLengthM, { unit: 'metre', or: say(coax ? 'or-thin-coax' : 'or-enamelled') }),
    );
  }
  if (build.capacitorPf !== null)
    parts.push(electrical(say('capacitor', capacitorData(build.capacitorPf, settled.powerW)), 1));
  const otherSocket = say(settled.powerW > BNC_MOST_W ? 'or-large-socket' : 'or-bnc');
  return [
    ...parts,
    electrical(say('box'), 1, { or: say('or-junction-box') }),
    electrical(say('coax-socket'), isAtWire ? 1 : 2, { or: otherSocket }),
    electrical(say('wire-post'), isAtWire ? 2 : 0, { or: say('or-bolt') }),
  ];
}

const capacitorData = (capacitorPf: number, powerW: number): Data => ({ capacitorPf, kilovolts: powerW > 200 ? 3 : 1 });

/** The first other mix that meets the need as well, with its rings and turns. */
function ringSubstitute({ alternatives }: Link): Said {
  const other = alternatives.find(({ id, isEnough, isPlanned }) => id.startsWith('mix-') && isEnough && !isPlanned);
  if (other === undefined) return say('no-substitute');
  const { core, count, turns, secondaryTurns } = other.build;
  return say('or-other-ring', {
    core: core ?? '',
    count: count ?? 1,
    turns: turns ?? 0,
    secondaryTurns: secondaryTurns ?? 0,
  });
}

function arresterParts({ lineKind }: Facts, link: Link): Part[] {
  const place = placeOf(link);
  return [
    partLine({ item: say(`arrester-${lineKind}`), quantity: 1, for: place, where: 'electrical' }),
    partLine({
      item: say('bond-wire'),
      quantity: BOND_M,
      unit: 'metre',
      for: place,
      or: say('or-thicker-bond'),
      where: 'electrical',
    }),
    partLine({ item: say('earth-clamp'), quantity: 1, for: place, where: 'electrical' }),
  ];
}

/** Wires with no path to ground of their own: no transformer, and no closed loop of wire. Portable stations short the plug by hand. */
export function drainParts({ system, settled }: Facts, chain: readonly Link[]): Part[] {
  const closed = system === 'full-wave-loop' || system === 'folded-dipole';
  const transformed = chain.some(({ device }) => device === 'transformer');
  if (closed || transformed || settled.indoors || settled.station === 'portable') return [];
  return [
    partLine({
      item: say('drain-resistor'),
      quantity: DRAIN_RESISTORS,
      for: say('for-drain'),
      or: say('or-drain-choke'),
      where: 'electrical',
    }),
  ];
}
