/**
 * The answer as far as it can be told: provisional from the third question on, settled after the fourth. The power-line warning stands
 * before the first length.
 */
import { feedPointOf, routeOf } from '../../../advice/route';
import { feedPositionsOf } from '../../../advice/system';
import type { Answers, DraftAnswers } from '../../../design/answers';
import { powerLineDistanceM, radiatorM } from '../../../plan/plan-figures';
import type { Plan } from '../../../plan/plan-schema';
import { answering } from '../../../words/en/answering';
import { questionWords } from '../../../words/en/questions';
import { ask, plans as plansWords, shell } from '../../../words/en/screens';
import { to } from '../../routes';
import { useSay } from '../../say';
import { provisionalAnswers } from '../../stores/effective-answers';
import { useAllPlanned } from '../../stores/planned';
import { useStores } from '../../stores/stores';
import { answersFor } from '../plan/ways-to-answers';
import './so-far.css';

/** What the answers may yet become. */
function openAnswers(draft: DraftAnswers): Answers[] {
  const positions = draft.radiator === undefined ? [] : feedPositionsOf[draft.radiator];
  const drafts: DraftAnswers[] =
    feedPointOf(draft) === undefined
      ? positions.map((fedAt) => ({ ...draft, fedAt }))
      : [draft, { ...draft, shackEnd: 'wide-tuner' }, { ...draft, shackEnd: 'balanced-tuner' }];
  return drafts.flatMap((each) => provisionalAnswers(each) ?? []);
}

export function PowerLines({ plan }: { plan: Plan }) {
  const say = useSay();
  const distanceM = powerLineDistanceM(plan);
  return (
    <section class="danger">
      <p class="power-lines">
        <b>{say(answering.powerLines)}:</b>{' '}
        {distanceM === null
          ? say(answering.powerLinesUnknown)
          : say(answering.powerLinesLine, { length: say.format.length(distanceM) })}
      </p>
    </section>
  );
}

export function SoFar({ planId, draft, whole }: { planId: string; draft: DraftAnswers; whole: boolean }) {
  const say = useSay();
  const { planner } = useStores();
  const answers = provisionalAnswers(draft);
  const asked = answers === null ? [] : [answers, ...(whole ? [] : openAnswers(draft))];
  const planned = useAllPlanned(asked, planId);
  if (answers === null) return null;
  if (planner.failed.value !== null) return <p class="stop">{say(shell.planFailed)}</p>;
  const [now, ...open] = planned ?? [];
  if (now === undefined) return <p class="sofar">{say(ask.works)}</p>;
  const { plan } = now;
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
        {stop === undefined ? <p>{plan.summary}</p> : <StopNote stop={stop} planId={planId} draft={draft} />}
        {!whole && stop === undefined && <Spread plans={open.map((each) => each.plan)} />}
      </section>
    </>
  );
}

/** Between which lengths the wire may yet move. */
function Spread({ plans }: { plans: readonly Plan[] }) {
  const say = useSay();
  const lengths = plans.flatMap((plan) => radiatorM(plan) ?? []);
  if (lengths.length === 0) return null;
  const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
  const stays = most - least < 0.02 * most;
  return (
    <p class="small">
      {stays
        ? say(answering.mayStay)
        : say(answering.mayMove, { least: say.format.length(least), most: say.format.length(most) })}
    </p>
  );
}

interface StopProps {
  readonly stop: Plan['warnings'][number];
  readonly planId: string;
  readonly draft: DraftAnswers;
}

/** What stops it, the ways out in words, and a button to each answer that opens one. */
function StopNote({ stop, planId, draft }: StopProps) {
  const say = useSay();
  const asked = routeOf(draft).map(({ id }) => id);
  const keys = answersFor(stop.id).filter((key) => asked.includes(key));
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
      <div class="ways">
        {keys.map((key) => (
          <a key={key} class="btn" href={to.ask(planId, key)}>
            {say(ask.changeOf, { what: questionWords(key).short })}
          </a>
        ))}
      </div>
    </>
  );
}
