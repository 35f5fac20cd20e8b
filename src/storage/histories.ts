/**
 * The versions that kept records have had. To change a record: raise its version in design/, append a step here, and keep a file of the
 * version left behind in tests/fixtures/saved-plans.
 */
import { OwnedPart } from '../design/owned-part';
import { Photo } from '../design/photo';
import { SavedPlan } from '../design/saved-plan';
import { Settings } from '../design/settings';
import { type ReadRecord, type RecordSteps, readRecord } from './read-record';

export const savedPlanSteps: RecordSteps = [
  // Numbers read off instruments came to be kept.
  (record) => ({ ...record, version: 2, readings: {} }),
];
export const ownedPartSteps: RecordSteps = [];
export const settingsSteps: RecordSteps = [];
export const photoSteps: RecordSteps = [];

export const readSavedPlan = (raw: unknown): ReadRecord<SavedPlan> => readRecord(raw, SavedPlan, savedPlanSteps);
export const readOwnedPart = (raw: unknown): ReadRecord<OwnedPart> => readRecord(raw, OwnedPart, ownedPartSteps);
export const readSettings = (raw: unknown): ReadRecord<Settings> => readRecord(raw, Settings, settingsSteps);
export const readPhoto = (raw: unknown): ReadRecord<Photo> => readRecord(raw, Photo, photoSteps);
