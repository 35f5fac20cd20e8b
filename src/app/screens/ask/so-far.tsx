/**
 * The answer as far as it can be told: provisional from the third question on, settled after the fourth. The power-line warning stands
 * before the first length.
 */
import { feedPointOf } from '../../../advice/route';
import { feedPositionsOf } from '../../../advice/system';
import type { DraftAnswers } from '../../../design/answers';
import { powerLineDistanceM, radiatorM } from '../../../plan/plan-figures';
import type { Plan } from '../../../plan/plan-schema';
import { answering } from '../../../words/en/answering';
import { ask, plans as plansWords, shell } from '../../../words/en/screens';
import { useSay } from '../../say';
import { provisionalAnswers } from '../../stores/effective-answers';
import type { Planner } from '../../stores/planner';
import { useStores } from '../../stores/stores';
import './so-far.css';

/** Length of the wire for each answer that is still open, shortest first. */
function openLengths(planner: Planner, draft: DraftAnswers): number[] {
  const positions = draft.radiator === undefined ? [] : feedPositionsOf[draft.radiator];
  const drafts: DraftAnswers[] =
    feedPointOf(draft) === undefined
      ? positions.map((fedAt) => ({ ...draft, fedAt }))
      : [draft, { ...draft, shackEnd: 'wide-tuner' }, { ...draft, shackEnd: 'balanced-tuner' }];
  return drafts
    .flatMap((each) => {
      const plan = planner.planOf(provisionalAnswers(each));
      const metres = plan === null ? null : radiatorM(plan);
      return metres === null ? [] : [metres];
    })
    .sort((a, b) => a - b);
}

export function PowerLines({ plan }: { plan: Plan }) {
  const say = useSay();
  const distanceM = powerLineDistanceM(plan);
  return (
    <section class="danger">
      <p class="one">
        <b>{say(answering.powerLines)}:</b>{' '}
        {distanceM === null
          ? say(answering.powerLinesUnknown)
          : say(answering.powerLinesLine, { length: say.format.length(distanceM) })}
      </p>
    </section>
  );
}

export function SoFar({ draft, whole }: { draft: DraftAnswers; whole: boolean }) {
  const say = useSay();
  const { planner } = useStores();
  const answers = provisionalAnswers(draft);
  if (answers === null) return null;
  if (planner.failed.value !== null) return <p class="stop">{say(shell.planFailed)}</p>;
  const plan = planner.planOf(answers);
  if (plan === null) return <p class="sofar">{say(ask.works)}</p>;
  const stop = plan.warnings.find(({ severity }) => severity === 'stop');
  const metres = radiatorM(plan);
  return (
    <>
      {metres !== null && <PowerLines plan={plan} />}
      <section class={whole ? 'sofar settled' : 'sofar'} aria-labelledby="so-far">
        {!whole && (
          <p>
            <b class="chip soft">{say(answering.provisional)}</b>
          </p>
        )}
        <h2 id="so-far">
          {whole
            ? say(answering.settled)
            : metres === null
              ? say(answering.soFarNone)
              : say(answering.soFar, { length: say.format.length(metres) })}
        </h2>
        {stop === undefined ? <p>{plan.summary}</p> : <StopNote stop={stop} />}
        {!whole && stop === undefined && <Spread lengths={openLengths(planner, draft)} />}
      </section>
    </>
  );
}

function Spread({ lengths }: { lengths: readonly number[] }) {
  const say = useSay();
  const least = lengths[0];
  const most = lengths[lengths.length - 1];
  if (least === undefined || most === undefined) return null;
  const stays = most - least < 0.02 * most;
  return (
    <p class="small">
      {stays
        ? say(answering.mayStay)
        : say(answering.mayMove, { least: say.format.length(least), most: say.format.length(most) })}
    </p>
  );
}

function StopNote({ stop }: { stop: Plan['warnings'][number] }) {
  const say = useSay();
  return (
    <>
      <p>
        <b class="chip">{say(plansWords.stop)}</b> {stop.text}
      </p>
      <ul class="out">
        {stop.waysOut.map((way) => (
          <li key={way}>{way}</li>
        ))}
      </ul>
    </>
  );
}
