/**
 * The questions and their order, as data with predicates: no screen is needed to test them. The first four lead to a plan; the rest make it
 * surer. A question is asked only while its answer can matter; an answer that no longer matters is kept and shown as not used.
 */
import { bandIds, regionIds } from '../catalog/band-ids';
import { groundIds } from '../catalog/ground-ids';
import { feedLineIds, isOpenWireLine } from '../catalog/line-ids';
import { modeIds } from '../catalog/modes';
import { wireIds } from '../catalog/wire-ids';
import { type AnswerKey, type Answers, type DraftAnswers, isAnswerKey } from '../design/answers';
import {
  type FeedPosition,
  houseEarthIds,
  lengthChoiceIds,
  radiatorIds,
  returnPathIds,
  ruleSetIds,
  type System,
  shackEndIds,
} from '../design/choices';
import { compareEffect } from './effects';
import { mattersFor } from './matters';
import { feedPositionsOf, systemOf } from './system';

export type QuestionKind =
  | 'many-of'
  | 'one-of'
  | 'length'
  | 'height'
  | 'frequency'
  | 'power'
  | 'count'
  | 'share'
  | 'yes-no'
  | 'text'
  | 'ohms'
  | 'parts';

export interface Question {
  /** Also the question's place in the address of its screen: never renamed. */
  readonly id: AnswerKey;
  readonly group: 'first' | 'surer';
  readonly kind: QuestionKind;
  /** Choices that make sense with the answers so far; empty where a number or a text is asked. */
  readonly options: readonly (string | number)[];
}

const surer: readonly { id: AnswerKey; kind: QuestionKind; options?: readonly (string | number)[] }[] = [
  { id: 'lengthChoice', kind: 'one-of', options: lengthChoiceIds },
  { id: 'wireLengthM', kind: 'length' },
  { id: 'feedImpedance', kind: 'ohms' },
  { id: 'balanced', kind: 'yes-no' },
  { id: 'feedFraction', kind: 'share' },
  { id: 'spanM', kind: 'length' },
  { id: 'heightM', kind: 'height' },
  { id: 'endHeightM', kind: 'height' },
  { id: 'supportHeightM', kind: 'height' },
  { id: 'nearestPowerLineM', kind: 'length' },
  { id: 'nearestPersonM', kind: 'length' },
  { id: 'powerW', kind: 'power' },
  { id: 'mode', kind: 'one-of', options: modeIds },
  { id: 'transmitShare', kind: 'share' },
  { id: 'feedLine', kind: 'one-of', options: feedLineIds },
  { id: 'feedLineLengthM', kind: 'length' },
  { id: 'feedLineRoute', kind: 'one-of', options: ['square', 'along'] },
  { id: 'runHeightM', kind: 'height' },
  { id: 'entryDistanceM', kind: 'length' },
  { id: 'returnPath', kind: 'one-of', options: returnPathIds },
  { id: 'radialCount', kind: 'count' },
  { id: 'radialLengthM', kind: 'length' },
  { id: 'counterpoiseM', kind: 'length' },
  { id: 'wire', kind: 'one-of', options: wireIds },
  { id: 'ground', kind: 'one-of', options: groundIds },
  { id: 'loopShape', kind: 'one-of', options: ['square', 'triangle'] },
  { id: 'loopPlane', kind: 'one-of', options: ['upright', 'flat'] },
  { id: 'station', kind: 'one-of', options: ['home', 'portable'] },
  { id: 'indoors', kind: 'yes-no' },
  { id: 'houseEarth', kind: 'one-of', options: houseEarthIds },
  { id: 'rfInShack', kind: 'yes-no' },
  { id: 'onHand', kind: 'parts' },
  { id: 'region', kind: 'one-of', options: regionIds },
  { id: 'country', kind: 'text' },
  { id: 'ruleSet', kind: 'one-of', options: ruleSetIds },
  { id: 'focusMHz', kind: 'frequency' },
  { id: 'name', kind: 'text' },
];

/** Every question that applies to the answers so far: the first ones in their order, then the others by how much they change. */
export function routeOf(draft: DraftAnswers): readonly Question[] {
  const system = draftSystem(draft);
  const first: Question[] = [
    { id: 'bands', group: 'first', kind: 'many-of', options: bandIds },
    { id: 'radiator', group: 'first', kind: 'one-of', options: radiatorIds },
  ];
  const positions = draft.radiator === undefined ? [] : feedPositionsOf[draft.radiator];
  if (positions.length > 1) first.push({ id: 'fedAt', group: 'first', kind: 'one-of', options: positions });
  first.push({ id: 'shackEnd', group: 'first', kind: 'one-of', options: shackEndIds });
  if (system === null) return first;
  const rest = surer
    .filter(({ id }) => applies(system, draft, id))
    .map(({ id, kind, options }): Question => ({ id, group: 'surer', kind, options: options ?? [] }))
    .sort((a, b) => compareEffect(a.id, b.id));
  return [...first, ...rest];
}

/** The first unanswered question of the first group; null when a plan can be made. */
export const nextQuestion = (draft: DraftAnswers): Question | null =>
  routeOf(draft).find((question) => question.group === 'first' && !isAnswered(question.id, draft)) ?? null;

/** A feed point this radiator does not have is no answer, though it is kept. */
export function isAnswered(key: AnswerKey, draft: DraftAnswers): boolean {
  if (key === 'fedAt') return feedPointOf(draft) !== undefined;
  if (key === 'bands') return draft.bands !== undefined && draft.bands.length > 0;
  return draft[key] !== undefined;
}

/** Answers that are kept but cannot matter now. */
export function unusedAnswers(draft: DraftAnswers): AnswerKey[] {
  const asked = new Set<AnswerKey>(routeOf(draft).map((question) => question.id));
  const always: readonly AnswerKey[] = ['schema', 'units', 'fedAt'];
  return Object.keys(draft)
    .filter(isAnswerKey)
    .filter((key) => !asked.has(key) && !always.includes(key));
}

/** What "not sure" stands for at a question that a plan cannot do without. */
export function safeDefault(key: AnswerKey, draft: DraftAnswers): DraftAnswers {
  switch (key) {
    case 'bands':
      return { bands: ['40m', '20m'] };
    case 'radiator':
      return { radiator: 'inverted-v' }; // one support, least room, no return path to build
    case 'fedAt':
      return draft.radiator === undefined ? {} : { fedAt: feedPositionsOf[draft.radiator][0] as FeedPosition };
    case 'shackEnd':
      return { shackEnd: 'radio' };
    default:
      return {};
  }
}

/** A whole answers record from the answers so far, or null while a first question is open. Single feed points are filled in. */
export function completeAnswers(draft: DraftAnswers): Answers | null {
  const { bands, radiator, shackEnd } = draft;
  const fedAt = feedPointOf(draft);
  if (
    bands === undefined ||
    bands.length === 0 ||
    radiator === undefined ||
    fedAt === undefined ||
    shackEnd === undefined
  )
    return null;
  return { ...draft, bands, radiator, fedAt, shackEnd };
}

/** The answered feed point if this radiator has it, or the only one it has. */
export function feedPointOf(draft: DraftAnswers): FeedPosition | undefined {
  if (draft.radiator === undefined) return draft.fedAt;
  const positions = feedPositionsOf[draft.radiator];
  if (draft.fedAt !== undefined && positions.includes(draft.fedAt)) return draft.fedAt;
  return positions.length === 1 ? positions[0] : undefined;
}

function draftSystem(draft: DraftAnswers): System | null {
  const fedAt = feedPointOf(draft);
  if (draft.radiator === undefined || fedAt === undefined || draft.shackEnd === undefined) return null;
  return systemOf({
    radiator: draft.radiator,
    fedAt,
    lengthChoice: draft.lengthChoice ?? 'resonant',
    feedLine: draft.feedLine ?? 'rg-58',
    fixedIsHalfWave: false,
  });
}

function applies(system: System, draft: DraftAnswers, key: AnswerKey): boolean {
  if (key === 'wireLengthM') return draft.lengthChoice === 'fixed' && system !== 'linked-dipole';
  if (key === 'radialCount' || key === 'radialLengthM')
    return mattersFor(system, draft, key) && draft.returnPath !== 'counterpoise-wire' && draft.returnPath !== 'none';
  if (key === 'transmitShare') return draft.mode !== undefined;
  if (key === 'houseEarth' || key === 'entryDistanceM')
    return mattersFor(system, draft, key) && !isOpenWireLine(draft.feedLine ?? 'rg-58');
  if (key === 'name' || key === 'onHand' || key === 'country') return true;
  return mattersFor(system, draft, key as Parameters<typeof mattersFor>[2]);
}
