/**
 * From the operator's geometry to wires with numbered nodes: ends within 1 mm of each other are one node. What cannot be solved is
 * refused with the wire and the reason; what can be solved with less certainty is warned of.
 */
import { C0 } from '../base/constants';
import { InputError } from '../base/input-error';
import type { Geometry, GeometryWarning, Ground, Place, Point, Wire } from './geometry';
import { distance, distanceToPiece, dot, minus, nearestApproach, scaled } from './vector';

export const JOIN_M = 1e-3;

export interface ResolvedWire {
  readonly wire: Wire;
  readonly from: Point;
  readonly to: Point;
  readonly direction: Point;
  readonly lengthM: number;
  readonly fromNode: number;
  readonly toNode: number;
}

export interface ResolvedPlace {
  readonly wire: number;
  readonly distanceM: number;
}

export type GeometryProblemCode =
  | 'wire-zero-length'
  | 'wire-thicker-than-long'
  | 'wire-in-ground'
  | 'wire-id-twice'
  | 'wires-overlap'
  | 'wires-cross'
  | 'wire-end-on-wire'
  | 'place-on-no-wire'
  | 'place-off-wire'
  | 'place-needs-one'
  | 'source-missing'
  | 'source-twice'
  | 'source-at-open-end'
  | 'field-point-in-ground'
  | 'field-point-in-wire';

/** One thing wrong: `key` says where in the geometry, as in `wires[2]`. */
export interface GeometryProblem {
  readonly key: string;
  readonly code: GeometryProblemCode;
  readonly data: Readonly<Record<string, number | string>>;
}

export interface ResolvedGeometry {
  readonly wires: readonly ResolvedWire[];
  readonly nodes: readonly Point[];
  /** A node on perfect ground, where current may leave the wire. */
  readonly grounded: readonly boolean[];
  readonly ground: Ground;
  readonly gaps: readonly (ResolvedPlace & { readonly volts: { readonly re: number; readonly im: number } })[];
  readonly loads: readonly ResolvedPlace[];
  readonly probes: readonly ResolvedPlace[];
  readonly warnings: readonly GeometryWarning[];
}

/** Resolves a geometry, or throws an InputError that carries the first problem. */
export function resolveGeometry(geometry: Geometry): ResolvedGeometry {
  const { problems, resolved } = examineGeometry(geometry);
  const first = problems[0];
  if (first) throw new InputError(first.code, { key: first.key, ...first.data });
  return resolved;
}

/** Every problem, and the resolved geometry, which is of use only when there is none. */
export function examineGeometry(geometry: Geometry): { problems: GeometryProblem[]; resolved: ResolvedGeometry } {
  const problems: GeometryProblem[] = [];
  const warnings: GeometryWarning[] = [];
  const { wires, nodes } = joined(geometry);
  wires.forEach((wire, index) => {
    const found = wireProblem(wire, geometry);
    if (found) problems.push({ key: `wires[${index}]`, ...found });
    else warnings.push(...wireWarnings(wire, geometry));
    const twin = geometry.wires.findIndex((other) => other.id === wire.wire.id);
    if (twin < index) problems.push({ key: `wires[${index}]`, code: 'wire-id-twice', data: { wire: wire.wire.id } });
  });
  if (problems.length === 0) pairProblems(wires, problems, warnings);
  const grounded = nodes.map((node) => geometry.ground.kind === 'perfect-conductor' && node[2] === 0);

  if (!geometry.source && !geometry.sources) problems.push({ key: 'source', code: 'source-missing', data: {} });
  if (geometry.source && geometry.sources) problems.push({ key: 'sources', code: 'source-twice', data: {} });
  const places = (key: string, list: readonly Place[] | undefined): ResolvedPlace[] =>
    (list ?? []).map((place, index) => placeOnWire(place, `${key}[${index}]`, wires, problems));
  const gaps = geometry.source
    ? [{ ...placeOnWire(geometry.source, 'source', wires, problems), volts: { re: 1, im: 0 } }]
    : places('sources', geometry.sources).map((place, n) => ({ ...place, volts: geometry.sources![n].volts }));
  const keyOfGap = (index: number): string => (geometry.source ? 'source' : `sources[${index}]`);
  gaps.forEach((gap, index) => {
    const wire = openEndAt(gap, wires, grounded);
    if (wire) problems.push({ key: keyOfGap(index), code: 'source-at-open-end', data: { wire: wire.wire.id } });
  });
  problems.push(...fieldPointProblems(geometry, wires));
  const loads = places('loads', geometry.loads);
  const probes = places('probes', geometry.probes);
  return { problems, resolved: { wires, nodes, grounded, ground: geometry.ground, gaps, loads, probes, warnings } };
}

/** Wires between nodes: ends within 1 mm of each other are one, and so are an end and the perfect ground. */
function joined({ wires, ground }: Geometry): { wires: ResolvedWire[]; nodes: Point[] } {
  const nodes: Point[] = [];
  const nodeAt = (point: Point): number => {
    const known = nodes.findIndex((node) => distance(node, point) <= JOIN_M);
    return known >= 0 ? known : nodes.push(point) - 1;
  };
  const onGround = (point: Point): Point =>
    ground.kind === 'perfect-conductor' && Math.abs(point[2]) <= JOIN_M ? [point[0], point[1], 0] : point;
  const resolved = wires.map((wire): ResolvedWire => {
    const fromNode = nodeAt(onGround(wire.from));
    const toNode = nodeAt(onGround(wire.to));
    const [from, to] = [nodes[fromNode], nodes[toNode]];
    const lengthM = distance(from, to);
    return { wire, from, to, lengthM, direction: scaled(minus(to, from), 1 / lengthM), fromNode, toNode };
  });
  return { wires: resolved, nodes };
}

/** The wire at whose open end a gap sits; undefined where current can flow through it. */
function openEndAt(
  gap: ResolvedPlace,
  wires: readonly ResolvedWire[],
  grounded: readonly boolean[],
): ResolvedWire | undefined {
  const wire = wires[gap.wire];
  const node = gap.distanceM === 0 ? wire?.fromNode : gap.distanceM === wire?.lengthM ? wire.toNode : undefined;
  if (node === undefined || grounded[node]) return undefined;
  return wires.filter((each) => each.fromNode === node || each.toNode === node).length === 1 ? wire : undefined;
}

function wireProblem(
  { wire, from, to, lengthM }: ResolvedWire,
  { ground }: Geometry,
): Omit<GeometryProblem, 'key'> | undefined {
  const data = { wire: wire.id };
  if (lengthM <= JOIN_M) return { code: 'wire-zero-length', data };
  if (lengthM < wire.radiusM)
    return { code: 'wire-thicker-than-long', data: { ...data, lengthM, radiusM: wire.radiusM } };
  const lowest = Math.min(from[2], to[2]);
  if (ground.kind === 'soil' && lowest <= wire.radiusM) {
    return { code: 'wire-in-ground', data: { ...data, zM: lowest, radiusM: wire.radiusM } };
  }
  if (ground.kind === 'perfect-conductor') {
    const highest = Math.max(from[2], to[2]);
    const hangsLow = [from[2], to[2]].some((z) => z !== 0 && z <= wire.radiusM);
    if (hangsLow || highest <= wire.radiusM) {
      return { code: 'wire-in-ground', data: { ...data, zM: lowest, radiusM: wire.radiusM } };
    }
  }
  return undefined;
}

function wireWarnings({ wire, from, to, lengthM }: ResolvedWire, geometry: Geometry): GeometryWarning[] {
  const found: GeometryWarning[] = [];
  const lambda = C0 / (geometry.frequencyMHz * 1e6);
  if (lengthM < 8 * wire.radiusM) {
    found.push({ code: 'segment-short', wire: wire.id, data: { lengthM, radiusM: wire.radiusM } });
  }
  if (wire.radiusM > lambda / 100) {
    found.push({ code: 'segment-thick', wire: wire.id, data: { radiusM: wire.radiusM, wavelengthM: lambda } });
  }
  const lowest = Math.min(from[2], to[2]);
  if (geometry.ground.kind === 'soil' && lowest < 4 * wire.radiusM) {
    found.push({ code: 'ground-close', wire: wire.id, data: { zM: lowest, radiusM: wire.radiusM } });
  }
  return found;
}

/** Wires that cross, overlap, or end on each other's middle; and wires that come close. */
function pairProblems(wires: readonly ResolvedWire[], problems: GeometryProblem[], warnings: GeometryWarning[]): void {
  for (let i = 1; i < wires.length; i++) {
    for (let j = 0; j < i; j++) {
      const [a, b] = [wires[i], wires[j]];
      const data = { wire: a.wire.id, other: b.wire.id };
      const radii = a.wire.radiusM + b.wire.radiusM;
      const shared = [a.fromNode, a.toNode].filter((node) => node === b.fromNode || node === b.toNode);
      if (shared.length > 0) {
        const away = (w: ResolvedWire): number => (w.fromNode === shared[0] ? 1 : -1);
        const cosine = away(a) * away(b) * dot(a.direction, b.direction);
        const angleRad = Math.acos(Math.min(1, Math.max(-1, cosine)));
        if (shared.length === 2 || angleRad * Math.min(a.lengthM, b.lengthM) <= radii) {
          problems.push({ key: `wires[${i}]`, code: 'wires-overlap', data });
        } else if (angleRad < 0.1) {
          warnings.push({ code: 'wires-close', wire: a.wire.id, data: { other: b.wire.id, angleRad } });
        }
        continue;
      }
      const near = nearestApproach(a.from, a.to, b.from, b.to);
      if (near.distance <= Math.max(radii, JOIN_M)) {
        const atEnd = [near.s * a.lengthM, (1 - near.s) * a.lengthM, near.t * b.lengthM, (1 - near.t) * b.lengthM];
        const code = Math.min(...atEnd) <= Math.max(radii, JOIN_M) ? 'wire-end-on-wire' : 'wires-cross';
        problems.push({ key: `wires[${i}]`, code, data });
      } else if (near.distance < 4 * radii) {
        warnings.push({ code: 'wires-close', wire: a.wire.id, data: { other: b.wire.id, distanceM: near.distance } });
      }
    }
  }
}

function fieldPointProblems(geometry: Geometry, wires: readonly ResolvedWire[]): GeometryProblem[] {
  return (geometry.fieldPoints ?? []).flatMap((point, index): GeometryProblem[] => {
    const key = `fieldPoints[${index}]`;
    if (geometry.ground.kind !== 'none' && point[2] < 0) {
      return [{ key, code: 'field-point-in-ground', data: { zM: point[2] } }];
    }
    const inside = wires.find(({ wire, from, to }) => distanceToPiece(point, from, to) < wire.radiusM);
    return inside ? [{ key, code: 'field-point-in-wire', data: { wire: inside.wire.id } }] : [];
  });
}

function placeOnWire(
  place: Place,
  key: string,
  wires: readonly ResolvedWire[],
  problems: GeometryProblem[],
): ResolvedPlace {
  const ways = [place.distanceM, place.fraction, place.at].filter((way) => way !== undefined);
  if (ways.length !== 1) {
    problems.push({ key, code: 'place-needs-one', data: { wire: place.wire } });
    return { wire: 0, distanceM: Number.NaN };
  }
  const index = wires.findIndex((candidate) => candidate.wire.id === place.wire);
  if (index < 0) {
    problems.push({ key, code: 'place-on-no-wire', data: { wire: place.wire } });
    return { wire: 0, distanceM: Number.NaN };
  }
  const { lengthM } = wires[index];
  const asked = place.at === 'from' ? 0 : place.at === 'to' ? lengthM : (place.distanceM ?? place.fraction! * lengthM);
  if (!(asked >= -JOIN_M && asked <= lengthM + JOIN_M)) {
    problems.push({ key, code: 'place-off-wire', data: { wire: place.wire, distanceM: asked, lengthM } });
  }
  return { wire: index, distanceM: asked <= JOIN_M ? 0 : asked >= lengthM - JOIN_M ? lengthM : asked };
}
