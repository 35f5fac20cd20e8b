/** What a plan says of itself in the list. Pure: words and numbers in, words out. */
import { completeAnswers, nextQuestion, routeOf } from '../../../advice/route';
import type { DraftAnswers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { capital } from '../../../words/capital';
import { systemName } from '../../../words/en/names';
import { plans as words } from '../../../words/en/screens';
import { bandList, firstAnswerText } from '../../first-answer-text';
import type { Say } from '../../say';

export const planName = (saved: SavedPlan, say: Say, plan: Plan | null = null): string =>
  saved.answers.name ?? kindOf(saved.answers, plan, say);

/** "Inverted V, 80 m": the system once a plan names it, before that what hangs in the air. */
export function kindOf(answers: DraftAnswers, plan: Plan | null, say: Say): string {
  const bands = answers.bands === undefined ? say(words.noBands) : bandList(answers.bands);
  const system = plan?.system ?? null;
  if (system !== null) return `${capital(systemName(system))}, ${bands}`;
  const radiator = firstAnswerText('radiator', answers);
  return radiator === null ? bands : `${radiator}, ${bands}`;
}

/** How far it has come: measured, a job begun, whole, or so many questions answered. */
export function stateOf(saved: SavedPlan, draft: DraftAnswers, say: Say): string {
  if (completeAnswers(draft) === null) {
    const first = routeOf(draft).filter(({ group }) => group === 'first');
    const open = nextQuestion(draft);
    const done = open === null ? first.length : first.findIndex(({ id }) => id === open.id);
    return say(words.answered, { done, of: Math.max(first.length, draft.radiator === undefined ? 4 : first.length) });
  }
  const measured = saved.measurements.at(-1);
  if (measured !== undefined) return say(words.measured, { mhz: measured.dipMHz });
  const job = latestJob(saved);
  return job === null ? say(words.planned) : say(words.job, { job: say(words[`jobs_${job}`]) });
}

type Job = 'cut' | 'shop' | 'raise' | 'trim';
const jobNames: readonly Job[] = ['cut', 'shop', 'raise', 'trim'];

export function latestJob({ progress }: SavedPlan): Job | null {
  const begun = jobNames
    .flatMap((job) => {
      const at = progress[job]?.at;
      return at === undefined ? [] : [{ job, at }];
    })
    .sort((a, b) => b.at - a.at);
  return begun[0]?.job ?? null;
}
