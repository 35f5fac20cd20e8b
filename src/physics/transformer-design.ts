/**
 * Search of the whole core catalogue for a wide-band transformer: every core, stack of up to four and turns count that gives the ratio.
 *
 * `lightest` and `coolest` meet the need; the coolest is the lightest of those within 3 K of the lowest rise, because smaller differences
 * are below what the model can tell. `fromParts` is the best that the cores on hand give, met or not.
 */
import { InputError } from '../base/input-error';
import { type Core, type CoreId, coreOf, coreSizes, type Mix, mixIds } from '../catalog/cores';
import { ferrites } from '../catalog/ferrites';
import { byWeight, least } from './least';
import { CAPACITORS_PF, evaluateTransformer, sketchTransformer, type TransformerSketch } from './transformer-evaluate';
import type { TransformerBuild, TransformerChoice, TransformerDesign, TransformerNeed } from './transformer-need';
import { fitsInHole } from './transformer-windings';

const MAX_STACK = 4;
const MAX_PRIMARY_TURNS = 12;
/** How far the turns may miss the ratio asked for. */
const RATIO_TOLERANCE = 0.06;
const SAME_RISE_K = 3;

export function designTransformer(need: TransformerNeed): TransformerChoice {
  if (!(need.ratio >= 1)) throw new InputError('ratio-below-one', { ratio: need.ratio });
  if (need.points.length === 0) throw new InputError('no-frequencies');
  const all = search(need, () => true);
  const own = search(need, (build) =>
    need.onHand.some(({ core, count }) => core === build.core && count >= build.count),
  );
  const coolestK = Math.min(...all.meeting.map(({ riseK }) => riseK));
  const cool = all.meeting.filter(({ riseK }) => riseK <= coolestK + SAME_RISE_K);
  const settle = (sketch: TransformerSketch | undefined): TransformerDesign | null =>
    sketch === undefined ? null : withBestCapacitor(need, sketch.build);
  return {
    lightest: settle(least(all.meeting, byWeight)),
    coolest: settle(least(cool, byWeight)),
    fromParts: settle(least(own.meeting, byWeight) ?? own.closest),
    closest: all.meeting.length === 0 ? settle(all.closest) : null,
  };
}

interface Found {
  readonly meeting: readonly TransformerSketch[];
  readonly closest: TransformerSketch | undefined;
}

/** Every build that meets the need, and the one that misses it least. */
function search(need: TransformerNeed, allowed: (build: TransformerBuild) => boolean): Found {
  const meeting: TransformerSketch[] = [];
  let closest: TransformerSketch | undefined;
  for (const id of coresOf(need)) {
    const core = coreOf(id);
    for (const build of builds(need, core)) {
      if (!allowed(build)) continue;
      const worth = Math.max(1, closest?.excess ?? Number.POSITIVE_INFINITY);
      const sketch = sketchTransformer(need, core, build, worth);
      if (sketch === undefined) continue;
      if (sketch.excess <= 1) meeting.push(sketch);
      if (closest === undefined || sketch.excess < closest.excess) closest = sketch;
    }
  }
  return { meeting, closest };
}

/** Turns that give a ratio within the tolerance; undefined when this low side cannot. */
export function secondaryTurnsFor(primaryTurns: number, ratio: number): number | undefined {
  const secondaryTurns = Math.round(primaryTurns * Math.sqrt(ratio));
  const missed = Math.abs((secondaryTurns / primaryTurns) ** 2 / ratio - 1);
  return missed <= RATIO_TOLERANCE ? secondaryTurns : undefined;
}

/** Largest sizes first: one that meets the need soon makes short work of those that do not. */
const coresOf = ({ mixes = nickelZinc }: TransformerNeed): CoreId[] =>
  coreSizes.toReversed().flatMap((size) => mixes.map((mix): CoreId => `${size}-${mix}`));

const nickelZinc: readonly Mix[] = mixIds.filter((mix) => ferrites[mix].composition.value === 'NiZn');

function builds(need: TransformerNeed, core: Core): TransformerBuild[] {
  return upTo(MAX_PRIMARY_TURNS).flatMap((primaryTurns) => {
    const secondaryTurns = secondaryTurnsFor(primaryTurns, need.ratio);
    if (secondaryTurns === undefined) return [];
    const pair = { core: core.id, primaryTurns, secondaryTurns };
    return fitsInHole(need.winding, core, { ...pair, count: 1 })
      ? upTo(MAX_STACK).map((count) => ({ ...pair, count }))
      : [];
  });
}

const upTo = (last: number): number[] => Array.from({ length: last }, (_, i) => i + 1);

/** The capacitor that leaves the lowest worst SWR over all bands into the nominal load. */
function withBestCapacitor(need: TransformerNeed, build: TransformerBuild): TransformerDesign {
  const worstSwr = ({ points }: TransformerDesign): number => Math.max(...points.map((point) => point.swrNominal));
  return least(
    CAPACITORS_PF.map((pf) => evaluateTransformer(need, build, pf)),
    worstSwr,
  ) as TransformerDesign;
}
