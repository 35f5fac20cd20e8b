/**
 * One JSON file with all plans and parts, and its way back. What cannot be read is refused by itself, with its reasons; the rest comes in.
 * Nothing on the phone is overwritten: a plan that is here already, but different, comes in as a second one.
 */
import type { Problem } from '../base/problem';
import { OwnedPart } from '../design/owned-part';
import { readAnswers } from '../design/read-answers';
import { newSavedPlan, SavedPlan } from '../design/saved-plan';
import { ownedPartSteps, readOwnedPart } from './histories';
import { readSavedPlan, savedPlanSteps } from './plan-history';
import { recordProblems } from './record-problems';

export const exportVersion = 1;
const kind = 'halyard-plans';
/** Larger files are no export of ours: a thousand plans are about 1 MB. */
export const importLimitBytes = 20_000_000;

export interface ExportContent {
  /** As stored, unparsed ones included, so that nothing is left behind. */
  readonly plans: readonly unknown[];
  readonly parts: readonly unknown[];
}

export const exportText = ({ plans, parts }: ExportContent, at: number): string =>
  `${JSON.stringify({ kind, version: exportVersion, exportedAt: new Date(at).toISOString(), plans, parts }, null, 1)}\n`;

export type FileRefusal = 'too-big' | 'not-json' | 'not-ours' | 'newer-file';

export interface RefusedRecord {
  /** Its place in the file, from 1. */
  readonly place: number;
  readonly list: 'plans' | 'parts';
  /** As far as it can be told. */
  readonly name: string | null;
  readonly newer: boolean;
  readonly problems: readonly Problem[];
}

export interface ImportContent {
  readonly plans: readonly SavedPlan[];
  readonly parts: readonly OwnedPart[];
  /** Names of plans that are here already, unchanged. */
  readonly alreadyHere: readonly (string | null)[];
  readonly refused: readonly RefusedRecord[];
}

export interface ImportContext {
  /** The plan kept under this id, if any; unreadable ones as `taken`. */
  planHere(id: string): SavedPlan | 'taken' | undefined;
  partHere(id: string): boolean;
  newId(): string;
  readonly at: number;
}

export function readImport(text: string, context: ImportContext): ImportContent | FileRefusal {
  if (text.length > importLimitBytes) return 'too-big';
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return 'not-json';
  }
  if (!isRecord(file)) return 'not-ours';
  if (file.kind !== kind) return importAnswers(file, context);
  if (typeof file.version !== 'number' || file.version > exportVersion) return 'newer-file';
  const plans = importPlans(listOf(file.plans), context);
  const parts = importParts(listOf(file.parts), context);
  return {
    plans: plans.taken,
    parts: parts.taken,
    alreadyHere: plans.alreadyHere,
    refused: [...plans.refused, ...parts.refused],
  };
}

/** A record of answers by itself, as the headless commands read it, is a plan too. */
function importAnswers(file: Record<string, unknown>, { newId, at }: ImportContext): ImportContent | FileRefusal {
  if (!('bands' in file)) return 'not-ours';
  const read = readAnswers(file);
  const none = { plans: [], parts: [], alreadyHere: [], refused: [] };
  if ('answers' in read) return { ...none, plans: [newSavedPlan(newId(), at, read.answers)] };
  return {
    ...none,
    refused: [{ place: 1, list: 'plans', name: nameOf({ answers: file }), newer: false, problems: read.problems }],
  };
}

function importPlans(list: readonly unknown[], context: ImportContext) {
  const taken: SavedPlan[] = [];
  const alreadyHere: (string | null)[] = [];
  const refused: RefusedRecord[] = [];
  list.forEach((raw, index) => {
    const read = readSavedPlan(raw);
    if (read.kind !== 'good') {
      const problems = read.kind === 'broken' ? recordProblems(raw, SavedPlan, savedPlanSteps) : [];
      refused.push({ place: index + 1, list: 'plans', name: nameOf(raw), newer: read.kind === 'newer', problems });
      return;
    }
    const here = context.planHere(read.record.id) ?? taken.find((plan) => plan.id === read.record.id);
    if (here === undefined) taken.push(read.record);
    else if (here !== 'taken' && JSON.stringify(here) === JSON.stringify(read.record)) alreadyHere.push(nameOf(raw));
    else taken.push({ ...read.record, id: context.newId(), updatedAt: context.at });
  });
  return { taken, alreadyHere, refused };
}

function importParts(list: readonly unknown[], context: ImportContext) {
  const taken: OwnedPart[] = [];
  const refused: RefusedRecord[] = [];
  list.forEach((raw, index) => {
    const read = readOwnedPart(raw);
    if (read.kind === 'good') {
      if (!context.partHere(read.record.id)) taken.push(read.record);
      return;
    }
    const problems = read.kind === 'broken' ? recordProblems(raw, OwnedPart, ownedPartSteps) : [];
    refused.push({ place: index + 1, list: 'parts', name: null, newer: read.kind === 'newer', problems });
  });
  return { taken, refused };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** The name a record carries, if it carries one; for records that cannot be read otherwise. */
export function nameOf(raw: unknown): string | null {
  const answers = isRecord(raw) && isRecord(raw.answers) ? raw.answers : {};
  return typeof answers.name === 'string' && answers.name !== '' ? answers.name : null;
}
