/** The power that heats parts, and the shop's way of stating it. */
import type { Facts } from './facts';

/** Shops rate parts for speech, whose average while keyed is a fifth of its peak (US exposure bulletin, table 2). */
const SPEECH_FACTOR = 0.2;

/** Average power while keyed, W. */
export const keyedAverageW = ({ settled, averageFactor }: Facts): number => settled.powerW * averageFactor;

/** Rating to ask a shop for, W PEP of speech, so that the part stands this station's average. */
export const speechRatingW = (facts: Facts): number =>
  facts.settled.powerW * Math.max(1, facts.averageFactor / SPEECH_FACTOR);
