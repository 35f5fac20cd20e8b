/** The way to the screen that hands the plan over. */
import { planScreen } from '../../../words/en/plan-screen';
import { shareScreen } from '../../../words/en/share-screen';
import { to } from '../../routes';
import { useSay } from '../../say';

export function Share({ planId }: { readonly planId: string }) {
  const say = useSay();
  return (
    <section aria-labelledby="share" class="share">
      <h2 id="share" tabIndex={-1}>
        {say(planScreen.share)}
      </h2>
      <p>{say(shareScreen.ways)}</p>
      <a class="btn tall" href={to.share(planId)}>
        {say(planScreen.share)}
      </a>
    </section>
  );
}
