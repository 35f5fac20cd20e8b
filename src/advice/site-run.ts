/** What the radiator asks of the site: the straight run between its supports, and the height it takes up. Plane triangles. */
import type { Facts } from './facts';

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

export function runOf(facts: Facts, radiatorM: number): number {
  const { radiator, heightM, supportHeightM, endHeightM, loopShape } = facts.settled;
  const dropM = Math.abs(Math.max(heightM, supportHeightM) - endHeightM);
  switch (radiator) {
    case 'vertical':
      return 0;
    case 'inverted-l':
      return radiatorM - invertedLRiseM(facts, radiatorM);
    case 'inverted-v':
      return 2 * along(radiatorM / 2, dropM);
    case 'sloper':
      return along(radiatorM, dropM);
    case 'loop':
      return loopShape === 'square' ? radiatorM / 4 : radiatorM / 3;
    default:
      return radiatorM;
  }
}

export function riseOf(facts: Facts, radiatorM: number): number {
  const { radiator, heightM, supportHeightM, endHeightM, loopShape, loopPlane } = facts.settled;
  switch (radiator) {
    case 'vertical':
      return radiatorM;
    case 'inverted-l':
      return invertedLRiseM(facts, radiatorM);
    case 'inverted-v':
      return Math.min(Math.abs(Math.max(heightM, supportHeightM) - endHeightM), radiatorM / 2);
    case 'sloper':
      return Math.min(Math.abs(Math.max(heightM, supportHeightM) - endHeightM), radiatorM);
    case 'loop':
      if (loopPlane === 'flat') return 0;
      return loopShape === 'square' ? radiatorM / 4 : (radiatorM / 3) * Math.sqrt(0.75);
    default:
      return 0;
  }
}

/**
 * The highest point that anything of this antenna reaches, m above ground. An upright loop whose support is not told is taken to be fed at
 * its foot, which is the careful case.
 */
export function highestPointM(facts: Facts, { riseM }: { readonly riseM: number }): number {
  const { radiator, fedAt, heightM, supportHeightM, endHeightM, loopPlane } = facts.settled;
  const fromItsFoot = radiator === 'loop' && loopPlane === 'upright' && facts.answers.supportHeightM === undefined;
  const standsOnFeedPoint = radiator === 'vertical' || radiator === 'inverted-l' || fromItsFoot;
  const aboveFeedM = fedAt === 'centre' ? riseM / 2 : riseM;
  return Math.max(supportHeightM, heightM + (standsOnFeedPoint ? aboveFeedM : 0), endHeightM);
}
