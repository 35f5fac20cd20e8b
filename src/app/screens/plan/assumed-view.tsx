/** What the plan had to assume, folded under how much it is: what would change most comes first, each with its way to the question. */
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { questionWords } from '../../../words/en/questions';
import { assumedAnswer, assumedText } from '../../assumed-text';
import { to } from '../../routes';
import { useSay } from '../../say';
import { Fold } from './fold';

type Assumption = Plan['assumed'][number];

interface AssumedProps {
  readonly plan: Plan;
  readonly planId: string;
}

/** Named in the heading. */
const NAMED = 3;

export function AssumedView({ plan, planId }: AssumedProps) {
  const say = useSay();
  if (plan.assumed.length === 0) return null;
  const first = plan.assumed
    .slice(0, NAMED)
    .map(({ key }) => questionWords(assumedAnswer(key).id).short.toLowerCase())
    .join(', ');
  const result = say(planScreen.assumedResult, { count: plan.assumed.length, first });
  return (
    <Fold id="assumed" head={say(planScreen.assumed)} result={result}>
      <p>{say(planScreen.assumedIntro)}</p>
      <Assumptions list={plan.assumed} planId={planId} />
    </Fold>
  );
}

function Assumptions({ list, planId }: { readonly list: readonly Assumption[]; readonly planId: string }) {
  const say = useSay();
  return (
    <ul class="rows assumptions">
      {list.map((assumption) => {
        const { id } = assumedAnswer(assumption.key);
        const { short } = questionWords(id);
        return (
          <li key={assumption.key}>
            <div>
              <b>{assumedText(assumption, say.format)}</b>
              <span>{assumption.why}</span>
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
