/** How far people keep from the antenna on each band, by who they are; on the plan and on paper. */
import type { Plan } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { ColumnTable } from '../../parts/column-table';
import { Length } from '../../parts/length';
import { useSay } from '../../say';

export function PeopleTable({ exposure }: { readonly exposure: Plan['exposure'] }) {
  const say = useSay();
  return (
    <ColumnTable
      class="people"
      heads={[say(planScreen.band), say(planScreen.knowing), say(planScreen.anyone)]}
      rows={exposure.map(({ band, knowingM, publicM }) => ({
        key: band,
        name: bandName(band),
        cells: [<Distance key="knowing" metres={knowingM} />, <Distance key="anyone" metres={publicM} />],
      }))}
    />
  );
}

function Distance({ metres }: { readonly metres: number | null }) {
  const say = useSay();
  return <>{metres === null ? say(planScreen.notKnown) : <Length metres={metres} />}</>;
}
