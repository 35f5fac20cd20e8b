/**
 * Many frequencies from few solutions. The matrix comes from a handful of exact fills (matrix-interpolation.ts), the port currents from
 * a rational fit (port-fit.ts). Each of the two meshes (two-meshes.ts) has a fit of its own: their resonances lie apart, and a fit of what both
 * give together would have to follow twice as many.
 */
import { type Complex, complex } from '../base/complex';
import { InputError } from '../base/input-error';
import type { PortMatrix } from '../physics/port-network';
import type { Geometry } from './geometry';
import { type Kernels, plainKernels } from './kernels';
import {
  emptyInterpolant,
  interpolationNodes,
  type MatrixInterpolant,
  matrixAt,
  setNode,
} from './matrix-interpolation';
import { PortFit } from './port-fit';
import { type Prepared, type Sweep, withLoads } from './prepared';
import { evaluateRational, type RationalFit } from './rational-fit';
import { type System, solveMatrix, solvePorts, systemMatrix } from './system';
import { extrapolated, makeTwoMeshes, type TwoMeshes } from './two-meshes';

export interface SweepOptions {
  readonly mesh?: 'default' | 'fine' | undefined;
  readonly kernels?: Kernels | undefined;
  /** The mesh is made for the highest frequency asked for, or for this one if it is a part of a greater sweep. */
  readonly meshHz?: number | undefined;
  /** Told after every fill and solution. */
  readonly onProgress?: (progress: SweepProgress) => void;
  /** Asked at every step; a sweep that is called off throws InputError 'cancelled'. */
  readonly isCancelled?: () => boolean;
}

export interface SweepProgress {
  readonly done: number;
  /** An estimate that grows when the sweep turns out harder; never below `done`. */
  readonly of: number;
  /** The sweep as the fit sees it so far, once there is a fit. */
  readonly partial?: () => Prepared;
}

/** Relative to the greatest current of each port, for each mesh; with both together Γ at 200 Ω is then good to 1e-3 and better. */
const TOLERANCE = 1.2e-4;
/** Solutions a wide sweep needs of a mesh beside those at the nodes; only for the estimate of progress. */
const EXPECTED_MORE = 10;

export const sweep = (geometry: Geometry, frequenciesHz: Float64Array, options: SweepOptions = {}): Sweep =>
  withLoads(prepare(geometry, frequenciesHz, options));

export function prepare(geometry: Geometry, frequenciesHz: Float64Array, options: SweepOptions = {}): Prepared {
  const steps = prepareInSteps(geometry, frequenciesHz, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    options.onProgress?.(step.value);
    if (options.isCancelled?.()) throw new InputError('cancelled', {});
  }
}

export type SweepSteps = Generator<SweepProgress, Prepared, void>;

/** The same, giving way after every fill and solution, so that whoever drives it can report, pause or stop. */
export function prepareInSteps(
  geometry: Geometry,
  frequenciesHz: Float64Array,
  options: Pick<SweepOptions, 'mesh' | 'kernels' | 'meshHz'> = {},
): SweepSteps {
  if (frequenciesHz.length === 0 || !frequenciesHz.every((f) => f > 0)) throw new InputError('frequencies', {});
  const lowHz = frequenciesHz.reduce((a, b) => Math.min(a, b));
  const highHz = frequenciesHz.reduce((a, b) => Math.max(a, b));
  const meshHz = Math.max(highHz, options.meshHz ?? 0);
  const meshes = makeTwoMeshes(geometry, options.mesh ?? 'default', meshHz);
  const job = new SweepJob(geometry, meshes, frequenciesHz, options.kernels ?? plainKernels);
  const heights = meshes.fine.resolved.nodes.map((node) => (geometry.ground.kind === 'none' ? 0 : node[2]));
  const nodes = lowHz < highHz ? interpolationNodes(lowHz, highHz, Math.max(...heights)) : new Float64Array(1);
  return frequenciesHz.length <= nodes.length ? job.solveEach() : job.solveByFit(nodes, lowHz, highHz);
}

/** What a fit has come to. */
type SettledFit = { readonly now: RationalFit; readonly error: number; readonly solves: number };

class SweepJob {
  private done = 0;
  private readonly system: System;
  private readonly driven: number;

  constructor(
    private readonly geometry: Geometry,
    private readonly meshes: TwoMeshes,
    private readonly frequenciesHz: Float64Array,
    private readonly kernels: Kernels,
  ) {
    this.system = meshes.fine;
    this.driven = meshes.fine.vectors.driven;
  }

  private progress(of: number): SweepProgress {
    this.done++;
    return { done: this.done, of: Math.max(of, this.done) };
  }

  *solveEach(): SweepSteps {
    const rows: Float64Array[] = [];
    for (const frequencyHz of this.frequenciesHz) {
      const [coarse, fine] = [this.meshes.coarse, this.meshes.fine].map(
        (system) => solvePorts(system, frequencyHz, this.kernels).y,
      );
      rows.push(interleaved(extrapolated(fine, coarse)));
      yield this.progress(this.frequenciesHz.length);
    }
    return this.prepared((out, f) => out.set(rows[f]), 0, rows.length);
  }

  *solveByFit(nodesHz: Float64Array, lowHz: number, highHz: number): SweepSteps {
    const { meshes, kernels } = this;
    const edgesHz = [lowHz, highHz];
    // One mesh after the other, so that kernels need not change antennas at every node.
    const coarse = yield* this.fitMesh(new MeshOverRange(meshes.coarse, nodesHz, kernels), edgesHz);
    const fine = yield* this.fitMesh(new MeshOverRange(meshes.fine, nodesHz, kernels), edgesHz, coarse);
    return this.fitted(fine, coarse);
  }

  /** With the fit of the coarse mesh at hand, the sweep so far can be drawn. */
  private *fitMesh(
    mesh: MeshOverRange,
    edgesHz: readonly number[],
    coarse?: PortFit,
  ): Generator<SweepProgress, PortFit, void> {
    const { nodesHz } = mesh;
    const expected = 2 * (nodesHz.length + EXPECTED_MORE);
    const fit = new PortFit(TOLERANCE);
    for (let i = 0; i < nodesHz.length; i++) {
      fit.add(nodesHz[i], mesh.solveNode(i));
      yield this.progress(expected);
    }
    for (const edgeHz of edgesHz) fit.add(edgeHz, mesh.solveBetween(edgeHz));
    while (!fit.isSettled) {
      fit.refine((frequencyHz) => mesh.solveBetween(frequencyHz));
      const progress = this.progress(expected);
      if (coarse === undefined) yield progress;
      else {
        const drawn = { now: fit.now, error: fit.error, solves: fit.solves };
        yield { ...progress, partial: () => this.fitted(drawn, coarse) };
      }
    }
    return fit;
  }

  /** From the fits of both meshes; an error of the fine one counts 4/3, of the coarse one 1/3. */
  private fitted(fine: SettledFit, coarse: SettledFit): Prepared {
    const { frequenciesHz } = this;
    const other = new Float64Array(2 * this.system.vectors.count * this.driven);
    const read = (out: Float64Array, f: number): void => {
      evaluateRational(out, fine.now, frequenciesHz[f]);
      evaluateRational(other, coarse.now, frequenciesHz[f]);
      for (let q = 0; q < out.length; q++) out[q] += (out[q] - other[q]) / 3;
    };
    return this.prepared(read, (4 * fine.error + coarse.error) / 3, fine.solves);
  }

  private prepared(read: (out: Float64Array, f: number) => void, fitError: number, solves: number): Prepared {
    const { frequenciesHz, system, geometry, driven } = this;
    const portCount = system.vectors.count;
    const width = portCount * driven;
    const yRe = new Float64Array(frequenciesHz.length * width);
    const yIm = new Float64Array(frequenciesHz.length * width);
    const row = new Float64Array(2 * width);
    for (let f = 0; f < frequenciesHz.length; f++) {
      read(row, f);
      for (let q = 0; q < width; q++) {
        yRe[f * width + q] = row[2 * q];
        yIm[f * width + q] = row[2 * q + 1];
      }
    }
    const loadOhms = (geometry.loads ?? []).map(({ impedance }): Complex => complex(impedance.r, impedance.x));
    const gapVolts = system.resolved.gaps.map((gap) => gap.volts);
    const probeIds = (geometry.probes ?? []).map(({ id }) => id);
    const segments = system.mesh.elementCount;
    return { frequenciesHz, gapVolts, loadOhms, probeIds, portCount, yRe, yIm, fitError, solves, segments };
  }
}

/** One mesh over a range of frequencies: exact at the nodes, between them from the interpolated matrix. */
class MeshOverRange {
  private readonly interpolant: MatrixInterpolant;

  constructor(
    private readonly system: System,
    readonly nodesHz: Float64Array,
    private readonly kernels: Kernels,
  ) {
    this.interpolant = emptyInterpolant(system.mesh, nodesHz);
  }

  solveNode(i: number): PortMatrix {
    const matrix = systemMatrix(this.system, this.interpolant.nodesHz[i], this.kernels);
    setNode(this.interpolant, i, matrix, this.kernels.combine);
    return solveMatrix(this.system, matrix, this.kernels).y;
  }

  solveBetween(frequencyHz: number): PortMatrix {
    const matrix = matrixAt(this.interpolant, frequencyHz, this.kernels.combine);
    return solveMatrix(this.system, matrix, this.kernels).y;
  }
}

function interleaved({ re, im }: PortMatrix): Float64Array {
  const out = new Float64Array(2 * re.length);
  for (let i = 0; i < re.length; i++) {
    out[2 * i] = re[i];
    out[2 * i + 1] = im[i];
  }
  return out;
}
