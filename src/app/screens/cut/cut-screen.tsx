/** One number on the screen, to be read across two metres. Next by the wide button, Space, Enter, arrows or a remote's Page keys. */
import { useCallback, useState } from 'preact/hooks';
import { spokenLength } from '../../../base/format-length';
import type { SavedPlan } from '../../../design/saved-plan';
import { Piece, Progress } from '../../../drawing/pieces';
import type { Plan } from '../../../plan/plan-schema';
import { capital } from '../../../words/capital';
import { cutScreen } from '../../../words/en/cut-screen';
import { drawings } from '../../../words/en/drawings';
import { jobs, spokenLengthText } from '../../../words/en/job-screens';
import { language } from '../../../words/en/language';
import { CallOut } from '../../jobs/call-out';
import { gatesOf } from '../../jobs/gates';
import { GatesFirst } from '../../jobs/gates-first';
import { HoldButton, Holding, useHeld } from '../../jobs/hold';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { canSpeak, speak } from '../../jobs/speech';
import { useStepKeys } from '../../jobs/step-keys';
import { useWakeLock } from '../../jobs/wake-lock';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { go } from '../../router';
import { type JobRoute, to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import '../../jobs/jobs.css';
import './cut.css';

const JOB = 'cut';
const DONE = 'done';

export function CutScreen({ route }: { route: JobRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Cutting {...open} at={route.rest[0] ?? ''} />}</WithPlan>;
}

type Cut = Plan['cuts'][number];

/** The piece of the address; else where the job was left; else the first. Null: all are done. */
function pieceAt({ cuts }: Plan, saved: SavedPlan, at: string): number | null {
  const asked = at === '' ? (saved.progress[JOB]?.step ?? '') : at;
  if (asked === DONE) return null;
  return Math.max(
    cuts.findIndex(({ piece }) => piece === asked),
    0,
  );
}

function Cutting({ plan, saved, name, at }: OpenPlan & { readonly at: string }) {
  const say = useSay();
  const [held, hold] = useHeld();
  const index = pieceAt(plan, saved, at);
  const cut = index === null ? undefined : plan.cuts[index];
  const step = plan.steps.find(({ id }) => id === 'cut-wire');
  const gates = step === undefined ? [] : gatesOf(plan, step);
  const up = { href: to.plan(saved.id), words: name };
  return (
    <>
      <Top up={up}>{cut !== undefined && <HoldButton onHold={() => hold(true)} />}</Top>
      <GatesFirst gates={gates} saved={saved} title={say(cutScreen.cautionsFirst)} backHref={to.plan(saved.id)}>
        {() => {
          if (plan.cuts.length === 0) return <Nothing />;
          if (cut === undefined || index === null) return <AllCut saved={saved} plan={plan} />;
          return <OnePiece plan={plan} saved={saved} cut={cut} index={index} key={cut.piece} />;
        }}
      </GatesFirst>
      {held && cut !== undefined && (
        <Holding onLetGo={() => hold(false)}>
          <h2>{say(cutScreen.heading, { count: cut.count, title: capital(cut.name) })}</h2>
          <CallOut metres={cut.cutM} />
        </Holding>
      )}
    </>
  );
}

function Nothing() {
  const say = useSay();
  return (
    <main id="main">
      <h1 tabIndex={-1}>{say(cutScreen.title)}</h1>
      <p>{say(cutScreen.none)}</p>
    </main>
  );
}

interface PieceProps {
  readonly plan: Plan;
  readonly saved: SavedPlan;
  readonly cut: Cut;
  readonly index: number;
}

function OnePiece({ plan, saved, cut, index }: PieceProps) {
  const say = useSay();
  const { library } = useStores();
  useWakeLock();
  const count = plan.cuts.length;
  const next = plan.cuts[index + 1]?.piece ?? DONE;
  const before = plan.cuts[index - 1]?.piece;
  const backTo = before === undefined ? to.plan(saved.id) : to.job(saved.id, 'cut', before);
  const goTo = useCallback(
    (piece: string, address: string): void => {
      library.edit(saved.id, { kind: 'progress', job: JOB, step: piece });
      go(address);
    },
    [library, saved.id],
  );
  const onNext = useCallback(() => goTo(next, to.job(saved.id, 'cut', next)), [goTo, next, saved.id]);
  const onBack = useCallback(() => {
    if (before === undefined) go(backTo);
    else goTo(before, backTo);
  }, [goTo, before, backTo]);
  useStepKeys(onNext, onBack);
  return (
    <>
      <main id="main" class="cutting">
        <SaveTrouble />
        <div class="in-hand">
          <h1 tabIndex={-1}>
            {say(cutScreen.heading, { count: cut.count, title: capital(cut.name) })}{' '}
            <span>{say(cutScreen.piece, { now: index + 1, count })}</span>
          </h1>
          <Progress count={count} now={index} label={say(drawings.progress, { now: index + 1, count, done: index })} />
        </div>
        <div class="spoken" aria-live="polite">
          <CallOut metres={cut.cutM} />
          <SayIt metres={cut.cutM} />
        </div>
        {cut.marksM.length > 0 && <PieceDrawing cut={cut} />}
        <Facts cut={cut} />
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <button type="button" class="btn tall" onClick={onBack}>
          <Icon name="back" />
          {say(jobs.back)}
        </button>
        <button type="button" class="btn go" onClick={onNext}>
          <Icon name="tick" />
          {say(next === DONE ? cutScreen.cutDone : cutScreen.cutNext)}
        </button>
      </section>
    </>
  );
}

function SayIt({ metres }: { readonly metres: number }) {
  const say = useSay();
  const units = useStores().settings.units.value;
  const [silent, setSilent] = useState(false);
  if (!canSpeak()) return null;
  const text = spokenLengthText(spokenLength(metres), units);
  return (
    <>
      <button type="button" class="btn say" onClick={() => setSilent(!speak(text, language.tag))}>
        <svg viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2.5">
          <path d="M4 9v6h4l5 5V4L8 9zM17 8c2 2 2 6 0 8" />
        </svg>
        {say(cutScreen.sayIt)}
      </button>
      {silent && <p role="status">{say(cutScreen.noVoice, { text })}</p>}
    </>
  );
}

/** Ropes need no mark and no exactness but enough. */
const isRope = ({ piece }: Cut): boolean => ['halyard', 'tie', 'guy', 'throw-line', 'cord'].includes(piece);

function PieceDrawing({ cut }: { readonly cut: Cut }) {
  const say = useSay();
  const marks = cut.marksM.map((mark) => say.format.length(mark)).join(', ');
  return (
    <Piece
      lengthM={cut.cutM}
      marksM={cut.marksM}
      rope={isRope(cut)}
      words={cut.marksM.map(() => say(cutScreen.mark))}
      label={cut.marksM.length === 0 ? say(drawings.pieceBare) : say(drawings.piece, { marks })}
    />
  );
}

function Facts({ cut }: { readonly cut: Cut }) {
  const say = useSay();
  const { finishedM, cutM, toleranceM, marksM } = cut;
  const spareM = cutM - finishedM;
  return (
    <dl class="facts">
      {cut.count > 1 && (
        <div>
          <dt>{say(cutScreen.howMany)}</dt>
          <dd>{say(cutScreen.many, { count: cut.count })}</dd>
        </div>
      )}
      <div>
        <dt>{say(cutScreen.offBy)}</dt>
        <dd>{isRope(cut) ? say(cutScreen.offLonger) : say(cutScreen.off, { toleranceM })}</dd>
      </div>
      <div>
        <dt>{say(cutScreen.target)}</dt>
        <dd>{spareM > 0.005 ? say(cutScreen.targetAndSpare, { finishedM, spareM }) : say(cutScreen.targetPlain)}</dd>
      </div>
      {marksM.length > 0 && (
        <div>
          <dt>{say(cutScreen.markAt)}</dt>
          <dd>{say(cutScreen.marks, { marks: marksM.map((mark) => say.format.length(mark)).join(', ') })}</dd>
        </div>
      )}
      <div>
        <dt>{say(cutScreen.note)}</dt>
        <dd class="plainly">{cut.note}</dd>
      </div>
      {!isRope(cut) && (
        <div>
          <dt>{say(cutScreen.stop)}</dt>
          <dd class="plainly">{cut.stopRule}</dd>
        </div>
      )}
    </dl>
  );
}

function AllCut({ plan, saved }: { readonly plan: Plan; readonly saved: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  const first = plan.cuts[0]?.piece ?? DONE;
  return (
    <>
      <main id="main">
        <h1 tabIndex={-1}>{say(cutScreen.allCut)}</h1>
        <Progress
          count={plan.cuts.length}
          now={plan.cuts.length}
          label={say(drawings.progress, { now: plan.cuts.length, count: plan.cuts.length, done: plan.cuts.length })}
        />
        <p>{say(cutScreen.allCutWhy)}</p>
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <a
          class="btn tall"
          href={to.job(saved.id, 'cut', first)}
          onClick={() => library.edit(saved.id, { kind: 'progress', job: JOB, step: first })}
        >
          {say(cutScreen.again)}
        </a>
        <a class="btn go" href={to.job(saved.id, 'raise')}>
          {say(cutScreen.toRaise)}
        </a>
      </section>
    </>
  );
}
