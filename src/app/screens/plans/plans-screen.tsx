/** All saved plans: the one last touched first and large, the others as rows, each with a small drawing. */
import { signal } from '@preact/signals';
import { completeAnswers } from '../../../advice/route';
import type { SavedPlan } from '../../../design/saved-plan';
import { radiatorM } from '../../../plan/plan-changes';
import { nameOf } from '../../../storage/export-file';
import { shell, plans as words } from '../../../words/en/screens';
import { fileName, saveFile } from '../../files';
import { Icon, Pin } from '../../parts/icon';
import { Length } from '../../parts/length';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { RadiatorSketch } from '../../pictures/radiators';
import { offlineReady } from '../../pwa';
import { to } from '../../routes';
import { useSay } from '../../say';
import { hasScreen } from '../../screens-later';
import { effectiveDraft } from '../../stores/effective-answers';
import { type Stores, useStores } from '../../stores/stores';
import { goOnAddress } from '../ask/asked';
import { saveAll } from './export-all';
import { ManagePlan } from './manage-plan';
import { kindOf, latestJob, planName, stateOf } from './plan-line';
import './plans.css';

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
                    <ManagePlan plan={plan} onDeleted={deleted} />
                  </li>
                ))}
              </ul>
            </section>
          )}
          <SetAside stores={stores} />
          {list.length > 0 && (
            <section aria-labelledby="files">
              <h2 id="files">{say(words.filesHead)}</h2>
              <p class="small">{say(words.filesWhy)}</p>
              <div class="ways">
                <button type="button" class="btn tall" onClick={() => saveAll(stores)}>
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

  function deleted(id: string): void {
    justDeleted.value = id;
  }
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
      <RadiatorSketch radiator="inverted-v" />
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

/** What the list tells of one plan. */
function usePlanFacts(saved: SavedPlan) {
  const say = useSay();
  const { planner, settings, parts } = useStores();
  const draft = effectiveDraft(saved.answers, settings.settings.value, parts.parts.value);
  const plan = planner.planOf(completeAnswers(draft));
  const job = latestJob(saved);
  const address = job !== null && hasScreen(job) ? to.job(saved.id, job) : goOnAddress(saved.id, draft);
  return {
    address,
    metres: plan === null ? null : radiatorM(plan),
    stop: plan?.warnings.find(({ severity }) => severity === 'stop'),
    kind: kindOf(saved.answers, plan, say),
    name: planName(saved, say, plan),
    state: stateOf(saved, draft, say),
    radiator: saved.answers.radiator ?? 'other',
    begun: job !== null,
  };
}

function GoOn({ plan }: { plan: SavedPlan }) {
  const { address, metres, stop, kind, name, state, radiator, begun } = usePlanFacts(plan);
  return (
    <section>
      <a class="go-on" href={address}>
        <div class="plate">
          <RadiatorSketch radiator={radiator} />
        </div>
        <div class="words">
          <h2>{name}</h2>
          <p class="what">
            {plan.answers.name !== undefined && <span>{kind}</span>}
            {metres !== null && (
              <span class="lenrow">
                <Length metres={metres} />
              </span>
            )}
          </p>
          <p class="step">
            {begun && <Pin />}
            {stop === undefined ? state : <Stopped ways={stop.waysOut.length} />}
          </p>
          <span class="arrow">
            <Icon name="next" />
          </span>
        </div>
      </a>
      <ManagePlan
        plan={plan}
        onDeleted={(id) => {
          justDeleted.value = id;
        }}
      />
    </section>
  );
}

function PlanRow({ plan }: { plan: SavedPlan }) {
  const { address, metres, stop, kind, name, state, radiator } = usePlanFacts(plan);
  return (
    <a class="plan" href={address}>
      <span class="pic">
        <RadiatorSketch radiator={radiator} />
      </span>
      <span class="txt">
        <b class="name">{name}</b>
        {plan.answers.name !== undefined && <span>{kind}</span>}
        {metres !== null && (
          <span class="lenrow">
            <Length metres={metres} />
          </span>
        )}
        <span class="state">{stop === undefined ? state : <Stopped ways={stop.waysOut.length} />}</span>
      </span>
    </a>
  );
}

function Stopped({ ways }: { ways: number }) {
  const say = useSay();
  return (
    <span>
      <b class="chip">{say(words.stop)}</b> {say(words.waysOut, { count: ways })}
    </span>
  );
}

/** Records that this version cannot read: kept, named, and to be taken out as they are. */
function SetAside({ stores }: { stores: Stores }) {
  const say = useSay();
  const list = stores.library.unreadable.value;
  if (list.length === 0) return null;
  return (
    <section aria-labelledby="aside">
      <h2 id="aside">{say(words.unreadableHead)}</h2>
      <ul class="rows setaside">
        {list.map(([id, entry]) => {
          if (entry.kind === 'good') return null;
          const name = nameOf(entry.raw) ?? say(words.unnamed);
          return (
            <li key={id}>
              <p>{say(entry.kind === 'newer' ? words.newerPlan : words.brokenPlan, { name })}</p>
              <div class="ways">
                <button
                  type="button"
                  class="btn"
                  onClick={() => saveFile(fileName(Date.now()), JSON.stringify(entry.raw, null, 1))}
                >
                  {say(words.takeOut)}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
