/**
 * A non-resonant wire: the length with the least worst SWR behind the ratio over all wanted bands, of all that fit the site.
 *
 * The rule's clearance of 5 % from every half-wave is far too little about the first, where it is the least that is kept, and needless about the
 * higher ones, which the SWR itself tells. Closed forms over the whole room say where to look (feed-impedance: good to a factor 1.6 in SWR); the most promising lengths, those of
 * the rule's clear windows and two beside the best are solved, with coax, counterpoise and chokes. Limits: bands' centres only.
 */
import { type Dimensions, dimensionsOf } from '../../advice/dimensions';
import type { Facts } from '../../advice/facts';
import { feedPointOf } from '../../advice/feed-impedance';
import type { SolvedLengths } from '../../advice/field-facts';
import { searchOf } from '../../advice/non-resonant';
import { CLEARANCE, marginTo, resonances } from '../../physics/non-resonant-length';
import type { FieldInstrument } from './instrument';
import { badness, swrAtFocus, swrsBehind } from './trial';

/** Spacing of the lengths looked at by closed forms, as part of the length. */
const SPACING = 0.015;
/** Solved lengths lie at least this far apart: nearer the closed forms cannot tell them apart. */
const APART = 0.04;
const MOST_PROMISING = 6;
const MOST_WINDOWS = 3;
const BESIDE = [-0.015, 0.015];
/** Left over at the ends of the room: cutting and hanging move a length by as much. */
const MARGIN = 0.02;

export async function clearOfHalfWaves(
  facts: Facts,
  { windows }: Dimensions,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const byRule = await swrAtFocus(facts, facts.bands, rule, instrument);
  if (byRule === null) return null;
  let best = { radiatorM: rule.ruleM, swr: byRule };
  const attempt = async (radiatorM: number): Promise<void> => {
    const swr = await swrAtFocus(facts, facts.bands, { ...rule, radiatorM, by: 'worst-swr' }, instrument);
    if (swr !== null && badness(swr) < badness(best.swr)) best = { radiatorM, swr };
  };
  const clear = windows.slice(0, MOST_WINDOWS).map(({ bestM }) => bestM);
  const apart = farApart([rule.ruleM], [...clear, ...promising(facts, rule)]);
  for (const metres of apart.slice(1, 1 + MOST_PROMISING)) await attempt(metres);
  const beside = BESIDE.map((step) => best.radiatorM * (1 + step));
  for (const metres of beside) if (isAllowed(facts, metres)) await attempt(metres);
  return {
    ...rule,
    radiatorM: best.radiatorM,
    by: 'worst-swr',
    swr: facts.bands.map(({ band }, i) => ({ band, rule: byRule[i] ?? 1, chosen: best.swr[i] ?? 1 })),
  };
}

/** Within the room, and clear of every band's first half-wave. */
function isAllowed(facts: Facts, metres: number): boolean {
  const search = searchOf(facts);
  const firsts = resonances(search).filter(({ n }) => n === 1);
  const fits = metres > search.shortestM * (1 + MARGIN) && metres < search.longestM * (1 - MARGIN);
  return fits && firsts.every((first) => marginTo(first, metres) > CLEARANCE);
}

/** All lengths that are allowed, the most promising first. */
function promising(facts: Facts, rule: SolvedLengths): readonly number[] {
  const { shortestM, longestM } = searchOf(facts);
  const steps = Math.max(0, Math.floor(Math.log(longestM / shortestM) / SPACING));
  const all = Array.from({ length: steps + 1 }, (_, i) => shortestM * (1 + SPACING) ** i);
  const marked = all
    .filter((metres) => isAllowed(facts, metres))
    .map((metres) => ({ metres, bad: byClosedForms(facts, { ...rule, radiatorM: metres, by: 'worst-swr' }) }));
  return marked.sort((a, b) => a.bad - b.bad).map(({ metres }) => metres);
}

function byClosedForms(facts: Facts, lengths: SolvedLengths): number {
  const dimensions = dimensionsOf(facts, { lengths });
  const known = facts.bands.flatMap((at) => feedPointOf(facts, at, dimensions)?.z ?? []);
  return known.length < facts.bands.length ? Number.POSITIVE_INFINITY : badness(swrsBehind(facts, known));
}

/** In order, none near one before it. */
function farApart(first: readonly number[], others: readonly number[]): readonly number[] {
  const taken = [...first];
  for (const metres of others) {
    if (taken.every((other) => Math.abs(metres / other - 1) > APART)) taken.push(metres);
  }
  return taken;
}
