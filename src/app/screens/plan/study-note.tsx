/**
 * Whether the numbers below are worked out for this very antenna, or come from formulas and may still move; and, once, what moved when they were.
 * It keeps its height throughout, so that nothing below leaps.
 */
import { useRef } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import { type PlanChange, planChanges } from '../../../plan/plan-changes';
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { Pin } from '../../parts/icon';
import { useSay } from '../../say';
import type { FieldState } from '../../stores/field-store';
import { ChangeLine } from '../ask/changed-strip';

interface StudyNoteProps {
  readonly study: FieldState;
  readonly plan: Plan;
  readonly answers: Answers;
}

export function StudyNote({ study, plan, answers }: StudyNoteProps) {
  const say = useSay();
  const moved = useMoved(study, plan, answers);
  if (study.kind === 'idle' || study.kind === 'nothing-to-solve') return <p class="vh" role="status" />;
  return (
    <section class="study" aria-label={say(planScreen.studyLabel)}>
      <p role="status">
        {moved.length > 0 && <Pin />}
        {study.kind === 'working' && say(planScreen.studying, { ...study.progress.value })}
        {study.kind === 'solved' && say(moved.length > 0 ? planScreen.studiedMoved : planScreen.studied)}
        {study.kind === 'failed' && say(planScreen.notStudied)}
      </p>
      {moved.length > 0 && (
        <details>
          <summary>{say(planScreen.whatMoved, { count: moved.length })}</summary>
          <ul class="reasons">
            {moved.map((change) => (
              <ChangeLine key={change.id} change={change} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** What differs between the plan first shown, from formulas, and the solved one; nothing when it was solved before it was opened. */
function useMoved(study: FieldState, plan: Plan, answers: Answers): readonly PlanChange[] {
  const first = useRef<{ readonly of: string; readonly plan: Plan } | null>(null);
  const of = JSON.stringify(answers);
  if (first.current !== null && first.current.of !== of) first.current = null;
  if (study.kind === 'working' && study.facts === null) first.current ??= { of, plan };
  return study.kind === 'solved' && first.current !== null ? planChanges(first.current.plan, plan) : [];
}
