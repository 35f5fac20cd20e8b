/**
 * Which antenna system the answers name, or why they name none. The combination decides; the operator need not know the name.
 */
import { type FeedLineId, isOpenWireLine } from '../catalog/line-ids';
import type { FeedPosition, Radiator, System } from '../design/choices';

/** The feed points each radiator has. */
export const feedPositionsOf: Readonly<Record<Radiator, readonly FeedPosition[]>> = {
  'straight-wire': ['centre', 'off-centre', 'end'],
  'inverted-v': ['centre', 'off-centre', 'end'],
  sloper: ['centre', 'off-centre', 'end'],
  vertical: ['base', 'end', 'centre'],
  'inverted-l': ['base'],
  loop: ['corner', 'side-middle'],
  'parallel-wires': ['centre'],
  'linked-wire': ['centre'],
  'folded-wire': ['centre'],
  other: ['centre', 'off-centre', 'end', 'base', 'corner', 'side-middle'],
};

export interface SystemQuestion {
  readonly radiator: Radiator;
  readonly fedAt: FeedPosition;
  readonly lengthChoice: 'resonant' | 'non-resonant' | 'fixed';
  readonly feedLine: FeedLineId;
  /** True when a fixed wire is within 5 % of a half-wave multiple on every wanted band. */
  readonly fixedIsHalfWave: boolean;
}

/** The system, or null when this radiator has no such feed point. */
export function systemOf(question: SystemQuestion): System | null {
  const { radiator, fedAt } = question;
  if (!feedPositionsOf[radiator].includes(fedAt)) return null;
  switch (radiator) {
    case 'straight-wire':
    case 'inverted-v':
    case 'sloper':
      return wireSystem(question);
    case 'vertical':
      return verticalSystem(question);
    case 'inverted-l':
      return 'inverted-l';
    case 'loop':
      return 'full-wave-loop';
    case 'parallel-wires':
      return 'parallel-dipoles';
    case 'linked-wire':
      return 'linked-dipole';
    case 'folded-wire':
      return 'folded-dipole';
    case 'other':
      return 'other';
  }
}

function wireSystem({ radiator, fedAt, lengthChoice, feedLine, fixedIsHalfWave }: SystemQuestion): System {
  if (fedAt === 'off-centre') return 'off-centre-fed';
  if (fedAt === 'end') return endFed(lengthChoice, fixedIsHalfWave);
  if (isOpenWireLine(feedLine) || lengthChoice === 'non-resonant') return 'open-wire-doublet';
  if (radiator === 'inverted-v') return 'inverted-v';
  return radiator === 'sloper' ? 'sloper' : 'centre-fed-half-wave';
}

function verticalSystem({ fedAt, lengthChoice, fixedIsHalfWave }: SystemQuestion): System {
  if (fedAt === 'base') return lengthChoice === 'resonant' ? 'quarter-wave-vertical' : 'non-resonant-vertical';
  if (fedAt === 'end') return endFed(lengthChoice, fixedIsHalfWave);
  return 'centre-fed-half-wave';
}

const endFed = (lengthChoice: SystemQuestion['lengthChoice'], fixedIsHalfWave: boolean): System =>
  lengthChoice === 'resonant' || (lengthChoice === 'fixed' && fixedIsHalfWave)
    ? 'end-fed-half-wave'
    : 'non-resonant-end-fed';

/** Systems whose two halves are alike, so that both sides of the feed point stand at equal and opposite voltage. */
const balancedSystems: readonly System[] = [
  'centre-fed-half-wave',
  'inverted-v',
  'sloper',
  'open-wire-doublet',
  'full-wave-loop',
  'parallel-dipoles',
  'linked-dipole',
  'folded-dipole',
];
export const isBalanced = (system: System, toldBalanced: boolean): boolean =>
  system === 'other' ? toldBalanced : balancedSystems.includes(system);
