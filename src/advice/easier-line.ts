/**
 * Open-wire line a little longer than told, with which every wanted band is easier on the tuner. The feed point is carried down each length by
 * the exact line equations; only lengths that still reach are tried. Nothing below half a metre tells, common practice.
 */
import { complex } from '../base/complex';
import { swr } from '../physics/line';
import type { Facts } from './facts';
import type { BandFinding, Link } from './finding';
import { runOfChain, SYSTEM_OHM } from './line-run';

const STEP_M = 0.5;
const MOST_ADDED_M = 6;
/** Less than that is not worth buying line for. */
const WORTHWHILE = 0.67;

/** `worstSwr` is at the tuner, on the worst of the bands. Null where the line is no open-wire line, a band's feed point is not known, or no length near it does clearly better. */
export function easierLine(
  facts: Facts,
  chain: readonly Link[],
  bands: readonly BandFinding[],
): { readonly lengthM: number; readonly addedM: number; readonly worstSwr: number } | null {
  if (facts.lineKind !== 'open-wire') return null;
  const worstWith = (addedM: number): number => {
    const longer = chain.map((link) =>
      link.line === facts.settled.feedLine && link.lengthM !== null
        ? { ...link, lengthM: link.lengthM + addedM }
        : link,
    );
    const each = bands.map(({ feedPoint, atMHz }) =>
      feedPoint === null
        ? Number.POSITIVE_INFINITY
        : swr(runOfChain(longer, complex(feedPoint.r, feedPoint.x), atMHz).atRadio, SYSTEM_OHM),
    );
    return Math.max(...each);
  };
  const steps = Array.from({ length: MOST_ADDED_M / STEP_M }, (_, i) => (i + 1) * STEP_M);
  const tried = steps.map((addedM) => ({ addedM, worstSwr: worstWith(addedM) }));
  const best = tried.reduce((least, each) => (each.worstSwr < least.worstSwr ? each : least));
  if (!(best.worstSwr < WORTHWHILE * worstWith(0))) return null;
  return { ...best, lengthM: facts.settled.feedLineLengthM + best.addedM };
}
