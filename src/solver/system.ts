/**
 * One antenna, meshed and paired, ready to be solved at any frequency up to the one its mesh was made for: the ports' admittances and
 * the currents that a volt in each gap and load drives.
 */
import { C0 } from '../base/constants';
import { InputError } from '../base/input-error';
import type { PortMatrix } from '../physics/port-network';
import { addOwnImpedances, type SymmetricMatrix } from './assemble';
import type { Geometry } from './geometry';
import { GroundCache, type Reach, reachOf } from './ground-cache';
import { type Kernels, plainKernels } from './kernels';
import { type Mesh, meshGeometry, portAt } from './mesh';
import { type PairPlan, planPairs } from './pair-plan';
import { type PortVectors, portAdmittance, portVectors } from './ports';
import { type ResolvedGeometry, resolveGeometry } from './resolve';

export interface System {
  readonly resolved: ResolvedGeometry;
  readonly mesh: Mesh;
  readonly plan: PairPlan;
  /** Gaps, loads, probes, in this order. */
  readonly vectors: PortVectors;
  readonly reach: Reach;
}

/** Y between ports, and the unknown currents for a volt at each gap and load, column after column. */
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
  const capM = C0 / highestHz / elementsPerWave;
  // Counted roughly first, so that no mesh of millions is made only to be refused.
  refuseTooMany(resolved.wires.reduce((sum, { lengthM }) => sum + Math.ceil(lengthM / capM), 0));
  const mesh = meshGeometry(resolved, capM);
  refuseTooMany(mesh.elementCount);
  const plan = planPairs(mesh, geometry.ground.kind);
  const ports = [...resolved.gaps, ...resolved.loads, ...resolved.probes].map((place) => portAt(mesh, place));
  const driven = resolved.gaps.length + resolved.loads.length;
  return { resolved, mesh, plan, vectors: portVectors(mesh, ports, driven), reach: reachOf(mesh) };
}

function refuseTooMany(segments: number): void {
  if (segments > MOST_ELEMENTS) throw new InputError('too-many-segments', { segments, most: MOST_ELEMENTS });
}

export function systemMatrix(system: System, frequencyHz: number, kernels: Kernels): SymmetricMatrix {
  const { resolved, mesh, plan, reach } = system;
  const { ground } = resolved;
  const k0 = (2 * Math.PI * frequencyHz) / C0;
  const table = ground.kind === 'soil' ? sharedGround.table(frequencyHz, ground, reach, kernels.bandSum) : undefined;
  const ends = kernels.fillPairs(plan, k0, table);
  addOwnImpedances(ends, resolved, mesh, frequencyHz);
  return kernels.assemble(plan, ends);
}

/** The matrix is used up. */
export function solveMatrix({ vectors }: System, matrix: SymmetricMatrix, kernels: Kernels): PortSolution {
  const xRe = vectors.values.slice(0, vectors.driven * vectors.size);
  const xIm = new Float64Array(xRe.length);
  kernels.factorAndSolve(matrix, xRe, xIm);
  return { y: portAdmittance(vectors, xRe, xIm), xRe, xIm };
}

export const solvePorts = (system: System, frequencyHz: number, kernels: Kernels = plainKernels): PortSolution =>
  solveMatrix(system, systemMatrix(system, frequencyHz, kernels), kernels);
