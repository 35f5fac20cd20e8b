/**
 * Heights that were told and that the wire does not come to: it is laid out, drawn and solved as near to them as its steepest slope allows
 * (geometry/radiator-wires.ts), which is said here with the cure.
 */
import { goesOverSupport, reachedM as heightReachedM, STEEPEST } from '../../design/wire-slope';
import { hangsAs } from '../hanging';
import { type Judged, type Rule, type Way, warn } from './warning';

/** Heights outdoors are estimates. */
const TOLD_ROUGHLY_M = 0.5;

type Place = 'end' | 'ends' | 'short-leg' | 'top';

/** A straight stretch that begins at one height and should come to another, m. */
interface Stretch {
  readonly place: Place;
  readonly fromM: number;
  readonly lengthM: number;
  readonly toldM: number;
  /** It begins at the feed point, whose height is an answer. */
  readonly isFromFeed: boolean;
}

const reachedBy = ({ fromM, lengthM, toldM }: Stretch): number =>
  heightReachedM({ fromM, lengthM, wantedM: toldM, steepest: STEEPEST });

export const endOutOfReach: Rule = (judged) =>
  stretchesOf(judged).flatMap((stretch) => {
    const { place, fromM, lengthM, toldM } = stretch;
    const reachedM = reachedBy(stretch);
    if (Math.abs(reachedM - toldM) <= TOLD_ROUGHLY_M) return [];
    const data = { place, fromM, lengthM, toldM, reachedM, isShort: reachedM > toldM };
    return [warn('end-out-of-reach', data, waysOf(stretch, reachedM))];
  });

function waysOf({ place, lengthM, toldM, isFromFeed }: Stretch, reachedM: number): readonly Way[] {
  if (place === 'top') return ['hang-lower'];
  const feedM = toldM + Math.sign(reachedM - toldM) * STEEPEST * lengthM;
  return ['rope-on', ...(isFromFeed && feedM > 0 ? ([['feed-at', { feedM }]] as const) : [])];
}

const wires: readonly string[] = ['straight-wire', 'inverted-v', 'sloper', 'parallel-wires'];

/** The stretches whose far height was told. */
function stretchesOf({ facts, dimensions }: Judged): readonly Stretch[] {
  const { answers, settled } = facts;
  const shape = hangsAs(settled);
  if (!wires.includes(shape)) return [];
  const wholeM = dimensions.radiator.metres;
  const { heightM, endHeightM, supportHeightM, fedAt } = settled;
  const end = (place: Place, lengthM: number, fromM = heightM): readonly Stretch[] =>
    answers.endHeightM === undefined
      ? []
      : [{ place, fromM, lengthM, toldM: endHeightM, isFromFeed: fromM === heightM }];
  if (fedAt !== 'end') {
    const shortM = wholeM * dimensions.feedFraction;
    if (shape === 'sloper') return end('end', wholeM - shortM);
    return end(fedAt === 'centre' ? 'ends' : 'short-leg', shortM);
  }
  if (shape !== 'inverted-v' || !goesOverSupport(settled)) return end('end', wholeM);
  const legM = wholeM / 2;
  const up: Stretch = { place: 'top', fromM: heightM, lengthM: legM, toldM: supportHeightM, isFromFeed: true };
  return [up, ...end('end', legM, reachedBy(up))];
}
