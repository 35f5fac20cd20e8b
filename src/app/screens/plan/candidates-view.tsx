/** When the radiator was left open: the antennas that fit, best first; taking one answers the open questions. */
import type { AnswerKey } from '../../../design/answers';
import { pick } from '../../../design/plan-edit';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { systemName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';
import type { NewEdit } from '../../stores/library';
import { useStores } from '../../stores/stores';

type Candidate = NonNullable<Plan['candidates']>[number];

export function CandidatesView({ plan, saved }: { readonly plan: Plan; readonly saved: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  if (plan.candidates === undefined) return null;
  const take = (candidate: Candidate): void => {
    const keys = (Object.keys(candidate.answers) as AnswerKey[]).filter((key) => saved.answers[key] === undefined);
    const edits = keys
      .filter((key) => key !== 'units' && key !== 'onHand')
      .map((key): NewEdit => ({ kind: 'answer', key, answer: pick(candidate.answers, key) }));
    library.edit(saved.id, ...edits);
  };
  return (
    <section aria-labelledby="candidates">
      <h2 id="candidates" tabIndex={-1}>
        {say(planScreen.candidates)}
      </h2>
      <ol class="rows">
        {plan.candidates.map((candidate) => (
          <li key={`${candidate.rank} ${candidate.system}`} class="row">
            <h3>{systemName(candidate.system)}</h3>
            {candidate.reasons.map((reason) => (
              <p key={reason}>{reason}</p>
            ))}
            <button type="button" class="btn tall" onClick={() => take(candidate)}>
              {say(planScreen.asPlan)}
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
