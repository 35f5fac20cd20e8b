/**
 * The WebAssembly kernels behind the interface of kernels.ts. This file knows the modules only by what they export; who instantiates
 * them (worker, command line, tests) hands them in.
 */
import { ETA0 } from '../base/constants';
import { assembleMatrix, type SymmetricMatrix } from './assemble';
import type { GroundTable } from './ground-table';
import type { Kernels } from './kernels';
import type { Combine } from './matrix-interpolation';
import { type PairPlan, pairCount } from './pair-plan';
import { gaussRule } from './quadrature';

interface Memory {
  readonly buffer: ArrayBuffer;
}

/** Exports of asm/ldlt.ts. */
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

/** Exports of asm/fields.ts. */
export interface FieldModule {
  readonly memory: Memory;
  mark(): number;
  release(at: number): void;
  reserve(bytes: number): number;
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
  fillPairs(k0: number, ground: number, factor: number): void;
  assemble(offset: number, unknown: number, sign: number, re: number, im: number): void;
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
  tableProduct(out: number, j0: number, j1: number, m: number, rows: number, nodes: number, width: number): void;
}

const groundNumber = { none: 0, 'perfect-conductor': 1, soil: 2 } as const;
const ORDERS = [2, 4, 6, 8, 10];
const RULE_WIDTH = 20; // ten points, ten weights

export function wasmKernels(name: 'simd' | 'relaxed-simd', ldlt: LdltModule, fields: FieldModule): Kernels {
  const filler = new Filler(fields);
  const combiner = new Combiner(fields);
  fields.release(0);
  return {
    name,
    fillPairs(plan, k0, table) {
      combiner.forget();
      return filler.fillPairs(plan, k0, table);
    },
    assemble: (plan, ends) => filler.assemble(plan, ends),
    combine(out, nodes, shares, k0, factor) {
      if (shares.length === 1) combineOne(fields, out, nodes, shares, k0, factor);
      else {
        filler.forget();
        combiner.combine(out, nodes, shares, k0, factor);
      }
    },
    tableProduct(out, j0, j1, m, rows, nodes, width) {
      const before = fields.mark();
      const arrays = [out, j0, j1, m];
      const [outAt, j0At, j1At, mAt] = place(fields, arrays);
      fields.tableProduct(outAt, j0At, j1At, mAt, rows, nodes, width);
      out.set(new Float64Array(fields.memory.buffer, outAt, out.length));
      fields.release(before);
    },
    factorAndSolve: (matrix, bRe, bIm) => factorAndSolve(ldlt, matrix, bRe, bIm),
  };
}

type Numbers = Float64Array | Float32Array | Int32Array | Uint8Array;

/** Copies arrays into newly reserved memory; gives their addresses. */
function place(fields: FieldModule, arrays: readonly Numbers[]): number[] {
  const addresses = arrays.map((array) => fields.reserve(array.byteLength));
  const memory = new Uint8Array(fields.memory.buffer);
  addresses.forEach((at, i) => {
    const { buffer, byteOffset, byteLength } = arrays[i];
    memory.set(new Uint8Array(buffer, byteOffset, byteLength), at);
  });
  return addresses;
}

/** Holds one plan in the module's memory: only tables come and go from fill to fill. */
class Filler {
  private loaded: { plan: PairPlan; ends: number; mesh: number[]; top: number } | undefined;

  constructor(private readonly fields: FieldModule) {}

  forget(): void {
    this.loaded = undefined;
  }

  fillPairs(plan: PairPlan, k0: number, table: GroundTable | undefined): Float64Array {
    const { fields } = this;
    if (this.loaded?.plan !== plan) this.loaded = this.load(plan);
    fields.release(this.loaded.top);
    if (table) this.loadTable(table);
    fields.fillPairs(k0, groundNumber[plan.groundKind], ETA0 / (4 * Math.PI));
    return new Float64Array(fields.memory.buffer, this.loaded.ends, 8 * pairCount(plan.mesh.elementCount));
  }

  /** The pairs' impedances are those of the last fill, which lie in the module's memory. */
  assemble(plan: PairPlan, ends: Float64Array): SymmetricMatrix {
    const { fields, loaded } = this;
    if (!loaded || loaded.plan !== plan || ends.byteOffset !== loaded.ends) return assembleMatrix(plan.mesh, ends);
    const size = plan.mesh.unknownCount;
    const length = (size * (size + 1)) / 2;
    const before = fields.mark();
    const [reAt, imAt] = [fields.reserve(8 * length), fields.reserve(8 * length)];
    const re = new Float64Array(fields.memory.buffer, reAt, length).fill(0);
    const im = new Float64Array(fields.memory.buffer, imAt, length).fill(0);
    const [offset, unknown, sign] = loaded.mesh;
    fields.assemble(offset, unknown, sign, reAt, imAt);
    fields.release(before);
    return { size, re: re.slice(), im: im.slice() };
  }

  private load(plan: PairPlan) {
    const { fields } = this;
    fields.release(0);
    const { mesh, copyOf, direct, image, order, statics } = plan;
    const parts = [elementRecords(plan), copyOf, direct, image, order, statics, ruleTable()];
    const [elements, copyOfAt, directAt, imageAt, orderAt, staticsAt, rules] = place(fields, parts);
    const places = place(fields, [mesh.offset, mesh.unknown, mesh.sign]);
    const ends = fields.reserve(64 * pairCount(mesh.elementCount));
    fields.setElements(elements, mesh.elementCount, copyOfAt, directAt, imageAt, orderAt, staticsAt, rules, ends);
    return { plan, ends, mesh: places, top: fields.mark() };
  }

  private loadTable(table: GroundTable): void {
    const [at] = place(this.fields, [Float32Array.from(table.values)]);
    const { countU, countV, hMin, inverseScaleRho, inverseScaleH, stepU, stepV, kappa } = table;
    this.fields.setTable(at, countU, countV, hMin, inverseScaleRho, inverseScaleH, stepU, stepV, kappa.re, kappa.im);
  }
}

/** A single node, in memory that is given back: what makes a node of an interpolant. */
function combineOne(fields: FieldModule, ...[out, nodes, shares, k0, factor]: Parameters<Combine>): void {
  const before = fields.mark();
  const { length } = nodes.distanceM;
  const even = (length + 1) & ~1;
  const [reAt, imAt, distanceAt, outReAt, outImAt] = [0, 0, 0, 0, 0].map(() => fields.reserve(8 * even));
  const sharesAt = fields.reserve(16);
  const { buffer } = fields.memory;
  new Float64Array(buffer, reAt, length).set(nodes.re);
  new Float64Array(buffer, imAt, length).set(nodes.im);
  new Float64Array(buffer, distanceAt, length).set(nodes.distanceM);
  new Float64Array(buffer, sharesAt, 1).set(shares);
  fields.combine(outReAt, outImAt, reAt, imAt, distanceAt, sharesAt, 1, even, k0, factor);
  out.re.set(new Float64Array(buffer, outReAt, length));
  out.im.set(new Float64Array(buffer, outImAt, length));
  fields.release(before);
}

/** Holds the nodes of one interpolant in the module's memory, in place of a plan. */
class Combiner {
  private loaded: { re: Float64Array; addresses: number[]; out: number[]; length: number } | undefined;

  constructor(private readonly fields: FieldModule) {}

  forget(): void {
    this.loaded = undefined;
  }

  combine(...[out, nodes, shares, k0, factor]: Parameters<Combine>): void {
    const { fields } = this;
    if (this.loaded?.re !== nodes.re) this.loaded = this.load(nodes);
    const { addresses, out: outAt, length } = this.loaded;
    const before = fields.mark();
    const [sharesAt] = place(fields, [shares]);
    const [reAt, imAt, distanceAt] = addresses;
    fields.combine(outAt[0], outAt[1], reAt, imAt, distanceAt, sharesAt, shares.length, length, k0, factor);
    out.re.set(new Float64Array(fields.memory.buffer, outAt[0], out.re.length));
    out.im.set(new Float64Array(fields.memory.buffer, outAt[1], out.im.length));
    fields.release(before);
  }

  /** Rows are padded to an even length. */
  private load({ re, im, distanceM }: Parameters<Combine>[1]) {
    const { fields } = this;
    fields.release(0);
    const length = (distanceM.length + 1) & ~1;
    const padded = (values: Float64Array): Float64Array => {
      if (length === distanceM.length) return values;
      const wide = new Float64Array((values.length / distanceM.length) * length);
      for (let row = 0; row * distanceM.length < values.length; row++) {
        wide.set(values.subarray(row * distanceM.length, (row + 1) * distanceM.length), row * length);
      }
      return wide;
    };
    const addresses = place(fields, [padded(re), padded(im), padded(distanceM)]);
    const out = [fields.reserve(8 * length), fields.reserve(8 * length)];
    return { re, addresses, out, length };
  }
}

function factorAndSolve(ldlt: LdltModule, matrix: SymmetricMatrix, bRe: Float64Array, bIm: Float64Array): void {
  const { size } = matrix;
  const columns = bRe.length / size;
  ldlt.reserve(size, columns);
  const stride = ldlt.rowStride();
  const { buffer } = ldlt.memory;
  const re = new Float64Array(buffer, ldlt.matrixReAt(), size * stride);
  const im = new Float64Array(buffer, ldlt.matrixImAt(), size * stride);
  for (let row = 0, from = 0; row < size; from += ++row) {
    re.set(matrix.re.subarray(from, from + row + 1), row * stride);
    im.set(matrix.im.subarray(from, from + row + 1), row * stride);
  }
  const rightRe = new Float64Array(buffer, ldlt.rightReAt(), bRe.length);
  const rightIm = new Float64Array(buffer, ldlt.rightImAt(), bRe.length);
  rightRe.set(bRe);
  rightIm.set(bIm);
  ldlt.factor();
  ldlt.solve(columns);
  bRe.set(rightRe);
  bIm.set(rightIm);
}

/** Start, direction, length and half the squared radius of each element. */
function elementRecords({ mesh }: PairPlan): Float64Array {
  const records = new Float64Array(8 * mesh.elementCount);
  for (let e = 0; e < mesh.elementCount; e++) {
    for (let axis = 0; axis < 3; axis++) {
      records[8 * e + axis] = mesh.start[3 * e + axis];
      records[8 * e + 3 + axis] = mesh.direction[3 * e + axis];
    }
    records[8 * e + 6] = mesh.lengthM[e];
    records[8 * e + 7] = mesh.radiusM[e] ** 2 / 2;
  }
  return records;
}

function ruleTable(): Float64Array {
  const rules = new Float64Array(ORDERS.length * RULE_WIDTH);
  ORDERS.forEach((order, n) => {
    const { points, weights } = gaussRule(order);
    rules.set(points, n * RULE_WIDTH);
    rules.set(weights, n * RULE_WIDTH + RULE_WIDTH / 2);
  });
  return rules;
}
