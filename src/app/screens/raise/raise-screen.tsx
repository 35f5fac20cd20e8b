/** The job step by step, on the rope: cautions first, ticked line by line; then what to do; then the next step. Progress is kept. */
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { boxTest } from '../../../words/en/box-test-screen';
import { jobs } from '../../../words/en/job-screens';
import { raiseScreen } from '../../../words/en/raise-screen';
import { stepNames } from '../../../words/en/steps';
import { windScreen } from '../../../words/en/wind-screen';
import { LocalCodes } from '../../jobs/gate';
import { gatesOf } from '../../jobs/gates';
import { GatesFirst } from '../../jobs/gates-first';
import { HoldButton, Holding, useHeld } from '../../jobs/hold';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { PaperLinks } from '../../jobs/paper-links';
import { useWakeLock } from '../../jobs/wake-lock';
import { woundDevices } from '../../jobs/windings';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { go } from '../../router';
import { type JobRoute, to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { SiteFigure } from '../plan/site-figure';
import { sitePictureOf } from '../plan/site-picture';
import { FallFigure } from './fall-figure';
import { Packing } from './packing';
import { Rope } from './rope';
import { StepText } from './step-text';
import '../../jobs/jobs.css';
import '../../jobs/part-list.css';
import '../plan/plan.css';
import './raise.css';

const JOB = 'raise';
const DONE = 'done';

/** Cautions that are about overhead lines. */
const besideLines: readonly string[] = ['power-lines', 'fall-path'];

type Step = Plan['steps'][number];
export const doneKey = (step: Step): string => `${JOB}:${step.id}`;

export function RaiseScreen({ route }: { route: JobRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Raising open={open} at={route.rest[0] ?? ''} />}</WithPlan>;
}

/** The step of the address; else where the job was left; else the first. -1: all are done. */
function stepAt({ steps }: Plan, saved: SavedPlan, at: string): number {
  const asked = at === '' ? (saved.progress[JOB]?.step ?? '') : at;
  if (asked === DONE) return -1;
  return Math.max(
    steps.findIndex(({ id }) => id === asked),
    0,
  );
}

function Raising({ open, at }: { readonly open: OpenPlan; readonly at: string }) {
  const say = useSay();
  const [held, hold] = useHeld();
  useWakeLock();
  const { plan, saved, name } = open;
  const index = stepAt(plan, saved, at);
  const step = plan.steps[index];
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }}>
        {step !== undefined && <HoldButton onHold={() => hold(true)} />}
      </Top>
      {step === undefined ? (
        <NoStep plan={plan} saved={saved} />
      ) : (
        <GatesFirst
          key={step.id}
          gates={gatesOf(plan, step)}
          saved={saved}
          title={say(raiseScreen.before, { step: stepNames[step.id] ?? '' })}
          backHref={backFrom(plan, saved, index)}
          beside={({ id }) => besideLines.includes(id) && <FallFigure plan={plan} answers={open.answers} />}
        >
          {() => <OneStep open={open} step={step} index={index} />}
        </GatesFirst>
      )}
      {held && step !== undefined && (
        <Holding onLetGo={() => hold(false)}>
          <h2>{stepNames[step.id]}</h2>
          <StepText text={step.text} kind="held-text" />
        </Holding>
      )}
    </>
  );
}

function backFrom({ steps }: Plan, saved: SavedPlan, index: number): string {
  const before = steps[index - 1];
  return before === undefined ? to.plan(saved.id) : to.job(saved.id, 'raise', before.id);
}

function OneStep({ open, step, index }: { readonly open: OpenPlan; readonly step: Step; readonly index: number }) {
  const say = useSay();
  const { library } = useStores();
  const { plan, saved } = open;
  const next = plan.steps[index + 1]?.id ?? DONE;
  const done = (): void => {
    library.edit(saved.id, { kind: 'tick', key: doneKey(step), on: true }, { kind: 'progress', job: JOB, step: next });
    go(to.job(saved.id, 'raise', next));
  };
  return (
    <>
      <main id="main" class="two">
        <div class="stack">
          <div class="head step-head">
            <h1 tabIndex={-1}>{stepNames[step.id]}</h1>
            <p>{say(raiseScreen.step, { now: index + 1, count: plan.steps.length })}</p>
          </div>
          <SaveTrouble />
          <StepText text={step.text} kind="do" />
          <StepHelp open={open} step={step} />
          {step.cautions.length > 0 && <LocalCodes />}
        </div>
        <div class="stack">
          <Rope plan={plan} saved={saved} now={index} />
          <PaperLinks planId={saved.id} />
        </div>
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <a class="btn tall" href={backFrom(plan, saved, index)}>
          <Icon name="back" />
          {say(jobs.back)}
        </a>
        <button type="button" class="btn go" onClick={done}>
          <Icon name="tick" />
          {say(next === DONE ? raiseScreen.last : raiseScreen.next)}
        </button>
      </section>
    </>
  );
}

/** What this step needs from elsewhere: the packing list, the cut list, the drawing, Trim. */
function StepHelp({ open: { plan, saved, answers }, step }: { readonly open: OpenPlan; readonly step: Step }) {
  const say = useSay();
  const picture = ['walk-site', 'lay-out', 'raise', 'connect'].includes(step.id) ? sitePictureOf(answers, plan) : null;
  return (
    <>
      {(step.id === 'pack' || step.id === 'leave') && <Packing plan={plan} saved={saved} list={step.id} />}
      {step.id === 'cut-wire' && (
        <a class="btn tall" href={to.job(saved.id, 'cut')}>
          {say(raiseScreen.toCut)}
        </a>
      )}
      {step.id === 'make-boxes' && (
        <>
          <a class="btn tall" href={to.plan(saved.id)}>
            {say(raiseScreen.toPlan)}
          </a>
          {woundDevices(plan).map(({ id, item }) => (
            <a key={id} class="btn tall" href={to.wind(saved.id, id)}>
              {say(windScreen.openFor, { name: say(raiseScreen.deviceAt, { name: item.name, at: item.at }) })}
            </a>
          ))}
          {woundDevices(plan)
            .filter(({ item }) => item.figures?.test != null)
            .map(({ id, item }) => (
              <a key={id} class="btn tall" href={to.boxTest(saved.id, id)}>
                {say(boxTest.openFor, { name: say(raiseScreen.deviceAt, { name: item.name, at: item.at }) })}
              </a>
            ))}
        </>
      )}
      {(step.id === 'measure' || step.id === 'trim') && (
        <a class="btn tall" href={to.job(saved.id, 'trim')}>
          {say(raiseScreen.toTrim)}
        </a>
      )}
      {picture !== null && <SiteFigure picture={picture} plan={plan} />}
    </>
  );
}

/** Another outing: steps and bag as they were before the first. What is bought and what was measured stays. */
const fromTheStart = ({ ticks }: SavedPlan, first: Step) => [
  { kind: 'progress', job: JOB, step: first.id } as const,
  ...Object.keys(ticks)
    .filter((key) => ticks[key]?.on === true && /^(raise|pack|leave):/.test(key))
    .map((key) => ({ kind: 'tick', key, on: false }) as const),
];

function NoStep({ plan, saved }: { readonly plan: Plan; readonly saved: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  const [first] = plan.steps;
  const isDown = plan.steps.at(-1)?.id === 'leave';
  if (first === undefined) {
    return (
      <main id="main">
        <h1 tabIndex={-1}>{say(raiseScreen.none)}</h1>
      </main>
    );
  }
  return (
    <>
      <main id="main">
        <h1 tabIndex={-1}>{say(isDown ? raiseScreen.allDown : raiseScreen.allDone)}</h1>
        <p>{say(isDown ? raiseScreen.allDownWhy : raiseScreen.allDoneWhy)}</p>
        <Rope plan={plan} saved={saved} now={plan.steps.length} />
        <PaperLinks planId={saved.id} />
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <a
          class="btn tall"
          href={to.job(saved.id, 'raise', first.id)}
          onClick={() => library.edit(saved.id, ...fromTheStart(saved, first))}
        >
          {say(raiseScreen.again)}
        </a>
        <a class="btn go" href={to.job(saved.id, 'trim')}>
          {say(raiseScreen.toTrim)}
        </a>
      </section>
    </>
  );
}
