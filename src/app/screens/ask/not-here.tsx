/** A plan that is not on this phone, or one that this version cannot change. */
import { answering } from '../../../words/en/answering';
import { keptPlans } from '../../../words/en/kept-plans';
import { plans, shell } from '../../../words/en/screens';
import { Top } from '../../parts/top';
import { to } from '../../routes';
import { useSay } from '../../say';

export function NotHere() {
  const say = useSay();
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }} />
      <main id="main">
        <section class="stop">
          <h1 tabIndex={-1}>{say(shell.notHere)}</h1>
          <p>{say(shell.notHereWhy)}</p>
          <div class="ways">
            <a class="btn tall" href={to.plans}>
              {say(shell.allPlans)}
            </a>
            <a class="btn tall" href={to.newPlan}>
              {say(plans.newPlan)}
            </a>
          </div>
        </section>
      </main>
    </>
  );
}

export function ReadOnly({ newer }: { newer: boolean }) {
  const say = useSay();
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }} />
      <main id="main">
        <section class="stop">
          <h1 tabIndex={-1}>{say(keptPlans.unreadableHead)}</h1>
          <p>{say(newer ? answering.newerReadOnly : keptPlans.brokenHere)}</p>
          <div class="ways">
            <a class="btn tall" href={to.plans}>
              {say(shell.allPlans)}
            </a>
            <a class="btn tall" href={to.newPlan}>
              {say(plans.newPlan)}
            </a>
          </div>
        </section>
      </main>
    </>
  );
}
