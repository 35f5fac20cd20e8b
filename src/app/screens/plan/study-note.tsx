/** Whether the numbers below are worked out for this very antenna, or come from formulas and may still move. The old number stays meanwhile. */
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';
import type { FieldState } from '../../stores/field-store';

export function StudyNote({ study }: { readonly study: FieldState }) {
  const say = useSay();
  const text =
    study.kind === 'working'
      ? say(planScreen.studying, { done: study.done, of: study.of })
      : study.kind === 'solved'
        ? say(planScreen.studied)
        : study.kind === 'failed'
          ? say(planScreen.notStudied)
          : '';
  return (
    <p class={text === '' ? 'vh' : study.kind === 'working' ? 'study sofar' : 'study small'} role="status">
      {text}
    </p>
  );
}
