/**
 * One antenna as the solver takes it, with a port at every place along the coax where a choke may stand. A port without a choke is a load of
 * 0 Ω; the site's own loads (an earth rod) come first.
 */
import type { OpenCoax } from '../../advice/field-facts';
import { type Complex, complex } from '../../base/complex';
import { grounds } from '../../catalog/ground';
import type { GroundId } from '../../catalog/ground-ids';
import { distance, type Layout, type Vector } from '../../geometry/layout';
import { feedPointOf } from '../../geometry/radiator-wires';
import { type SiteWires, siteWires } from '../../geometry/site-wires';
import type { Geometry } from '../../solver/geometry';

/** Where loads may stand: those of the site, and the places along the coax. */
export type Places = Pick<OpenCoax, 'siteOhms' | 'portsM'>;

export interface FieldSite extends Places {
  readonly ground: Geometry['ground'];
  readonly wires: SiteWires;
}

export interface PlacedChoke {
  readonly distanceM: number;
  readonly z: Complex;
}

/** Two ports nearer to each other are one; none stands nearer to the far end, which may be open. */
export const PORT_SPACING_M = 0.05;
const BEFORE_END_M = 0.3;

/** Null without a shape, and for a feed point where nothing but the radiator meets: no current could flow into it. */
export function fieldSite(layout: Layout, ground: GroundId, chokesAtM: readonly number[]): FieldSite | null {
  const wires = siteWires(layout);
  if (wires === null) return null;
  const feed = feedPointOf(layout);
  const meets = (end: Vector): boolean => distance(end, feed) < 1e-3;
  const ends = wires.wires.flatMap(({ from, to }) => [from, to]).filter(meets);
  if (ends.length < 2) return null;
  const soil = grounds[ground];
  return {
    ground: { kind: 'soil', epsilonR: soil.epsilonR.value, sigmaSPerM: soil.sigmaSPerM.value },
    wires,
    siteOhms: wires.loads.map(({ impedance }) => complex(impedance.r, impedance.x)),
    portsM: portsOn(wires, chokesAtM),
  };
}

function portsOn(wires: SiteWires, chokesAtM: readonly number[]): readonly number[] {
  const lastM = wires.shieldM - BEFORE_END_M;
  if (lastM < PORT_SPACING_M) return [];
  const inside = chokesAtM.map((metres) => Math.min(metres, lastM)).sort((a, b) => a - b);
  return inside.filter((metres, i) => i === 0 || metres - (inside[i - 1] ?? 0) > PORT_SPACING_M);
}

/** The port that a choke so far along the coax belongs to; -1 where there is none. */
export const portOf = ({ portsM }: Places, distanceM: number): number =>
  portsM.reduce(
    (best, metres, i) =>
      best < 0 || Math.abs(metres - distanceM) < Math.abs((portsM[best] ?? 0) - distanceM) ? i : best,
    -1,
  );

/** Impedance of every load in the solver's order. Two chokes at one port add up. */
export function loadsOf(places: Places, chokes: readonly PlacedChoke[]): Complex[] {
  const ports = places.portsM.map(() => complex(0));
  for (const { distanceM, z } of chokes) {
    const port = portOf(places, distanceM);
    const there = ports[port];
    if (there !== undefined) ports[port] = complex(there.re + z.re, there.im + z.im);
  }
  return [...places.siteOhms, ...ports];
}

export function geometryOf(site: FieldSite, frequencyMHz: number, chokes: readonly PlacedChoke[] = []): Geometry {
  const { wires, ground, portsM } = site;
  const loads = loadsOf(site, chokes);
  const places = [
    ...wires.loads,
    ...portsM.flatMap((metres) => {
      const place = wires.placeOnShield(metres);
      return place === null ? [] : [place];
    }),
  ];
  return {
    frequencyMHz,
    ground,
    wires: wires.wires,
    sources: wires.sources,
    loads: places.map(({ wire, distanceM, fraction, at }, i) => ({
      wire,
      ...(distanceM === undefined ? {} : { distanceM }),
      ...(fraction === undefined ? {} : { fraction }),
      ...(at === undefined ? {} : { at }),
      impedance: { r: loads[i]?.re ?? 0, x: loads[i]?.im ?? 0 },
    })),
    probes: wires.probes,
  };
}
