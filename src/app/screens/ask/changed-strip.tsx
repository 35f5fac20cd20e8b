/** What the last changed answer did to the plan: the new value, the old one struck through, and the way back. */
import { completeAnswers } from '../../../advice/route';
import { answersBefore } from '../../../design/plan-edit';
import type { SavedPlan } from '../../../design/saved-plan';
import { type ChangedValue, type PlanChange, planChanges } from '../../../plan/plan-changes';
import { capital } from '../../../words/capital';
import { answering } from '../../../words/en/answering';
import { changes as words } from '../../../words/en/changes';
import { questionWords } from '../../../words/en/questions';
import { ask, shell } from '../../../words/en/screens';
import { answerText } from '../../answer-text';
import { Icon, Pin } from '../../parts/icon';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import { useAllPlanned } from '../../stores/planned';
import { useStores } from '../../stores/stores';
import './so-far.css';

/** More lines than this are told on the plan itself. */
const shownChanges = 4;

export function ChangedStrip({ plan }: { plan: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  const effective = useEffective();
  const before = answersBefore(plan);
  const edit = plan.lastEdit;
  const whole = (answers: SavedPlan['answers']) => completeAnswers(effective(answers)) ?? [];
  const asked = before === null ? [] : [before, plan.answers].flatMap(whole);
  const [old, now] = useAllPlanned(asked, `${plan.id} ${edit?.key}`) ?? [];
  if (before === null || edit === undefined || old === undefined || now === undefined) return null;
  const list = planChanges(old.plan, now.plan);
  const { key } = edit;
  return (
    <section class="changed" aria-live="polite">
      <p>
        <Pin />
        {say(answering.changed, { what: questionWords(key).short })} {capital(say(answering.now))}{' '}
        <b>{answerText(key, plan.answers, say.format) ?? say(ask.notSaid)}</b>, {say(answering.was)}{' '}
        <s>{answerText(key, before, say.format) ?? say(ask.notSaid)}</s>
      </p>
      <ul class="changes">
        {list.slice(0, shownChanges).map((change) => (
          <ChangeLine key={change.id} change={change} />
        ))}
        {list.length === 0 && <li>{say(words.nothing)}</li>}
        {list.length > shownChanges && <li>{say(words.more, { count: list.length - shownChanges })}</li>}
      </ul>
      <div class="ways">
        <button
          type="button"
          class="btn"
          onClick={() => {
            library.answer(plan.id, key, edit.before);
          }}
        >
          <Icon name="undo" />
          {say(shell.undo)}
        </button>
        <button type="button" class="btn" onClick={() => library.edit(plan.id, { kind: 'accept-edit' })}>
          {say(answering.keepChange)}
        </button>
      </div>
    </section>
  );
}

export function ChangeLine({ change: { name, before, after } }: { change: PlanChange }) {
  const say = useSay();
  const text = (value: ChangedValue): string =>
    value.kind === 'length' ? say.format.length(value.metres) : value.text;
  return (
    <li>
      {name}: <b>{after === null ? say(words.gone) : text(after)}</b>
      {before === null ? ` (${say(words.fresh)})` : `, ${say(answering.was)} `}
      {before !== null && <s>{text(before)}</s>}
    </li>
  );
}
