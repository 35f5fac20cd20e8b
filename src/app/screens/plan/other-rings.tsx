/** "What if I only have mix 43?": other rings for the same device, what each would change, and the way to plan with them. */
import type { Answers } from '../../../design/answers';
import type { ChainItem } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { withRings } from './with-rings';

interface OtherRingsProps {
  readonly item: ChainItem;
  readonly answers: Answers;
  readonly planId: string;
}

export function OtherRings({ item: { alternatives, build, name }, answers, planId }: OtherRingsProps) {
  const say = useSay();
  const { library } = useStores();
  if (alternatives.length === 0 || build === null) return null;
  const take = (other: ChainItem['alternatives'][number]): void =>
    library.answer(
      planId,
      'onHand',
      { onHand: withRings(answers.onHand ?? [], build, other.build) },
      { pointOut: true },
    );
  return (
    <details class="other-rings">
      <summary aria-label={`${say(planScreen.alternatives)} ${name}`}>{say(planScreen.alternatives)}</summary>
      <ul class="reasons">
        {alternatives.map((other) => (
          <li key={other.id} class="reasons">
            <p>
              <b>{other.name}</b> {other.isPlanned && <span class="chip">{say(planScreen.planned)}</span>}
            </p>
            <p>{other.changes}</p>
            {other.shortfalls.map((shortfall) => (
              <p key={shortfall}>{shortfall}</p>
            ))}
            {other.isEnough && !other.isPlanned && (
              <button
                type="button"
                class="btn"
                aria-label={`${say(planScreen.takeRings)}: ${other.name}`}
                onClick={() => take(other)}
              >
                {say(planScreen.takeRings)}
              </button>
            )}
          </li>
        ))}
      </ul>
      <p class="small">{say(planScreen.takenRings)}</p>
    </details>
  );
}
