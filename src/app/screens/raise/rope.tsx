/** All steps hang on one rope: solid where done, dashed where to come, red pencil here and now. Each is a link. */
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { raiseScreen } from '../../../words/en/raise-screen';
import { stepNames } from '../../../words/en/steps';
import { to } from '../../routes';
import { moment, useSay } from '../../say';

interface RopeProps {
  readonly plan: Plan;
  readonly saved: SavedPlan;
  readonly now: number;
}

export function Rope({ plan, saved, now }: RopeProps) {
  const say = useSay();
  return (
    <section aria-labelledby="steps">
      <h2 id="steps">{say(raiseScreen.all, { count: plan.steps.length })}</h2>
      <ol class="rope">
        {plan.steps.map((step, index) => {
          const mark = saved.ticks[`raise:${step.id}`];
          const done = mark?.on === true && index !== now;
          const here = index === now;
          return (
            <li key={step.id} class={done ? 'done' : here ? 'now' : undefined}>
              <Knot kind={done ? 'done' : here ? 'now' : 'open'} />
              <a href={to.job(saved.id, 'raise', step.id)} aria-current={here ? 'step' : undefined}>
                {stepNames[step.id]}
              </a>
              {done && <span class="when">{say(raiseScreen.doneAt, { time: moment(mark.at) })}</span>}
              {here && <span class="when">{say(raiseScreen.hereNow)}</span>}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Knot({ kind }: { readonly kind: 'done' | 'now' | 'open' }) {
  return (
    <svg viewBox="0 0 28 28" aria-hidden="true">
      {kind === 'done' && (
        <>
          <circle cx="14" cy="14" r="12" fill="var(--ink)" />
          <path d="M8 14l4.5 5L20.5 9" fill="none" stroke="var(--paper)" stroke-width="3" />
        </>
      )}
      {kind === 'now' && (
        <>
          <circle cx="14" cy="14" r="14" fill="var(--paper)" />
          <path d="M14 27 2 4h24z" fill="var(--mark)" />
        </>
      )}
      {kind === 'open' && <circle cx="14" cy="14" r="10" fill="var(--paper)" stroke="var(--ink)" stroke-width="3" />}
    </svg>
  );
}
