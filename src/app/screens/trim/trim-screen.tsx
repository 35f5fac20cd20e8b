/** Enter where the dip is; hear what to fold back or let out, what it does to the other bands, and when to stop. */
import { useState } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { jobs } from '../../../words/en/job-screens';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import type { Message } from '../../../words/message';
import { KeyLength } from '../../jobs/key-length';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { useWakeLock } from '../../jobs/wake-lock';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { PhotoNotes } from '../../photos/photos';
import { type JobRoute, to } from '../../routes';
import { type Say, useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { DipField } from './dip-field';
import { LinkSetting } from './link-setting';
import { Log } from './log';
import { LookUps, ToLookUps } from './look-ups';
import { Result } from './result';
import { Trade } from './trade';
import { StopRule, TapeView } from './trim-figures';
import { TouchTest, WireInUse } from './trim-notes';
import { isSameWire, measuredOn, mhzText, nextToTrim, verdictOn, wireInUseM } from './trim-state';
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
  const { saved, answers, plan, name, study } = open;
  const isUnderway = study.kind === 'working';
  const targets = trimTargets(answers, plan);
  const [first] = targets;
  const asked = rest[0] === 'no-dip' ? rest[1] : rest[0];
  const target = targets.find(({ band }) => band === asked) ?? first;
  const TargetScreen = saved.progress[JOB]?.step === STOPPED ? Stopped : Measuring;
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
        <TargetScreen {...{ saved, answers, plan, target, targets, isUnderway }} key={target.band} />
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

interface OpenProps extends MeasuringProps, WithPlanProps {
  readonly answers: Answers;
  /** Aims and lengths may still move. */
  readonly isUnderway: boolean;
}

function Measuring({ saved, answers, plan, target, targets, isUnderway }: OpenProps) {
  const say = useSay();
  const list = measuredOn(saved, target);
  const last = list.at(-1);
  const wireM = wireInUseM(saved, target, targets);
  const [entering, setEntering] = useState(false);
  const isFresh = isSameWire(last?.wireM ?? wireM, wireM);
  const shown = last !== undefined && isFresh && !entering ? last : null;
  const isGood = shown !== null && verdictOn(target, shown) === 'stop';
  const next = isGood ? nextToTrim(saved, target, targets) : null;
  return (
    <>
      <main id="main" class="two trim">
        <div class="stack">
          <div class="dip">
            <div class="trim-head">
              <h1 tabIndex={-1}>{say(trimScreen.title)}</h1>
              <ToLookUps />
            </div>
            {last === undefined && <p class="small">{say(trimScreen.meaning)}</p>}
            <SaveTrouble />
            {targets.length > 1 && <Bands saved={saved} target={target} targets={targets} />}
            <LinkSetting saved={saved} target={target} targets={targets} />
            {shown === null ? (
              <DipField saved={saved} target={target} targets={targets} onTaken={() => setEntering(false)} />
            ) : (
              <div class="field">
                <b>
                  {mhzText(shown.dipMHz)} <span>{say(trimScreen.mhz)}</span>
                </b>
                <button type="button" class="btn" onClick={() => setEntering(true)}>
                  {say(trimScreen.another)}
                </button>
              </div>
            )}
          </div>
          {shown !== null && <Result {...{ saved, target, targets, wireM, isUnderway }} measurement={shown} />}
          <WireInUse {...{ saved, target, targets, wireM }} isUnderway={isUnderway && last === undefined} />
          {last !== undefined && <TapeView {...{ target, list, isFresh, isUnderway }} />}
          <Trade
            saved={saved}
            targets={targets}
            target={target}
            isStepAsked={shown !== null && !isGood}
            isUnderway={isUnderway}
          />
        </div>
        <div class="stack">
          <StopRule target={target} targets={targets} isUnderway={isUnderway} />
          <TouchTest saved={saved} plan={plan} />
          <LookUps answers={answers} plan={plan} />
          <Log saved={saved} />
          <PhotoNotes planId={saved.id} />
        </div>
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        {next === null && (
          <a class="btn tall half" href={to.job(saved.id, 'trim', 'no-dip', target.band)}>
            {say(trimScreen.noDip)}
          </a>
        )}
        <StepButton
          saved={saved}
          step={STOPPED}
          words={trimScreen.stopHere}
          class={isGood && next === null ? 'btn go' : 'btn tall half'}
        />
        {next !== null && (
          <a class="btn go" href={to.job(saved.id, 'trim', next.band)}>
            {say(trimScreen.nextBand, { band: bandName(next.band) })}
          </a>
        )}
      </section>
    </>
  );
}

/** Trimming is over: what is kept and noted, and no more instructions. */
function Stopped({ saved, answers, plan, targets }: OpenProps) {
  const say = useSay();
  return (
    <>
      <main id="main" class="two trim">
        <div class="stack">
          <div class="trim-head">
            <h1 tabIndex={-1}>{say(trimScreen.stopped)}</h1>
            <ToLookUps />
          </div>
          <SaveTrouble />
          {wiresOf(targets).map((each) => (
            <section class="verdict-box" key={each.wire}>
              <h2 class="verb">{wireName(each, targets, say)}</h2>
              <KeyLength metres={wireInUseM(saved, each, targets)} what={wireName(each, targets, say)} />
            </section>
          ))}
          <p>{say(trimScreen.stoppedWhy)}</p>
          <Log saved={saved} />
        </div>
        <div class="stack">
          <TouchTest saved={saved} plan={plan} />
          <PhotoNotes planId={saved.id} />
          <LookUps answers={answers} plan={plan} />
        </div>
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <StepButton saved={saved} step="measure" words={trimScreen.goOn} class="btn tall" />
        <a class="btn go" href={to.job(saved.id, 'raise')}>
          {say(jobs.next)}
        </a>
      </section>
    </>
  );
}

/** One target for each wire there is. */
const wiresOf = (targets: readonly TrimTarget[]): readonly TrimTarget[] =>
  targets.filter(({ wire }, index) => targets.findIndex((each) => each.wire === wire) === index);

const wireName = ({ band }: TrimTarget, targets: readonly TrimTarget[], say: Say): string =>
  wiresOf(targets).length === 1 ? say(trimScreen.inUse) : say(trimScreen.inUseOn, { band: bandName(band) });

interface StepButtonProps {
  readonly saved: SavedPlan;
  readonly step: string;
  readonly words: Message;
  readonly class: string;
}

function StepButton({ saved, step, words, class: look }: StepButtonProps) {
  const say = useSay();
  const { library } = useStores();
  return (
    <button type="button" class={look} onClick={() => library.edit(saved.id, { kind: 'progress', job: JOB, step })}>
      {say(words)}
    </button>
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
