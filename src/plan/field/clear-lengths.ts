/**
 * A non-resonant wire: the length with the least worst SWR behind the ratio over all wanted bands, over all lengths that fit the site and keep
 * clear of every half-wave by the rule; over all that fit where none keeps clear. Limits: bands' centres only.
 */
import type { Dimensions } from '../../advice/dimensions';
import type { Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { searchOf } from '../../advice/non-resonant';
import type { FieldInstrument } from './instrument';
import { badness, swrAtFocus } from './trial';

/** Lengths tried over the site, and then about the best of them. */
const COARSE = 0.05;
const MOST_STEPS = 9;
const FINE = [-0.025, -0.0125, 0.0125, 0.025];

interface Stretch {
  readonly fromM: number;
  readonly toM: number;
}

/** Where the site has less room than the shortest usual wire asks for, lengths from here on are tried, as part of the room. */
const SHORT_OF_ROOM = 0.8;

function stretchesOf(facts: Facts, { windows }: Dimensions): readonly Stretch[] {
  const { shortestM, longestM } = searchOf(facts);
  if (windows.length > 0) return windows;
  return [{ fromM: Math.min(shortestM, SHORT_OF_ROOM * longestM), toM: longestM }];
}

/** Evenly over a stretch, its ends left out: cutting and hanging move a length by as much as that. */
function coarseLengths({ fromM, toM }: Stretch): readonly number[] {
  const steps = Math.min(Math.max(2, Math.ceil(Math.log(toM / fromM) / COARSE)), MOST_STEPS);
  return Array.from({ length: steps - 1 }, (_, i) => fromM * (toM / fromM) ** ((i + 1) / steps));
}

export async function clearOfHalfWaves(
  facts: Facts,
  dimensions: Dimensions,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const stretches = stretchesOf(facts, dimensions);
  const byRule = await swrAtFocus(facts, facts.bands, rule, instrument);
  if (byRule === null) return null;
  let best = { radiatorM: rule.ruleM, swr: byRule };
  const tryM = async (radiatorM: number): Promise<void> => {
    const swr = await swrAtFocus(facts, facts.bands, { ...rule, radiatorM, by: 'worst-swr' }, instrument);
    if (swr !== null && badness(swr) < badness(best.swr)) best = { radiatorM, swr };
  };
  for (const metres of stretches.flatMap(coarseLengths)) await tryM(metres);
  const around = FINE.map((step) => best.radiatorM * (1 + step));
  for (const metres of around) {
    if (stretches.some(({ fromM, toM }) => metres >= fromM && metres <= toM)) await tryM(metres);
  }
  return {
    ...rule,
    radiatorM: best.radiatorM,
    by: 'worst-swr',
    swr: facts.bands.map(({ band }, i) => ({ band, rule: byRule[i] ?? 1, chosen: best.swr[i] ?? 1 })),
  };
}
