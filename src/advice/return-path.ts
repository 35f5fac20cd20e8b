/** What the radiator works against when the operator has not said. Balanced antennas need nothing: each half works against the other. */
import type { ReturnPath, System } from '../design/choices';

export function defaultReturnPath(system: System, heightM: number): ReturnPath {
  switch (system) {
    case 'end-fed-half-wave':
      return 'coax-shield';
    case 'non-resonant-end-fed':
      return 'counterpoise-wire';
    case 'quarter-wave-vertical':
      return heightM >= 1 ? 'elevated-radials' : 'ground-radials';
    case 'non-resonant-vertical':
    case 'inverted-l':
      return 'ground-radials';
    default:
      return 'none';
  }
}

/** Systems whose feed point has one wire and so needs something to work against. */
export const needsReturnPath = (system: System): boolean => defaultReturnPath(system, 0) !== 'none';
