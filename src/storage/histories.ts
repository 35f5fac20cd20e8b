/**
 * The versions that kept records have had; those of plans stand in plan-history.ts, of pictures in photo-history.ts. To change a record: raise its version in design/,
 * append a step to its history, and keep a file of the version left behind in tests/fixtures/saved-plans.
 */
import { OwnedPart } from '../design/owned-part';
import { Settings } from '../design/settings';
import { type ReadRecord, type RecordSteps, readRecord } from './read-record';

export const ownedPartSteps: RecordSteps = [];
export const settingsSteps: RecordSteps = [];

export const readOwnedPart = (raw: unknown): ReadRecord<OwnedPart> => readRecord(raw, OwnedPart, ownedPartSteps);
export const readSettings = (raw: unknown): ReadRecord<Settings> => readRecord(raw, Settings, settingsSteps);
