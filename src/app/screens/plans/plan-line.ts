/** What a plan says of itself in the list. Pure: words and numbers in, words out. */
import { completeAnswers, nextQuestion, routeOf } from '../../../advice/route';
import type { DraftAnswers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { capital } from '../../../words/capital';
import { systemName } from '../../../words/en/names';
import { plans as words } from '../../../words/en/screens';
import { bandList, firstAnswerText } from '../../first-answer-text';
import { sumOf, turnsOfCode } from '../../jobs/winding-code';
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

/** How far it has come: so many questions answered, planned, a job under way, measured. */
export function stateOf(saved: SavedPlan, draft: DraftAnswers, plan: Plan | null, say: Say): string {
  if (completeAnswers(draft) === null) {
    const first = routeOf(draft).filter(({ group }) => group === 'first');
    const open = nextQuestion(draft);
    const done = open === null ? first.length : first.findIndex(({ id }) => id === open.id);
    return say(words.answered, { done, of: Math.max(first.length, draft.radiator === undefined ? 4 : first.length) });
  }
  const measured = saved.measurements.at(-1);
  const begun = begunJob(saved);
  if (measured !== undefined && (begun === null || begun.job === 'trim' || begun.at < measured.at)) {
    return say(words.measured, { mhz: measured.dipMHz });
  }
  return begun === null ? say(words.planned) : jobText(begun, plan, say);
}

type Job = 'cut' | 'shop' | 'raise' | 'trim' | 'wind';
const jobs: readonly string[] = ['cut', 'shop', 'raise', 'trim', 'wind'] satisfies Job[];
const isJob = (word: string | undefined): word is Job => word !== undefined && jobs.includes(word);

export interface BegunJob {
  readonly job: Job;
  /** What is wound; empty for other jobs. */
  readonly device: string;
  /** Turns of each of its windings, as jobs/winding-code.ts writes them. */
  readonly turns: string;
  readonly step: string;
  readonly at: number;
}

/** The job last gone on with: `cut`, or `wind`, its device and its turns. A count taken back to no turn is none begun. */
export function begunJob({ progress }: SavedPlan): BegunJob | null {
  const begun = Object.entries(progress).flatMap(([key, { step, at }]) => {
    const [job, device = '', turns = ''] = key.split(' ');
    return isJob(job) && step !== '0' ? [{ job, device, turns, step, at }] : [];
  });
  return begun.sort((a, b) => b.at - a.at)[0] ?? null;
}

function jobText({ job, turns, step }: BegunJob, plan: Plan | null, say: Say): string {
  if (job === 'wind') {
    return say(words.winding, { done: step, count: sumOf(turnsOfCode(turns)) });
  }
  if (job === 'cut' || job === 'raise') {
    if (step === 'done') return say(words[`done_${job}`]);
    const ids: readonly string[] =
      (job === 'cut' ? plan?.cuts.map(({ piece }) => piece) : plan?.steps.map(({ id }) => id)) ?? [];
    const now = ids.indexOf(step) + 1;
    if (now > 0) return say(words[`at_${job}`], { now, count: ids.length });
  }
  return say(words.job, { job: say(words[`jobs_${job}`]) });
}
