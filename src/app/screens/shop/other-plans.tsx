/** Which other plans are shopped for with this one: a row to tick for each. */
import type { SavedPlan } from '../../../design/saved-plan';
import { shopScreen } from '../../../words/en/shop-screen';
import { withKey } from '../../jobs/merged-rows';
import { Icon } from '../../parts/icon';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { planName } from '../plans/plan-line';
import './shop.css';

export const isShoppedWith = ({ ticks }: SavedPlan, otherId: string): boolean => ticks[withKey(otherId)]?.on === true;

interface OtherPlansProps {
  readonly saved: SavedPlan;
  readonly others: readonly SavedPlan[];
}

export function OtherPlans({ saved, others }: OtherPlansProps) {
  const say = useSay();
  const { library } = useStores();
  const count = others.filter(({ id }) => isShoppedWith(saved, id)).length;
  return (
    <details>
      <summary>{say(shopScreen.withOthers, { count })}</summary>
      <p>{say(shopScreen.withOthersWhy)}</p>
      <ul class="rows">
        {others.map((other) => (
          <li key={other.id}>
            <label class="item other">
              <input
                type="checkbox"
                checked={isShoppedWith(saved, other.id)}
                onChange={(event) =>
                  library.edit(saved.id, { kind: 'tick', key: withKey(other.id), on: event.currentTarget.checked })
                }
              />
              <span class="tk">
                <span class="tickbox" aria-hidden="true">
                  <Icon name="tick" />
                </span>
              </span>
              <span class="what">
                <b>{planName(other, say)}</b>
              </span>
            </label>
          </li>
        ))}
      </ul>
    </details>
  );
}
