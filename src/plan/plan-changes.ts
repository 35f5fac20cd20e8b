/**
 * What is different between two plans, as a person would name it: pieces to cut, devices and their places, what each band gives, distances to
 * keep, warnings. Differences nobody can act on (below the last shown figure) are left out. The most telling come first.
 */
import { capital } from '../words/capital';
import { changes } from '../words/en/changes';
import { placeNames } from '../words/en/devices';
import { swrText } from '../words/en/swr';
import { createFormat } from '../words/format';
import { type Message, render } from '../words/message';
import { powerLineDistanceM } from './plan-figures';
import type { ChainItem, Plan } from './plan-schema';

export type ChangedValue =
  | { readonly kind: 'length'; readonly metres: number }
  | { readonly kind: 'text'; readonly text: string };

export interface PlanChange {
  /** Stable within one comparison. */
  readonly id: string;
  readonly name: string;
  /** Null: it was not there before. */
  readonly before: ChangedValue | null;
  /** Null: it is gone. */
  readonly after: ChangedValue | null;
}

type Facts = ReadonlyMap<string, { readonly name: string; readonly value: ChangedValue }>;

/** Lengths closer than this, m, are cut the same; distances to people and lines closer than a part of 50 are kept the same. */
const SAME_LENGTH_M = 0.005;
const SAME_SHARE = 0.02;

export function planChanges(before: Plan, after: Plan): PlanChange[] {
  const was = factsOf(before);
  const is = factsOf(after);
  const ids = [...is.keys(), ...[...was.keys()].filter((id) => !is.has(id))];
  return ids.flatMap((id): PlanChange[] => {
    const old = was.get(id);
    const now = is.get(id);
    if (old !== undefined && now !== undefined && (stays(id) || same(old.value, now.value))) return [];
    const name = capital(now?.name ?? old?.name ?? '');
    return [{ id, name, before: old?.value ?? null, after: now?.value ?? null }];
  });
}

/** A warning that was there before is no news when only its number moved. */
const stays = (id: string): boolean => id.startsWith('stop:') || id.startsWith('warn:');

function same(a: ChangedValue, b: ChangedValue): boolean {
  if (a.kind === 'length' && b.kind === 'length') {
    return Math.abs(a.metres - b.metres) < Math.max(SAME_LENGTH_M, Math.min(a.metres, b.metres) * 0.001);
  }
  return a.kind === 'text' && b.kind === 'text' && a.text === b.text;
}

const format = createFormat('metric');
const say = (message: Message, data: Parameters<typeof render>[1] = {}): string => render(message, data, format);
const text = (value: string): ChangedValue => ({ kind: 'text', text: value });
const length = (metres: number): ChangedValue => ({ kind: 'length', metres });

/** Everything of a plan that can be compared, in the order it is told. Names alone tell two facts of a kind apart, never their place in a list. */
function factsOf(plan: Plan): Facts {
  const facts = new Map<string, { name: string; value: ChangedValue }>();
  const tell = (id: string, name: string, value: ChangedValue): void => {
    const key = facts.has(id) ? `${id}#${[...facts.keys()].filter((each) => each.startsWith(id)).length}` : id;
    facts.set(key, { name, value });
  };
  if (plan.system !== null) tell('system', say(changes.system), text(say(changes.systemIs, { system: plan.system })));
  for (const warning of plan.warnings.filter(({ severity }) => severity === 'stop')) {
    tell(`stop:${warning.id}`, say(changes.warning), text(warning.text));
  }
  for (const cut of plan.cuts) tell(`cut:${cut.name}`, cut.name, length(cut.cutM));
  for (const item of plan.chain) deviceFacts(item, nameWithPlace(item, plan), tell);
  for (const band of plan.bands) bandFacts(band, tell);
  for (const { band, publicM } of plan.exposure) {
    if (publicM !== null) tell(`people:${band}`, say(changes.people, { band }), length(coarse(publicM)));
  }
  const keepAwayM = powerLineDistanceM(plan);
  if (keepAwayM !== null) tell('keep-away', say(changes.keepAway), length(coarse(keepAwayM)));
  for (const warning of plan.warnings.filter(({ severity }) => severity === 'warn')) {
    tell(`warn:${warning.id}`, say(changes.warning), text(warning.text));
  }
  return facts;
}

type Tell = (id: string, name: string, value: ChangedValue) => void;

/** Of several devices of a name each is told with its place. */
const nameWithPlace = ({ name, at }: ChainItem, { chain }: Plan): string =>
  chain.filter((other) => other.name === name).length > 1 ? `${name} ${placeNames[at] ?? at}` : name;

function deviceFacts(item: ChainItem, device: string, tell: Tell): void {
  const id = `${item.device}:${item.at}`;
  tell(`device:${id}`, say(changes.device), text(item.name));
  if (item.distanceM !== null && item.device !== 'line') {
    tell(`distance:${id}`, say(changes.distance, { device }), length(item.distanceM));
  }
  const { turns, count } = item.build ?? { turns: null, count: null };
  if (count !== null) tell(`cores:${id}`, say(changes.cores, { device }), text(String(count)));
  if (turns !== null) tell(`turns:${id}`, say(changes.turns, { device }), text(String(turns)));
}

function bandFacts({ band, swrAtRadio, tunerNeeded }: Plan['bands'][number], tell: Tell): void {
  if (swrAtRadio !== null) {
    const swr = swrText(swrAtRadio);
    tell(`swr:${band}`, say(changes.swr, { band }), text(say(changes.swrIs, { swr })));
  }
  if (tunerNeeded !== null) {
    const needed = say(tunerNeeded ? changes.tunerNeeded : changes.tunerNotNeeded);
    tell(`tuner:${band}`, say(changes.tuner, { band }), text(needed));
  }
}

/** Rounded so that a difference below SAME_SHARE mostly vanishes: these distances are kept, not measured with a tape. */
const coarse = (metres: number): number => {
  const step = 10 ** Math.floor(Math.log10(Math.max(metres, 0.01))) * SAME_SHARE * 5;
  return Math.round(metres / step) * step;
};
