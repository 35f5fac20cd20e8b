/**
 * The exposure evaluation as a paper to keep and print: date, inputs, rule set with each limit and where it was read, method, result. The
 * layout is our own. Null for answers without an antenna, which have nothing to evaluate.
 */
import { type ExposureTest, type Tier, testsFor } from '../advice/exposure-tests';
import { type Facts, factsOf, isNoSystem } from '../advice/facts';
import { exposureLimits } from '../catalog/exposure-limits';
import type { Answers } from '../design/answers';
import { fieldNames, fieldUnits, recordWords as words } from '../words/en/exposure-record';
import { bandName, modeName, ruleSetName } from '../words/en/names';
import type { Format } from '../words/format';
import { type Data, type Message, render } from '../words/message';
import { listOf, type Paper, textOf } from './paper';
import type { Plan } from './plan-schema';
import { stateSource } from './word-sources';

export interface RecordOptions {
  /** As it is to stand on the record, for instance 2026-11-25: told by the caller, who has a clock. */
  readonly date: string;
  readonly name: string;
  /** What the plan assumed, each in the operator's words. */
  readonly assumed: readonly string[];
  readonly format: Format;
}

type Say = (message: Message, data?: Data) => string;

export function exposureRecord(answers: Answers, plan: Plan, options: RecordOptions): Paper | null {
  const { date, name, format } = options;
  if (answers.radiator === undefined || plan.exposure.length === 0) return null;
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return null;
  const say: Say = (message, data = {}) => render(message, data, format);
  const rules = ruleSetName(facts.settled.ruleSet);
  const results = plan.exposure.flatMap((entry) => resultLines(entry, say));
  return {
    title: say(words.title),
    lead: [say(words.made, { date, name }), say(words.aid)],
    parts: [
      textOf(say(words.antenna), stationLines(facts, plan, say, options)),
      listOf(say(words.results), results),
      textOf(say(words.method), [...methodLines(plan, say), say(words.contact)]),
      listOf(say(words.limits, { rules }), limitLines(facts, say, format)),
      textOf(null, [say(words.again), say(words.by)]),
    ],
  };
}

function stationLines(facts: Facts, plan: Plan, say: Say, { assumed, format }: RecordOptions): string[] {
  const { settled, averageW, averageFactor, bands } = facts;
  const frequencies = bands.map(({ band, focusMHz }) => `${bandName(band)} ${format.number(focusMHz, 5)} MHz`);
  const mode = settled.mode === null ? say(words['mode-unknown']) : modeName(settled.mode);
  const { nearestPersonM } = settled;
  return [
    plan.summary,
    say(words.frequencies, { frequencies: frequencies.join(', ') }),
    say(words.power, { powerW: settled.powerW }),
    say(words.average, { averageW, mode, factor: averageFactor, share: settled.transmitShare }),
    nearestPersonM === null ? say(words['person-unknown']) : say(words.person, { nearestM: nearestPersonM }),
    ...(assumed.length === 0 ? [] : [say(words.assumed, { assumed: assumed.join('; ') })]),
  ];
}

function resultLines(entry: Plan['exposure'][number], say: Say): string[] {
  const { knowingM, publicM, decidedBy, groundKnowingM, groundPublicM } = entry;
  const band = bandName(entry.band);
  if (knowingM === null || publicM === null) return [say(words.refused, { band, decidedBy })];
  return [
    say(words.result, { band, knowingM, publicM, decidedBy }),
    ...(entry.method === 'solved' && groundKnowingM !== null && groundPublicM !== null
      ? [say(groundPublicM === 0 ? words['ground-none'] : words.ground, { band, groundKnowingM, groundPublicM })]
      : []),
    ...(entry.nearestPersonOk === null
      ? []
      : [
          say(words[entry.nearestPersonOk ? 'person-kept' : 'person-inside'], {
            band,
            mostW: entry.powerAtNearestPersonW ?? 0,
          }),
        ]),
  ];
}

function methodLines({ exposure }: Plan, say: Say): string[] {
  const methods = new Set(exposure.map(({ method }) => method));
  return [...methods].map((method) => say(method === 'refused' ? words.refusedMethod : words[method]));
}

const tiers: readonly Tier[] = ['knowing', 'public'];

function limitLines({ bands, settled }: Facts, say: Say, format: Format): string[] {
  return bands.flatMap(({ band, focusMHz }) =>
    tiers.flatMap((tier) =>
      testsFor(settled.ruleSet, tier, focusMHz).map((test) => limitLine(test, bandName(band), tier, say, format)),
    ),
  );
}

function limitLine(
  { set, kind, limit, onCrest }: ExposureTest,
  band: string,
  tier: Tier,
  say: Say,
  format: Format,
): string {
  const { provenance, source, value } = exposureLimits[set];
  return say(words.limit, {
    band,
    tier: say(words[tier]),
    field: fieldNames[kind] ?? kind,
    limit: format.number(limit),
    unit: fieldUnits[kind] ?? '',
    average: onCrest ? say(words.crest) : say(words.averaged, { minutes: value.averagingMin }),
    provenance: say(provenance === 'found' ? words.found : words.memory),
    title: stateSource(source).title,
  });
}
