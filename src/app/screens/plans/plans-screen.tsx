/** All saved plans: the one last touched first and large, the others as rows, each with a small drawing. */
import { signal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { completeAnswers, feedPointOf } from '../../../advice/route';
import type { SavedPlan } from '../../../design/saved-plan';
import { radiatorM } from '../../../plan/plan-figures';
import { ask, shell, plans as words } from '../../../words/en/screens';
import { later } from '../../later';
import { Icon, Pin } from '../../parts/icon';
import { Length } from '../../parts/length';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { AntennaSketch } from '../../pictures/radiators';
import { offlineReady } from '../../pwa';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import { type Stores, useStores } from '../../stores/stores';
import { goOnAddress } from '../ask/asked';
import { type BegunJob, begunJob, kindOf, planName, stateOf } from './plan-line';
import './plans.css';

const SetAside = later(async () => (await import('./set-aside')).SetAside);
const ManagePlan = later(async () => (await import('./manage-plan')).ManagePlan);

/** The plan deleted last, for the way back beside the list; forgotten when the page is closed (Settings lists all deleted plans). */
const justDeleted = signal<string | null>(null);

export function PlansScreen() {
  const say = useSay();
  const stores = useStores();
  const list = stores.library.plans.value;
  const [first, ...others] = list;
  return (
    <>
      <Top title={say(words.title)}>
        <WorksNote />
      </Top>
      <main id="main" class="plans">
        <div class="stack">
          <SaveTrouble />
          <DeletedNote />
          {first === undefined ? <FirstUse /> : <GoOn plan={first} />}
        </div>
        <div class="stack">
          {others.length > 0 && (
            <section aria-labelledby="others">
              <h2 id="others">{say(words.others)}</h2>
              <ul class="rows">
                {others.map((plan) => (
                  <li key={plan.id}>
                    <PlanRow plan={plan} />
                    <Manage plan={plan} name={planName(plan, say)} />
                  </li>
                ))}
              </ul>
            </section>
          )}
          {stores.library.unreadable.value.length > 0 && <SetAside />}
          {list.length > 0 && (
            <section aria-labelledby="files">
              <h2 id="files">{say(words.filesHead)}</h2>
              <p class="small">{say(words.filesWhy)}</p>
              <div class="ways">
                <button type="button" class="btn tall" onClick={() => void saveAllLater(stores)}>
                  {say(words.exportAll)}
                </button>
              </div>
            </section>
          )}
        </div>
      </main>
      <section class="act" aria-label={say(shell.actions)}>
        <a class="btn go" href={to.newPlan}>
          <Icon name="plus" />
          {say(words.newPlan)}
        </a>
        <a class="btn tall" href={to.receive()}>
          {say(words.receive)}
        </a>
      </section>
    </>
  );
}

async function saveAllLater(stores: Stores): Promise<void> {
  (await import('./export-all')).saveAll(stores);
}

/** True only when the service worker has everything. */
function WorksNote() {
  const say = useSay();
  return (
    <span class="saved" role="status">
      {offlineReady.value && <Icon name="tick" />}
      {say(offlineReady.value ? words.works : words.worksNotYet)}
    </span>
  );
}

function FirstUse() {
  const say = useSay();
  return (
    <section class="first">
      <AntennaSketch radiator="inverted-v" fedAt="centre" />
      <p>{say(words.firstLine)}</p>
    </section>
  );
}

function DeletedNote() {
  const say = useSay();
  const { library } = useStores();
  const id = justDeleted.value;
  const plan = id === null ? undefined : library.deleted.value.find((each) => each.id === id);
  if (plan === undefined) return null;
  return (
    <div class="changed" role="status">
      <p>{say(words.removed, { name: planName(plan, say) })}</p>
      <button type="button" class="btn" onClick={() => library.edit(plan.id, { kind: 'deleted', on: false })}>
        <Icon name="undo" />
        {say(shell.undo)}
      </button>
    </div>
  );
}

/** Copy, rename, delete and hand over, folded under each plan. */
function Manage({ plan, name }: { plan: SavedPlan; name: string }) {
  const say = useSay();
  const [open, setOpen] = useState(false);
  return (
    <details class="manage" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary aria-label={say(words.manage, { name })}>{say(words.manageShort)}</summary>
      {open && (
        <ManagePlan
          plan={plan}
          onDeleted={(id) => {
            justDeleted.value = id;
          }}
        />
      )}
    </details>
  );
}

const addressOf = (planId: string, { job, device }: BegunJob): string =>
  job === 'wind' ? to.wind(planId, device) : to.job(planId, job);

/** What the list tells of one plan. */
function usePlanFacts(saved: SavedPlan) {
  const say = useSay();
  const { planner } = useStores();
  const draft = useEffective()(saved.answers);
  const answers = completeAnswers(draft);
  const plan = planner.planOf(answers);
  const begun = begunJob(saved);
  return {
    address: begun === null ? goOnAddress(saved.id, draft) : addressOf(saved.id, begun),
    isOnTheWay: answers !== null && plan === null && planner.failed.value === null,
    metres: plan === null ? null : radiatorM(plan),
    stop: plan?.warnings.find(({ severity }) => severity === 'stop'),
    kind: kindOf(saved.answers, plan, say),
    name: planName(saved, say, plan),
    state: stateOf(saved, draft, plan, say),
    drawn: { ...draft, fedAt: feedPointOf(draft) },
    begun: begun !== null,
  };
}

function GoOn({ plan }: { plan: SavedPlan }) {
  const { address, metres, isOnTheWay, stop, kind, name, state, drawn, begun } = usePlanFacts(plan);
  return (
    <section>
      <a class="go-on" href={address}>
        <div class="plate">
          <AntennaSketch {...drawn} />
        </div>
        <div class="words">
          <div class="go-on-text">
            <h2>{name}</h2>
            <p class="what">
              {plan.answers.name !== undefined && <span>{kind}</span>}
              <Wire metres={metres} isOnTheWay={isOnTheWay} />
            </p>
            <p class="step">
              {begun && <Pin />}
              {stop === undefined ? state : <Stopped ways={stop.waysOut.length} />}
            </p>
          </div>
          <span class="arrow">
            <Icon name="next" />
          </span>
        </div>
      </a>
      <Manage plan={plan} name={name} />
    </section>
  );
}

function PlanRow({ plan }: { plan: SavedPlan }) {
  const { address, metres, isOnTheWay, stop, kind, name, state, drawn } = usePlanFacts(plan);
  return (
    <a class="plan" href={address}>
      <span class="pic">
        <AntennaSketch {...drawn} />
      </span>
      <span class="txt">
        <b class="name">{name}</b>
        {plan.answers.name !== undefined && <span>{kind}</span>}
        <Wire metres={metres} isOnTheWay={isOnTheWay} />
        <span class="state">{stop === undefined ? state : <Stopped ways={stop.waysOut.length} />}</span>
      </span>
    </a>
  );
}

/** Has its line before its number is there: rows keep their height. */
function Wire({ metres, isOnTheWay }: { metres: number | null; isOnTheWay: boolean }) {
  const say = useSay();
  if (metres === null) return isOnTheWay ? <span>{say(ask.works)}</span> : null;
  return (
    <span>
      <Length metres={metres} />
    </span>
  );
}

function Stopped({ ways }: { ways: number }) {
  const say = useSay();
  return (
    <span>
      <b class="chip">{say(words.stop)}</b> <span class="nb">{say(words.waysOut, { count: ways })}</span>
    </span>
  );
}
