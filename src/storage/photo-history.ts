/** The versions that kept pictures have had, apart from the others: a first screen reads no picture. */
import { Photo } from '../design/photo';
import { type ReadRecord, type RecordSteps, readRecord } from './read-record';

export const photoSteps: RecordSteps = [
  // One taken away came to be kept until it is deleted for good.
  (record) => ({ ...record, version: 2, takenAwayAt: null }),
];

export const readPhoto = (raw: unknown): ReadRecord<Photo> => readRecord(raw, Photo, photoSteps);
