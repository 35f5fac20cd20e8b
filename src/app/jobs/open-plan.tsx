/** A saved plan and what is made from it, for the screens that work on one antenna; every way in which it may not be there is said here. */
import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { completeAnswers, nextQuestion } from '../../advice/route';
import type { Answers } from '../../design/answers';
import { isDeleted, type SavedPlan } from '../../design/saved-plan';
import type { Plan } from '../../plan/plan-schema';
import { jobs } from '../../words/en/job-screens';
import { plans, shell } from '../../words/en/screens';
import { focusOnHeading } from '../kept-focus';
import { titleByHeading } from '../parts/page-title';
import { Top } from '../parts/top';
import { visits } from '../router';
import { to } from '../routes';
import { useSay } from '../say';
import { NotHere, ReadOnly } from '../screens/ask/not-here';
import { useEffective } from '../stores/effective-answers';
import { type FieldState, idle, studyKey } from '../stores/field-store';
import { usePlanUnits } from '../stores/plan-units';
import { usePlanned } from '../stores/planned';
import { useStores } from '../stores/stores';
import { usePaperFoot } from './paper-foot';

export interface OpenPlan {
  readonly saved: SavedPlan;
  readonly answers: Answers;
  readonly plan: Plan;
  /** How far the field study of this antenna is: the plan's numbers are on the way while it is working. */
  readonly study: FieldState;
  readonly name: string;
}

interface OpenPlanProps {
  readonly planId: string;
  readonly children: (open: OpenPlan) => ComponentChildren;
}

export function WithPlan({ planId, children }: OpenPlanProps) {
  const { library, planner } = useStores();
  const effective = useEffective();
  useEffect(() => void planner.fetch(), [planner]);
  const entry = library.entries.value.get(planId);
  const saved = entry?.kind === 'good' ? entry.record : null;
  const draft = effective(saved?.answers ?? {});
  usePlanUnits(saved?.answers ?? {});
  const answers = completeAnswers(draft);
  const planned = usePlanned(answers, planId);
  const study = useStudy(planned?.answers ?? null);
  const name = saved?.answers.name ?? plans.unnamed;
  // Drawn again only when one of these is another: a screen is long, and what it stands on is heard of often.
  const screen = useMemo(
    () => (saved === null || planned === null ? null : children({ saved, ...planned, study, name })),
    [children, saved, planned, study],
  );
  if (entry === undefined) return <NotHere />;
  if (saved === null) return <ReadOnly newer={entry.kind === 'newer'} />;
  if (isDeleted(saved)) return <NotHere />;
  if (answers === null) return <Unfinished planId={planId} question={nextQuestion(draft)?.id ?? 'bands'} />;
  if (planned === null) return <Waiting planId={planId} failed={planner.failed.value !== null} />;
  return (
    <>
      <FollowField answers={answers} />
      {screen}
      <NamePage planName={name} />
    </>
  );
}

/** How far the study is, as the plan in sight knows it: what is solved counts once it is in the plan. */
function useStudy(answers: Answers | null): FieldState {
  const { planner, field } = useStores();
  const shown = useRef<FieldState>(idle);
  if (answers === null) return idle;
  const state = field.stateOf(answers);
  const facts = 'facts' in state ? state.facts : null;
  if (facts === null || planner.isUpToDate(answers)) shown.current = state;
  return shown.current;
}

/** Solves the antenna as long as one of its screens is open. */
function FollowField({ answers }: { readonly answers: Answers }) {
  const { field } = useStores();
  const key = studyKey(answers);
  // The key stands for the answers, which are made anew at every drawing.
  useEffect(() => field.follow(answers), [field, key]);
  return null;
}

/** Stands after the screen, whose heading names the page; opened before the plan was made, it had none to take the focus. */
function NamePage({ planName }: { readonly planName: string }) {
  const say = useSay();
  useEffect(() => titleByHeading(say), [say]);
  useEffect(() => {
    if (visits.peek() > 0 && document.activeElement === document.body) focusOnHeading();
  }, []);
  usePaperFoot(planName);
  return null;
}

function Unfinished({ planId, question }: { readonly planId: string; readonly question: string }) {
  const say = useSay();
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }} />
      <main id="main">
        <section class="stop">
          <h1 tabIndex={-1}>{say(jobs.unfinished)}</h1>
          <p>{say(jobs.unfinishedWhy)}</p>
          <div class="ways">
            <a class="btn tall" href={to.ask(planId, question)}>
              {say(plans.goOn)}
            </a>
            <a class="btn tall" href={to.plans}>
              {say(shell.allPlans)}
            </a>
          </div>
        </section>
      </main>
    </>
  );
}

function Waiting({ planId, failed }: { readonly planId: string; readonly failed: boolean }) {
  const say = useSay();
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }} />
      <main id="main">
        {failed ? (
          <section class="stop" role="alert">
            <h1 tabIndex={-1}>{say(shell.planFailed)}</h1>
            <a class="btn tall" href={to.surer(planId)}>
              {say(jobs.checkAnswers)}
            </a>
          </section>
        ) : (
          <p role="status">{say(jobs.working)}</p>
        )}
      </main>
    </>
  );
}
