/** Whether the wire ends in a box, which then is what distances along the line are counted from. */
import type { Plan } from '../../../plan/plan-schema';

export const boxAtFeedPoint = ({ chain }: Plan): boolean =>
  chain.some(({ device, at }) => device === 'transformer' && at === 'feed-point');
