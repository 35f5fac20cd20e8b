/** What the plan had to assume: the few that would change most, each with its way to the question, and the rest one tap away. */
import type { AnswerKey } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { questionWords } from '../../../words/en/questions';
import { answerText } from '../../answer-text';
import { to } from '../../routes';
import { useSay } from '../../say';

type Assumption = Plan['assumed'][number];

interface AssumedProps {
  readonly plan: Plan;
  readonly planId: string;
}

/** The plan tells them by what they would change, the most telling first. */
const SHOWN = 5;

export function AssumedView({ plan, planId }: AssumedProps) {
  const say = useSay();
  const [first, rest] = [plan.assumed.slice(0, SHOWN), plan.assumed.slice(SHOWN)];
  if (first.length === 0) return null;
  return (
    <section aria-labelledby="assumed">
      <h2 id="assumed" tabIndex={-1}>
        {say(planScreen.assumed)}
      </h2>
      <p>{say(planScreen.assumedIntro)}</p>
      <Assumptions list={first} planId={planId} />
      {rest.length > 0 && (
        <details>
          <summary>{say(planScreen.assumedAll, { count: rest.length })}</summary>
          <Assumptions list={rest} planId={planId} />
        </details>
      )}
    </section>
  );
}

function Assumptions({ list, planId }: { readonly list: readonly Assumption[]; readonly planId: string }) {
  const say = useSay();
  return (
    <ul class="rows assumptions">
      {list.map(({ key, value, why }) => {
        const [id = '', band] = key.split('.');
        const { short } = questionWords(id);
        const given = band === undefined ? value : { [band]: value };
        const text = value === 'not-told' ? null : answerText(id as AnswerKey, { [id]: given }, say.format);
        return (
          <li key={key}>
            <div>
              <b>{text === null ? short : `${short}: ${text}`}</b>
              <span>{why}</span>
            </div>
            <a class="btn" href={to.ask(planId, id)} aria-label={say(planScreen.changeAnswer, { what: short })}>
              {say(planScreen.change)}
            </a>
          </li>
        );
      })}
    </ul>
  );
}
