/**
 * Search of the whole core catalogue for a wide-band transformer: every core, stack of up to four and turns count that gives the ratio.
 *
 * All but `fromParts` and `closest` meet the need. `fewestCores` ranks rings, then mix 43, which every shop with rings has (common
 * practice, no source), then weight, and takes rings of 74 and 102 mm, which few shops have, only where no other does. The coolest is the
 * lightest of those within 3 K of the lowest rise, because smaller differences are below what the model can tell. `fromParts` is the best
 * that the cores on hand give, met or not; `moreOfOwn` may need more rings of a kind on hand.
 * A near miss that less power cures comes before one that it does not.
 */
import { InputError } from '../base/input-error';
import { type CoreId, coreIds, type Mix, mixIds } from '../catalog/core-ids';
import { type Core, coreOf } from '../catalog/cores';
import { ferrites, muAt, type Permeability } from '../catalog/ferrites';
import { byCoreCount, byWeight, isRare, least, nearestMiss } from './least';
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
  const all = search(need, coreIds, () => true);
  const ours = need.mixes ?? nickelZinc;
  const meeting = all.meeting.filter(({ mix }) => ours.includes(mix));
  const own = search(
    need,
    need.onHand.flatMap(({ core }) => (ours.includes(coreOf(core).mix) ? [core] : [])),
    (build) => need.onHand.some(({ core, count }) => core === build.core && count >= build.count),
  );
  const coolestK = Math.min(...meeting.map(({ riseK }) => riseK));
  const settle = (sketch: TransformerSketch | undefined): TransformerDesign | null =>
    sketch === undefined ? null : withBestCapacitor(need, sketch.build);
  const bestOf = (mix: Mix): TransformerSketch | undefined =>
    least(
      all.meeting.filter((each) => each.mix === mix),
      byCoreCount,
    ) ?? nearestMiss(all.misses.filter((each) => each.mix === mix));
  const byMix = new Map<Mix, TransformerDesign>();
  for (const mix of mixIds) {
    const design = settle(bestOf(mix));
    if (design !== null) byMix.set(mix, design);
  }
  return {
    fewestCores: settle(least(meeting, byCountAndMix)),
    lightest: settle(least(meeting, byWeight)),
    coolest: settle(
      least(
        meeting.filter(({ riseK }) => riseK <= coolestK + SAME_RISE_K),
        byWeight,
      ),
    ),
    fromParts: settle(least(own.meeting, byCoreCount) ?? nearestMiss(own.misses)),
    moreOfOwn: settle(
      least(
        meeting.filter(({ build }) => need.onHand.some(({ core }) => core === build.core)),
        byCoreCount,
      ),
    ),
    closest: meeting.length === 0 ? settle(nearestMiss(all.misses.filter(({ mix }) => ours.includes(mix)))) : null,
    byMix,
  };
}

/** As byCoreCount, with the usual mix between the number of rings and the weight. */
const byCountAndMix = (sketch: TransformerSketch): number => byCoreCount(sketch) + (sketch.mix === '43' ? 0 : 1e5);

const nickelZinc: readonly Mix[] = mixIds.filter((mix) => ferrites[mix].composition.value === 'NiZn');

interface Found {
  readonly meeting: readonly TransformerSketch[];
  /** Of each mix, the one that misses least, of common rings and of rare ones. */
  readonly misses: readonly TransformerSketch[];
}

/** Every build that meets the need, and the nearest misses. The lowest and the highest frequency first: most builds fail there. */
function search(need: TransformerNeed, cores: readonly CoreId[], allowed: (build: TransformerBuild) => boolean): Found {
  const sorted = { ...need, points: endsFirst(need.points) };
  const meeting: TransformerSketch[] = [];
  const closest = new Map<string, TransformerSketch>();
  const turns = turnsFor(need.ratio);
  const mus = new Map(mixIds.map((mix) => [mix, sorted.points.map(({ hz }) => muAt(mix, hz))]));
  // Largest sizes first: one that meets the need soon makes short work of those that do not.
  for (const id of cores.toReversed()) {
    const core = coreOf(id);
    const mu = mus.get(core.mix) as readonly Permeability[];
    const key = `${core.mix} ${isRare(core.size)}`;
    for (const build of builds(need, core, turns)) {
      if (!allowed(build)) continue;
      const nearest = closest.get(key);
      const worth = nearest?.shortage ?? Number.POSITIVE_INFINITY;
      const sketch = sketchTransformer(sorted, core, build, mu, worth);
      if (sketch === undefined) continue;
      if (sketch.shortage <= 1) meeting.push(sketch);
      if (nearest === undefined || sketch.shortage < nearest.shortage) closest.set(key, sketch);
    }
  }
  return { meeting, misses: [...closest.values()] };
}

function endsFirst<T extends { readonly hz: number }>(points: readonly T[]): T[] {
  const byHz = points.toSorted((a, b) => a.hz - b.hz);
  const last = byHz.pop() as T;
  const first = byHz.shift();
  return first === undefined ? [last] : [first, last, ...byHz];
}

/** Turns that give a ratio within the tolerance; undefined when this low side cannot. */
export function secondaryTurnsFor(primaryTurns: number, ratio: number): number | undefined {
  const secondaryTurns = Math.round(primaryTurns * Math.sqrt(ratio));
  const missed = Math.abs((secondaryTurns / primaryTurns) ** 2 / ratio - 1);
  return missed <= RATIO_TOLERANCE ? secondaryTurns : undefined;
}

type Turns = Pick<TransformerBuild, 'primaryTurns' | 'secondaryTurns'>;

const turnsFor = (ratio: number): Turns[] =>
  upTo(MAX_PRIMARY_TURNS).flatMap((primaryTurns) => {
    const secondaryTurns = secondaryTurnsFor(primaryTurns, ratio);
    return secondaryTurns === undefined ? [] : [{ primaryTurns, secondaryTurns }];
  });

function builds(need: TransformerNeed, core: Core, turns: readonly Turns[]): TransformerBuild[] {
  const found: TransformerBuild[] = [];
  for (const { primaryTurns, secondaryTurns } of turns) {
    if (!fitsInHole(need.winding, core, primaryTurns, secondaryTurns)) continue;
    for (let count = 1; count <= MAX_STACK; count++) found.push({ core: core.id, count, primaryTurns, secondaryTurns });
  }
  return found;
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
