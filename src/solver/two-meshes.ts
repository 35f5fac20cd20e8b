/**
 * Every answer is taken from two meshes, one half as fine. The method is of second order in the length of its elements h, so the
 * admittances between ports tend to their limit as
 *
 *   Y(h) = Y + c h² + …   ⇒   Y ≈ Y(h) + [Y(h) − Y(2h)]/3
 *
 * and what was taken off tells how far to trust the rest. Symmetry, and every law that is linear in Y, stay as they are.
 * Source: Richardson, Phil. Trans. A 210 (1911).
 */
import type { PortMatrix } from '../physics/port-network';
import type { Geometry } from './geometry';
import { makeSystem, type System } from './system';

export const ELEMENTS_PER_WAVE = { default: 40, fine: 80 } as const;

export interface TwoMeshes {
  readonly fine: System;
  readonly coarse: System;
}

export function makeTwoMeshes(geometry: Geometry, mesh: 'default' | 'fine', highestHz: number): TwoMeshes {
  const elements = ELEMENTS_PER_WAVE[mesh];
  return {
    fine: makeSystem(geometry, elements, highestHz),
    coarse: makeSystem(geometry, elements / 2, highestHz),
  };
}

export function extrapolated(fine: PortMatrix, coarse: PortMatrix): PortMatrix {
  const onward = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, i) => value + (value - b[i]) / 3);
  return { ...fine, re: onward(fine.re, coarse.re), im: onward(fine.im, coarse.im) };
}
