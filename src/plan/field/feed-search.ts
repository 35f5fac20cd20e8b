/**
 * Where along an off-centre wire to feed it: least worst SWR behind the transformer over the bands its length fits.
 *
 * One solution of the bare wire on each band tells every place at once (gaps-along), over a few frequencies about the focus, which stand for
 * lengths (multiple-lengths). Places tried keep clear of the current minima: |sin nπp| as great as can be on every band, p from 0.18 to 0.44.
 * Nearer the end the outside of the coax is driven too hard (at 0.2 the antenna-end choke takes twice the heat it takes at a third), nearer
 * the middle the higher bands are lost. Common practice: a third for 80, 40, 20 and 10 m, a fifth where 15 m is wanted too.
 *
 * A third stays while its worst SWR is 2 or no other place is clearly better; of places as good the one nearest the middle is taken, where the
 * coax is driven least. Both are then solved whole, with coax and chokes. Limits: bands' centres only; places 3 % of the wire apart.
 */
import type { Dimensions } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedFeed } from '../../advice/field-facts';
import { fittingMultiples } from '../../advice/harmonics';
import { needsOf } from '../../advice/needs';
import { toldLengthM } from '../../advice/radiator-length';
import type { Layout } from '../../geometry/layout';
import { layoutOf } from '../layout-of';
import { impedancesAlong } from './gaps-along';
import type { FieldInstrument } from './instrument';
import { badness, swrAtFocus, swrsBehind, worstOf } from './trial';

const THIRD = 1 / 3;
const NEAREST_END = 0.18;
const NEAREST_MIDDLE = 0.44;
const STEP = 0.01;
const APART = 0.03;
const MOST_PLACES = 6;
/** Factors on frequency that stand for lengths: a wire for several bands comes out up to 4.5 % longer than by rule. */
const LENGTHS = [0.985, 1, 1.015, 1.03, 1.045] as const;
/** Above this a band counts as lost, and how far does not matter. */
const LOST_SWR = 10;
/** Good enough to leave the feed point where it is. */
const GOOD_SWR = 2;
/** The rule's place stays while no other is better by this factor: choke positions and lengths move an SWR by as much. */
const CLEARLY = 1.2;
const AS_GOOD = 1.1;

/** One place with the length that suits it best: SWR on each band. */
interface Fed {
  readonly fraction: number;
  readonly lengthFactor: number;
  readonly swr: readonly number[];
}

/** Null where the wire is not fed off its centre, no transformer stands there, or it cannot be solved. */
export async function solveFeed(
  facts: Facts,
  dimensions: Dimensions,
  instrument: FieldInstrument,
): Promise<SolvedFeed | null> {
  const layout = layoutOf(facts, dimensions);
  if (facts.system !== 'off-centre-fed' || layout === null || needsOf(facts).transformation === null) return null;
  const multiples = fittingMultiples(facts);
  const bands = multiples.map(({ at }) => at);
  const now = layout.feedFraction;
  const places = [
    now,
    ...placesClearOf(
      multiples.map(({ n }) => n),
      now,
    ),
  ];
  const fed = await fedAtEach(facts, layout, bands, places, instrument);
  const [stays] = fed;
  if (stays === undefined) return null;
  const told = facts.answers.feedFraction !== undefined;
  const keeps: SolvedFeed = { fraction: now, ruleFraction: THIRD, told, swr: [], better: null };
  const other = clearlyBetter(fed, stays);
  if (other === null) return keeps;
  if (told) return { ...keeps, better: betterThan(bands, stays, other) };
  const wholeAt = ({ fraction, lengthFactor }: Fed): Promise<readonly number[] | null> =>
    swrAtFocus(
      facts,
      bands,
      {
        radiatorM: layout.radiatorM * lengthFactor,
        ruleM: layout.radiatorM,
        pairs: {},
        by: 'worst-swr',
        swr: [],
        feed: { ...keeps, fraction },
      },
      instrument,
    );
  const rule = await wholeAt(stays);
  const chosen = await wholeAt(other);
  return rule === null || chosen === null
    ? keeps
    : moved(keeps, bands, { ...stays, swr: rule }, { ...other, swr: chosen });
}

function placesClearOf(multiples: readonly number[], now: number): readonly number[] {
  const clearance = (p: number): number => Math.min(...multiples.map((n) => Math.abs(Math.sin(n * Math.PI * p))));
  const count = Math.round((NEAREST_MIDDLE - NEAREST_END) / STEP) + 1;
  const byClearance = Array.from({ length: count }, (_, i) => NEAREST_END + i * STEP).sort(
    (a, b) => clearance(b) - clearance(a),
  );
  const taken: number[] = [];
  for (const place of byClearance) {
    const isFree = [now, ...taken].every((other) => Math.abs(place - other) > APART - STEP / 2);
    if (isFree && taken.length < MOST_PLACES) taken.push(place);
  }
  return taken;
}

/** The bare wire fed at each place, the layout's own first. */
async function fedAtEach(
  facts: Facts,
  layout: Layout,
  bands: readonly BandFacts[],
  places: readonly number[],
  instrument: FieldInstrument,
): Promise<readonly Fed[]> {
  const factors = toldLengthM(facts) === null ? LENGTHS : [1];
  const shown = await Promise.all(
    bands.map((at) => {
      const frequenciesHz = factors.map((factor) => factor * at.focusMHz * 1e6);
      return impedancesAlong(facts, layout, instrument, at, { places, frequenciesHz });
    }),
  );
  const known = shown.filter((rows) => rows !== null);
  if (known.length < bands.length) return [];
  return places.map((fraction, place) =>
    factors
      .map((lengthFactor, f): Fed => {
        const impedances = known.flatMap((rows) => rows[place]?.[f] ?? []);
        return { fraction, lengthFactor, swr: swrsBehind(facts, impedances) };
      })
      .reduce((best, each) => (badnessOf(each) < badnessOf(best) ? each : best)),
  );
}

const badnessOf = ({ swr }: Fed): number => badness(swr.map((each) => Math.min(each, LOST_SWR)));

function clearlyBetter(fed: readonly Fed[], stays: Fed): Fed | null {
  if (Math.max(...stays.swr) <= GOOD_SWR) return null;
  const least = Math.min(...fed.map(badnessOf));
  if (badnessOf(stays) <= CLEARLY * least) return null;
  const good = fed.filter((each) => badnessOf(each) <= AS_GOOD * least);
  return good.length === 0 ? null : good.reduce((a, b) => (b.fraction > a.fraction ? b : a));
}

function betterThan(bands: readonly BandFacts[], stays: Fed, other: Fed): SolvedFeed['better'] {
  const [worst, toldWorst] = [worstOf(bands, other.swr), worstOf(bands, stays.swr)];
  return worst === null || toldWorst === null ? null : { fraction: other.fraction, worst, toldWorst };
}

/** Both places solved whole: the rule's stays where coax and chokes even them out. */
function moved(keeps: SolvedFeed, bands: readonly BandFacts[], stays: Fed, other: Fed): SolvedFeed {
  if (clearlyBetter([stays, other], stays) === null) return keeps;
  const swr = bands.map(({ band }, i) => ({ band, rule: stays.swr[i] ?? 1, chosen: other.swr[i] ?? 1 }));
  return { ...keeps, fraction: other.fraction, swr };
}
