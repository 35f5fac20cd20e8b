/**
 * The operator's antenna as wires for the field solver: radiator, what it works against, the outside of the coax, and what the house ties to
 * its far end. Model of the house end and of the coax run: our own field computations (average ground, mains lead 10 m, earth as 50 Ω in a
 * 1.4 m lead to a star of six 4 m wires at 0.05 m).
 */
import type { Gap, Load, Place, Probe, Wire } from '../solver/geometry';
import { type CoaxPoint, coaxPath } from './coax-path';
import { type Conductor, distance, GROUND_WIRE_M, type Layout, plus, type Vector } from './layout';
import { type Arm, armsOf, feedPointOf } from './radiator-wires';

export interface SiteWires {
  readonly wires: readonly Wire[];
  readonly sources: readonly Gap[];
  /** Loads that belong to the site itself: the resistance of an earth rod. */
  readonly loads: readonly Load[];
  readonly probes: readonly Probe[];
  /** Length of the coax outside from the feed point to the radio, m; 0 without coax. */
  readonly shieldM: number;
  /** The place on the coax outside so far from the feed point along it; null beyond its ends. */
  placeOnShield(alongM: number): Place | null;
}

const MAINS_LEAD_M = 10;
const COPPER_S_PER_M = 5.8e7;
const EARTH_OHM = 50;

/** Null for an antenna whose shape is not known. */
export function siteWires(layout: Layout): SiteWires | null {
  const arms = armsOf(layout);
  if (arms === null) return null;
  const feed = feedPointOf(layout);
  const wires = radiatorWires(layout, arms, feed);
  wires.push(...returnWires(layout, feed));
  const loads: Load[] = [];
  if (layout.returnPath === 'ground-rod') {
    wires.push(...rod('rod', feed, beside(feed), layout.wire.radiusM));
    loads.push({ wire: 'rod', at: 'from', impedance: { r: EARTH_OHM, x: 0 } });
  }
  const path =
    layout.coax === null
      ? []
      : coaxPath(feed, layout.coax, layout.radiator === 'vertical' && layout.fedAt === 'centre');
  const shield = layout.coax === null ? [] : shieldWires(path, layout.coax.shieldRadiusM);
  wires.push(...shield);
  if (layout.coax !== null) {
    const house = houseWires(path, layout.coax.shieldRadiusM, layout.coax.houseEarth);
    wires.push(...house.wires);
    loads.push(...house.loads);
  }
  const placeOnShield = placeOn(path, shield);
  return {
    wires,
    sources: sourcesOf(layout, arms),
    loads,
    probes: probesOf(path, placeOnShield),
    shieldM: path.at(-1)?.alongM ?? 0,
    placeOnShield,
  };
}

function wireBetween(
  id: string,
  from: Vector,
  to: Vector,
  { radiusM, conductivitySPerM, insulation }: Conductor,
): Wire {
  return { id, from, to, radiusM, conductivitySPerM, ...(insulation === null ? {} : { insulation }) };
}

/** Between the two sides of a feed point with several pairs, so that one gap drives them all. */
const BRIDGE = 'bridge';
const BRIDGE_M = 0.02;

function radiatorWires(layout: Layout, arms: readonly Arm[], feed: Vector): Wire[] {
  const { wire, shieldAtMidGap, furtherPairsM } = layout;
  if (furtherPairsM.length === 0)
    return arms.flatMap((arm, index) => armWires(arm, wire, shieldAtMidGap && index === 1));
  const aside: Vector = [BRIDGE_M, 0, 0];
  const driven = ({ id, points }: Arm): Arm => ({ id, points: points.map((point) => plus(point, aside)) });
  return [
    wireBetween(BRIDGE, feed, plus(feed, aside), wire),
    ...arms.flatMap((arm) => armWires(arm.id.startsWith('arm2') ? driven(arm) : arm, wire, false)),
  ];
}

/** `inwards` turns a single stretch so that it runs head to tail with the other arm through the feed point. */
function armWires({ id, points }: Arm, conductor: Conductor, inwards: boolean): Wire[] {
  return points.slice(1).map((to, index) => {
    const from = points[index] ?? to;
    const name = index === 0 ? id : `${id}.${index + 1}`;
    return inwards && index === 0 ? wireBetween(name, to, from, conductor) : wireBetween(name, from, to, conductor);
  });
}

function sourcesOf({ shieldAtMidGap, furtherPairsM }: Layout, arms: readonly Arm[]): readonly Gap[] {
  const [driven, other] = arms;
  if (driven === undefined) return [];
  if (furtherPairsM.length > 0) return [{ wire: BRIDGE, at: 'from', volts: { re: 1, im: 0 } }];
  if (!shieldAtMidGap || other === undefined) return [{ wire: driven.id, at: 'from', volts: { re: 1, im: 0 } }];
  return [
    { wire: other.id, at: 'to', volts: { re: 0.5, im: 0 } },
    { wire: driven.id, at: 'from', volts: { re: 0.5, im: 0 } },
  ];
}

/** Counterpoise wires slope from the box to the ground and run on along it, away from the radiator; radials lie round the base. */
function returnWires({ returnPath, radials, counterpoisesM, wire }: Layout, feed: Vector): Wire[] {
  if (returnPath === 'counterpoise-wire')
    return counterpoisesM.flatMap((lengthM, i) => counterpoise(i, lengthM, feed, wire));
  const raised = returnPath === 'elevated-radials';
  if (radials === null || radials.count === 0 || !(raised || returnPath === 'ground-radials')) return [];
  const hub: Vector = raised ? feed : beside(feed);
  const ends = Array.from({ length: radials.count }, (_, i) => {
    const angle = ((i + 0.5) * 2 * Math.PI) / radials.count;
    return plus(hub, [Math.cos(angle), Math.sin(angle), 0], radials.lengthM);
  });
  const spokes = ends.map((end, i) => wireBetween(`radial${i + 1}`, hub, end, wire));
  return raised ? spokes : [wireBetween('hub', feed, hub, wire), ...spokes];
}

/** On the ground under the feed point, a little aside so that the lead keeps clear of coax and arms. */
const beside = (feed: Vector): Vector => [feed[0] - 0.2, feed[1] - 0.2, GROUND_WIRE_M];

const COUNTERPOISE_HEIGHT_M = 0.1;
/** Metres down and aside for each metre of wire between box and ground: steep, yet clear of coax that hangs straight down. */
const STEEP = { down: 0.893, aside: 0.45 } as const;

function counterpoise(index: number, lengthM: number, feed: Vector, wire: Conductor): Wire[] {
  const angle = Math.PI + (index % 2 === 0 ? -1 : 1) * 0.35 * (Math.floor(index / 2) + 1);
  const away: Vector = [Math.cos(angle), Math.sin(angle), 0];
  const slantM = Math.min(Math.max(feed[2] - COUNTERPOISE_HEIGHT_M, 0) / STEEP.down, lengthM);
  const foot = plus(plus(feed, [0, 0, -1], slantM * STEEP.down), away, slantM * STEEP.aside);
  const end = plus(foot, away, lengthM - slantM);
  const corners = slantM < 0.1 ? [plus(feed, away, lengthM)] : lengthM - slantM < 0.1 ? [foot] : [foot, end];
  return corners.map((corner, i) => {
    const id = i === 0 ? `counterpoise${index + 1}` : `counterpoise${index + 1}.${i + 1}`;
    return wireBetween(id, corners[i - 1] ?? feed, corner, wire);
  });
}

/** A lead to a star of six 4 m wires just above the soil: the nearest a solver over soil comes to an earth rod. */
function rod(id: string, from: Vector, centre: Vector, radiusM: number): Wire[] {
  const lead: Conductor = { radiusM, conductivitySPerM: COPPER_S_PER_M, insulation: null };
  const star = Array.from({ length: 6 }, (_, i) => {
    const angle = ((i + 0.25) * Math.PI) / 3;
    return wireBetween(`${id}-star${i + 1}`, centre, plus(centre, [Math.cos(angle), Math.sin(angle), 0], 4), {
      ...lead,
      radiusM: 0.001,
    });
  });
  return [wireBetween(id, from, centre, lead), ...star];
}

const shieldConductor = (radiusM: number): Conductor => ({
  radiusM,
  conductivitySPerM: COPPER_S_PER_M,
  insulation: null,
});

const shieldWires = (path: readonly CoaxPoint[], radiusM: number): Wire[] =>
  path.slice(1).map(({ point }, index) => {
    const from = path[index]?.point ?? point;
    return wireBetween(`shield${index + 1}`, from, point, shieldConductor(radiusM));
  });

function houseWires(path: readonly CoaxPoint[], radiusM: number, houseEarth: string) {
  const wires: Wire[] = [];
  const loads: Load[] = [];
  const radio = path.at(-1)?.point;
  const entry = path.find(({ id }) => id === 'entry')?.point;
  const before = path.at(-2)?.point;
  if (radio === undefined || entry === undefined || before === undefined) return { wires, loads };
  const ahead = unit(before, radio);
  if (houseEarth === 'mains' || houseEarth === 'both')
    wires.push(wireBetween('mains', radio, plus(radio, ahead, MAINS_LEAD_M), shieldConductor(radiusM)));
  if (houseEarth === 'earth' || houseEarth === 'both') {
    const centre: Vector = [entry[0] + ahead[0], entry[1] + ahead[1], GROUND_WIRE_M];
    wires.push(...rod('earth', entry, centre, radiusM));
    loads.push({ wire: 'earth', at: 'from', impedance: { r: EARTH_OHM, x: 0 } });
  }
  return { wires, loads };
}

function unit(from: Vector, to: Vector): Vector {
  const level: Vector = [to[0] - from[0], to[1] - from[1], 0];
  const size = Math.hypot(level[0], level[1]);
  return size < 1e-9 ? [0, 1, 0] : [level[0] / size, level[1] / size, 0];
}

const placeOn =
  (path: readonly CoaxPoint[], shield: readonly Wire[]) =>
  (alongM: number): Place | null => {
    for (let i = 1; i < path.length; i++) {
      const start = path[i - 1];
      const end = path[i];
      const wire = shield[i - 1];
      if (start === undefined || end === undefined || wire === undefined) return null;
      if (alongM > end.alongM + 1e-9) continue;
      const whole = distance(start.point, end.point);
      const into = Math.max(alongM - start.alongM, 0);
      if (into < 0.02) return { wire: wire.id, at: 'from' };
      return into > whole - 0.02 ? { wire: wire.id, at: 'to' } : { wire: wire.id, distanceM: into };
    }
    return null;
  };

function probesOf(path: readonly CoaxPoint[], placeOnShield: (alongM: number) => Place | null): Probe[] {
  return path.flatMap(({ id, alongM }) => {
    const place = id === 'end-of-run' ? null : placeOnShield(alongM);
    return place === null ? [] : [{ id, ...place }];
  });
}
