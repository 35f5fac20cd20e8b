/**
 * Ground tables kept by frequency, soil and reach, so that a change of height, wire or choke finds them again. The reach is rounded
 * outward on a ladder. The oldest tables go when the store is full.
 */
import { C0 } from '../base/constants';
import type { Point } from './geometry';
import { soilPermittivity } from './ground-spectrum';
import { type BandSum, buildGroundTable, type GroundTable } from './ground-table';
import type { Mesh } from './mesh';

export interface Reach {
  readonly hMinM: number;
  readonly hMaxM: number;
  readonly rhoMaxM: number;
}

const KEPT = 64;

const ladder = (x: number, turn: (x: number) => number): number => 2 ** (turn(2 * Math.log2(x)) / 2);

/** Heights z + z′ and distances that occur between points of the antenna, rounded outward. */
export function reachOf(mesh: Mesh): Reach {
  const { low, high } = extent(mesh, []);
  return rounded(2 * low[2], 2 * high[2], Math.hypot(high[0] - low[0], high[1] - low[1]));
}

/** The same between the antenna and points in the field. */
export function reachWithPoints(mesh: Mesh, points: readonly Point[]): Reach {
  const antenna = extent(mesh, []);
  const { low, high } = extent(mesh, points);
  const heights = points.map((point) => point[2]);
  const acrossM = Math.hypot(high[0] - low[0], high[1] - low[1]);
  return rounded(antenna.low[2] + Math.min(...heights), antenna.high[2] + Math.max(...heights), acrossM);
}

function rounded(lowM: number, highM: number, acrossM: number): Reach {
  const hMinM = ladder(lowM, Math.floor);
  return { hMinM, hMaxM: ladder(highM, Math.ceil), rhoMaxM: ladder(Math.max(acrossM, hMinM), Math.ceil) };
}

function extent(mesh: Mesh, points: readonly Point[]): { low: number[]; high: number[] } {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  const take = (axis: number, x: number): void => {
    low[axis] = Math.min(low[axis], x);
    high[axis] = Math.max(high[axis], x);
  };
  for (let axis = 0; axis < 3; axis++) {
    for (let e = 0; e < mesh.elementCount; e++) {
      const start = mesh.start[3 * e + axis];
      take(axis, start);
      take(axis, start + mesh.lengthM[e] * mesh.direction[3 * e + axis]);
    }
    for (const point of points) take(axis, point[axis]);
  }
  return { low, high };
}

export class GroundCache {
  private readonly tables = new Map<string, GroundTable>();

  table(frequencyHz: number, soil: { epsilonR: number; sigmaSPerM: number }, reach: Reach, sum: BandSum): GroundTable {
    const key = [frequencyHz, soil.epsilonR, soil.sigmaSPerM, reach.hMinM, reach.hMaxM, reach.rhoMaxM].join();
    const found = this.tables.get(key);
    if (found) return found;
    const k0 = (2 * Math.PI * frequencyHz) / C0;
    const epsilon = soilPermittivity(frequencyHz, soil.epsilonR, soil.sigmaSPerM);
    const made = buildGroundTable(epsilon, k0 * reach.hMinM, k0 * reach.hMaxM, k0 * reach.rhoMaxM, sum);
    if (this.tables.size >= KEPT) this.tables.delete(this.tables.keys().next().value as string);
    this.tables.set(key, made);
    return made;
  }
}
