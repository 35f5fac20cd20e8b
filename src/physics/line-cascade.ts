/**
 * Several lines one behind the other, the first at the load. Each sees the input impedance of the one before; the losses add in decibels.
 * Junctions are ideal. Source: Pozar, Microwave Engineering, 4th ed., §2.3 and §4.4 (cascaded two-ports).
 */
import type { Complex } from '../base/complex';
import { inputImpedance, type LineConstants, type LineLoss, lineLoss } from './line';

export interface LineSection {
  readonly constants: LineConstants;
  readonly lengthM: number;
}

export interface CascadeResult extends LineLoss {
  readonly input: Complex;
  /** Load that each section sees, in the order given. */
  readonly loads: readonly Complex[];
}

export function cascade(sections: readonly LineSection[], load: Complex): CascadeResult {
  let seen = load;
  let totalDb = 0;
  let matchedDb = 0;
  const loads: Complex[] = [];
  for (const { constants, lengthM } of sections) {
    loads.push(seen);
    const loss = lineLoss(constants, lengthM, seen);
    totalDb += loss.totalDb;
    matchedDb += loss.matchedDb;
    seen = inputImpedance(constants, lengthM, seen);
  }
  return { input: seen, loads, totalDb, matchedDb, addedDb: totalDb - matchedDb };
}
