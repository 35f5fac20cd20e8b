/** Everything that was assumed, the most telling first, each a tap away; and what has been told, to change it. */
import { completeAnswers, isAnswered, nextQuestion, routeOf, unusedAnswers } from '../../../advice/route';
import type { AnswerKey } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import { answering } from '../../../words/en/answering';
import { assumed, assumedFocus } from '../../../words/en/assumed';
import { surer } from '../../../words/en/places';
import { questionWords } from '../../../words/en/questions';
import { plans, shell } from '../../../words/en/screens';
import type { Message } from '../../../words/message';
import { answerText } from '../../answer-text';
import { takenText } from '../../assumed-text';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { hasScreen } from '../../screens-later';
import { useEffective } from '../../stores/effective-answers';
import { usePlanned } from '../../stores/planned';
import { useStores } from '../../stores/stores';
import { AnswerRow } from './answer-row';
import { goOnAddress } from './asked';
import { ChangedStrip } from './changed-strip';
import { NotHere, ReadOnly } from './not-here';
import { SoFar } from './so-far';
import './ask.css';
import './surer.css';

export function SurerScreen({ route }: { route: Extract<Route, { screen: 'surer' }> }) {
  const entry = useStores().library.entries.value.get(route.planId);
  if (entry === undefined) return <NotHere />;
  return entry.kind === 'good' ? <Surer plan={entry.record} /> : <ReadOnly newer={entry.kind === 'newer'} />;
}

function Surer({ plan }: { plan: SavedPlan }) {
  const say = useSay();
  const draft = useEffective()(plan.answers);
  const answers = completeAnswers(draft);
  const listed = usePlanned(answers, plan.id)?.plan.assumed ?? [];
  const values = new Map(listed.map(({ key, value }) => [key, value]));
  const route = routeOf(draft);
  const told = (key: AnswerKey): boolean => isAnswered(key, plan.answers) && plan.unsure[key]?.on !== true;
  const open = route.filter(({ id }) => !told(id));
  const answered = route.filter(({ id }) => told(id));
  const unused = unusedAnswers(plan.answers);
  const given = (id: AnswerKey): string | null => answerText(id, plan.answers, say.format);
  /** What stands in for an answer that was not given. */
  const standIn = (id: AnswerKey): string => {
    const taken = given(id);
    return taken === null ? takenText(id, values.get(id), say.format) : `${taken} (${say(surer.standIn)})`;
  };
  const row = (id: AnswerKey, text: string | null, why?: Message) => (
    <AnswerRow
      key={id}
      about={questionWords(id).short}
      text={text}
      why={why === undefined ? undefined : say(why)}
      href={to.ask(plan.id, id)}
    />
  );
  const goHref = answers !== null && hasScreen('plan') ? to.plan(plan.id) : goOnAddress(plan.id, draft);
  return (
    <>
      <Top
        up={
          hasScreen('plan')
            ? { href: to.plan(plan.id), words: plan.answers.name ?? shell.plan }
            : { href: to.plans, words: shell.plans }
        }
      />
      <main id="main" class="two">
        <div class="stack">
          <SaveTrouble />
          <h1 tabIndex={-1}>{say(surer.title)}</h1>
          <ChangedStrip plan={plan} />
          <SoFar planId={plan.id} draft={draft} whole={answers !== null} />
          {nextQuestion(draft) !== null && (
            <a class="btn go" href={goOnAddress(plan.id, draft)}>
              {say(plans.goOn)}
            </a>
          )}
        </div>
        <div class="stack">
          <section>
            <p>{say(surer.meaning)}</p>
            <ul class="rows assumed">
              {open.map(({ id }) => row(id, standIn(id), id === 'focusMHz' ? assumedFocus : assumed[id]))}
            </ul>
          </section>
          <section>
            <h2>{say(surer.told)}</h2>
            <ul class="rows assumed">{answered.map(({ id }) => row(id, given(id)))}</ul>
          </section>
          {unused.length > 0 && (
            <section>
              <h2>{say(answering.unusedList)}</h2>
              <ul class="rows assumed">{unused.map((id) => row(id, given(id)))}</ul>
            </section>
          )}
        </div>
      </main>
      {hasScreen('plan') && answers !== null && (
        <section class="act" aria-label={say(shell.actions)}>
          <a class="btn go" href={goHref}>
            {say(surer.plan)}
          </a>
        </section>
      )}
    </>
  );
}
