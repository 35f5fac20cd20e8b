/** Fill and assembly by asm/fields.ts. */
import { ETA0 } from '../base/constants';
import { assembleMatrix, type SymmetricMatrix } from './assemble';
import type { GroundTable } from './ground-table';
import { type PairPlan, pairCount } from './pair-plan';
import { gaussRule } from './quadrature';
import { type FieldModule, place, placeTable } from './wasm-modules';

const groundNumber = { none: 0, 'perfect-conductor': 1, soil: 2 } as const;
const ORDERS = [2, 4, 6, 8, 10];
const RULE_WIDTH = 20; // ten points, ten weights

/** Holds one plan in the module's memory: only tables come and go from fill to fill. */
export class Filler {
  private loaded: { plan: PairPlan; ends: number; mesh: number[]; top: number } | undefined;

  constructor(private readonly fields: FieldModule) {}

  fillPairs(plan: PairPlan, k0: number, table: GroundTable | undefined): Float64Array {
    const { fields } = this;
    if (this.loaded?.plan !== plan) this.loaded = this.load(plan);
    fields.release(this.loaded.top);
    if (table) placeTable(fields, table);
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
