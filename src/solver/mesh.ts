/**
 * Cuts the wires into straight elements with piecewise linear current.
 *
 * A wire is cut where a gap, a load or a probe sits. Each piece is graded from its ends: first element about 8 radii, each next
 * twice as long, up to a cap that is a part of the wavelength. A cut for a probe alone is not graded, since nothing happens there.
 *
 *   o-·--·----·--------·--------·--------·----·--·-o      o  wire end, gap or load
 *
 * Unknowns: with n element ends at a node, n − 1 independent currents (n on perfect ground, none at an open end). Each element end
 * is a sum of unknowns with coefficient ±1, kept as a sparse list: ends 2e and 2e + 1 are the start and finish of element e.
 */
import type { ResolvedGeometry, ResolvedPlace, ResolvedWire } from './resolve';

export interface Mesh {
  readonly elementCount: number;
  readonly unknownCount: number;
  /** Start x, y, z of each element. */
  readonly start: Float64Array;
  /** Unit vector x, y, z. */
  readonly direction: Float64Array;
  readonly lengthM: Float64Array;
  readonly radiusM: Float64Array;
  readonly wire: Int32Array;
  /** Unknowns of element end n: `unknown[offset[n] … offset[n + 1] − 1]` with their signs. */
  readonly offset: Int32Array;
  readonly unknown: Int32Array;
  readonly sign: Float64Array;
}

/** Where on the mesh a gap, load or probe reads or drives the current: shares of the two ends of one element. */
export interface Port {
  readonly element: number;
  readonly startShare: number;
  readonly endShare: number;
}

const FIRST_ELEMENT_RADII = 8;
const GROWTH = 2;

export function meshGeometry(geometry: ResolvedGeometry, capM: number): Mesh {
  const cutsOf = geometry.wires.map((wire, index) => wireCuts(geometry, wire, index, capM));
  const elementCount = cutsOf.reduce((sum, cuts) => sum + cuts.length - 1, 0);
  const start = new Float64Array(3 * elementCount);
  const direction = new Float64Array(3 * elementCount);
  const lengthM = new Float64Array(elementCount);
  const radiusM = new Float64Array(elementCount);
  const wire = new Int32Array(elementCount);
  let element = 0;
  geometry.wires.forEach((resolved, index) => {
    const cuts = cutsOf[index];
    for (let i = 1; i < cuts.length; i++, element++) {
      for (let axis = 0; axis < 3; axis++) {
        start[3 * element + axis] = resolved.from[axis] + cuts[i - 1] * resolved.direction[axis];
        direction[3 * element + axis] = resolved.direction[axis];
      }
      lengthM[element] = cuts[i] - cuts[i - 1];
      radiusM[element] = resolved.wire.radiusM;
      wire[element] = index;
    }
  });
  return { elementCount, start, direction, lengthM, radiusM, wire, ...numberUnknowns(geometry, wire, elementCount) };
}

function numberUnknowns(geometry: ResolvedGeometry, wire: Int32Array, elementCount: number) {
  const terms: [number, number][][] = Array.from({ length: 2 * elementCount }, () => []);
  let unknownCount = 0;
  const endsAt: number[][] = geometry.nodes.map(() => []);
  for (let element = 0; element < elementCount; element++) {
    const { fromNode, toNode } = geometry.wires[wire[element]];
    if (element === 0 || wire[element - 1] !== wire[element]) endsAt[fromNode].push(2 * element);
    else {
      terms[2 * element - 1].push([unknownCount, 1]);
      terms[2 * element].push([unknownCount++, 1]);
    }
    if (element === elementCount - 1 || wire[element + 1] !== wire[element]) endsAt[toNode].push(2 * element + 1);
  }
  endsAt.forEach((ends, node) => {
    if (geometry.grounded[node]) {
      for (const end of ends) terms[end].push([unknownCount++, 1]);
      return;
    }
    const last = ends[ends.length - 1];
    for (const end of ends.slice(0, -1)) {
      // What flows in through one end flows out through the last: equal signs if one of them starts here and the other ends here.
      terms[last].push([unknownCount, (end & 1) === (last & 1) ? -1 : 1]);
      terms[end].push([unknownCount++, 1]);
    }
  });
  const offset = new Int32Array(2 * elementCount + 1);
  for (let end = 0; end < terms.length; end++) offset[end + 1] = offset[end] + terms[end].length;
  const flat = terms.flat();
  return {
    unknownCount,
    offset,
    unknown: Int32Array.from(flat, ([unknown]) => unknown),
    sign: Float64Array.from(flat, ([, sign]) => sign),
  };
}

/** Distances from the start of the wire at which it is cut, its ends included. */
function wireCuts(geometry: ResolvedGeometry, wire: ResolvedWire, index: number, capM: number): number[] {
  const firstM = FIRST_ELEMENT_RADII * wire.wire.radiusM;
  const inside = (place: ResolvedPlace): boolean =>
    place.wire === index && place.distanceM > 0 && place.distanceM < wire.lengthM;
  const graded = [0, wire.lengthM, ...[...geometry.gaps, ...geometry.loads].filter(inside).map((p) => p.distanceM)];
  const plain = geometry.probes.filter(inside).map((probe) => probe.distanceM);
  const marks = graded.map((distanceM) => ({ distanceM, isGraded: true }));
  for (const distanceM of plain) {
    if (graded.every((other) => Math.abs(other - distanceM) > firstM)) marks.push({ distanceM, isGraded: false });
  }
  marks.sort((a, b) => a.distanceM - b.distanceM);
  const cuts = [0];
  for (let i = 1; i < marks.length; i++) {
    const [before, here] = [marks[i - 1], marks[i]];
    const spanM = here.distanceM - before.distanceM;
    if (spanM <= 1e-3 * firstM) continue;
    for (const atM of gradedPiece(spanM, firstM, capM, before.isGraded, here.isGraded))
      cuts.push(before.distanceM + atM);
    cuts[cuts.length - 1] = here.distanceM;
  }
  return cuts;
}

/** Ends of the elements of one piece, without its start. */
function gradedPiece(spanM: number, firstM: number, capM: number, gradeStart: boolean, gradeEnd: boolean): number[] {
  const sides = (gradeStart ? 1 : 0) + (gradeEnd ? 1 : 0);
  const steps: number[] = [];
  let restM = spanM;
  let nextM = firstM;
  while (sides > 0 && nextM < capM && restM - sides * nextM >= nextM) {
    steps.push(nextM);
    restM -= sides * nextM;
    nextM *= GROWTH;
  }
  const middleCount = Math.max(1, Math.ceil(restM / Math.min(capM, sides > 0 ? nextM : capM) - 1e-9));
  const middle = new Array<number>(middleCount).fill(restM / middleCount);
  const sizes = [...(gradeStart ? steps : []), ...middle, ...(gradeEnd ? [...steps].reverse() : [])];
  let atM = 0;
  return sizes.map((size) => {
    atM += size;
    return atM;
  });
}

/** The port at a place: an element end where the wire is cut there, a share of both ends elsewhere. */
export function portAt(mesh: Mesh, place: ResolvedPlace): Port {
  let atM = 0;
  for (let element = 0; element < mesh.elementCount; element++) {
    if (mesh.wire[element] !== place.wire) continue;
    const lengthM = mesh.lengthM[element];
    const isLast = element + 1 === mesh.elementCount || mesh.wire[element + 1] !== place.wire;
    if (place.distanceM <= atM + lengthM || isLast) {
      const raw = (place.distanceM - atM) / lengthM;
      const share = raw < 1e-6 ? 0 : raw > 1 - 1e-6 ? 1 : raw;
      return { element, startShare: 1 - share, endShare: share };
    }
    atM += lengthM;
  }
  return { element: 0, startShare: 0, endShare: 0 };
}
