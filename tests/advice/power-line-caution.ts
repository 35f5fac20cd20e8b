/** The caution that carries the distance from power lines, without the rest of the plan. */
import type { Dimensions } from '../../src/advice/dimensions';
import type { Facts } from '../../src/advice/facts';
import type { Caution } from '../../src/advice/finding';
import { powerLineDistance } from '../../src/advice/power-line';

export function powerLineCaution(facts: Facts, dimensions: Dimensions): Caution {
  const distance = powerLineDistance(facts, dimensions, []);
  return {
    id: 'fall-path',
    lines: [2],
    before: 'site',
    data: {},
    source: 'line-distance-rule',
    distanceM: distance.metres,
    distanceMWorking: distance.working,
  };
}
