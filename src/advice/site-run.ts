/** What the radiator asks of the site: the straight run between its supports, and the height it takes up. Plane triangles. */
import type { Dimensions } from './dimensions';
import { spanOf, stretchesOf } from './end-height';
import type { Facts } from './facts';
import { hangsAs } from './hanging';

/** Top of an inverted-L when nobody told how high its support is: a 10 m pole, common practice. */
const USUAL_TOP_M = 10;

const along = (slantM: number, dropM: number): number => Math.sqrt(Math.max(slantM ** 2 - dropM ** 2, 0));

/** Upright part of an inverted-L, m: up to its support, leaving at least a fifth of the wire to run along. */
export function invertedLRiseM(facts: Facts, radiatorM: number): number {
  const { heightM, supportHeightM, endHeightM } = facts.settled;
  const told = Math.max(supportHeightM, endHeightM);
  const topM = told > heightM + 1 ? told : USUAL_TOP_M;
  return Math.min(topM - Math.min(heightM, topM - 1), 0.8 * radiatorM);
}

function slantedRunM(facts: Facts, radiatorM: number): number {
  return stretchesOf(facts, radiatorM).reduce((sum, { fromM, toM, lengthM }) => sum + along(lengthM, toM - fromM), 0);
}

function spannedM(facts: Facts, radiatorM: number): number {
  const { lowM, highM } = spanOf(facts, radiatorM);
  return highM - lowM;
}

export function runOf(facts: Facts, radiatorM: number): number {
  const { loopShape } = facts.settled;
  switch (hangsAs(facts.settled)) {
    case 'vertical':
      return 0;
    case 'inverted-l':
      return radiatorM - invertedLRiseM(facts, radiatorM);
    case 'inverted-v':
    case 'sloper':
      return slantedRunM(facts, radiatorM);
    case 'loop':
      return loopShape === 'square' ? radiatorM / 4 : radiatorM / 3;
    default:
      return radiatorM;
  }
}

export function riseOf(facts: Facts, radiatorM: number): number {
  const { loopShape, loopPlane } = facts.settled;
  switch (hangsAs(facts.settled)) {
    case 'vertical':
      return radiatorM;
    case 'inverted-l':
      return invertedLRiseM(facts, radiatorM);
    case 'inverted-v':
    case 'sloper':
      return spannedM(facts, radiatorM);
    case 'loop':
      if (loopPlane === 'flat') return 0;
      return loopShape === 'square' ? radiatorM / 4 : (radiatorM / 3) * Math.sqrt(0.75);
    default:
      return 0;
  }
}

/** What is known of the radiator's size. */
type Raised = Pick<Dimensions, 'radiator' | 'riseM'>;

/**
 * The highest point that anything of this antenna reaches, m above ground. An upright loop whose support is not told is taken to be fed at
 * its foot, which is the careful case.
 */
export function highestPointM(facts: Facts, { riseM, radiator: length }: Raised): number {
  const { radiator, fedAt, heightM, supportHeightM, endHeightM, loopPlane } = facts.settled;
  if (hangsAs(facts.settled) === 'sloper') return Math.max(supportHeightM, spanOf(facts, length.metres).highM);
  const fromItsFoot = radiator === 'loop' && loopPlane === 'upright' && facts.answers.supportHeightM === undefined;
  const standsOnFeedPoint = radiator === 'vertical' || radiator === 'inverted-l' || fromItsFoot;
  const aboveFeedM = fedAt === 'centre' ? riseM / 2 : riseM;
  return Math.max(supportHeightM, heightM + (standsOnFeedPoint ? aboveFeedM : 0), endHeightM);
}
