/** How the windings of a transformer join, by its ratio and by what it feeds. */
import type { Facts } from '../facts';

/** Whether the antenna side of the transformer is alike on both terminals against the shield. */
export const balancedIn = (facts: Facts): boolean => facts.balanced || facts.system === 'off-centre-fed';

/** A 4:1 with the shield at the middle of its antenna winding; other balanced ratios take two windings that touch nowhere. */
export function windingOf(ratio: number, isBalanced: boolean): WindingCode {
  if (!isBalanced) return 'transformer-autotransformer';
  return ratio === 4 ? 'transformer-centre-tapped' : 'transformer-two-windings';
}

type WindingCode = 'transformer-autotransformer' | 'transformer-centre-tapped' | 'transformer-two-windings';
