/**
 * Which cautions stand before a step, and which of their lines are still to be read on this plan. A line that was ticked counts for the day,
 * and until an answer about site, size or power changes; then it is asked again: what was ticked at the table says nothing of the field.
 */
import { cautionsBefore } from '../../advice/steps';
import type { AnswerKey } from '../../design/answers';
import type { SavedPlan } from '../../design/saved-plan';
import type { Plan } from '../../plan/plan-schema';

export type Gate = Plan['cautions'][number];
type Step = Plan['steps'][number];

const siteAnswers: readonly AnswerKey[] = [
  'station',
  'indoors',
  'radiator',
  'wireLengthM',
  'spanM',
  'heightM',
  'endHeightM',
  'supportHeightM',
  'runHeightM',
  'radialLengthM',
  'counterpoiseM',
  'nearestPersonM',
  'nearestPowerLineM',
  'powerW',
  'mode',
  'wire',
];

export const lineKey = (gate: Gate, line: number): string => `${gate.id}:${line}`;

const lastSiteChange = ({ answeredAt }: SavedPlan): number =>
  Math.max(0, ...siteAnswers.map((key) => answeredAt[key] ?? 0));

/** How long a reading counts, ms: for one day out. Common practice: a site is looked at anew each day. */
const READING_LASTS_MS = 12 * 3_600_000;

/** When the line was read, ms since 1970; null when it must be read (again). */
export function readAt(saved: SavedPlan, gate: Gate, line: number, now = Date.now()): number | null {
  const mark = saved.cautionsRead[lineKey(gate, line)];
  return mark?.on === true && mark.at >= lastSiteChange(saved) && now - mark.at < READING_LASTS_MS ? mark.at : null;
}

export const unreadLines = (saved: SavedPlan, gate: Gate, now = Date.now()): number[] =>
  gate.lines.filter((line) => readAt(saved, gate, line, now) === null);

/** The gates before a step, in order. */
export const gatesOf = (plan: Plan, step: Step): Gate[] => cautionsBefore(step.id, plan.cautions);

export const openGates = (saved: SavedPlan, plan: Plan, step: Step, now = Date.now()): Gate[] =>
  gatesOf(plan, step).filter((gate) => unreadLines(saved, gate, now).length > 0);
