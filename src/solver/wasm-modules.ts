/**
 * What the WebAssembly modules export: ldlt.ts, fields.ts and sums.ts of asm/. The solver knows them only by this; who instantiates them
 * (worker, command line, tests) hands them in.
 */
import type { GroundTable } from './ground-table';

interface Memory {
  readonly buffer: ArrayBuffer;
}

export interface LdltModule {
  readonly memory: Memory;
  reserve(size: number, columns: number): void;
  matrixReAt(): number;
  matrixImAt(): number;
  rightReAt(): number;
  rightImAt(): number;
  rowStride(): number;
  factor(): void;
  solve(columns: number): void;
}

/** Memory as a stack; see asm/parts/memory.ts. */
export interface StackModule {
  readonly memory: Memory;
  mark(): number;
  release(at: number): void;
  reserve(bytes: number): number;
}

/** Holds one ground table; see asm/parts/ground-table.ts. */
interface TableModule extends StackModule {
  setTable(
    at: number,
    countU: number,
    countV: number,
    hMin: number,
    inverseScaleRho: number,
    inverseScaleH: number,
    stepU: number,
    stepV: number,
    kappaRe: number,
    kappaIm: number,
  ): void;
}

export interface FieldModule extends TableModule {
  setElements(
    elements: number,
    count: number,
    copyOf: number,
    direct: number,
    image: number,
    orders: number,
    statics: number,
    rules: number,
    ends: number,
  ): void;
  fillPairs(k0: number, ground: number, factor: number): void;
  assemble(offset: number, unknown: number, sign: number, re: number, im: number): void;
}

export interface SumModule extends TableModule {
  combine(
    outRe: number,
    outIm: number,
    re: number,
    im: number,
    distance: number,
    shares: number,
    nodes: number,
    length: number,
    k0: number,
    factor: number,
  ): void;
  tableBand(
    out: number,
    rho: number,
    rows: number,
    h: number,
    heights: number,
    at: number,
    k: number,
    weight: number,
    spectrum: number,
    nodes: number,
    propagating: number,
    j0: number,
    j1: number,
    m: number,
  ): void;
  intensities(
    out: number,
    at: number,
    scratch: number,
    points: number,
    k0: number,
    cosTheta: number,
    sinTheta: number,
    verticalRe: number,
    verticalIm: number,
    horizontalRe: number,
    horizontalIm: number,
    directions: number,
    azimuths: number,
  ): void;
  directWaves(out: number, list: number, pairs: number, x: number, y: number, z: number, k0: number): void;
  reflectedWaves(out: number, list: number, pairs: number, x: number, y: number, z: number, k0: number): void;
}

export interface KernelModules {
  readonly ldlt: LdltModule;
  readonly fields: FieldModule;
  readonly sums: SumModule;
}

export type Numbers = Float64Array | Float32Array | Int32Array | Uint8Array;

/** Copies arrays into newly reserved memory; gives their addresses. */
export function place(module: StackModule, arrays: readonly Numbers[]): number[] {
  const addresses = arrays.map((array) => module.reserve(array.byteLength));
  const memory = new Uint8Array(module.memory.buffer);
  addresses.forEach((at, i) => {
    const { buffer, byteOffset, byteLength } = arrays[i];
    memory.set(new Uint8Array(buffer, byteOffset, byteLength), at);
  });
  return addresses;
}

/** Copies a ground table into newly reserved memory, to be the one that the module reads. */
export function placeTable(module: TableModule, table: GroundTable): void {
  const [at] = place(module, [Float32Array.from(table.values)]);
  const { countU, countV, hMin, inverseScaleRho, inverseScaleH, stepU, stepV, kappa } = table;
  module.setTable(at, countU, countV, hMin, inverseScaleRho, inverseScaleH, stepU, stepV, kappa.re, kappa.im);
}
