/**
 * The versions that kept records have had. To change a record: raise its version in design/, append a step here, and keep a file of the
 * version left behind in tests/fixtures/saved-plans.
 */
import * as z from 'zod/mini';
import { OwnedPart } from '../design/owned-part';
import { Photo } from '../design/photo';
import { Mark, SavedPlan } from '../design/saved-plan';
import { Settings } from '../design/settings';
import { type ReadRecord, type RecordSteps, readRecord } from './read-record';
import { ticksById } from './ticks-by-words';

export const savedPlanSteps: RecordSteps = [
  // Numbers read off instruments came to be kept.
  (record) => ({ ...record, version: 2, readings: {} }),
  // Ticks came to be kept by the part's id instead of its words.
  (record) => ({ ...record, version: 3, ticks: ticksById(z.record(z.string(), Mark).parse(record.ticks)) }),
];
export const ownedPartSteps: RecordSteps = [];
export const settingsSteps: RecordSteps = [];
export const photoSteps: RecordSteps = [
  // One taken away came to be kept until it is deleted for good.
  (record) => ({ ...record, version: 2, takenAwayAt: null }),
];

export const readSavedPlan = (raw: unknown): ReadRecord<SavedPlan> => readRecord(raw, SavedPlan, savedPlanSteps);
export const readOwnedPart = (raw: unknown): ReadRecord<OwnedPart> => readRecord(raw, OwnedPart, ownedPartSteps);
export const readSettings = (raw: unknown): ReadRecord<Settings> => readRecord(raw, Settings, settingsSteps);
export const readPhoto = (raw: unknown): ReadRecord<Photo> => readRecord(raw, Photo, photoSteps);
