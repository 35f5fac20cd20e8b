/**
 * Transformer and chokes of this antenna, designed: what it asks of each, the search over all rings, the build the plan shows, and what other
 * rings would do instead.
 *
 * The build shown is the first of these that meets the need: from rings on hand; from more rings of a kind on hand, if that takes at most one
 * more than needed; the fewest rings. Where nothing meets it: the nearest miss, with what it falls short of. Rings on hand are handed out
 * once, from the antenna to the radio.
 */
import { type Mix, mixIds } from '../../catalog/core-ids';
import { designChoke } from '../../physics/choke-design';
import type { ChokeChoice, ChokeDesign, ChokeNeed } from '../../physics/choke-need';
import { designTransformer } from '../../physics/transformer-design';
import type {
  CoresOnHand,
  TransformerChoice,
  TransformerDesign,
  TransformerNeed,
} from '../../physics/transformer-need';
import type { AlternativeId, DeviceAlternative, DeviceFinding, DeviceSummary } from '../device-finding';
import type { Dimensions } from '../dimensions';
import type { Facts } from '../facts';
import { type FieldFacts, fieldOf } from '../field-facts';
import type { BuildFinding, Data } from '../finding';
import { needsOf } from '../needs';
import { type ChokeRole, chokePlacesOf } from './choke-places';
import type { ComponentDesigns } from './component-designs';
import { type ChokeTask, chokeTask, transformerTask } from './design-task';
import { chokeBuild, transformerBuild } from './device-build';
import { chokeFigures, chokeSummary, transformerFigures, transformerSummary } from './device-figures';
import { balancedIn } from './winding-kind';

/** The two searches. One designer for several plans spares those that ask the same again. */
export interface Designer {
  transformer(need: TransformerNeed): TransformerChoice;
  choke(need: ChokeNeed): ChokeChoice;
}

/** Searches kept; more than one operator asks for in an evening. */
const MOST_KEPT = 300;

export function createDesigner(): Designer {
  return { transformer: remembered(designTransformer), choke: remembered(designChoke) };
}

function remembered<Need, Choice>(search: (need: Need) => Choice): (need: Need) => Choice {
  const kept = new Map<string, Choice>();
  return (need) => {
    const key = JSON.stringify(need);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const found = search(need);
    if (kept.size >= MOST_KEPT) kept.clear();
    kept.set(key, found);
    return found;
  };
}

export function designParts(
  facts: Facts,
  dimensions: Dimensions,
  field: FieldFacts | undefined,
  designer: Designer,
): ComponentDesigns {
  const drawer = ringDrawer(facts);
  const solved = fieldOf(field, facts.bands[0].band).feedPoint ?? null;
  const ratio = needsOf(facts, solved).transformation?.ratio ?? null;
  const transformer = ratio === null ? null : designedTransformer(facts, dimensions, ratio, field, designer, drawer);
  const chokes: Partial<Record<ChokeRole, DeviceFinding>> = {};
  for (const place of chokePlacesOf(facts, dimensions)) {
    const task = chokeTask(facts, dimensions, place, field, drawer.left());
    const found = designedChoke(facts, task, designer.choke(task.need), drawer);
    if (found !== null) chokes[place.role] = found;
  }
  return transformer === null ? { chokes } : { transformer, chokes };
}

interface Drawer {
  left(): CoresOnHand[];
  take(core: string, count: number): void;
}

function ringDrawer({ settled }: Facts): Drawer {
  const rings = new Map<CoresOnHand['core'], number>();
  for (const part of settled.onHand)
    if (part.part === 'core') rings.set(part.core, (rings.get(part.core) ?? 0) + part.count);
  return {
    left: () => [...rings].filter(([, count]) => count > 0).map(([core, count]) => ({ core, count })),
    take: (id, count) => {
      for (const [core, had] of rings) if (core === id) rings.set(core, Math.max(0, had - count));
    },
  };
}

interface Choice<D> {
  readonly fewestCores: D | null;
  readonly lightest: D | null;
  readonly coolest: D | null;
  readonly fromParts: D | null;
  readonly moreOfOwn: D | null;
  readonly closest: D | null;
  readonly byMix: ReadonlyMap<Mix, D>;
}

interface Kind<D> {
  readonly ringsOf: (design: D) => number;
  readonly buildOf: (design: D) => BuildFinding;
  readonly summaryOf: (design: D) => DeviceSummary;
}

type Judged = { readonly shortfalls: readonly string[]; readonly core: string };

function pickOf<D extends Judged>(choice: Choice<D>, ringsOf: (design: D) => number): D | null {
  const { fromParts, moreOfOwn, fewestCores, closest } = choice;
  if (fromParts !== null && fromParts.shortfalls.length === 0) return fromParts;
  if (moreOfOwn !== null && fewestCores !== null && ringsOf(moreOfOwn) <= ringsOf(fewestCores) + 1) return moreOfOwn;
  return fewestCores ?? moreOfOwn ?? closest ?? fromParts;
}

function designedTransformer(
  facts: Facts,
  dimensions: Dimensions,
  ratio: number,
  field: FieldFacts | undefined,
  designer: Designer,
  drawer: Drawer,
): DeviceFinding | null {
  const task = transformerTask(facts, dimensions, ratio, field, drawer.left());
  const choice = designer.transformer(task.need);
  const kind: Kind<TransformerDesign> = {
    ringsOf: ({ count }) => count,
    buildOf: (design) => transformerBuild(design, ratio, balancedIn(facts), task.turned),
    summaryOf: (design) => transformerSummary(facts, design),
  };
  const pick = pickOf(choice, kind.ringsOf);
  if (pick === null) return null;
  drawer.take(pick.core, pick.count);
  const figures = transformerFigures(facts, task, pick);
  return { build: kind.buildOf(pick), figures, alternatives: alternativesOf(choice, pick, kind) };
}

function designedChoke(facts: Facts, task: ChokeTask, choice: ChokeChoice, drawer: Drawer): DeviceFinding | null {
  const kind: Kind<ChokeDesign> = {
    ringsOf: ({ coreCount }) => coreCount,
    buildOf: chokeBuild,
    summaryOf: (design) => chokeSummary(facts, design),
  };
  const pick = pickOf(choice, kind.ringsOf);
  if (pick === null) return null;
  drawer.take(pick.core, pick.coreCount);
  return {
    build: chokeBuild(pick),
    figures: chokeFigures(facts, task, pick),
    alternatives: alternativesOf(choice, pick, kind),
  };
}

/** The other answers of the search, each build once, then the best of every mix, the plan's own among them. */
function alternativesOf<D extends Judged>(choice: Choice<D>, pick: D, kind: Kind<D>): DeviceAlternative[] {
  const planned = kind.summaryOf(pick);
  const keyOf = (design: D): string => JSON.stringify(kind.buildOf(design).data);
  const pickedKey = keyOf(pick);
  const state = (id: AlternativeId, design: D): DeviceAlternative => {
    const summary = kind.summaryOf(design);
    const [core] = mixIds.filter((mix) => design.core.endsWith(`-${mix}`));
    return {
      ...summary,
      id,
      mix: core ?? mixIds[0],
      isPlanned: keyOf(design) === pickedKey,
      build: kind.buildOf(design),
      changes: { code: 'compared', data: { core: design.core, ...comparison(summary, planned) } },
    };
  };
  const seen = new Set([pickedKey]);
  const named = (
    [
      ['on-hand', choice.fromParts],
      ['fewest-rings', choice.fewestCores],
      ['lightest', choice.lightest],
      ['coolest', choice.coolest],
    ] as const
  ).flatMap(([id, design]) => {
    if (design === null || seen.has(keyOf(design))) return [];
    seen.add(keyOf(design));
    return [state(id, design)];
  });
  const mixes = [...choice.byMix].map(([mix, design]) => state(`mix-${mix}`, design));
  return [...named, ...mixes];
}

/** What differs from the plan's build: numbers that both have. */
function comparison(other: DeviceSummary, planned: DeviceSummary): Data {
  const pairs: Record<string, readonly [number | null | undefined, number | null | undefined]> = {
    rings: [other.rings, planned.rings],
    grams: [other.massKg * 1000, planned.massKg * 1000],
    lossDb: [other.worstLossDb, planned.worstLossDb],
    riseK: [other.riseK, planned.riseK],
    ohm: [other.leastOhm?.nominal, planned.leastOhm?.nominal],
    mostW: [other.mostW, planned.mostW],
  };
  const data: Record<string, number> = {};
  for (const [name, [now, was]] of Object.entries(pairs)) {
    if (now == null || was == null) continue;
    data[name] = now;
    data[`${name}Before`] = was;
  }
  return data;
}
