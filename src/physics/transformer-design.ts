/**
 * Search of the whole core catalogue for a wide-band transformer: every core, stack of up to four and turns count that gives the ratio.
 *
 * `lightest` and `coolest` meet the need; the coolest is the lightest of those within 3 K of the lowest rise, because smaller differences
 * are below what the model can tell. `fromParts` is the best that the cores on hand give, met or not.
 */
import { InputError } from '../base/input-error';
import { coreSizes, type Mix, mixIds, ringSizes } from '../catalog/cores';
import { ferrites } from '../catalog/ferrites';
import { byWeight, least } from './least';
import { CAPACITORS_PF, evaluateTransformer, fitsInHole } from './transformer-evaluate';
import type { TransformerBuild, TransformerChoice, TransformerDesign, TransformerNeed } from './transformer-need';

const MAX_STACK = 4;
const MAX_PRIMARY_TURNS = 12;
/** How far the turns may miss the ratio asked for. */
const RATIO_TOLERANCE = 0.06;
const SAME_RISE_K = 3;

export function designTransformer(need: TransformerNeed): TransformerChoice {
  if (!(need.ratio >= 1)) throw new InputError('ratio-below-one', { ratio: need.ratio });
  if (need.points.length === 0) throw new InputError('no-frequencies');
  const all = builds(need).map((build) => evaluateTransformer(need, build));
  const meeting = all.filter((design) => design.excess <= 1);
  const owned = all.filter((design) =>
    need.onHand.some(({ core, count }) => core === design.core && count >= design.count),
  );
  const coolestK = Math.min(...meeting.map((design) => design.riseK));
  const settle = (design: TransformerDesign | undefined): TransformerDesign | null =>
    design === undefined ? null : withBestCapacitor(need, design);
  return {
    lightest: settle(least(meeting, byWeight)),
    coolest: settle(
      least(
        meeting.filter((design) => design.riseK <= coolestK + SAME_RISE_K),
        byWeight,
      ),
    ),
    fromParts: settle(bestOwned(owned)),
    closest: meeting.length === 0 ? settle(least(all, (design) => design.excess)) : null,
  };
}

/** Turns that give a ratio within the tolerance; undefined when this low side cannot. */
export function secondaryTurnsFor(primaryTurns: number, ratio: number): number | undefined {
  const secondaryTurns = Math.round(primaryTurns * Math.sqrt(ratio));
  const missed = Math.abs((secondaryTurns / primaryTurns) ** 2 / ratio - 1);
  return missed <= RATIO_TOLERANCE ? secondaryTurns : undefined;
}

function builds(need: TransformerNeed): TransformerBuild[] {
  const mixes = need.mixes ?? nickelZinc;
  const turns = range(MAX_PRIMARY_TURNS).flatMap((primaryTurns) => {
    const secondaryTurns = secondaryTurnsFor(primaryTurns, need.ratio);
    return secondaryTurns === undefined ? [] : [{ primaryTurns, secondaryTurns }];
  });
  return coreSizes.flatMap((size) =>
    mixes.flatMap((mix) =>
      range(MAX_STACK).flatMap((count) =>
        turns
          .map((pair): TransformerBuild => ({ core: `${size}-${mix}`, count, ...pair }))
          .filter((build) => fitsInHole(need.winding, ringSizes[size].value, build)),
      ),
    ),
  );
}

const nickelZinc: readonly Mix[] = mixIds.filter((mix) => ferrites[mix].composition.value === 'NiZn');

const range = (to: number): number[] => Array.from({ length: to }, (_, i) => i + 1);

/** What meets the need with the least weight; else what misses it least. */
const bestOwned = (owned: readonly TransformerDesign[]): TransformerDesign | undefined => {
  const meeting = owned.filter((design) => design.excess <= 1);
  return least(meeting, byWeight) ?? least(owned, (design) => design.excess);
};

/** The capacitor that leaves the lowest worst SWR over all bands into the nominal load. */
function withBestCapacitor(need: TransformerNeed, design: TransformerDesign): TransformerDesign {
  const worstSwr = ({ points }: TransformerDesign): number => Math.max(...points.map((point) => point.swrNominal));
  return least(
    CAPACITORS_PF.map((pf) => evaluateTransformer(need, design, pf)),
    worstSwr,
  ) as TransformerDesign;
}
