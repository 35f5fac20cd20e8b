/** All cautions of a plan on one printed page, for the bag and for whoever holds the rope. */
import { cautionCard } from '../../../plan/caution-card';
import { recordScreen } from '../../../words/en/record-screen';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { Top } from '../../parts/top';
import { type PlanRoute, to } from '../../routes';
import { useSay } from '../../say';
import { PaperView } from './paper-view';

export function CardScreen({ route }: { route: PlanRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <CardPage key={open.saved.id} {...open} />}</WithPlan>;
}

function CardPage({ saved, plan, name }: OpenPlan) {
  const say = useSay();
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }} />
      <main id="main">
        <PaperView
          paper={cautionCard(plan, { name, format: say.format })}
          fileName={`${name} ${recordScreen.card}`}
          how={recordScreen.howCard}
          kind="card"
        />
      </main>
    </>
  );
}
