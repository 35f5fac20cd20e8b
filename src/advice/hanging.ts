/** How a wire hangs: a radiator of one shape says so itself, a wire with links hangs as its heights tell. */
import type { Radiator } from '../design/choices';
import type { Settled } from './settle';

/** Heights nearer to each other than this are one, m. */
const LEVEL_M = 0.1;
/** Part of the drop below the feed point by which a support stands above it before the wire counts as one straight slope. */
const SLOPES_FROM = 0.5;

/**
 * The radiator whose shape it has. A linked wire slopes through its feed point where its support stands clearly above that, droops from it to
 * both ends where they hang lower, and lies level otherwise.
 */
export function hangsAs({
  radiator,
  heightM,
  endHeightM,
  supportHeightM,
}: Pick<Settled, 'radiator' | 'heightM' | 'endHeightM' | 'supportHeightM'>): Radiator {
  if (radiator !== 'linked-wire') return radiator;
  const dropM = heightM - endHeightM;
  if (dropM < LEVEL_M) return 'straight-wire';
  return supportHeightM - heightM >= SLOPES_FROM * dropM ? 'sloper' : 'inverted-v';
}
