/**
 * The exposure evaluation as a paper to keep and print: date, inputs, rule set with each limit and where it was read, method, result. The
 * layout is our own. Null for answers without an antenna, which have nothing to evaluate.
 */
import { MOST_W } from '../advice/exposure-working';
import { type Facts, factsOf, isNoSystem } from '../advice/facts';
import type { Answers } from '../design/answers';
import { modeName, ruleSetName } from '../words/en/catalog-names';
import { memoryMark, placeName, whole } from '../words/en/exposure';
import { recordWords as words } from '../words/en/exposure-record';
import { bandName } from '../words/en/names';
import type { Format } from '../words/format';
import { type Data, type Message, render } from '../words/message';
import { type Paper, type PaperPart, type PaperTable, tablesOf, textOf } from './paper';
import type { Plan } from './plan-schema';
import { worstAtPlaces } from './worst-at-places';

export interface RecordOptions {
  /** As it is to stand on the record, for instance 2026-11-25: told by the caller, who has a clock. */
  readonly date: string;
  readonly name: string;
  /** What the plan assumed, each in the operator's words. */
  readonly assumed: readonly string[];
  readonly format: Format;
}

type Entry = Plan['exposure'][number];
type Limit = Entry['limits'][number];
type Say = (message: Message, data?: Data) => string;

export function exposureRecord(answers: Answers, plan: Plan, options: RecordOptions): Paper | null {
  const { date, name, format } = options;
  if (answers.radiator === undefined || plan.exposure.length === 0) return null;
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return null;
  const say: Say = (message, data = {}) => render(message, data, format);
  return {
    title: say(words.title),
    lead: [say(words.made, { date, name }), say(words.aid)],
    parts: [
      textOf(say(words.antenna), stationLines(facts, plan, say, options)),
      resultPart(plan, say, format),
      ...placesPart(plan, say),
      textOf(say(words.method), [...methodLines(plan, say), say(words.contact)]),
      limitsPart(plan, ruleSetName(facts.settled.ruleSet), say, format),
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
    say(words.crestPower, { powerW: settled.powerW }),
    say(words.averagePower, { averageW, mode, factor: averageFactor, share: settled.transmitShare }),
    nearestPersonM === null ? say(words['person-unknown']) : say(words.person, { nearestM: nearestPersonM }),
    ...(assumed.length === 0 ? [] : [say(words.assumed, { assumed: assumed.join('; ') })]),
  ];
}

function resultPart({ exposure }: Plan, say: Say, format: Format): PaperPart {
  const table = (caption: Message, cells: (entry: Entry) => readonly string[]): PaperTable => ({
    caption: say(caption),
    head: [say(words.band), say(words.knowing), say(words.public)],
    rows: exposure.map((entry) => [whole(bandName(entry.band)), ...cells(entry)]),
  });
  const metres = (value: number | null): string => (value === null ? say(words.noDistance) : format.length(value));
  const onGround = (value: number | null): string => (value === 0 ? say(words.nowhere) : metres(value));
  const whereSolved = exposure.some(({ method }) => method === 'solved')
    ? [table(words.ground, (entry) => [onGround(entry.groundKnowingM), onGround(entry.groundPublicM)])]
    : [];
  return tablesOf(
    say(words.results),
    [table(words.resultCaption, (entry) => [metres(entry.knowingM), metres(entry.publicM)]), ...whereSolved],
    exposure.flatMap((entry) => resultLines(entry, say)),
    true,
  );
}

function resultLines(entry: Entry, say: Say): string[] {
  const { decidedBy, nearestPersonOk, powerAtNearestPersonW } = entry;
  const band = bandName(entry.band);
  const person = nearestPersonOk === true ? words['person-kept'] : words['person-inside'];
  return [
    say(words.decided, { band, decidedBy }),
    ...(nearestPersonOk === null ? [] : [say(person, { band, mostW: powerAtNearestPersonW ?? 0 })]),
  ];
}

/** The band that brings each place nearest to its limit. */
function placesPart({ exposure }: Plan, say: Say): PaperPart[] {
  const places = worstAtPlaces(exposure);
  if (places.length === 0) return [];
  const cell = ({ band, part, mostW }: (typeof places)[number]['knowing']): string =>
    say(words.placeCell, { percent: 100 * part, band: bandName(band), mostW, topW: MOST_W });
  const table: PaperTable = {
    caption: say(words.placesCaption),
    head: [say(words.place), say(words.knowing), say(words.public)],
    rows: places.map(({ place, knowing, everyone }) => [placeName(place), cell(knowing), cell(everyone)]),
  };
  return [tablesOf(say(words.places), [table], [say(words.placesNote)])];
}

function methodLines({ exposure }: Plan, say: Say): string[] {
  const methods = new Set(exposure.map(({ method }) => method));
  return [...methods].map((method) => say(method === 'refused' ? words.refusedMethod : words[method]));
}

const kinds = ['electric', 'magnetic', 'power'] as const;

/** One table for each group of people: a row for each band and averaging time. What was written from memory bears a mark. */
function limitsPart({ exposure }: Plan, rules: string, say: Say, format: Format): PaperPart {
  const limits = exposure.flatMap((entry) => entry.limits);
  const tables = (['knowing', 'public'] as const).map((tier): PaperTable => {
    const own = limits.filter((limit) => limit.tier === tier);
    const columns = kinds.filter((kind) => own.some((limit) => limit.kind === kind));
    return {
      caption: say(words[tier]),
      head: [say(words.band), say(words.average), ...columns.map((kind) => say(words[kind]))],
      rows: exposure.flatMap((entry) =>
        averagingTimes(entry.limits, tier).map((averagingMin) => [
          whole(bandName(entry.band)),
          averagingMin === 0 ? say(words.crest) : say(words.averaged, { minutes: averagingMin }),
          ...columns.map((kind) =>
            limitCell(
              entry.limits.find(
                (each) => each.tier === tier && each.kind === kind && each.averagingMin === averagingMin,
              ),
              format,
            ),
          ),
        ]),
      ),
    };
  });
  const sources = [...new Set(limits.map(({ source }) => source.title))].join('; ');
  const isRecalled = limits.some(({ provenance }) => provenance === 'memory');
  const isRead = limits.some(({ provenance }) => provenance !== 'memory');
  return tablesOf(say(words.limits, { rules }), tables, [
    say(words.sources, { sources }),
    ...(isRead ? [say(words.found)] : []),
    ...(isRecalled ? [say(words.memory)] : []),
  ]);
}

const averagingTimes = (limits: readonly Limit[], tier: Limit['tier']): number[] => [
  ...new Set(limits.filter((each) => each.tier === tier).map(({ averagingMin }) => averagingMin)),
];

const limitCell = (limit: Limit | undefined, format: Format): string =>
  limit === undefined ? '–' : `${format.number(limit.limit)}${limit.provenance === 'memory' ? memoryMark : ''}`;
