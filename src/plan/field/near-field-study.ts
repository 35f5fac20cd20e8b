/** Fields where people may be, from the solution of one band: the strongest at each distance, part by part. */
import type { NearField } from '../../advice/field-facts';
import { C0, ETA0 } from '../../base/constants';
import { type AntennaPart, antennaParts, type PeoplePlace, peoplePlaces } from '../../design/antenna-part';
import type { Vector } from '../../geometry/layout';
import { type NearPlaces, nearPlaces } from '../../geometry/near-places';
import type { Spots } from '../../geometry/people-place';
import { gainNumber } from '../../physics/exposure-screen';
import type { Solution } from '../../solver/geometry';
import type { FieldSite } from './field-site';
import { POWER_W } from './shield-currents';

/** Of the power, however lossy the chokes. */
const MOST_IN_LOADS = 0.95;

export const placesNear = (site: FieldSite, frequencyMHz: number, reachM: number): NearPlaces =>
  nearPlaces(site.wires.wires, spotsOf(site), C0 / (frequencyMHz * 1e6), reachM);

/** The feed point, and where the coax enters and ends, by the solver's own probes there. */
function spotsOf(site: FieldSite): Spots {
  const { probes, wires } = site.wires;
  const spot = (id: 'entry' | 'radio'): Vector | null => {
    const probe = probes.find((each) => each.id === id);
    const wire = wires.find((each) => each.id === probe?.wire);
    return wire === undefined ? null : probe?.at === 'from' ? wire.from : wire.to;
  };
  return { feed: feedOf(site), entry: spot('entry'), radio: spot('radio') };
}

function feedOf({ wires }: FieldSite): Vector {
  const [gap] = wires.sources;
  const fed = wires.wires.find(({ id }) => id === gap?.wire);
  if (fed === undefined) throw new TypeError('a site is fed on one of its wires');
  return gap?.at === 'to' ? fed.to : fed.from;
}

/**
 * `fields` of the solution belong to the points of `places`, in order, at 100 W. What chokes and an earth turn into heat is given no credit: on a
 * loop much smaller than a wave that is most of the power, and better chokes would send it into the loop.
 */
export function nearFieldOf(places: NearPlaces, { fields, gainDbi, powerShare }: Solution): NearField {
  const uncredited = 1 / Math.sqrt(1 - Math.min(Math.max(powerShare.loads, 0), MOST_IN_LOADS));
  const empty = (count: number) => ({ electric: zeros(count), magnetic: zeros(count) });
  const parts = new Map<AntennaPart, Record<'around' | 'ground', ReturnType<typeof empty>>>();
  const people = new Map<PeoplePlace, { electric: number; magnetic: number }>();
  places.rays.forEach(({ part, place, ...shells }, index) => {
    const solved = fields[index];
    if (solved === undefined) return;
    const field = {
      electricVPerM: uncredited * solved.electricVPerM,
      magneticAPerM: uncredited * solved.magneticAPerM,
    };
    if (place !== null) {
      const before = people.get(place) ?? { electric: 0, magnetic: 0 };
      people.set(place, {
        electric: Math.max(before.electric, field.electricVPerM),
        magnetic: Math.max(before.magnetic, field.magneticAPerM),
      });
    }
    const known = parts.get(part) ?? { around: empty(places.aroundM.length), ground: empty(places.groundM.length) };
    parts.set(part, known);
    for (const family of ['around', 'ground'] as const) {
      const shell = shells[family];
      if (shell === null) continue;
      raise(known[family].electric, shell, field.electricVPerM);
      raise(known[family].magnetic, shell, field.magneticAPerM);
    }
  });
  const radiator = parts.get('radiator');
  if (radiator !== undefined) raiseToFarField(radiator.around, places.aroundM, gainDbi, uncredited);
  return {
    aroundM: places.aroundM,
    groundM: places.groundM,
    parts: antennaParts.flatMap((part) => {
      const found = parts.get(part);
      return found === undefined ? [] : [{ part, ...found }];
    }),
    places: peoplePlaces.flatMap((place) => {
      const found = people.get(place);
      return found === undefined ? [] : [{ place, ...found }];
    }),
  };
}

/** At the last distance at least what the pattern's peak would give there: lobes of the ground's reflection form farther out. */
function raiseToFarField(
  { electric, magnetic }: { readonly electric: number[]; readonly magnetic: number[] },
  distancesM: readonly number[],
  gainDbi: number,
  uncredited: number,
): void {
  const last = distancesM.length - 1;
  const density = (POWER_W * gainNumber(gainDbi)) / (4 * Math.PI * (distancesM[last] ?? 1) ** 2);
  raise(electric, last, uncredited * Math.sqrt(density * ETA0));
  raise(magnetic, last, uncredited * Math.sqrt(density / ETA0));
}

const zeros = (count: number): number[] => new Array<number>(count).fill(0);

function raise(list: number[], index: number, value: number): void {
  list[index] = Math.max(list[index] ?? 0, value);
}
