/**
 * Ground tables kept by frequency, soil and reach, so that a change of height, wire or choke finds them again. The reach is rounded
 * outward on a ladder. The oldest tables go when the store is full.
 */
import { C0 } from '../base/constants';
import { soilPermittivity } from './ground-spectrum';
import { buildGroundTable, type GroundTable } from './ground-table';
import type { PairPlan } from './pair-plan';

export interface Reach {
  readonly hMinM: number;
  readonly hMaxM: number;
  readonly rhoMaxM: number;
}

const KEPT = 64;

const ladder = (x: number, turn: (x: number) => number): number => 2 ** (turn(2 * Math.log2(x)) / 2);

/** Heights z + z′ and distances that occur between points of the antenna, rounded outward. */
export function reachOf(plan: PairPlan): Reach {
  const { start, direction, lengthM, elementCount } = plan.mesh;
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let e = 0; e < elementCount; e++) {
    for (let axis = 0; axis < 3; axis++) {
      const a = start[3 * e + axis];
      const b = a + lengthM[e] * direction[3 * e + axis];
      low[axis] = Math.min(low[axis], a, b);
      high[axis] = Math.max(high[axis], a, b);
    }
  }
  const acrossM = Math.hypot(high[0] - low[0], high[1] - low[1]);
  const hMinM = ladder(2 * low[2], Math.floor);
  return { hMinM, hMaxM: ladder(2 * high[2], Math.ceil), rhoMaxM: ladder(Math.max(acrossM, hMinM), Math.ceil) };
}

export class GroundCache {
  private readonly tables = new Map<string, GroundTable>();

  table(frequencyHz: number, soil: { epsilonR: number; sigmaSPerM: number }, reach: Reach): GroundTable {
    const key = [frequencyHz, soil.epsilonR, soil.sigmaSPerM, reach.hMinM, reach.hMaxM, reach.rhoMaxM].join();
    const found = this.tables.get(key);
    if (found) return found;
    const k0 = (2 * Math.PI * frequencyHz) / C0;
    const epsilon = soilPermittivity(frequencyHz, soil.epsilonR, soil.sigmaSPerM);
    const made = buildGroundTable(epsilon, k0 * reach.hMinM, k0 * reach.hMaxM, k0 * reach.rhoMaxM);
    if (this.tables.size >= KEPT) this.tables.delete(this.tables.keys().next().value as string);
    this.tables.set(key, made);
    return made;
  }
}
