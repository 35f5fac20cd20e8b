/**
 * Many frequencies from few solutions. The matrix comes from a handful of exact fills (matrix-interpolation.ts), the port currents from
 * a rational fit (rational-fit.ts) of solutions placed where two fits of different order disagree most. Each new solution is first
 * predicted: the fit is good when three predictions in a row were within tolerance.
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
import { type Prepared, type Sweep, withLoads } from './prepared';
import {
  evaluateRational,
  fitRational,
  functionSizes,
  largestDifference,
  type RationalFit,
  refitRational,
} from './rational-fit';
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

/** Relative to the greatest current of each port; Γ at 200 Ω is then good to 1e-3 and better. */
const TOLERANCE = 2e-4;
const CONFIRMATIONS = 3;
const MOST_SAMPLES = 100;
/** Solutions a wide sweep needs beside those at the nodes; only for the estimate of progress. */
const EXPECTED_MORE = 14;

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
    const expected = 2 * nodesHz.length + EXPECTED_MORE;
    // One mesh after the other, so that kernels need not change antennas at every node.
    const coarse = new MeshOverRange(meshes.coarse, nodesHz, kernels);
    for (let i = 0; i < nodesHz.length; i++) {
      coarse.solveNode(i);
      yield this.progress(expected);
    }
    const fine = new MeshOverRange(meshes.fine, nodesHz, kernels);
    const x: number[] = [];
    const values: Float64Array[] = [];
    const addSample = (frequencyHz: number, y: PortMatrix): Float64Array => {
      x.push(frequencyHz);
      values.push(interleaved(y));
      return values[values.length - 1];
    };
    for (let i = 0; i < nodesHz.length; i++) {
      addSample(nodesHz[i], extrapolated(fine.solveNode(i), coarse.atNode[i]));
      yield this.progress(expected);
    }
    const between = (frequencyHz: number): PortMatrix =>
      extrapolated(fine.solveBetween(frequencyHz), coarse.solveBetween(frequencyHz));
    for (const edge of [lowHz, highHz]) addSample(edge, between(edge));
    let confirmed = 0;
    let fitError = 1;
    let fit = fitRational({ x, values }, TOLERANCE / 100, MOST_SAMPLES);
    let other = fitRational({ x, values }, TOLERANCE / 100, fit.support.length - 1);
    const predicted = new Float64Array(values[0].length);
    while (x.length < MOST_SAMPLES && confirmed < CONFIRMATIONS) {
      const next = this.nextFrequency(fit, other, x, functionSizes(values), confirmed);
      evaluateRational(predicted, fit, next);
      const found = addSample(next, between(next));
      const error = largestDifference(predicted, found, functionSizes(values));
      fitError = confirmed === 0 ? error : Math.max(fitError, error);
      confirmed = error < TOLERANCE ? confirmed + 1 : 0;
      // One more support point where the fit was wrong, as long as enough other samples are left to settle the weights.
      const spare = (x.length - fit.support.length - 1) * (found.length / 2);
      const grows = error > TOLERANCE / 20 && spare > fit.support.length;
      other = fit;
      fit = refitRational({ x, values }, fit, grows);
      const [drawn, drawnError, solves] = [fit, fitError, x.length];
      yield { ...this.progress(expected), partial: () => this.fitted(drawn, drawnError, solves) };
    }
    return this.fitted(fit, fitError, x.length);
  }

  /** Where two fits differ most, among frequencies not next to a sample; every third time the middle of the widest gap. */
  private nextFrequency(
    fit: RationalFit,
    other: RationalFit,
    x: readonly number[],
    sizes: Float64Array,
    confirmed: number,
  ): number {
    const sorted = [...x].sort((a, b) => a - b);
    if (confirmed % 2 === 1) {
      const gaps = sorted.slice(1).map((to, i) => to - sorted[i]);
      const widest = gaps.indexOf(Math.max(...gaps));
      return (sorted[widest] + sorted[widest + 1]) / 2;
    }
    const [a, b] = [new Float64Array(2 * sizes.length), new Float64Array(2 * sizes.length)];
    let best = { at: (sorted[0] + sorted[1]) / 2, value: -1 };
    for (let i = 1; i < sorted.length; i++) {
      for (const share of [0.25, 0.5, 0.75]) {
        const at = sorted[i - 1] + share * (sorted[i] - sorted[i - 1]);
        evaluateRational(a, fit, at);
        evaluateRational(b, other, at);
        const value = largestDifference(a, b, sizes);
        if (value > best.value) best = { at, value };
      }
    }
    return best.at;
  }

  private fitted(fit: RationalFit, fitError: number, solves: number): Prepared {
    return this.prepared((out, f) => evaluateRational(out, fit, this.frequenciesHz[f]), fitError, solves);
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
  readonly atNode: PortMatrix[] = [];
  private readonly interpolant: MatrixInterpolant;

  constructor(
    private readonly system: System,
    nodesHz: Float64Array,
    private readonly kernels: Kernels,
  ) {
    this.interpolant = emptyInterpolant(system.mesh, nodesHz);
  }

  solveNode(i: number): PortMatrix {
    const matrix = systemMatrix(this.system, this.interpolant.nodesHz[i], this.kernels);
    setNode(this.interpolant, i, matrix, this.kernels.combine);
    this.atNode[i] = solveMatrix(this.system, matrix, this.kernels).y;
    return this.atNode[i];
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
