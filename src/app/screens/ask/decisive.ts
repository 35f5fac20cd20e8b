/** The answers that change most which antenna comes first, in the order asked. */
import type { AnswerKey } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';

export const decisive: readonly AnswerKey[] = ['bands', 'spanM', 'supportHeightM', 'shackEnd'];

/** Told, or told not to be known. */
export const isSettled = (plan: SavedPlan, key: AnswerKey): boolean =>
  plan.answers[key] !== undefined || plan.unsure[key]?.on === true;
