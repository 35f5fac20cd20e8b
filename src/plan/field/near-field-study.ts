/** Fields where people may be, from the solution of one band: the strongest at each distance, part by part. */
import type { NearField } from '../../advice/field-facts';
import { C0, ETA0 } from '../../base/constants';
import { type AntennaPart, antennaParts } from '../../design/antenna-part';
import type { Vector } from '../../geometry/layout';
import { type NearPlaces, nearPlaces } from '../../geometry/near-places';
import { gainNumber } from '../../physics/exposure-screen';
import type { Solution } from '../../solver/geometry';
import type { FieldSite } from './field-site';
import { POWER_W } from './shield-currents';

export const placesNear = (site: FieldSite, frequencyMHz: number, reachM: number): NearPlaces =>
  nearPlaces(site.wires.wires, feedOf(site), C0 / (frequencyMHz * 1e6), reachM);

function feedOf({ wires }: FieldSite): Vector {
  const [gap] = wires.sources;
  const fed = wires.wires.find(({ id }) => id === gap?.wire);
  if (fed === undefined) throw new TypeError('a site is fed on one of its wires');
  return gap?.at === 'to' ? fed.to : fed.from;
}

/** `fields` of the solution belong to the points of `places`, in order, at 100 W. */
export function nearFieldOf(places: NearPlaces, { fields, gainDbi }: Solution): NearField {
  const empty = (count: number) => ({ electric: zeros(count), magnetic: zeros(count) });
  const parts = new Map<AntennaPart, Record<'around' | 'ground', ReturnType<typeof empty>>>();
  places.rays.forEach(({ part, ...shells }, index) => {
    const field = fields[index];
    if (field === undefined) return;
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
  if (radiator !== undefined) raiseToFarField(radiator.around, places.aroundM, gainDbi);
  return {
    aroundM: places.aroundM,
    groundM: places.groundM,
    parts: antennaParts.flatMap((part) => {
      const found = parts.get(part);
      return found === undefined ? [] : [{ part, ...found }];
    }),
  };
}

/** At the last distance at least what the pattern's peak would give there: lobes of the ground's reflection form farther out. */
function raiseToFarField(
  { electric, magnetic }: { readonly electric: number[]; readonly magnetic: number[] },
  distancesM: readonly number[],
  gainDbi: number,
): void {
  const last = distancesM.length - 1;
  const density = (POWER_W * gainNumber(gainDbi)) / (4 * Math.PI * (distancesM[last] ?? 1) ** 2);
  raise(electric, last, Math.sqrt(density * ETA0));
  raise(magnetic, last, Math.sqrt(density / ETA0));
}

const zeros = (count: number): number[] => new Array<number>(count).fill(0);

function raise(list: number[], index: number, value: number): void {
  list[index] = Math.max(list[index] ?? 0, value);
}
