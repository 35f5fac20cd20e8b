/** Winding a ring: one huge count, and everything below it is one button. Kept with the plan at each turn, so that no call loses it. */
import { useCallback, useState } from 'preact/hooks';
import type { SavedPlan } from '../../../design/saved-plan';
import { Winding as WindingDrawing } from '../../../drawing/winding';
import { boxTest } from '../../../words/en/box-test-screen';
import { wireNames } from '../../../words/en/devices';
import { jobs } from '../../../words/en/job-screens';
import { language } from '../../../words/en/language';
import { windScreen } from '../../../words/en/wind-screen';
import { HoldButton, Holding } from '../../jobs/hold';
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
import '../../jobs/jobs.css';
import './wind.css';

export function WindScreen({ route }: { route: BenchRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Winding open={open} device={route.device} />}</WithPlan>;
}

function Winding({ open: { plan, saved, name, study }, device }: { readonly open: OpenPlan; readonly device: string }) {
  const say = useSay();
  const [held, setHeld] = useState(false);
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
  // What was begun goes on, unless the plan, all worked out, asks for other turns: numbers that still move are not wound by.
  const inHand = isSettled || begun === null ? wound : { ...wound, windings: begun.windings };
  const count = countIn(saved, inHand);
  const changed = isSettled && begun?.isOther === true && count.total === 0 ? begun.count : null;
  return (
    <>
      <Top up={up}>
        <HoldButton onHold={() => setHeld(true)} />
      </Top>
      <Counting
        key={wound.id}
        {...{ saved, count, changed }}
        wound={inHand}
        next={devices[index + 1]}
        canCount={isSettled || begun !== null}
      />
      {held && (
        <Holding onLetGo={() => setHeld(false)}>
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
  const { item, windings } = wound;
  /** By what is kept and not by what is drawn: two quick taps are two turns. */
  const move = useCallback(
    (by: 1 | -1): void => {
      if (!canCount) return;
      const before = countIn(library.planOf(saved.id), wound);
      const after = countOf(windings, before.total + by);
      if (after.total === before.total) return;
      library.edit(saved.id, { kind: 'progress', job: windingJob(wound), step: String(after.total) });
      if (aloud) setSilent(!speak(saidText(wound, after, say), language.tag));
    },
    [library, saved.id, wound, windings, canCount, aloud, say],
  );
  const onTurn = useCallback(() => move(1), [move]);
  const onUndo = useCallback(() => move(-1), [move]);
  useStepKeys(onTurn, onUndo);
  const { strands } = windings[count.winding] ?? { strands: 1 };
  return (
    <>
      <main id="main" class="winding">
        <SaveTrouble />
        <div class="in-hand">
          <h1 tabIndex={-1}>
            {item.name.charAt(0).toUpperCase() + item.name.slice(1)}{' '}
            {windings.length > 1 && (
              <span>{say(windScreen.winding, { now: count.winding + 1, count: windings.length })}</span>
            )}
          </h1>
          {strands > 1 && <p class="many">{say(windScreen.sideBySide, { strands })}</p>}
        </div>
        {changed !== null && <p class="stop">{say(windScreen.changed, { done: changed.total, of: changed.of })}</p>}
        <div aria-live="polite">
          <Count wound={wound} count={count} isWaiting={!canCount} />
        </div>
        <TurnsDrawing wound={wound} count={count} />
        {silent && <p role="status">{say(windScreen.noVoice)}</p>}
      </main>
      <section class="act turns" aria-label={say(jobs.next)}>
        <button type="button" class={count.total === 0 ? 'btn tall wait' : 'btn tall'} onClick={onUndo}>
          {say(count.total === 0 ? windScreen.nothingOn : windScreen.undo)}
        </button>
        {canSpeak() && count.total < count.of && (
          <button type="button" class="btn tall" aria-pressed={aloud} onClick={() => setAloud(!aloud)}>
            {say(windScreen.sayEach)}
          </button>
        )}
        {count.total < count.of ? (
          <button type="button" class={canCount ? 'btn go turn' : 'btn go turn wait'} onClick={onTurn}>
            {say(canCount ? windScreen.countIt : windScreen.unsettled)}
          </button>
        ) : (
          <Done saved={saved} wound={wound} next={next} />
        )}
      </section>
    </>
  );
}

function Done({ saved, wound, next }: Pick<CountingProps, 'saved' | 'wound' | 'next'>) {
  const say = useSay();
  const { library } = useStores();
  return (
    <>
      <button
        type="button"
        class="btn tall"
        onClick={() => library.edit(saved.id, { kind: 'progress', job: windingJob(wound), step: '0' })}
      >
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

interface CountProps {
  readonly wound: WoundDevice;
  readonly count: WindingCount;
}

function Count({ wound: { windings }, count, isWaiting = false }: CountProps & { readonly isWaiting?: boolean }) {
  const say = useSay();
  const { done } = count;
  const turns = windings[count.winding]?.turns ?? 0;
  const moment = momentOf(windings, count);
  return (
    <>
      <p class="call">
        <span class="num">{done}</span>
        <span class="unit">{say(windScreen.ofTurns, { turns })}</span>
      </p>
      <p class={moment === 'winding' ? 'now' : 'now marked'}>
        {isWaiting ? say(windScreen.unsettledWhy) : say(shown[moment], { done, left: turns - done })}
      </p>
    </>
  );
}

const shown = {
  start: windScreen.start,
  tap: windScreen.tap,
  cross: windScreen.cross,
  'winding-done': windScreen.windingDone,
  'all-done': windScreen.allDone,
  winding: windScreen.going,
} as const;

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

function TurnsDrawing({ wound: { item, windings }, count }: CountProps) {
  const say = useSay();
  const winding = windings[count.winding];
  if (winding === undefined) return null;
  const { turns, tapAt, strands } = winding;
  return (
    <WindingDrawing
      wires={Array.from({ length: strands }, () => ({ turns, done: count.done }))}
      isChoke={item.device === 'choke'}
      label={say(windScreen.picture, { done: count.done, turns })}
      {...(tapAt === null ? {} : { tapAt })}
      {...(strands > 1 && item.device !== 'choke' ? { names: wireNames.slice(0, strands) } : {})}
    />
  );
}
