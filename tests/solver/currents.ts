/** For tests that look inside a solution: the current at the ends of every element for a volt in the gaps. */
import { complex } from '../../src/base/complex';
import { type Currents, endCurrents } from '../../src/solver/far-field';
import type { Geometry } from '../../src/solver/geometry';
import { makeSystem, type System, solvePorts } from '../../src/solver/system';

export function drivenCurrents(geometry: Geometry): { system: System; currents: Currents; inputW: number } {
  const frequencyHz = geometry.frequencyMHz * 1e6;
  const system = makeSystem(geometry, 40, frequencyHz);
  const { y, xRe, xIm } = solvePorts(system, frequencyHz);
  const { size } = system.vectors;
  const currents = endCurrents(system.mesh, xRe.subarray(0, size), xIm.subarray(0, size));
  return { system, currents, inputW: complex(y.re[0], y.im[0]).re / 2 };
}
