/** Where the questions lead, as addresses. Which question comes when is decided in advice/; here it only gets its link. */
import { nextQuestion, type Question, routeOf } from '../../../advice/route';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import { to } from '../../routes';
import { hasScreen } from '../../screens-later';

export const firstQuestions = (draft: DraftAnswers): readonly Question[] =>
  routeOf(draft).filter(({ group }) => group === 'first');

export const planAddress = (planId: string): string => (hasScreen('plan') ? to.plan(planId) : to.surer(planId));

/** After this question: the next first one, then whatever first one is still open, then the plan; from the later ones back to their list. */
export function addressAfter(planId: string, question: string, draft: DraftAnswers): string {
  const first = firstQuestions(draft);
  const index = first.findIndex(({ id }) => id === question);
  if (index < 0) return to.surer(planId);
  const next = first[index + 1] ?? nextQuestion(draft);
  return next === null ? planAddress(planId) : to.ask(planId, next.id);
}

export function addressBefore(planId: string, question: string, draft: DraftAnswers): string {
  const first = firstQuestions(draft);
  const index = first.findIndex(({ id }) => id === question);
  if (index < 0) return to.surer(planId);
  const before = first[index - 1];
  return before === undefined ? to.plans : to.ask(planId, before.id);
}

/** Where a saved plan is taken up again. */
export function goOnAddress(planId: string, draft: DraftAnswers): string {
  const open = nextQuestion(draft);
  return open === null ? planAddress(planId) : to.ask(planId, open.id);
}

export const answerOf = (key: AnswerKey, value: unknown): DraftAnswers => ({ [key]: value }) as DraftAnswers;
