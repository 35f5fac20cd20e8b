/**
 * Everything that can happen to a saved plan, and how it is applied. Each edit touches one thing and carries its time; the later one wins,
 * whatever the order in which they arrive. So two tabs never overwrite each other's newer answer.
 */
import type { AnswerKey, DraftAnswers } from './answers';
import type { Measurement, SavedPlan } from './saved-plan';

export type PlanEdit = { readonly at: number } & (
  | {
      readonly kind: 'answer';
      /** One key with its value, or an empty record to take the answer back. */
      readonly key: AnswerKey;
      readonly answer: DraftAnswers;
      readonly unsure?: boolean;
      /** Set when the plan was whole before: the change is then pointed out. */
      readonly pointOut?: boolean;
    }
  | { readonly kind: 'typed'; readonly field: string; readonly text: string }
  | { readonly kind: 'accept-edit' }
  | { readonly kind: 'caution-read' | 'tick'; readonly key: string; readonly on: boolean }
  | { readonly kind: 'progress'; readonly job: string; readonly step: string }
  | { readonly kind: 'measured'; readonly measurement: Measurement }
  | { readonly kind: 'reading'; readonly key: string; readonly value: number | null }
  | { readonly kind: 'unmeasured'; readonly id: string }
  /** Words beside a measurement that is there; empty takes them back. */
  | { readonly kind: 'noted'; readonly id: string; readonly note: string }
  | { readonly kind: 'deleted'; readonly on: boolean }
);

/** The plan after the edit; the very same object when a newer one has been before it. */
export function applyEdit(plan: SavedPlan, edit: PlanEdit): SavedPlan {
  const next = applied(plan, edit);
  return next === plan ? plan : { ...next, updatedAt: Math.max(plan.updatedAt, edit.at) };
}

const isNewer = (kept: { readonly at: number } | undefined, edit: PlanEdit): boolean =>
  kept !== undefined && kept.at > edit.at;

function applied(plan: SavedPlan, edit: PlanEdit): SavedPlan {
  switch (edit.kind) {
    case 'answer':
      return answered(plan, edit);
    case 'typed':
      return typed(plan, edit);
    case 'accept-edit':
      return plan.lastEdit === undefined || isNewer(plan.lastEdit, edit) ? plan : without(plan, 'lastEdit');
    case 'caution-read':
      return { ...plan, cautionsRead: marked(plan.cautionsRead, edit) };
    case 'tick':
      return { ...plan, ticks: marked(plan.ticks, edit) };
    case 'progress':
      return isNewer(plan.progress[edit.job], edit)
        ? plan
        : { ...plan, progress: { ...plan.progress, [edit.job]: { step: edit.step, at: edit.at } } };
    case 'measured':
      return { ...plan, measurements: withMeasured(plan.measurements, edit.measurement) };
    case 'reading':
      return isNewer(plan.readings[edit.key], edit)
        ? plan
        : { ...plan, readings: { ...plan.readings, [edit.key]: { value: edit.value, at: edit.at } } };
    case 'unmeasured':
      return { ...plan, measurements: plan.measurements.filter(notOf(edit.id)) };
    case 'noted':
      return {
        ...plan,
        measurements: plan.measurements.map((each) => (each.id === edit.id ? noted(each, edit.note) : each)),
      };
    case 'deleted':
      return isNewer(plan.deleted, edit) ? plan : { ...plan, deleted: { on: edit.on, at: edit.at } };
  }
}

const notOf =
  (id: string) =>
  (measurement: Measurement): boolean =>
    measurement.id !== id;

/** In the order of time, also what was removed and comes back: the last one tells how much wire is in use. */
const withMeasured = (list: readonly Measurement[], measurement: Measurement): Measurement[] =>
  [...list.filter(notOf(measurement.id)), measurement].sort((a, b) => a.at - b.at);

const noted = (measurement: Measurement, note: string): Measurement =>
  note === '' ? without(measurement, 'note') : { ...measurement, note };

function answered(plan: SavedPlan, edit: PlanEdit & { kind: 'answer' }): SavedPlan {
  const { key, at } = edit;
  if ((plan.answeredAt[key] ?? 0) > at) return plan;
  const before = pick(plan.answers, key);
  const after = pick(edit.answer, key);
  const next: SavedPlan = {
    ...plan,
    answers: { ...without(plan.answers, key), ...after },
    answeredAt: { ...plan.answeredAt, [key]: at },
    unsure: { ...plan.unsure, [key]: { on: edit.unsure === true, at } },
  };
  if (edit.pointOut !== true) return without(next, 'lastEdit');
  // Several taps on one question are one change: what stood there before the first of them is kept.
  const first = plan.lastEdit?.key === key ? plan.lastEdit.before : before;
  return JSON.stringify(first) === JSON.stringify(after)
    ? without(next, 'lastEdit')
    : { ...next, lastEdit: { key, before: first, at } };
}

function typed(plan: SavedPlan, edit: PlanEdit & { kind: 'typed' }): SavedPlan {
  const { field, text, at } = edit;
  if (isNewer(plan.typed[field], edit)) return plan;
  const rest = without(plan.typed, field);
  return { ...plan, typed: text === '' ? rest : { ...rest, [field]: { text, at } } };
}

const marked = (marks: SavedPlan['ticks'], edit: PlanEdit & { kind: 'tick' | 'caution-read' }): SavedPlan['ticks'] =>
  isNewer(marks[edit.key], edit) ? marks : { ...marks, [edit.key]: { on: edit.on, at: edit.at } };

/** The one key of a record, or an empty record. */
export const pick = (answers: DraftAnswers, key: AnswerKey): DraftAnswers =>
  answers[key] === undefined ? {} : { [key]: answers[key] };

function without<T extends object, K extends keyof T>(record: T, key: K): T {
  const { [key]: _left, ...rest } = record;
  return rest as T;
}

/** The answers as they stood before the last change that is pointed out; null when there is none. */
export function answersBefore({ answers, lastEdit }: SavedPlan): DraftAnswers | null {
  if (lastEdit === undefined) return null;
  return { ...without(answers, lastEdit.key), ...lastEdit.before };
}
