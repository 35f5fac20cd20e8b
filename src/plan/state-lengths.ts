/** Lengths that the site asks for: in numbers, and what is said of each beside its rule. */
import type { Facts } from '../advice/facts';
import type { ComparedSwr, SolvedFeed, SolvedLengths, SolvedReturn } from '../advice/field-facts';
import { staysClear } from '../advice/radiator-length';
import type { Band } from '../catalog/band-ids';
import type { fieldWords } from '../words/en/field';
import type { Data } from '../words/message';
import type { FieldStudy } from './field-schema';

type Lengths = NonNullable<FieldStudy['lengths']>;
type Said = readonly [keyof typeof fieldWords, Data];

/** From here on a length is far from its rule of thumb. */
const DIFFERS = 0.03;
/** An SWR this much above what the band would have alone is worth a word. */
const PAYS = 1.15;

export const stateLengths = (lengths: SolvedLengths, text: string[]): Lengths => ({
  ruleM: lengths.ruleM,
  chosenM: lengths.radiatorM,
  difference: lengths.radiatorM / lengths.ruleM - 1,
  by: lengths.by,
  pairs: pairsOf(lengths),
  swr: lengths.swr.map((each) => ({ ...each, alone: each.alone ?? null })),
  dips: Object.entries(lengths.dipsMHz ?? {}).map(([band, mhz]) => ({ band: band as Band, mhz })),
  feed: lengths.feed === undefined ? null : { ...lengths.feed, swr: [...lengths.feed.swr] },
  returns: lengths.returns === undefined ? null : { ...lengths.returns, wires: [...lengths.returns.wires] },
  text,
});

const pairsOf = ({ pairs }: SolvedLengths): Lengths['pairs'] =>
  Object.entries(pairs).map(([band, { wholeM, ruleM, rideSwr }]) => ({
    band: band as Band,
    ruleM,
    chosenM: wholeM,
    rideSwr: rideSwr ?? null,
  }));

/** The lengths of a stated plan as a field solution gave them. */
export const solvedOf = ({ chosenM, ruleM, by, swr, pairs, dips, feed, returns }: Lengths): SolvedLengths => ({
  radiatorM: chosenM,
  ruleM,
  by,
  swr: swr.map(({ alone, ...each }) => (alone === null ? each : { ...each, alone })),
  pairs: Object.fromEntries(
    pairs.map(({ band, chosenM: wholeM, ruleM: pairRuleM, rideSwr }) => [
      band,
      { wholeM, ruleM: pairRuleM, ...(rideSwr === null ? {} : { rideSwr }) },
    ]),
  ),
  dipsMHz: Object.fromEntries(dips.map(({ band, mhz }) => [band, mhz])),
  ...(feed === null ? {} : { feed }),
  ...(returns === null ? {} : { returns }),
});

export const lengthSaid = (facts: Facts, lengths: SolvedLengths): readonly Said[] => [
  ...feedSaid(lengths.feed),
  ...radiatorSaid(facts, lengths),
  ...(facts.system === 'linked-dipole' ? linkedSaid(lengths) : pairsSaid(lengths)),
  ...returnsSaid(facts, lengths.returns),
];

const pairsSaid = (lengths: SolvedLengths): readonly Said[] =>
  pairsOf(lengths).flatMap((pair) => [...ownSaid(pair), ...differs('pair-differs', pair, { band: pair.band })]);

/** Highest band first, as they are cut. */
function linkedSaid(lengths: SolvedLengths): readonly Said[] {
  const legs = pairsOf(lengths).map(
    ({ band, ruleM, chosenM }): Said => ['linked-leg', { band, ruleM: ruleM / 2, chosenM: chosenM / 2 }],
  );
  return legs.length === 0 ? [] : [...legs, ['linked-pieces', {}]];
}

const ownSaid = ({ band, rideSwr: swr }: Lengths['pairs'][number]): readonly Said[] =>
  swr === null ? [] : [['pair-of-its-own', { band, swr }]];

interface Pair {
  readonly ruleM: number;
  readonly chosenM: number;
}

function differs(
  code: 'length-differs' | 'pair-differs' | 'radial-differs',
  pair: Pair,
  data: Data = {},
): readonly Said[] {
  const difference = Math.abs(pair.chosenM / pair.ruleM - 1);
  return difference > DIFFERS ? [[code, { ...data, ...pair, percent: 100 * difference }]] : [];
}

function radiatorSaid(facts: Facts, { radiatorM: chosenM, ruleM, by, swr }: SolvedLengths): readonly Said[] {
  const data = { chosenM, ruleM };
  if (by === 'told' || by === 'rule') return [];
  if (by === 'resonance') return [['length-resonance', data], ...differs('length-differs', data)];
  const pays = mostPaid(swr);
  return [
    [chosenM === ruleM ? 'length-rule-holds' : 'length-worst-swr', { ...data, ...worstTwo(swr) }],
    ...(pays === null ? [] : ([['length-pays', pays]] as const)),
    ...(staysClear(facts) ? [] : differs('length-differs', data)),
  ];
}

const worstBy = (rows: readonly ComparedSwr[], which: 'rule' | 'chosen'): ComparedSwr | undefined =>
  [...rows].sort((a, b) => b[which] - a[which])[0];

const worstTwo = (rows: readonly ComparedSwr[]): Data => {
  const [chosen, rule] = [worstBy(rows, 'chosen'), worstBy(rows, 'rule')];
  return {
    worstBand: chosen?.band ?? '',
    worstSwr: chosen?.chosen ?? 1,
    ruleBand: rule?.band ?? '',
    ruleSwr: rule?.rule ?? 1,
  };
};

/** The band that gives up most for the others; null where none gives up anything to speak of. */
function mostPaid(rows: SolvedLengths['swr']): Data | null {
  const paid = rows.flatMap(({ band, chosen, alone }) => (alone === undefined ? [] : [{ band, chosen, alone }]));
  const [most] = paid.sort((a, b) => b.chosen / b.alone - a.chosen / a.alone);
  return most === undefined || paid.length < 2 || most.chosen < PAYS * most.alone ? null : most;
}

function feedSaid(feed: SolvedFeed | undefined): readonly Said[] {
  if (feed === undefined) return [];
  const { fraction, ruleFraction, told, swr, better } = feed;
  const percent = 100 * fraction;
  if (better !== null) {
    const { worst, toldWorst } = better;
    const bands = { worstBand: worst.band, worstSwr: worst.swr, ruleBand: toldWorst.band, ruleSwr: toldWorst.swr };
    return [['feed-better', { percent, betterPercent: 100 * better.fraction, ...bands }]];
  }
  if (told) return [['feed-told-holds', { percent }]];
  if (fraction === ruleFraction) return [['feed-third-holds', {}]];
  return [['feed-moved', { percent, ...worstTwo(swr) }]];
}

function returnsSaid({ settled }: Facts, returns: SolvedReturn | undefined): readonly Said[] {
  if (returns === undefined) {
    const lie = settled.returnPath === 'ground-radials' && settled.radialLengthM === null && settled.radialCount > 0;
    return lie ? [['radials-by-rule', {}]] : [];
  }
  const last = returns.wires.at(-1);
  if (last === undefined) return [];
  const data = { ruleM: last.ruleM, chosenM: last.chosenM };
  if (returns.piece === 'radial') return [['radial-resonance', data], ...differs('radial-differs', data)];
  if (returns.heatW === null) return [];
  const heat = { ruleW: returns.heatW.rule, chosenW: returns.heatW.chosen };
  return [[last.chosenM === last.ruleM ? 'counterpoise-holds' : 'counterpoise-moved', { ...data, ...heat }]];
}
