/** The shopping list: ticked with a thumb, read at arm's length, sent as text. */
import { useState } from 'preact/hooks';
import { shoppingAsText } from '../../../plan/plain-text';
import { jobs } from '../../../words/en/job-screens';
import { shopScreen } from '../../../words/en/shop-screen';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { PartList } from '../../jobs/part-list';
import { isTicked, type PartRow, partRows } from '../../jobs/part-rows';
import { SendText } from '../../jobs/send-text';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type JobRoute, to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import '../../jobs/jobs.css';
import '../../jobs/part-list.css';

export function ShopScreen({ route }: { route: JobRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Shopping {...open} />}</WithPlan>;
}

function Shopping({ plan, saved, name }: OpenPlan) {
  const say = useSay();
  const { library } = useStores();
  const [last, setLast] = useState<{ readonly key: string; readonly on: boolean } | null>(null);
  const rows = partRows(plan);
  const isHere = (row: PartRow): boolean => isTicked(saved, 'shop', row);
  const have = rows.filter(isHere).length;
  const text = (): string =>
    shoppingAsText(rows, (part) => rows.some((row) => row === part && isHere(row)), { name, format: say.format });
  const undo = (): void => {
    if (last !== null) library.edit(saved.id, { kind: 'tick', key: last.key, on: !last.on });
    setLast(null);
  };
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }} />
      <main id="main">
        <div class="sum">
          <h1 tabIndex={-1}>{say(shopScreen.title)}</h1>
          <p role="status">{say(shopScreen.total, { have, buy: rows.length - have })}</p>
        </div>
        <SaveTrouble />
        <p>{say(rows.length === 0 ? shopScreen.none : shopScreen.tick)}</p>
        <PartList rows={rows} saved={saved} list="shop" onTicked={(key, on) => setLast({ key, on })} />
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <SendText title={name} text={text} main />
        <button type="button" class={last === null ? 'btn tall wait' : 'btn tall'} onClick={undo}>
          <Icon name="undo" />
          {say(shopScreen.undo)}
        </button>
      </section>
    </>
  );
}
