/** Enter where the dip is; hear what to fold back or let out, what it does to the other bands, and when to stop. */
import { useState } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { jobs } from '../../../words/en/job-screens';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { useWakeLock } from '../../jobs/wake-lock';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { PhotoNotes } from '../../photos/photos';
import { type JobRoute, to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { DipField } from './dip-field';
import { LookUps } from './look-ups';
import { Result } from './result';
import { StopRule, TapeView, Trade } from './trim-figures';
import { Log, TouchTest, WireInUse } from './trim-notes';
import { measuredOn, mhzText, wireInUseM } from './trim-state';
import { type TrimTarget, trimTargets } from './trim-targets';
import '../../jobs/jobs.css';
import './trim.css';

const JOB = 'trim';
const STOPPED = 'stopped';

export function TrimScreen({ route }: { route: JobRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Trimming open={open} rest={route.rest} />}</WithPlan>;
}

function Trimming({ open, rest }: { readonly open: OpenPlan; readonly rest: readonly string[] }) {
  const say = useSay();
  useWakeLock();
  const { saved, answers, plan, name } = open;
  const targets = trimTargets(answers, plan);
  const [first] = targets;
  const asked = rest[0] === 'no-dip' ? rest[1] : rest[0];
  const target = targets.find(({ band }) => band === asked) ?? first;
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }} />
      {target === undefined ? (
        <main id="main">
          <h1 tabIndex={-1}>{say(trimScreen.nothing)}</h1>
          <p>{say(trimScreen.nothingWhy)}</p>
          <TouchTest saved={saved} plan={plan} />
          <LookUps answers={answers} plan={plan} />
          <PhotoNotes planId={saved.id} />
        </main>
      ) : rest[0] === 'no-dip' ? (
        <NoDip saved={saved} plan={plan} target={target} />
      ) : (
        <Measuring {...{ saved, answers, plan, target, targets }} key={target.band} />
      )}
    </>
  );
}

interface MeasuringProps {
  readonly saved: SavedPlan;
  readonly target: TrimTarget;
  readonly targets: readonly TrimTarget[];
}

interface WithPlanProps {
  readonly plan: Plan;
}

interface WithAnswersProps extends WithPlanProps {
  readonly answers: Answers;
}

function Measuring({ saved, answers, plan, target, targets }: MeasuringProps & WithAnswersProps) {
  const say = useSay();
  const stopped = saved.progress[JOB]?.step === STOPPED;
  const list = measuredOn(saved, target);
  const last = list.at(-1);
  const wireM = wireInUseM(saved, target, targets);
  const fresh = last !== undefined && Math.abs((last.wireM ?? wireM) - wireM) < 0.005;
  const [entering, setEntering] = useState(false);
  const shown = last !== undefined && fresh && !entering ? last : null;
  return (
    <>
      <main id="main" class="two trim">
        <div class="stack">
          <div class="dip">
            <h1 tabIndex={-1}>{say(stopped ? trimScreen.stopped : trimScreen.title)}</h1>
            <p class="small">{stopped ? say(trimScreen.stoppedWhy, { metres: wireM }) : say(trimScreen.meaning)}</p>
            <SaveTrouble />
            {targets.length > 1 && <Bands saved={saved} target={target} targets={targets} />}
            {shown !== null && (
              <div class="field">
                <b>
                  {mhzText(shown.dipMHz)} <span>{say(trimScreen.mhz)}</span>
                </b>
                {!stopped && (
                  <button type="button" class="btn" onClick={() => setEntering(true)}>
                    {say(trimScreen.another)}
                  </button>
                )}
              </div>
            )}
            {!stopped && shown === null && (
              <DipField saved={saved} target={target} targets={targets} onTaken={() => setEntering(false)} />
            )}
          </div>
          {last !== undefined && fresh && (
            <Result planId={saved.id} target={target} measurement={last} wireM={wireM} stopped={stopped} />
          )}
          <WireInUse saved={saved} target={target} wireM={wireM} />
          {last !== undefined && <TapeView target={target} list={list} />}
          <LookUps answers={answers} plan={plan} />
        </div>
        <div class="stack">
          <Trade saved={saved} targets={targets} target={target} />
          <StopRule target={target} />
          <TouchTest saved={saved} plan={plan} />
          <Log saved={saved} />
          <PhotoNotes planId={saved.id} />
        </div>
      </main>
      <Actions saved={saved} stopped={stopped} />
    </>
  );
}

function Bands({ saved, target, targets }: MeasuringProps) {
  const say = useSay();
  return (
    <nav class="segs wrap" aria-label={say(trimScreen.band)}>
      {targets.map((each) => {
        const last = measuredOn(saved, each).at(-1);
        return (
          <a
            key={each.band}
            class={each === target ? 'seg on' : 'seg'}
            href={to.job(saved.id, 'trim', each.band)}
            aria-current={each === target ? 'true' : undefined}
          >
            <b>{bandName(each.band)}</b>
            <span>{last === undefined ? say(trimScreen.notYet) : mhzText(last.dipMHz)}</span>
          </a>
        );
      })}
    </nav>
  );
}

function Actions({ saved, stopped }: { readonly saved: SavedPlan; readonly stopped: boolean }) {
  const say = useSay();
  const { library } = useStores();
  const set = (step: string): void => library.edit(saved.id, { kind: 'progress', job: JOB, step });
  return (
    <section class="act" aria-label={say(jobs.next)}>
      {stopped ? (
        <>
          <button type="button" class="btn tall" onClick={() => set('measure')}>
            {say(trimScreen.goOn)}
          </button>
          <a class="btn go" href={to.job(saved.id, 'raise')}>
            {say(jobs.next)}
          </a>
        </>
      ) : (
        <>
          <a class="btn tall half" href={to.job(saved.id, 'trim', 'no-dip')}>
            {say(trimScreen.noDip)}
          </a>
          <button type="button" class="btn tall half" onClick={() => set(STOPPED)}>
            {say(trimScreen.stopHere)}
          </button>
        </>
      )}
    </section>
  );
}

function NoDip({ saved, plan, target }: Omit<MeasuringProps, 'targets'> & WithPlanProps) {
  const say = useSay();
  return (
    <>
      <main id="main">
        <section class="stop">
          <h1 tabIndex={-1}>{say(trimScreen.noDipHead)}</h1>
          <p>{say(trimScreen.noDipWhy)}</p>
          <ol class="checks">
            {say(trimScreen.noDipChecks)
              .split('|')
              .map((check) => (
                <li key={check}>{check}</li>
              ))}
          </ol>
        </section>
        <TouchTest saved={saved} plan={plan} />
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <a class="btn go" href={to.job(saved.id, 'trim', target.band)}>
          <Icon name="back" />
          {say(trimScreen.noDipBack)}
        </a>
      </section>
    </>
  );
}
