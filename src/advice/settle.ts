/**
 * Answers with every gap filled by its default, and the list of what was assumed. An answer that cannot matter for this antenna is kept
 * in the record but neither assumed nor listed.
 */
import type { Band, Region } from '../catalog/band-ids';
import { bandCentreMHz } from '../catalog/bands';
import type { GroundId } from '../catalog/ground-ids';
import type { FeedLineId } from '../catalog/line-ids';
import { isOpenWireLine } from '../catalog/line-ids';
import type { Mode } from '../catalog/modes';
import type { WireId } from '../catalog/wire-ids';
import type { Answers, Ohms, PartOnHand } from '../design/answers';
import type {
  FeedPosition,
  HouseEarth,
  LengthChoice,
  Radiator,
  ReturnPath,
  RuleSet,
  ShackEnd,
  System,
} from '../design/choices';
import { defaultRuleSet } from './default-rule-set';
import { compareEffect, type Effect, effectOf } from './effects';
import type { Data } from './finding';

export interface Settled {
  readonly units: 'metric' | 'imperial';
  readonly region: Region;
  readonly country: string | null;
  readonly ruleSet: RuleSet;
  readonly station: 'home' | 'portable';
  readonly indoors: boolean;
  readonly focusMHz: Readonly<Record<string, number>>;
  readonly powerW: number;
  /** Null when not told: the average is then taken as the peak. */
  readonly mode: Mode | null;
  readonly transmitShare: number;
  readonly radiator: Radiator;
  readonly fedAt: FeedPosition;
  readonly feedFraction: number;
  readonly lengthChoice: LengthChoice;
  readonly wireLengthM: number | null;
  readonly loopShape: 'square' | 'triangle';
  readonly loopPlane: 'upright' | 'flat';
  readonly feedImpedance: Ohms | null;
  readonly balanced: boolean;
  readonly spanM: number | null;
  readonly heightM: number;
  readonly endHeightM: number;
  readonly supportHeightM: number;
  readonly wire: WireId;
  readonly ground: GroundId;
  readonly returnPath: ReturnPath;
  readonly radialCount: number;
  readonly radialLengthM: number | null;
  readonly counterpoiseM: number | null;
  readonly feedLine: FeedLineId;
  readonly feedLineLengthM: number;
  readonly feedLineRoute: 'square' | 'along';
  readonly runHeightM: number;
  readonly entryDistanceM: number;
  readonly houseEarth: HouseEarth;
  readonly shackEnd: ShackEnd;
  readonly onHand: readonly PartOnHand[];
  readonly rfInShack: boolean;
  readonly nearestPersonM: number | null;
  readonly nearestPowerLineM: number | null;
}

export interface Assumed {
  readonly key: keyof Settled;
  readonly value: string | number | boolean;
  /** Names the sentence that says what depends on it. */
  readonly code: string;
  /** What its sentence tells beside the value. */
  readonly data?: Data;
  readonly effect: Effect;
}

/** What the system itself decides: needed to settle the rest, so it is found first (system.ts). */
export interface SettleContext {
  readonly system: System;
  /** Default return path of the system, at the feed point's height. */
  readonly returnPath: (heightM: number) => ReturnPath;
  /** Keys that can matter for this system. */
  readonly matters: (key: keyof Settled) => boolean;
}

/** `answers` must name a radiator and a feed position. */
export function settle(
  answers: Answers & { radiator: Radiator; fedAt: FeedPosition },
  context: SettleContext,
): { settled: Settled; assumed: readonly Assumed[] } {
  const assumed: Assumed[] = [];
  const take = <K extends keyof Settled>(key: K, given: Settled[K] | undefined, fallback: Settled[K]): Settled[K] => {
    if (given !== undefined) return given;
    if (context.matters(key)) {
      const value = typeof fallback === 'object' || fallback === undefined ? 'not-told' : fallback;
      assumed.push({ key, value: value as string | number | boolean, code: key, effect: effectOf(key) });
    }
    return fallback;
  };

  const region = take('region', answers.region, 1);
  const country = answers.country ?? null;
  const station = take('station', answers.station, 'home');
  const standsOnGround = answers.radiator === 'vertical' && answers.fedAt !== 'centre';
  const elevated = answers.returnPath === 'elevated-radials';
  const usualHeightM = elevated ? 1.5 : standsOnGround || answers.radiator === 'inverted-l' ? 0.2 : 8;
  const heightM = take('heightM', answers.heightM, usualHeightM);
  const endsLow = ['inverted-v', 'sloper', 'linked-wire'].includes(answers.radiator);
  const feedLine = take('feedLine', answers.feedLine, 'rg-58');
  const feedLineLengthM = take('feedLineLengthM', answers.feedLineLengthM, 15);
  const returnPath = take('returnPath', answers.returnPath, context.returnPath(heightM));
  const insideM = station === 'portable' ? 1 : 4;
  const isCutToItsBands = context.system === 'linked-dipole'; // whatever length was told or chosen for another radiator
  const settled: Settled = {
    units: take('units', answers.units, 'metric'),
    region,
    country,
    ruleSet: take('ruleSet', answers.ruleSet, defaultRuleSet(country)),
    station,
    indoors: take('indoors', answers.indoors, false),
    focusMHz: focusOf(answers, region, country),
    powerW: take('powerW', answers.powerW, 100),
    mode: take('mode', answers.mode, null),
    transmitShare: take('transmitShare', answers.transmitShare, 1),
    radiator: answers.radiator,
    fedAt: answers.fedAt,
    feedFraction: take('feedFraction', answers.feedFraction, 1 / 3),
    lengthChoice: isCutToItsBands ? 'resonant' : take('lengthChoice', answers.lengthChoice, 'resonant'),
    wireLengthM: isCutToItsBands ? null : (answers.wireLengthM ?? null),
    loopShape: take('loopShape', answers.loopShape, 'square'),
    loopPlane: take('loopPlane', answers.loopPlane, 'upright'),
    feedImpedance: take('feedImpedance', answers.feedImpedance, null),
    balanced: take('balanced', answers.balanced, false),
    spanM: take('spanM', answers.spanM, null),
    heightM,
    endHeightM: take('endHeightM', answers.endHeightM, endsLow ? 3 : heightM),
    supportHeightM: take('supportHeightM', answers.supportHeightM, heightM),
    wire: take('wire', answers.wire, 'pvc-1.5mm2'),
    ground: take('ground', answers.ground, 'average'),
    returnPath,
    radialCount: take('radialCount', answers.radialCount, returnPath === 'elevated-radials' ? 4 : 16),
    radialLengthM: answers.radialLengthM ?? null,
    counterpoiseM: answers.counterpoiseM ?? null,
    feedLine,
    feedLineLengthM,
    feedLineRoute: take('feedLineRoute', answers.feedLineRoute, 'square'),
    runHeightM: take('runHeightM', answers.runHeightM, 0.1),
    entryDistanceM: take('entryDistanceM', answers.entryDistanceM, Math.max(feedLineLengthM - insideM, 0)),
    houseEarth: take('houseEarth', answers.houseEarth, station === 'portable' ? 'open' : 'mains'),
    shackEnd: answers.shackEnd,
    onHand: answers.onHand ?? [],
    rfInShack: take('rfInShack', answers.rfInShack, false),
    nearestPersonM: take('nearestPersonM', answers.nearestPersonM, null),
    nearestPowerLineM: take('nearestPowerLineM', answers.nearestPowerLineM, null),
  };
  for (const band of answers.bands) {
    if (answers.focusMHz?.[band] === undefined && context.matters('focusMHz')) {
      assumed.push({ key: 'focusMHz', value: settled.focusMHz[band] ?? 0, code: `focusMHz.${band}`, effect: 'middle' });
    }
  }
  return { settled, assumed: inOrder(assumed) };
}

const focusOf = (answers: Answers, region: Region, country: string | null): Record<string, number> =>
  Object.fromEntries(
    answers.bands.map((band: Band) => [
      band,
      answers.focusMHz?.[band] ?? bandCentreMHz(band, region, country ?? undefined),
    ]),
  );

const inOrder = (list: readonly Assumed[]): Assumed[] => [...list].sort((a, b) => compareEffect(a.key, b.key));

export const lineKindOf = (feedLine: FeedLineId): 'coax' | 'open-wire' | 'none' =>
  feedLine === 'none' ? 'none' : isOpenWireLine(feedLine) ? 'open-wire' : 'coax';
