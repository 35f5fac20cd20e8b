/** What was assumed, with what becomes of it: ends of a wire too short for the usual height stand where they are drawn and solved. */
import type { Dimensions } from './dimensions';
import { endsReachedM } from './end-height';
import type { Facts } from './facts';
import { hangsAs } from './hanging';
import type { Assumed } from './settle';

/** Heights nearer to each other than this are told alike, m. */
const ALIKE_M = 0.05;

export function assumedOf(facts: Facts, dimensions: Pick<Dimensions, 'radiator'>): readonly Assumed[] {
  const usualM = facts.settled.endHeightM;
  const { farM, shortM } = endsReachedM(facts, dimensions.radiator.metres);
  const otherM = hangsAs(facts.settled) === 'sloper' ? farM : shortM; // the other end of a sloper goes up to its support
  if (Math.max(Math.abs(farM - usualM), Math.abs(otherM - usualM)) < ALIKE_M) return facts.assumed;
  const data = { usualM, farM, otherM };
  return facts.assumed.map((each) =>
    each.key === 'endHeightM' ? { ...each, code: 'endHeightM-reached', data } : each,
  );
}
