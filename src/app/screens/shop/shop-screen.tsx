/** The shopping list: ticked with a thumb, read at arm's length, sent as text; for one plan or for several at once. */
import { useState } from 'preact/hooks';
import { completeAnswers } from '../../../advice/route';
import type { Answers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import { shoppingAsText } from '../../../plan/plain-text';
import { jobs } from '../../../words/en/job-screens';
import { shopScreen } from '../../../words/en/shop-screen';
import { verdictNames } from '../../../words/en/verdicts';
import {
  isMergedBought,
  type MergedRow,
  mergedRows,
  type PlanRows,
  sharesText,
  type Tick,
  ticksOf,
} from '../../jobs/merged-rows';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { PartList } from '../../jobs/part-list';
import { partRows } from '../../jobs/part-rows';
import { SendText } from '../../jobs/send-text';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type JobRoute, to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import { useAllPlanned } from '../../stores/planned';
import { useStores } from '../../stores/stores';
import { planName } from '../plans/plan-line';
import { isShoppedWith, OtherPlans } from './other-plans';
import '../../jobs/jobs.css';
import '../../jobs/part-list.css';
import './shop.css';

export function ShopScreen({ route }: { route: JobRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Shopping {...open} />}</WithPlan>;
}

interface Whole {
  readonly saved: SavedPlan;
  readonly answers: Answers;
}

/** Every other plan that is answered far enough to have a list. */
function useOthers(planId: string): readonly Whole[] {
  const { library } = useStores();
  const effective = useEffective();
  return library.plans.value.flatMap((saved) => {
    const answers = completeAnswers(effective(saved.answers));
    return saved.id === planId || answers === null ? [] : [{ saved, answers }];
  });
}

/** The list of this plan, then those of the plans that are shopped for with it, as far as they are made. */
function useLists({ plan, saved, name }: OpenPlan, others: readonly Whole[]): readonly PlanRows[] {
  const say = useSay();
  const chosen = others.filter((other) => isShoppedWith(saved, other.saved.id));
  const planned = useAllPlanned(
    chosen.map(({ answers }) => answers),
    [saved.id, ...chosen.map((other) => other.saved.id)].join(' '),
  );
  const more = chosen.flatMap((other, index): PlanRows[] => {
    const made = planned?.[index]?.plan;
    return made === undefined
      ? []
      : [{ saved: other.saved, name: planName(other.saved, say, made), rows: partRows(made) }];
  });
  return [{ saved, name, rows: partRows(plan) }, ...more];
}

function Shopping(open: OpenPlan) {
  const { saved, name } = open;
  const offered = open.plan.offeredBox;
  const say = useSay();
  const { library } = useStores();
  const [last, setLast] = useState<readonly Tick[]>([]);
  const others = useOthers(saved.id);
  const lists = useLists(open, others);
  const rows = mergedRows(lists);
  const useOf = (row: MergedRow): string => sharesText(row, lists.length > 1, say);
  const have = rows.filter(isMergedBought).length;
  const tick = (ticks: readonly Tick[]): void => {
    for (const { planId, key, on } of ticks) library.edit(planId, { kind: 'tick', key, on });
  };
  const text = (): string => {
    const told = rows.map((row) => ({ ...row, use: useOf(row), isHere: isMergedBought(row) }));
    return shoppingAsText(told, { name: lists.map((list) => list.name).join(', '), format: say.format });
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
        {others.length > 0 && <OtherPlans saved={saved} others={others.map((other) => other.saved)} />}
        {offered !== null && (
          <details>
            <summary>{say(shopScreen.offered)}</summary>
            <div class="offered">
              <p>
                {say(shopScreen.offeredIs, { ratio: offered.ratio })} <b>{verdictNames[offered.verdict]}</b>
              </p>
              <p>{offered.why}</p>
            </div>
          </details>
        )}
        <PartList
          rows={rows}
          list="shop"
          isTicked={isMergedBought}
          onTick={(row, on) => {
            const ticks = ticksOf(row, on);
            tick(ticks);
            setLast(ticks);
          }}
          more={(row) => <Below row={row} use={useOf(row)} />}
        />
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <SendText title={name} text={text} main />
        <button
          type="button"
          class={last.length === 0 ? 'btn tall wait' : 'btn tall'}
          onClick={() => {
            tick(last.map((each) => ({ ...each, on: !each.on })));
            setLast([]);
          }}
        >
          <Icon name="undo" />
          {say(shopScreen.undo)}
        </button>
      </section>
    </>
  );
}

/** What a row is for, how much of it is there, and what to take if the shop lacks it. */
function Below({ row: { have, quantity, substitute }, use }: { readonly row: MergedRow; readonly use: string }) {
  const say = useSay();
  return (
    <>
      <span>{say(shopScreen.use, { use })}</span>
      {have > 0 && have < quantity && <span class="sub">{say(shopScreen.partly, { have, of: quantity })}</span>}
      {substitute !== '' && (
        <span class="sub">
          <b>{say(shopScreen.or)}</b> {substitute}
        </span>
      )}
    </>
  );
}
