/**
 * One frequency, all results: feed impedance, probe currents, where the power goes, gain, near fields, and how far to trust them.
 * Impedance and probe currents are extrapolated from two meshes (two-meshes.ts), and the error estimate is half of what that changed;
 * shares of power, pattern and near fields belong to the currents of the finer mesh, which answer for every watt it takes in.
 */
import { type Complex, complex, divide, magnitude, multiply } from '../base/complex';
import { C0 } from '../base/constants';
import { type Excitation, excite, feedOf, type PortState } from '../physics/port-network';
import { currentTree } from './current-tree';
import { type Currents, endCurrents, type FarGround, farField } from './far-field';
import type { Geometry, PowerShare, Solution } from './geometry';
import { reachWithPoints } from './ground-cache';
import { soilPermittivity } from './ground-spectrum';
import { type Kernels, plainKernels } from './kernels';
import { fieldVectors } from './near-field';
import { patternOf } from './pattern';
import { type PortSolution, type System, sharedGround, solvePorts } from './system';
import { extrapolated, makeTwoMeshes } from './two-meshes';
import { wireImpedanceOhmPerM } from './wire-impedance';

export interface SolveOptions {
  readonly mesh?: 'default' | 'fine';
  readonly kernels?: Kernels | undefined;
  /** A clock in milliseconds, if the time taken is to be told. */
  readonly clock?: () => number;
}

export function solve(geometry: Geometry, options: SolveOptions = {}): Solution {
  const clock = options.clock ?? (() => 0);
  const started = clock();
  const frequencyHz = geometry.frequencyMHz * 1e6;
  const { fine: system, coarse } = makeTwoMeshes(geometry, options.mesh ?? 'default', frequencyHz);
  const coarseY = solvePorts(coarse, frequencyHz, options.kernels).y;
  const ports = solvePorts(system, frequencyHz, options.kernels);
  const excitation = excitationOf(geometry, system);
  const state = excite(ports.y, excitation);
  const limit = excite(extrapolated(ports.y, coarseY), excitation);
  const { impedance, current: feedCurrent } = feedOf(limit.currents, excitation.gapVolts);
  const meshImpedance = feedOf(state.currents, excitation.gapVolts).impedance;
  const currents = wholeCurrents(system, ports, state);
  const inputW = inputPowerW(state, excitation);
  const { intensities } = options.kernels ?? plainKernels;
  const k0 = (2 * Math.PI * frequencyHz) / C0;
  const far = farField(system.plan, currents, k0, farGround(geometry), intensities);
  const share = powerShare(geometry, system, currents, state, excitation, inputW, far.radiatedW);
  return {
    impedance: { r: impedance.re, x: impedance.im },
    probes: probeCurrents(geometry, limit, feedCurrent),
    powerShare: share,
    gainDbi: 10 * Math.log10((4 * Math.PI * far.peakWPerSr) / inputW),
    gainThetaDeg: far.thetaDeg,
    gainPhiDeg: far.phiDeg,
    fields: fieldsAt(geometry, system, currents, inputW, options.kernels ?? plainKernels),
    ...(geometry.pattern === true
      ? { pattern: patternOf(system.plan, currents, k0, farGround(geometry), far, intensities) }
      : {}),
    segments: system.mesh.elementCount,
    errorEstimate: relativeDifference(meshImpedance, impedance) / 2,
    warnings: system.resolved.warnings,
    millis: clock() - started,
  };
}

export function excitationOf(geometry: Geometry, system: System): Excitation {
  const loadOhms = (geometry.loads ?? []).map(({ impedance }) => complex(impedance.r, impedance.x));
  return { gapVolts: system.resolved.gaps.map((gap) => gap.volts), loadOhms };
}

/** Rms fields when the antenna accepts `powerW`, 100 W unless told. */
function fieldsAt(
  geometry: Geometry,
  system: System,
  currents: Currents,
  inputW: number,
  kernels: Kernels,
): Solution['fields'] {
  const points = geometry.fieldPoints ?? [];
  if (points.length === 0) return [];
  const frequencyHz = geometry.frequencyMHz * 1e6;
  const { ground } = geometry;
  const table =
    ground.kind === 'soil'
      ? sharedGround.table(frequencyHz, ground, reachWithPoints(system.mesh, points), kernels.bandSum)
      : undefined;
  const scaleToRms = Math.sqrt((geometry.powerW ?? 100) / inputW / 2);
  const tree = currentTree(system.mesh, currents);
  const surroundings = { k0: (2 * Math.PI * frequencyHz) / C0, ground: ground.kind, table };
  return fieldVectors(points, tree, surroundings, kernels.nearSums).map((field, n) => {
    const size = (re: Float64Array, im: Float64Array): number => scaleToRms * Math.hypot(...re, ...im);
    return { point: points[n], electricVPerM: size(field.eRe, field.eIm), magneticAPerM: size(field.hRe, field.hIm) };
  });
}

const relativeDifference = (a: Complex, b: Complex): number => Math.hypot(a.re - b.re, a.im - b.im) / magnitude(b);

const halfRealProduct = (volts: Complex, current: Complex): number =>
  (volts.re * current.re + volts.im * current.im) / 2;

const inputPowerW = (state: PortState, { gapVolts }: Excitation): number =>
  gapVolts.reduce((sum, volts, g) => sum + halfRealProduct(volts, state.currents[g]), 0);

function probeCurrents(geometry: Geometry, state: PortState, feedCurrent: Complex): Solution['probes'] {
  const probes = geometry.probes ?? [];
  const first = state.currents.length - probes.length;
  return probes.map(({ id }, n) => {
    const relative = divide(state.currents[first + n], feedCurrent);
    return { id, re: relative.re, im: relative.im, magnitude: magnitude(relative) };
  });
}

function wholeCurrents(system: System, ports: PortSolution, state: PortState): Currents {
  const { size } = system.vectors;
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  state.volts.forEach((volts, port) => {
    for (let i = 0; i < size; i++) {
      const x = multiply(volts, complex(ports.xRe[port * size + i], ports.xIm[port * size + i]));
      re[i] += x.re;
      im[i] += x.im;
    }
  });
  return endCurrents(system.mesh, re, im);
}

export function farGround(geometry: Geometry): FarGround {
  const { ground } = geometry;
  if (ground.kind !== 'soil') return ground;
  return { kind: 'soil', epsilon: soilPermittivity(geometry.frequencyMHz * 1e6, ground.epsilonR, ground.sigmaSPerM) };
}

/** Shares of the power accepted. Over soil what is neither radiated nor lost in wire and loads warms the ground. */
function powerShare(
  geometry: Geometry,
  { mesh, resolved }: System,
  currents: Currents,
  state: PortState,
  excitation: Excitation,
  inputW: number,
  radiatedW: number,
): PowerShare {
  let wireW = 0;
  for (let e = 0; e < mesh.elementCount; e++) {
    const { conductivitySPerM } = resolved.wires[mesh.wire[e]].wire;
    if (!conductivitySPerM) continue;
    const ohmPerM = wireImpedanceOhmPerM(geometry.frequencyMHz * 1e6, mesh.radiusM[e], conductivitySPerM).re;
    wireW += (ohmPerM / 2) * squaredIntegral(mesh.lengthM[e], currents, e);
  }
  const gaps = excitation.gapVolts.length;
  const loadsW = excitation.loadOhms.reduce(
    (sum, ohms, l) => sum + (ohms.re * magnitude(state.currents[gaps + l]) ** 2) / 2,
    0,
  );
  const radiated = radiatedW / inputW;
  const wire = wireW / inputW;
  const loads = loadsW / inputW;
  const ground = geometry.ground.kind === 'soil' ? 1 - radiated - wire - loads : 0;
  return { radiated, wire, loads, ground };
}

/** ∫ |I|² dl of a linear current. */
function squaredIntegral(lengthM: number, { re, im }: Currents, e: number): number {
  const [a, b] = [2 * e, 2 * e + 1];
  return (lengthM / 3) * (re[a] ** 2 + im[a] ** 2 + re[b] ** 2 + im[b] ** 2 + re[a] * re[b] + im[a] * im[b]);
}
