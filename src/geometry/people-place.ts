/** Which place of the site a point beside a wire belongs to, for people who stand or sit there. */
import type { PeoplePlace } from '../design/antenna-part';
import type { Wire } from '../solver/geometry';
import { distance, type Vector } from './layout';

/** Named points of a site; null where there is no coax. */
export interface Spots {
  readonly feed: Vector;
  readonly entry: Vector | null;
  readonly radio: Vector | null;
}

/** Within this of a named point a body is at it. */
const AT_IT_M = 1;

/** `at` is the point of the wire, `ends` the antenna's free ends. */
export function peoplePlaceOf(
  { id }: Wire,
  at: Vector,
  { feed, entry, radio }: Spots,
  ends: readonly Vector[],
): PeoplePlace {
  const isNear = (spot: Vector | null): boolean => spot !== null && distance(at, spot) <= AT_IT_M;
  if (/^shield/.test(id) && isNear(radio)) return 'radio';
  if (isNear(entry)) return 'entry';
  if (/^(mains|earth|rod)/.test(id)) return 'house';
  if (isNear(feed)) return 'feed-point';
  if (/^counterpoise/.test(id)) return 'counterpoise';
  if (/^(radial|hub)/.test(id)) return 'radials';
  if (/^shield/.test(id)) return isIndoors(at, entry, radio) ? 'indoors' : 'coax-run';
  return ends.some(isNear) ? 'wire-end' : 'under-wire';
}

/** The last stretch of the coax runs straight from entry to radio. */
function isIndoors(at: Vector, entry: Vector | null, radio: Vector | null): boolean {
  if (entry === null || radio === null) return false;
  return distance(entry, at) + distance(at, radio) < distance(entry, radio) + 0.01;
}
