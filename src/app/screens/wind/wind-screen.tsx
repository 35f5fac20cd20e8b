/** Winding a ring: one huge count, and everything below it is one button. Kept with the plan at each turn, so that no call loses it. */
import { useCallback, useRef, useState } from 'preact/hooks';
import type { SavedPlan } from '../../../design/saved-plan';
import { boxTest } from '../../../words/en/box-test-screen';
import { jobs } from '../../../words/en/job-screens';
import { language } from '../../../words/en/language';
import { windScreen } from '../../../words/en/wind-screen';
import { useFirmTap } from '../../jobs/firm-tap';
import { HoldButton, Holding, useHeld } from '../../jobs/hold';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { canSpeak, speak } from '../../jobs/speech';
import { useStepKeys } from '../../jobs/step-keys';
import { useWakeLock } from '../../jobs/wake-lock';
import {
  begunWinding,
  countOf,
  momentOf,
  type TurnMoment,
  type WindingCount,
  type WoundDevice,
  windingJob,
  woundDevices,
} from '../../jobs/windings';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type BenchRoute, to } from '../../routes';
import { type Say, useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { Count, TurnsDrawing } from './counted';
import { Recount } from './recount';
import { WhichWinding } from './which-winding';
import '../../jobs/jobs.css';
import './wind.css';

export function WindScreen({ route }: { route: BenchRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Winding open={open} device={route.device} />}</WithPlan>;
}

function Winding({ open: { plan, saved, name, study }, device }: { readonly open: OpenPlan; readonly device: string }) {
  const say = useSay();
  const [held, hold] = useHeld();
  const lastBegun = useRef<WoundDevice | null>(null);
  const devices = woundDevices(plan);
  const index = Math.max(
    devices.findIndex(({ id }) => id === device),
    0,
  );
  const wound = devices[index];
  const up = { href: to.plan(saved.id), words: name };
  if (wound === undefined) {
    return (
      <>
        <Top up={up} />
        <main id="main">
          <h1 tabIndex={-1}>{say(windScreen.nothing)}</h1>
          <p>{say(windScreen.nothingWhy)}</p>
        </main>
      </>
    );
  }
  const isSettled = study.kind !== 'working' && study.kind !== 'idle';
  const begun = begunWinding(saved, wound);
  // What was begun goes on, counted anew too, unless the plan, all worked out, asks for other turns: numbers that still move are not wound by.
  if (begun !== null) lastBegun.current = { ...wound, windings: begun.windings };
  const begunHere = lastBegun.current?.id === wound.id ? lastBegun.current : null;
  const inHand = isSettled || begunHere === null ? wound : begunHere;
  const count = countIn(saved, inHand);
  const changed = isSettled && begun?.isOther === true && count.total === 0 ? begun.count : null;
  return (
    <>
      <Top up={up}>
        <HoldButton onHold={() => hold(true)} />
      </Top>
      <Counting
        key={wound.id}
        {...{ saved, count, changed }}
        wound={inHand}
        next={devices[index + 1]}
        canCount={isSettled || begunHere !== null}
      />
      {held && (
        <Holding onLetGo={() => hold(false)}>
          <Count wound={inHand} count={count} />
        </Holding>
      )}
    </>
  );
}

const countIn = (saved: SavedPlan | undefined, wound: WoundDevice): WindingCount =>
  countOf(wound.windings, Number(saved?.progress[windingJob(wound)]?.step ?? 0));

interface CountingProps {
  readonly saved: SavedPlan;
  readonly wound: WoundDevice;
  readonly count: WindingCount;
  readonly next: WoundDevice | undefined;
  /** False while the turns may still change and none is on. */
  readonly canCount: boolean;
  /** How far the count for other turns had come. */
  readonly changed: WindingCount | null;
}

function Counting({ saved, wound, count, next, canCount, changed }: CountingProps) {
  const say = useSay();
  const { library } = useStores();
  const [aloud, setAloud] = useState(false);
  const [silent, setSilent] = useState(false);
  useWakeLock();
  const { windings } = wound;
  const [before, setBefore] = useState(0);
  const put = useCallback(
    (total: number): void => library.edit(saved.id, { kind: 'progress', job: windingJob(wound), step: String(total) }),
    [library, saved.id, wound],
  );
  /** By what is kept and not by what is drawn: two quick taps are two turns. */
  const move = useCallback(
    (by: 1 | -1): void => {
      if (!canCount) return;
      const kept = countIn(library.planOf(saved.id), wound);
      const after = countOf(windings, kept.total + by);
      if (after.total === kept.total) return;
      put(after.total);
      if (aloud) setSilent(!speak(saidText(wound, after, say), language.tag));
    },
    [library, saved.id, wound, windings, canCount, put, aloud, say],
  );
  const onTurn = useCallback(() => move(1), [move]);
  const onUndo = useCallback(() => (count.total === 0 ? put(before) : move(-1)), [move, put, count.total, before]);
  const onTap = useFirmTap(onTurn);
  useStepKeys(onTurn, onUndo);
  const canUndo = count.total > 0 || before > 0;
  return (
    <>
      <main id="main" class="winding">
        <SaveTrouble />
        <WhichWinding wound={wound} count={count} />
        {changed !== null && <p class="stop">{say(windScreen.changed, { done: changed.total, of: changed.of })}</p>}
        <div class="counted">
          <div aria-live="polite">
            <Count wound={wound} count={count} isWaiting={!canCount} />
          </div>
          <div class="ring">
            <TurnsDrawing wound={wound} count={count} />
          </div>
        </div>
        {silent && <p role="status">{say(windScreen.noVoice)}</p>}
        {canCount && <Recount winding={count.winding} windings={windings} onCount={put} />}
      </main>
      <section class="act turns" aria-label={say(jobs.next)}>
        <button type="button" class={canUndo ? 'btn tall' : 'btn tall wait'} onClick={onUndo}>
          {say(undoWords(count.total, before), { turns: before })}
        </button>
        {canSpeak() && count.total < count.of && (
          <button type="button" class="btn tall" aria-pressed={aloud} onClick={() => setAloud(!aloud)}>
            {say(windScreen.sayEach)}
          </button>
        )}
        {count.total < count.of ? (
          <button type="button" class={canCount ? 'btn go turn' : 'btn go turn wait'} onClick={onTap}>
            {say(canCount ? windScreen.countIt : windScreen.unsettled)}
          </button>
        ) : (
          <Done
            {...{ saved, wound, next }}
            onAgain={() => {
              setBefore(count.total);
              put(0);
            }}
          />
        )}
      </section>
    </>
  );
}

/** After starting anew the way back leads to the count before. */
const undoWords = (total: number, before: number) =>
  total > 0 ? windScreen.undo : before > 0 ? windScreen.backTo : windScreen.nothingOn;

interface DoneProps extends Pick<CountingProps, 'saved' | 'wound' | 'next'> {
  readonly onAgain: () => void;
}

function Done({ saved, wound, next, onAgain }: DoneProps) {
  const say = useSay();
  return (
    <>
      <button type="button" class="btn tall" onClick={onAgain}>
        {say(windScreen.again)}
      </button>
      {wound.item.figures?.test != null && (
        <a class="btn tall" href={to.boxTest(saved.id, wound.id)}>
          {say(boxTest.open)}
        </a>
      )}
      {next === undefined ? (
        <a class="btn go" href={to.plan(saved.id)}>
          {say(windScreen.toPlan)}
        </a>
      ) : (
        <a class="btn go" href={to.wind(saved.id, next.id)}>
          {say(windScreen.next, { name: next.item.name })}
        </a>
      )}
    </>
  );
}

const said: Partial<Record<TurnMoment, (typeof windScreen)['saidTap']>> = {
  tap: windScreen.saidTap,
  cross: windScreen.saidCross,
  'winding-done': windScreen.saidWindingDone,
  'all-done': windScreen.saidAllDone,
};

/** A bare number on the way; more where something is to be done. */
function saidText({ windings }: WoundDevice, count: WindingCount, say: Say): string {
  const words = said[momentOf(windings, count)];
  return words === undefined ? String(count.done) : say(words, { done: count.done });
}
