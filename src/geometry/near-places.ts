/**
 * Places round an antenna where its fields are asked for, so that no place where a limit is passed is missed: rays from every wire, the
 * radiator's as well as counterpoise, radials and the outside of the coax, with points at distances that grow by at most six tenths.
 *
 *   around   from stations along each wire and from its ends, square to it, slanting and straight on, at every height above the ground
 *   ground   stations seen from above: level to both sides and on beyond the ends, at foot and head of a body, 0 and 2 m
 *   place    the nearest of these, at the wire's own height too where a body reaches it: where people may be
 *
 * Stations stand no farther apart than a tenth of a wave, or half the distance looked at where that is more; both ends have more. Between two a
 * standing wave hides at most 1 − cos 18° = 5 %. A ray ends where another wire comes nearer, and counts there as if it had gone the whole step.
 * Against 3000 blind points each round seven antennas (dipoles high and low, sloping and bent end-feds, vertical, loop; first band to harmonics,
 * out to the reach of 1500 W) the strongest field missed was 5.0 % above what this search says of its distance: within FIELD_MARGIN of
 * advice/near-field.
 */
import type { AntennaPart, PeoplePlace } from '../design/antenna-part';
import type { Point, Wire } from '../solver/geometry';
import { distance, plus, type Vector } from './layout';
import { peoplePlaceOf, type Spots } from './people-place';

export interface NearPlaces {
  readonly points: readonly Point[];
  /** To a point: the part it belongs to, and the number of its distance in `aroundM` and in `groundM`, if it counts there. */
  readonly rays: readonly {
    readonly part: AntennaPart;
    readonly around: number | null;
    readonly ground: number | null;
    /** Where people may be, an arm's length from the wire. */
    readonly place: PeoplePlace | null;
  }[];
  /** From the nearest part; seen from above for `ground`, whose first distance is 0. */
  readonly aroundM: readonly number[];
  readonly groundM: readonly number[];
}

/** Nearer than this nobody stays: touching distance. */
export const TOUCHING_M = 0.5;
const GROWTH = 1.6;
const WAVE_PART = 10;
/** Part of its distance by which a point may be nearer to another wire. */
const PURE = 0.9;
/** Of a step between two distances, to where another wire is as near. */
const HALVINGS = 5;
const FOOT_M = 0.05;
const HEAD_M = 2;
/** Below this a wire lies on the ground, for a body beside it. */
const LYING_M = 0.5;
/**
 * From here outward the lobes of the ground's reflection count, and rays go out slanting too: nearer than a quarter of the wire's height what
 * the ground sends back is less than a seventh of what the wire does.
 */
const SLANTING_FROM_M = 1.5;
const SLANTING_FROM_HEIGHT = 1 / 4;
/** From half the wire's height outward those lobes are sharp: four rays for each wavelength in a circle of that height. */
const LOBES_FROM_HEIGHT = 1 / 2;
const RAYS_PER_TURN = 4;
/** Of many like wires (radials, the star of an earth) these are enough. */
const MOST_LIKE = 4;

/** Distances that grow evenly; one of them reaches from the highest wire to the ground, where rays end. */
function shellsM(reachM: number, topM: number): number[] {
  const steps = Math.ceil(Math.log(topM / TOUCHING_M) / Math.log(GROWTH));
  const growth = steps > 1 ? (topM / TOUCHING_M) ** (1 / steps) : GROWTH;
  const count = Math.max(4, Math.ceil(Math.log(reachM / TOUCHING_M) / Math.log(growth)) + 1);
  return Array.from({ length: count }, (_, k) => TOUCHING_M * growth ** k);
}

export function nearPlaces(wires: readonly Wire[], spots: Spots, wavelengthM: number, reachM: number): NearPlaces {
  const aroundM = shellsM(reachM, Math.max(...wires.flatMap(({ from, to }) => [from[2], to[2]])) - FOOT_M);
  const groundM = [0, ...aroundM];
  const points: Point[] = [];
  const rays: NearPlaces['rays'][number][] = [];
  const add = (point: Vector, ray: NearPlaces['rays'][number]): void => {
    points.push([...point]);
    rays.push(ray);
  };
  for (const wire of someOfMany(wires)) {
    const ends = freeEndsOf(wire, wires);
    aroundM.forEach((away, shell) => {
      for (const { at, directions } of stationsOf(wire, away, wavelengthM)) {
        const part = partOf(wire, at, spots.feed, ends, away);
        for (const direction of directions) {
          const beforeM = aroundM[shell - 1] ?? 0;
          const reached = ownReachM(wires, at, direction, beforeM, aboveGroundM(at, direction, away));
          // A ray that meets the ground, or another wire's air, counts once more there, as if it had gone the whole step.
          if (reached <= beforeM) continue;
          const point = plus(at, direction, reached);
          const ground = point[2] > HEAD_M ? null : shellOf(groundM, fromAboveM(wires, point));
          add(point, { part, around: shell, ground, place: null });
        }
      }
    });
    groundM.forEach((away, shell) => {
      for (const { at, isEnd } of stationsFromGround(wire, away, wavelengthM)) {
        const part = partOf(wire, at, spots.feed, ends, Math.max(away, TOUCHING_M));
        const place = away <= TOUCHING_M ? peoplePlaceOf(wire, at, spots, ends) : null;
        for (const direction of levelDirections(wire, away, isEnd)) {
          const [x, y] = plus(at, direction, away);
          // Where another wire is nearer, seen from above, the point counts at that distance, rounded up.
          const counted = shellOf(groundM, Math.min(away, fromAboveM(wires, [x, y, 0]))) ?? shell;
          for (const z of bodyHeightsM(at[2], place !== null)) {
            if (isNearer(wires, [x, y, z], PURE * TOUCHING_M)) continue;
            add([x, y, z], { part, around: null, ground: counted, place });
          }
        }
      }
    });
  }
  return { points, rays, aroundM, groundM };
}

/**
 * Foot and head, and at a place where people may be the wire's own height too. Farther out that height is among the rays of `around`, and a wire
 * that lies on the ground has nothing to add.
 */
function bodyHeightsM(wireM: number, isPlace: boolean): readonly number[] {
  if (!isPlace) return wireM < LYING_M ? [] : [FOOT_M, HEAD_M];
  return [...new Set([FOOT_M, Math.min(Math.max(wireM, FOOT_M), HEAD_M), HEAD_M])];
}

/** Distance along a ray, cut where it meets the ground. */
const aboveGroundM = (at: Vector, direction: Vector, away: number): number =>
  direction[2] >= 0 ? away : Math.min(away, Math.max((at[2] - FOOT_M) / -direction[2], 0));

/**
 * How far along a ray its own wire is the nearest: `toM`, or less where another wire comes nearer between `fromM` and there; 0 where one is
 * nearer at `fromM` already.
 */
function ownReachM(wires: readonly Wire[], at: Vector, direction: Vector, fromM: number, toM: number): number {
  const isOwn = (metres: number): boolean => !isNearer(wires, plus(at, direction, metres), PURE * metres);
  if (isOwn(toM)) return toM;
  if (fromM === 0 || !isOwn(fromM)) return 0;
  let [own, others] = [fromM, toM];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (own + others) / 2;
    if (isOwn(middle)) own = middle;
    else others = middle;
  }
  return own;
}

/** Number of the first distance that is not less, within 2 %. */
const shellOf = (distancesM: readonly number[], metres: number): number | null => {
  const shell = distancesM.findIndex((each) => each >= 0.98 * metres);
  return shell < 0 ? null : shell;
};

/**
 * Evenly along a wire; no closer than the wire is above a head, since less is not to be told apart from there. One more as far from each end as
 * is looked at, where another wire may turn off.
 */
function stationsFromGround({ from, to }: Wire, away: number, wavelengthM: number) {
  const overheadM = Math.max(Math.min(from[2], to[2]) - HEAD_M, TOUCHING_M);
  const apart = Math.max(wavelengthM / WAVE_PART, away / 2, overheadM / 2);
  const lengthM = distance(from, to);
  const count = Math.max(1, Math.ceil(lengthM / apart));
  const evenly = Array.from({ length: count + 1 }, (_, i) => i / count);
  const nearEnds = away > 0 && away < Math.min(apart, lengthM) / 2 ? [away / lengthM, 1 - away / lengthM] : [];
  return [...evenly, ...nearEnds].map((share) => ({
    at: plus(from, plus(to, from, -1), share),
    isEnd: share === 0 || share === 1,
  }));
}

const groupOf = (id: string): string => id.replace(/[\d.]+$/, '');

/** At most four of each set of like wires, evenly chosen. */
function someOfMany(wires: readonly Wire[]): readonly Wire[] {
  const many = /^(radial|.*-star)$/;
  return wires.filter((wire) => {
    const group = groupOf(wire.id);
    if (!many.test(group)) return true;
    const like = wires.filter(({ id }) => groupOf(id) === group);
    const step = Math.max(1, Math.floor(like.length / MOST_LIKE));
    const index = like.indexOf(wire);
    return index % step === 0 && index / step < MOST_LIKE;
  });
}

/** Near the feed point the field is the feed point's, whichever wire is nearest. */
function partOf({ id, from, to }: Wire, at: Vector, feed: Vector, ends: readonly Vector[], away: number): AntennaPart {
  if (/^(mains|earth|rod)/.test(id)) return 'house';
  if (distance(at, feed) <= away) return 'feed-point';
  if (/^counterpoise/.test(id)) return 'counterpoise';
  if (/^(radial|hub)/.test(id)) return 'radials';
  if (/^shield/.test(id)) return 'coax';
  const near = Math.min(away, distance(from, to) / 4);
  return ends.some((end) => distance(at, end) <= near) ? 'wire-end' : 'radiator';
}

const TOGETHER_M = 1e-3;

function freeEndsOf(wire: Wire, wires: readonly Wire[]): readonly Vector[] {
  const isFree = (end: Vector): boolean =>
    wires.every((other) => other === wire || Math.min(distance(end, other.from), distance(end, other.to)) > TOGETHER_M);
  return [wire.from, wire.to].filter(isFree);
}

interface Station {
  readonly at: Vector;
  readonly directions: readonly Vector[];
}

function stationsOf({ from, to }: Wire, away: number, wavelengthM: number): Station[] {
  const lengthM = distance(from, to);
  const along = scaled(plus(to, from, -1), 1 / lengthM);
  const across = acrossOf(along);
  const square = squareDirections(across, raysFor(away, from[2], to[2], wavelengthM));
  const apart = Math.max(wavelengthM / WAVE_PART, away / 2);
  const count = Math.max(1, Math.ceil(lengthM / apart));
  const inside = Array.from({ length: count - 1 }, (_, i) => ((i + 1) * lengthM) / count);
  const nearEnds = [away / 2, away].filter((metres) => metres < Math.min(apart, lengthM / 2));
  const places = [...inside, ...nearEnds, ...nearEnds.map((metres) => lengthM - metres)];
  return [
    ...places.map((metres) => ({ at: plus(from, along, metres), directions: square })),
    { at: from, directions: [...square, ...endDirections(scaled(along, -1), across)] },
    { at: to, directions: [...square, ...endDirections(along, across)] },
  ];
}

const scaled = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
const normal = (a: Vector): Vector => scaled(a, 1 / Math.hypot(a[0], a[1], a[2]));

/** Level across the wire, and square to both. */
function acrossOf(along: Vector): readonly [Vector, Vector] {
  const level: Vector = Math.abs(along[2]) > 0.99 ? [1, 0, 0] : normal([-along[1], along[0], 0]);
  const other: Vector = [
    along[1] * level[2] - along[2] * level[1],
    along[2] * level[0] - along[0] * level[2],
    along[0] * level[1] - along[1] * level[0],
  ];
  return [level, other];
}

/** How many rays leave a wire square to it at that distance. */
function raysFor(away: number, oneM: number, otherM: number, wavelengthM: number): number {
  if (away < Math.max(SLANTING_FROM_M, SLANTING_FROM_HEIGHT * Math.min(oneM, otherM))) return 4;
  const highM = Math.max(oneM, otherM);
  const turns = away < LOBES_FROM_HEIGHT * highM ? 0 : Math.ceil((2 * Math.PI * highM) / wavelengthM);
  return Math.max(8, RAYS_PER_TURN * turns);
}

/** Evenly all round. Many are turned by a quarter step, so that those to one side lie between the mirror images of the other's. */
function squareDirections([level, other]: readonly [Vector, Vector], count: number): Vector[] {
  const turned = count > 8 ? 0.25 : 0;
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * (i + turned)) / count;
    return plus(scaled(level, Math.cos(angle)), other, Math.sin(angle));
  });
}

const endDirections = (out: Vector, [level, other]: readonly [Vector, Vector]): Vector[] => [
  out,
  ...[level, scaled(level, -1), other, scaled(other, -1)].map((side) => normal(plus(out, side))),
];

/** To both sides of the wire, on beyond its ends, all round under an upright one; once where the distance is nothing. */
function levelDirections({ from, to }: Wire, away: number, isEnd: boolean): readonly Vector[] {
  const along = plus(to, from, -1);
  const run = Math.hypot(along[0], along[1]);
  const on: Vector = run < TOGETHER_M ? [1, 0, 0] : [along[0] / run, along[1] / run, 0];
  if (away === 0) return [on];
  const side: Vector = [-on[1], on[0], 0];
  return isEnd ? [side, scaled(side, -1), on, scaled(on, -1)] : [side, scaled(side, -1)];
}

const isNearer = (wires: readonly Wire[], point: Vector, metres: number): boolean =>
  wires.some(({ from, to }) => toPiece(point, from, to) < metres);

const flat = ([x, y]: Vector): Vector => [x, y, 0];

const fromAboveM = (wires: readonly Wire[], point: Vector): number =>
  Math.min(...wires.map(({ from, to }) => toPiece(flat(point), flat(from), flat(to))));

function toPiece(point: Vector, from: Vector, to: Vector): number {
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const squared = x * x + y * y + z * z;
  const share =
    squared === 0 ? 0 : ((point[0] - from[0]) * x + (point[1] - from[1]) * y + (point[2] - from[2]) * z) / squared;
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(point[0] - from[0] - t * x, point[1] - from[1] - t * y, point[2] - from[2] - t * z);
}
