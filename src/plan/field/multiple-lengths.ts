/**
 * One wire for several bands, each on a half-wave multiple: the length with the least worst SWR behind the ratio. A wire longer by (1 + ε) at f
 * behaves nearly as this one at f (1 + ε), so one sweep about each focus shows all lengths near this one; solved again at the length found.
 * The same sweeps tell where each band dips, and what a band would have had alone. Limits: within 8 % of the rule; bands' centres only.
 */
import type { BandFacts, Facts } from '../../advice/facts';
import type { SolvedLengths } from '../../advice/field-facts';
import { multiplesOf } from '../../advice/harmonics';
import type { FieldInstrument } from './instrument';
import { held } from './resonance';
import { badness, swrAtFocus, swrsBehind, trialImpedance } from './trial';

const STEPS = 12;
const STEP = 0.005;
const around = Array.from({ length: 2 * STEPS + 1 }, (_, i) => 1 + (i - STEPS) * STEP);
const ROUNDS = 2;
/** As far as frequency stands for length well enough to need no second look. */
const NEAR = 0.02;

/** SWR over `around`, one row to a band, of a wire of `sweptM`. */
interface Shown {
  readonly sweptM: number;
  readonly rows: readonly (readonly number[])[];
}

/** SWR over factors on the frequency, which stand for factors on the length. */
async function shownAround(
  facts: Facts,
  served: readonly BandFacts[],
  lengths: SolvedLengths,
  instrument: FieldInstrument,
): Promise<Shown | null> {
  const all = await Promise.all(
    served.map((at) => {
      const frequenciesHz = around.map((factor) => at.focusMHz * 1e6 * factor);
      return trialImpedance(facts, lengths, instrument, at, frequenciesHz);
    }),
  );
  const known = all.filter((z) => z !== null);
  if (known.length < served.length) return null;
  return { sweptM: lengths.radiatorM, rows: known.map((z) => swrsBehind(facts, z)) };
}

export async function forMultiples(
  facts: Facts,
  rule: SolvedLengths,
  instrument: FieldInstrument,
): Promise<SolvedLengths | null> {
  const served = multiplesOf(facts).map(({ at }) => at);
  let best: SolvedLengths = { ...rule, by: 'worst-swr' };
  let byRule: readonly number[] = [];
  let last: Shown | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    const shown = await shownAround(facts, served, best, instrument);
    if (shown === null) return null;
    last = shown;
    if (round === 0) byRule = shown.rows.map((row) => row[STEPS] ?? 1);
    const marks = around.map((factor, i) => ({ factor, bad: badness(shown.rows.map((row) => row[i] ?? 1)) }));
    const least = marks.reduce((a, b) => (b.bad < a.bad ? b : a));
    best = { ...best, radiatorM: rule.ruleM * held((best.radiatorM / rule.ruleM) * least.factor) };
    if (Math.abs(least.factor - 1) <= NEAR) break;
  }
  const chosen = await swrAtFocus(facts, served, best, instrument);
  return chosen === null || last === null ? null : judged(served, best, byRule, chosen, last);
}

/** The SWR of the chosen length, solved and not read off a sweep; the rule's length stays when it does better. */
function judged(
  served: readonly BandFacts[],
  lengths: SolvedLengths,
  byRule: readonly number[],
  chosen: readonly number[],
  { sweptM, rows }: Shown,
): SolvedLengths {
  const isBetter = badness(chosen) <= badness(byRule);
  const radiatorM = isBetter ? lengths.radiatorM : lengths.ruleM;
  const dips = served.flatMap(({ band, focusMHz }, i) => {
    const factor = dipIn(rows[i] ?? []);
    return factor === null ? [] : [[band, (focusMHz * factor * sweptM) / radiatorM] as const];
  });
  return {
    ...lengths,
    radiatorM,
    swr: served.map(({ band }, i) => {
      const now = (isBetter ? chosen[i] : byRule[i]) ?? 1;
      return { band, rule: byRule[i] ?? 1, chosen: now, alone: Math.min(now, ...(rows[i] ?? [])) };
    }),
    dipsMHz: Object.fromEntries(dips),
  };
}

/** Factor on the focus at which the SWR is least, between the steps by a parabola; null when it lies beyond them. */
function dipIn(row: readonly number[]): number | null {
  const least = row.indexOf(Math.min(...row));
  const [before, at, after] = [row[least - 1], row[least], row[least + 1]];
  if (before === undefined || at === undefined || after === undefined) return null;
  const bend = before - 2 * at + after;
  const between = bend > 0 ? (before - after) / (2 * bend) : 0;
  return 1 + (least - STEPS + between) * STEP;
}
