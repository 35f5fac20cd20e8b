/** The versions that saved plans have had (histories.ts). Apart from them, and fetched when an older plan is met: few phones have one. */
import * as z from 'zod/mini';
import { Mark, SavedPlan } from '../design/saved-plan';
import { type ReadRecord, type RecordSteps, readRecord } from './read-record';
import { ticksById } from './ticks-by-words';

export const savedPlanSteps: RecordSteps = [
  // Numbers read off instruments came to be kept.
  (record) => ({ ...record, version: 2, readings: {} }),
  // Ticks came to be kept by the part's id instead of its words.
  (record) => ({ ...record, version: 3, ticks: ticksById(z.record(z.string(), Mark).parse(record.ticks)) }),
];

export const readSavedPlan = (raw: unknown): ReadRecord<SavedPlan> => readRecord(raw, SavedPlan, savedPlanSteps);
