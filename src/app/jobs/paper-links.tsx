/** The ways to the papers that a plan is asked for: the exposure record and the cautions on one page. */
import { recordScreen } from '../../words/en/record-screen';
import { to } from '../routes';
import { useSay } from '../say';

export function PaperLinks({ planId }: { readonly planId: string }) {
  const say = useSay();
  return (
    <div class="ways">
      <a class="btn tall" href={to.record(planId)}>
        {say(recordScreen.open)}
      </a>
      <a class="btn tall" href={to.card(planId)}>
        {say(recordScreen.openCard)}
      </a>
    </div>
  );
}
