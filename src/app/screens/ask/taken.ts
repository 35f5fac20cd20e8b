/** What stands in for an answer while it is not known: the stand-in of a first question, else what the plan itself assumes. */
import { safeDefault } from '../../../advice/route';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import { questionWords } from '../../../words/en/questions';
import { ask } from '../../../words/en/screens';
import { answerText } from '../../answer-text';
import { takenText } from '../../assumed-text';
import { useSay } from '../../say';
import { provisionalAnswers } from '../../stores/effective-answers';
import { usePlanned } from '../../stores/planned';

export function useTaken(id: AnswerKey, draft: DraftAnswers): string {
  const say = useSay();
  const { [id]: _told, ...others } = draft;
  const assumed = usePlanned(provisionalAnswers(others), id)?.plan.assumed;
  const first = answerText(id, safeDefault(id, others), say.format);
  if (first !== null) return first;
  const value = assumed?.find(({ key }) => key === id)?.value;
  // Lengths and counts are the plan's own: no number stands before it is there.
  return value === undefined && typeof questionWords(id).taken !== 'string'
    ? say(ask.works)
    : takenText(id, value, say.format);
}
