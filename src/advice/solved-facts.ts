/** Facts with what a field solution decided in place of an assumption: where an off-centre wire is fed. What was told stays as told. */

import type { Facts } from './facts';
import type { SolvedLengths } from './field-facts';
import type { Assumed } from './settle';

/** Names the sentence that says the part was looked for on this very site. */
const SEARCHED = 'feedFraction-solved';

export function knowing(facts: Facts, lengths: Pick<SolvedLengths, 'feed'> | undefined): Facts {
  const feed = lengths?.feed;
  if (feed === undefined || feed.told) return facts;
  const { fraction } = feed;
  const stated = (assumed: Assumed): Assumed =>
    assumed.key === 'feedFraction' ? { ...assumed, value: fraction, code: SEARCHED } : assumed;
  return {
    ...facts,
    settled: { ...facts.settled, feedFraction: fraction },
    assumed: facts.assumed.map(stated),
  };
}
