/**
 * Transformers and two-in-one boxes on hand, against what the chain asks for.
 *
 * A ratio is judged by the SWR it leaves where the right one would leave 1: 49 takes 56 and 64, 9 takes 12. A two-in-one box is good for 25 W
 * average (about 100 W of voice), and never belongs at an end-fed's box whose counterpoise is the coax. Source: house positions; common
 * practice; own field solutions.
 */
import type { PartOnHand } from '../design/answers';
import { isEndFed } from './chain/choke-minimum';
import type { Facts } from './facts';
import { figureBand, heatShare } from './field-figures';
import type { Link } from './finding';
import { keyedAverageW, speechRatingW } from './heating-power';
import { type Judged, judged } from './verdict-codes';

type Transformer = Extract<PartOnHand, { part: 'transformer' }>;
type TwoInOne = Extract<PartOnHand, { part: 'two-in-one' }>;

const SAME_SWR = 1.35;
/** Still usable, at a cost that is named. */
const NEAR_SWR = 1.6;
const TWO_IN_ONE_W = 25;

export function judgeTransformer(part: Transformer, facts: Facts, chain: readonly Link[]): Judged {
  if (part.ratio === 1) return judgeOneToOne(part, chain);
  const ratio = neededRatio(chain);
  if (ratio === null) return notHere(part.ratio, facts);
  const swr = ratioSwr(part.ratio, ratio);
  const data = { ratio: part.ratio, needed: ratio, swr };
  if (swr > NEAR_SWR) return judged('wrong', 'transformer-other-ratio', data);
  if (part.kind === 'current' && facts.system === 'off-centre-fed') {
    const heatW = heatShare.offCentreCurrentType[figureBand(facts.bands[0].band)] * keyedAverageW(facts);
    return judged('wrong', 'transformer-current-off-centre', { ...data, heatW });
  }
  const short = ratingShort(part.ratingW, facts);
  if (short !== null) return short;
  if (swr > SAME_SWR) return judged('fits', 'transformer-fits-nearly', data);
  const rated = { ...data, neededW: speechRatingW(facts), ratingKnown: part.ratingW !== undefined };
  return part.kind === 'current'
    ? judged('fits', 'transformer-current-balanced', rated)
    : judged('fits', 'transformer-fits', rated);
}

const neededRatio = (chain: readonly Link[]): number | null =>
  chain.find(({ device }) => device === 'transformer')?.ratio ?? null;

const ratioSwr = (ratio: number, needed: number): number => Math.max(ratio / needed, needed / ratio);

/** A 1:1 of the current type is a choke; of the voltage type it does nothing for anyone here. */
function judgeOneToOne(part: Pick<Transformer, 'kind'>, chain: readonly Link[]): Judged {
  const choke = chain.find(({ device }) => device === 'choke');
  if (part.kind === 'voltage') return judged('wrong', 'one-to-one-voltage');
  return choke === undefined
    ? judged('wrong', 'choke-not-here')
    : judged('fits', 'one-to-one-is-choke', { ohm: choke.minimumOhm ?? 0, at: choke.at });
}

function notHere(ratio: number, facts: Facts): Judged {
  if (facts.settled.shackEnd === 'feed-point-tuner') return judged('wrong', 'transformer-at-tuner', { ratio });
  if (facts.lineKind === 'open-wire') return judged('wrong', 'transformer-on-open-wire', { ratio });
  if (facts.system === 'open-wire-doublet') return judged('wrong', 'transformer-doublet-on-coax', { ratio });
  if (facts.system === 'other' && facts.settled.feedImpedance === null)
    return judged('wrong', 'transformer-impedance-unknown', { ratio });
  // Where the antenna is a match by itself, the ratio is the SWR.
  return judged('wrong', 'transformer-not-here', { ratio, swr: Math.max(ratio, 1 / ratio) });
}

function ratingShort(ratingW: number | undefined, facts: Facts): Judged | null {
  const neededW = speechRatingW(facts);
  return ratingW !== undefined && ratingW < neededW
    ? judged('too-small', 'transformer-rating', { ratingW, neededW, averageW: keyedAverageW(facts) })
    : null;
}

export function judgeTwoInOne(part: TwoInOne, facts: Facts, chain: readonly Link[]): Judged {
  if (part.ratio === 1) return judgeOneToOne({ kind: 'current' }, chain);
  const ratio = neededRatio(chain);
  if (ratio === null) return notHere(part.ratio, facts);
  const swr = ratioSwr(part.ratio, ratio);
  if (swr > NEAR_SWR) return judged('wrong', 'transformer-other-ratio', { ratio: part.ratio, needed: ratio, swr });
  const { returnPath } = facts.settled;
  if (isEndFed(facts.system) && returnPath !== 'counterpoise-wire') {
    const share = heatShare.boxWithoutCounterpoise[figureBand(facts.bands[0].band)];
    return judged('wrong', 'two-in-one-no-return', { share, lengthM: 0.05 * facts.bands[0].wavelengthM });
  }
  const averageW = keyedAverageW(facts);
  if (averageW > TWO_IN_ONE_W) return judged('too-small', 'two-in-one-heat', { averageW, mostW: TWO_IN_ONE_W });
  return ratingShort(part.ratingW, facts) ?? judged('fits', 'two-in-one-fits', { averageW, mostW: TWO_IN_ONE_W });
}
