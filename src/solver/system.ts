/**
 * One antenna, meshed and paired, ready to be solved at any frequency up to the one its mesh was made for: the ports' admittances and
 * the currents that a volt in each gap and load drives.
 */
import { C0 } from '../base/constants';
import { InputError } from '../base/input-error';
import { addOwnImpedances, assembleMatrix } from './assemble';
import { fillPairs } from './fill';
import type { Geometry } from './geometry';
import { GroundCache, type Reach, reachOf } from './ground-cache';
import { factorLdlt, solveLdlt } from './ldlt';
import { type Mesh, meshGeometry, portAt } from './mesh';
import { type PairPlan, planPairs } from './pair-plan';
import { type PortMatrix, type PortVectors, portAdmittance, portVectors } from './ports';
import { type ResolvedGeometry, resolveGeometry } from './resolve';

export interface System {
  readonly resolved: ResolvedGeometry;
  readonly mesh: Mesh;
  readonly plan: PairPlan;
  /** Gaps, loads, probes, in this order. */
  readonly vectors: PortVectors;
  readonly reach: Reach;
}

/** Y between ports, and the unknown currents for a volt at each port, column after column. */
export interface PortSolution {
  readonly y: PortMatrix;
  readonly xRe: Float64Array;
  readonly xIm: Float64Array;
}

/** Keeps the matrices below 300 MB. */
const MOST_ELEMENTS = 1500;

export const sharedGround = new GroundCache();

/** `elementsPerWave`: how finely to cut, at `highestHz`. */
export function makeSystem(geometry: Geometry, elementsPerWave: number, highestHz: number): System {
  const resolved = resolveGeometry(geometry);
  const mesh = meshGeometry(resolved, C0 / highestHz / elementsPerWave);
  if (mesh.elementCount > MOST_ELEMENTS) {
    throw new InputError('too-many-segments', { segments: mesh.elementCount, most: MOST_ELEMENTS });
  }
  const plan = planPairs(mesh, geometry.ground.kind);
  const ports = [...resolved.gaps, ...resolved.loads, ...resolved.probes].map((place) => portAt(mesh, place));
  return { resolved, mesh, plan, vectors: portVectors(mesh, ports), reach: reachOf(mesh) };
}

export function solvePorts(system: System, frequencyHz: number): PortSolution {
  const { resolved, mesh, plan, vectors, reach } = system;
  const { ground } = resolved;
  const k0 = (2 * Math.PI * frequencyHz) / C0;
  const table = ground.kind === 'soil' ? sharedGround.table(frequencyHz, ground, reach) : undefined;
  const ends = fillPairs(plan, k0, table);
  addOwnImpedances(ends, resolved, mesh, frequencyHz);
  const matrix = assembleMatrix(mesh, ends);
  factorLdlt(matrix);
  const xRe = Float64Array.from(vectors.values);
  const xIm = new Float64Array(xRe.length);
  for (let port = 0; port < vectors.count; port++) {
    const from = port * vectors.size;
    solveLdlt(matrix, xRe.subarray(from, from + vectors.size), xIm.subarray(from, from + vectors.size));
  }
  return { y: portAdmittance(vectors, xRe, xIm), xRe, xIm };
}
