/** Every part the operator owns, judged against what this antenna needs. */
import type { PartOnHand } from '../design/answers';
import type { Dimensions } from './dimensions';
import type { Facts } from './facts';
import type { Link, OfferedBox, Verdict } from './finding';
import { judgeBeads, judgeChoke, judgeCoil, judgeCore } from './verdict-choke';
import type { Judged } from './verdict-codes';
import { judgeTransformer, judgeTwoInOne } from './verdict-transformer';
import { judgeLine, judgeWire } from './verdict-wire-line';

export const verdictsOf = (facts: Facts, chain: readonly Link[], dimensions: Dimensions): readonly Verdict[] =>
  facts.settled.onHand.map((part, index) => ({ part: index, ...judge(part, facts, chain, dimensions) }));

function judge(part: PartOnHand, facts: Facts, chain: readonly Link[], dimensions: Dimensions): Judged {
  switch (part.part) {
    case 'transformer':
      return judgeTransformer(part, facts, chain);
    case 'two-in-one':
      return judgeTwoInOne(part, facts, chain);
    case 'choke':
      return judgeChoke(part, facts, chain);
    case 'beads':
      return judgeBeads(part.count, facts, chain);
    case 'coil':
      return judgeCoil(part, facts, chain);
    case 'core':
      return judgeCore(part, facts, chain);
    case 'wire':
      return judgeWire(part, facts, dimensions);
    case 'line':
      return judgeLine(part, facts, chain);
  }
}

/** A box with this antenna's transformer and a choke in it, as shops offer them; null where no ratio is asked for, or where one is on hand anyway. */
export function offeredBoxOf(facts: Facts, chain: readonly Link[]): OfferedBox | null {
  const ratio = chain.find(({ device }) => device === 'transformer')?.ratio ?? null;
  if (ratio === null || facts.settled.onHand.some(({ part }) => part === 'two-in-one')) return null;
  return { ratio, ...judgeTwoInOne({ part: 'two-in-one', ratio }, facts, chain) };
}
