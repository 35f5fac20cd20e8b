/** Parts on hand after a device is to be wound on other rings: those are taken to be there, and what it was to be wound on no longer is. */
import { type CoreId, coreIds } from '../../../catalog/core-ids';
import type { PartOnHand } from '../../../design/answers';

interface Rings {
  readonly core: string | null;
  readonly count: number | null;
}

const coreOf = ({ core }: Rings): CoreId | undefined => coreIds.find((id) => id === core);

export function withRings(onHand: readonly PartOnHand[], planned: Rings, chosen: Rings): PartOnHand[] {
  const core = coreOf(chosen);
  const count = chosen.count ?? 0;
  if (core === undefined || count < 1) return [...onHand];
  const left = planned.core === null ? [...onHand] : lessRings(onHand, planned.core, planned.count ?? 0);
  return [...left, { part: 'core', core, count }];
}

function lessRings(onHand: readonly PartOnHand[], core: string, count: number): PartOnHand[] {
  let toTake = count;
  return onHand.flatMap((part): PartOnHand[] => {
    if (part.part !== 'core' || part.core !== core || toTake <= 0) return [part];
    const left = part.count - Math.min(part.count, toTake);
    toTake -= part.count - left;
    return left === 0 ? [] : [{ ...part, count: left }];
  });
}
