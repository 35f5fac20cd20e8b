/**
 * The WebAssembly kernels behind the interface of kernels.ts. This file knows the modules only by what they export; who instantiates
 * them (worker, command line, tests) hands them in.
 */
import { ETA0 } from '../base/constants';
import type { GroundTable } from './ground-table';
import type { Kernels } from './kernels';
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
  tableProduct(out: number, j0: number, j1: number, m: number, rows: number, nodes: number, width: number): void;
}

const groundNumber = { none: 0, 'perfect-conductor': 1, soil: 2 } as const;
const ORDERS = [2, 4, 6, 8, 10];
const RULE_WIDTH = 20; // ten points, ten weights

export function wasmKernels(name: 'simd' | 'relaxed-simd', ldlt: LdltModule, fields: FieldModule): Kernels {
  fields.release(0);
  let loaded: { plan: PairPlan; ends: number; top: number } | undefined;

  const load = (plan: PairPlan) => {
    fields.release(0);
    const { elements, direct, image, order, statics } = { elements: elementRecords(plan), ...plan };
    const rules = ruleTable();
    const sizes = [elements, direct, image, order, statics, rules].map((array) => fields.reserve(array.byteLength));
    const ends = fields.reserve(64 * pairCount(plan.mesh.elementCount));
    const { buffer } = fields.memory;
    const [elementsAt, directAt, imageAt, orderAt, staticsAt, rulesAt] = sizes;
    new Float64Array(buffer, elementsAt, elements.length).set(elements);
    new Int32Array(buffer, directAt, direct.length).set(direct);
    new Int32Array(buffer, imageAt, image.length).set(image);
    new Uint8Array(buffer, orderAt, order.length).set(order);
    new Float64Array(buffer, staticsAt, statics.length).set(statics);
    new Float64Array(buffer, rulesAt, rules.length).set(rules);
    const { elementCount } = plan.mesh;
    fields.setElements(elementsAt, elementCount, directAt, imageAt, orderAt, staticsAt, rulesAt, ends);
    return { plan, ends, top: fields.mark() };
  };

  const loadTable = (table: GroundTable): void => {
    const at = fields.reserve(4 * table.values.length);
    new Float32Array(fields.memory.buffer, at, table.values.length).set(table.values);
    const { countU, countV, hMin, inverseScaleRho, inverseScaleH, stepU, stepV, kappa } = table;
    fields.setTable(at, countU, countV, hMin, inverseScaleRho, inverseScaleH, stepU, stepV, kappa.re, kappa.im);
  };

  return {
    name,
    fillPairs(plan, k0, table) {
      if (loaded?.plan !== plan) loaded = load(plan);
      fields.release(loaded.top);
      if (table) loadTable(table);
      fields.fillPairs(k0, groundNumber[plan.groundKind], ETA0 / (4 * Math.PI));
      return new Float64Array(fields.memory.buffer, loaded.ends, 8 * pairCount(plan.mesh.elementCount));
    },
    tableProduct(out, j0, j1, m, rows, nodes, width) {
      const before = fields.mark();
      const arrays = [out, j0, j1, m];
      const [outAt, j0At, j1At, mAt] = arrays.map((array) => fields.reserve(array.byteLength));
      const { buffer } = fields.memory;
      [outAt, j0At, j1At, mAt].forEach((at, i) => {
        new Float64Array(buffer, at, arrays[i].length).set(arrays[i]);
      });
      fields.tableProduct(outAt, j0At, j1At, mAt, rows, nodes, width);
      out.set(new Float64Array(buffer, outAt, out.length));
      fields.release(before);
    },
    factorAndSolve(matrix, bRe, bIm) {
      const { size } = matrix;
      const columns = bRe.length / size;
      ldlt.reserve(size, columns);
      const stride = ldlt.rowStride();
      const { buffer } = ldlt.memory;
      const re = new Float64Array(buffer, ldlt.matrixReAt(), size * stride);
      const im = new Float64Array(buffer, ldlt.matrixImAt(), size * stride);
      for (let row = 0; row < size; row++) {
        re.set(matrix.re.subarray(row * size, row * size + row + 1), row * stride);
        im.set(matrix.im.subarray(row * size, row * size + row + 1), row * stride);
      }
      const rightRe = new Float64Array(buffer, ldlt.rightReAt(), bRe.length);
      const rightIm = new Float64Array(buffer, ldlt.rightImAt(), bRe.length);
      rightRe.set(bRe);
      rightIm.set(bIm);
      ldlt.factor();
      ldlt.solve(columns);
      bRe.set(rightRe);
      bIm.set(rightIm);
    },
  };
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
