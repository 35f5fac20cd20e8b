/**
 * The outside of the coax from the feed point to the radio: down to the run height, along, up to 1 m at the entry, then indoors at 1 m. A run
 * too short for that goes straight to the entry.
 */
import { type CoaxRun, GROUND_WIRE_M, plus, type Vector } from './layout';

export const ENTRY_HEIGHT_M = 1;
/** Coax along the wire lies a little beside it. */
const BESIDE_M = 0.3;

/** Corner points with their distance along the coax from the feed point, m. */
export interface CoaxPoint {
  readonly id: 'feed' | 'foot' | 'end-of-run' | 'entry' | 'radio';
  readonly point: Vector;
  readonly alongM: number;
}

/** `leansOut`: beside an upright wire fed in its middle the coax cannot hang straight down, it is led away at an angle. */
export function coaxPath(feed: Vector, coax: CoaxRun, leansOut = false): readonly CoaxPoint[] {
  const direction: Vector = coax.route === 'square' ? [0, 1, 0] : [1, 0, 0];
  const runHeightM = Math.min(Math.max(coax.runHeightM, GROUND_WIRE_M), feed[2]);
  const asideM = leansOut ? (feed[2] - runHeightM) / 2 : coax.route === 'along' ? BESIDE_M : 0;
  const dropM = Math.hypot(feed[2] - runHeightM, asideM);
  const riseM = Math.abs(ENTRY_HEIGHT_M - runHeightM);
  const runM = coax.entryDistanceM - dropM - riseM;
  const indoorM = Math.max(coax.lengthM - coax.entryDistanceM, 0);
  const path: CoaxPoint[] = [{ id: 'feed', point: feed, alongM: 0 }];
  const add = (id: CoaxPoint['id'], point: Vector, alongM: number): void => {
    const last = path.at(-1);
    if (last !== undefined && alongM - last.alongM > 0.01) path.push({ id, point, alongM });
  };
  if (runM >= 0.5) {
    const foot = plus([feed[0], feed[1], runHeightM], [0, 1, 0], asideM);
    const end = plus(foot, direction, runM);
    add('foot', foot, dropM);
    add('end-of-run', end, dropM + runM);
    add('entry', [end[0], end[1], ENTRY_HEIGHT_M], coax.entryDistanceM);
  } else {
    const steepest = (leansOut ? 0.9 : 1) * coax.entryDistanceM;
    const down = Math.min(Math.abs(feed[2] - ENTRY_HEIGHT_M), steepest);
    const aside = Math.sqrt(Math.max(coax.entryDistanceM ** 2 - down ** 2, 0));
    const height = feed[2] > ENTRY_HEIGHT_M ? feed[2] - down : feed[2] + down;
    add(
      'entry',
      plus([feed[0], feed[1] + (coax.route === 'along' ? BESIDE_M : 0), height], direction, aside),
      coax.entryDistanceM,
    );
  }
  const last = path.at(-1);
  if (last !== undefined) add('radio', plus(last.point, direction, indoorM), last.alongM + indoorM);
  return path;
}
