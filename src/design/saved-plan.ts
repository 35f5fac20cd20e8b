/**
 * One plan as it is kept: what was answered and when, and what was done with it since. Nothing computed is kept; a plan is made anew from
 * its answers. Times are milliseconds since 1970, so that the later of two tabs or two phones can be told.
 */
import * as z from 'zod/mini';
import { AnswerKey, DraftAnswers } from './answers';

/** Newest version of the record; storage/histories.ts brings older ones up to it. */
export const savedPlanVersion = 3;

const time = z.int().check(z.gte(0));
const name = z.string().check(z.minLength(1), z.maxLength(200));

/** Something that is on or off, since when. Off is kept too: it may be newer than another tab's on. */
export const Mark = z.strictObject({ on: z.boolean(), at: time });
export type Mark = z.infer<typeof Mark>;

/** Where the antenna was heard or measured best. */
export const Measurement = z.strictObject({
  id: name,
  at: time,
  band: name,
  dipMHz: z.number().check(z.positive(), z.lte(1000)),
  swr: z.optional(z.number().check(z.gte(1), z.lte(1000))),
  /** Wire in use when it was measured, m: what was cut less what is folded back. */
  wireM: z.optional(z.number().check(z.positive(), z.lte(10_000))),
  note: z.optional(z.string().check(z.maxLength(2000))),
});
export type Measurement = z.infer<typeof Measurement>;

export const SavedPlan = z.strictObject({
  version: z.literal(savedPlanVersion),
  id: z.uuid(),
  createdAt: time,
  updatedAt: time,
  answers: DraftAnswers,
  /** When each answer was given, changed or taken back. */
  answeredAt: z.record(name, time),
  /** First questions answered with "not sure": the answer is a stand-in. */
  unsure: z.record(name, Mark),
  /** Text typed into a field and not yet accepted, by field. */
  typed: z.record(name, z.strictObject({ text: z.string().check(z.maxLength(500)), at: time })),
  /** The last change to a plan that was already whole: what stood there before. Absent key: it was not answered. */
  lastEdit: z.optional(z.strictObject({ key: AnswerKey, before: DraftAnswers, at: time })),
  /** Caution lines ticked as read, by `caution:line`. */
  cautionsRead: z.record(name, Mark),
  /** Ticked rows of lists, by `list:row`: parts by their id (shop, pack, leave), steps by theirs (raise). */
  ticks: z.record(name, Mark),
  /** How far a job has come (cut, raise), by job: the id of its step. */
  progress: z.record(name, z.strictObject({ step: name, at: time })),
  measurements: z.array(Measurement).check(z.maxLength(5000)),
  /** Numbers read off an instrument, by what was measured: the SWR of a box on the table, currents on a coax. Null: taken back. */
  readings: z.record(name, z.strictObject({ value: z.nullable(z.number().check(z.gte(0), z.lte(1e6))), at: time })),
  /** Set aside by the operator; can be put back. */
  deleted: z.optional(Mark),
});
export type SavedPlan = z.infer<typeof SavedPlan>;

export function newSavedPlan(id: string, at: number, answers: DraftAnswers = {}): SavedPlan {
  return {
    version: savedPlanVersion,
    id,
    createdAt: at,
    updatedAt: at,
    answers,
    answeredAt: Object.fromEntries(Object.keys(answers).map((key) => [key, at])),
    unsure: {},
    typed: {},
    cautionsRead: {},
    ticks: {},
    progress: {},
    measurements: [],
    readings: {},
  };
}

/** The same antenna once more: its answers alone, nothing of what was cut, ticked or measured. */
export function copyOf(plan: SavedPlan, id: string, at: number, copyName: string): SavedPlan {
  const copy = newSavedPlan(id, at, { ...plan.answers, name: copyName });
  return { ...copy, unsure: plan.unsure };
}

export const isDeleted = (plan: SavedPlan): boolean => plan.deleted?.on === true;
