/** Warnings name the effect, its number and the cure. What stops the plan stands in a panel of its own with the ways out as buttons. */
import { routeOf } from '../../../advice/route';
import type { DraftAnswers } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { questionWords } from '../../../words/en/questions';
import { to } from '../../routes';
import { useSay } from '../../say';
import { answersFor } from './ways-to-answers';

type Warning = Plan['warnings'][number];

interface WarningsProps {
  readonly warnings: readonly Warning[];
  readonly answers: DraftAnswers;
  readonly planId: string;
}

export function Stops({ warnings, answers, planId }: WarningsProps) {
  const say = useSay();
  const stops = warnings.filter(({ severity }) => severity === 'stop');
  return (
    <>
      {stops.map((warning, index) => (
        <section class="stop" key={`${warning.id} ${index}`} aria-label={say(planScreen.stop)}>
          <h2>{warning.text}</h2>
          <p>{warning.why}</p>
          <WaysOut warning={warning} answers={answers} planId={planId} />
        </section>
      ))}
    </>
  );
}

export function WarningsView({ warnings, answers, planId }: WarningsProps) {
  const say = useSay();
  const rest = warnings.filter(({ severity }) => severity !== 'stop');
  if (rest.length === 0) return null;
  return (
    <section aria-labelledby="warnings">
      <h2 id="warnings" tabIndex={-1}>
        {say(planScreen.warnings)}
      </h2>
      {rest.map((warning, index) => (
        <article class="note" key={`${warning.id} ${index}`}>
          <h3>{warning.text}</h3>
          <p>{warning.why}</p>
          <WaysOut warning={warning} answers={answers} planId={planId} />
        </article>
      ))}
    </section>
  );
}

function WaysOut({ warning, answers, planId }: { readonly warning: Warning } & Omit<WarningsProps, 'warnings'>) {
  const say = useSay();
  const asked = routeOf(answers).map(({ id }) => id);
  const keys = answersFor(warning.id).filter((key) => asked.includes(key));
  return (
    <>
      {warning.waysOut.length > 0 && (
        <ul class="ways-out" aria-label={say(planScreen.waysOut)}>
          {warning.waysOut.map((way) => (
            <li key={way}>{way}</li>
          ))}
        </ul>
      )}
      {keys.length > 0 && (
        <div class="ways">
          {keys.map((key) => (
            <a key={key} class="btn" href={to.ask(planId, key)}>
              {say(planScreen.changeAnswer, { what: questionWords(key).short.toLowerCase() })}
            </a>
          ))}
        </div>
      )}
    </>
  );
}
