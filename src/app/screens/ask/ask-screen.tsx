/** One question. What is answered is saved at once; the address names plan and question, so every way back leads to the same place. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { completeAnswers, type Question, routeOf, safeDefault } from '../../../advice/route';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import { questions, questionWords } from '../../../words/en/questions';
import { ask, shell, surer as surerWords } from '../../../words/en/screens';
import { answerText } from '../../answer-text';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { go, goInstead } from '../../router';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { effectiveDraft, provisionalAnswers } from '../../stores/effective-answers';
import type { NewEdit } from '../../stores/library';
import { useStores } from '../../stores/stores';
import { AskActions } from './ask-actions';
import { addressAfter, addressBefore, firstQuestions } from './asked';
import type { BodyProps } from './body';
import { ChangedStrip } from './changed-strip';
import { ChoicesBody } from './choices-body';
import { FrequencyBody } from './frequency-body';
import { NotHere, ReadOnly } from './not-here';
import { NotSurePanel } from './not-sure-panel';
import { OhmsBody } from './ohms-body';
import { PartsBody } from './parts-body';
import { QuantityBody } from './quantity-body';
import { SoFar } from './so-far';
import { CountryBody, NameBody } from './text-body';
import './ask.css';

type AskRoute = Extract<Route, { screen: 'ask' | 'new' }>;

export function AskScreen({ route }: { route: AskRoute }) {
  const { library } = useStores();
  if (route.screen === 'new') return <Asked plan={null} id="bands" unsure={false} />;
  const entry = library.entries.value.get(route.planId);
  if (entry === undefined) return <NotHere />;
  if (entry.kind !== 'good') return <ReadOnly newer={entry.kind === 'newer'} />;
  const known = route.question in questions;
  return <Asked plan={entry.record} id={(known ? route.question : 'bands') as AnswerKey} unsure={route.unsure} />;
}

interface AskedProps {
  /** Null before the first answer. */
  readonly plan: SavedPlan | null;
  readonly id: AnswerKey;
  readonly unsure: boolean;
}

function Asked({ plan, id, unsure }: AskedProps) {
  const say = useSay();
  const stores = useStores();
  const { library } = stores;
  const accept = useRef<() => boolean>(() => true);
  const answers = plan?.answers ?? {};
  const draft = effectiveDraft(answers, stores.settings.settings.value, stores.parts.parts.value);
  const whole = completeAnswers(draft) !== null;
  const question = routeOf(draft).find((each) => each.id === id);
  const surer = plan !== null && !firstQuestions(draft).some((each) => each.id === id);
  const words = questionWords(id);
  const taken = useTaken(id, draft);

  const edit = (...edits: readonly NewEdit[]): string => {
    if (plan === null) {
      const planId = library.create({}, ...edits);
      goInstead(to.ask(planId, id));
      return planId;
    }
    library.edit(plan.id, ...edits);
    return plan.id;
  };
  const answer = (given: DraftAnswers, isUnsure = false): NewEdit => ({
    kind: 'answer',
    key: id,
    answer: given,
    unsure: isUnsure,
    pointOut: whole,
  });
  const goOn = (planId: string): void => {
    const now = library.planOf(planId)?.answers ?? {};
    go(addressAfter(planId, id, effectiveDraft(now, stores.settings.settings.value, stores.parts.parts.value)));
  };
  const next = (): void => {
    if (accept.current() && plan !== null) goOn(plan.id);
  };
  const takeDefault = (): void => {
    const first = question?.group === 'first';
    const clear: NewEdit = { kind: 'typed', field: id, text: '' };
    goOn(edit(answer(first ? safeDefault(id, draft) : {}, first), clear));
  };
  const body: Omit<BodyProps, 'question'> = {
    answers,
    draft,
    typed: (field) => plan?.typed[field]?.text,
    onTyped: (field, text) => edit({ kind: 'typed', field, text }),
    onAnswer: (given) => edit(answer(given)),
    onAccept: (given, field) => goOn(edit(answer(given), { kind: 'typed', field, text: '' })),
    onNext: next,
    onNotSure: () => go(to.unsure(plan?.id ?? edit(), id)),
    accept,
  };
  return (
    <>
      <Top
        up={
          surer
            ? { href: to.surer(plan.id), words: say(surerWords.title) }
            : { href: to.plans, words: say(shell.plans) }
        }
      />
      <main id="main" class="ask">
        <SaveTrouble />
        <Where id={id} draft={draft} planId={plan?.id} />
        <div class="q">
          <h1 id="question" tabIndex={-1}>
            {words.title}
          </h1>
          <p>{words.meaning}</p>
        </div>
        {question === undefined ? <Unused id={id} answers={answers} /> : bodyOf({ ...body, question })}
        {unsure && question !== undefined && (
          <NotSurePanel words={words} taken={taken} onTake={takeDefault} keepHref={to.ask(plan?.id ?? '', id)} />
        )}
        {plan !== null && <ChangedStrip plan={plan} />}
        {plan !== null && firstQuestions(draft)[0]?.id !== id && <SoFar draft={draft} whole={whole} />}
      </main>
      <AskActions
        backHref={plan === null ? to.plans : addressBefore(plan.id, id, draft)}
        unsureHref={plan === null ? undefined : to.unsure(plan.id, id)}
        onUnsure={takeDefault}
        onNext={next}
        missing={question === undefined || isReady(question, answers) ? null : id}
        last={question?.group === 'surer'}
      />
    </>
  );
}

/** Choices wait for a tap; a typed field says by itself what is wrong with it. */
const isReady = ({ id, kind }: Question, answers: DraftAnswers): boolean =>
  (kind !== 'one-of' && kind !== 'many-of' && kind !== 'yes-no') || answers[id] !== undefined;

function bodyOf(props: BodyProps): JSX.Element {
  switch (props.question.kind) {
    case 'many-of':
    case 'one-of':
    case 'yes-no':
      return <ChoicesBody {...props} />;
    case 'frequency':
      return <FrequencyBody {...props} />;
    case 'ohms':
      return <OhmsBody {...props} />;
    case 'parts':
      return <PartsBody {...props} />;
    case 'text':
      return props.question.id === 'country' ? <CountryBody {...props} /> : <NameBody {...props} />;
    default:
      return <QuantityBody {...props} />;
  }
}

/** What stands in for this answer while it is not known, as the plan itself assumes it. */
function useTaken(id: AnswerKey, draft: DraftAnswers): string {
  const say = useSay();
  const { planner } = useStores();
  const { [id]: _told, ...others } = draft;
  const plan = planner.planOf(provisionalAnswers(others));
  const value = plan?.assumed.find(({ key }) => key === id)?.value;
  const { taken } = questionWords(id);
  if (typeof taken === 'string') return taken;
  return typeof value === 'number' ? say(taken, { metres: value, count: value }) : say(ask.works);
}

/** Which question this is, and the one before it with its answer. */
function Where({ id, draft, planId }: { id: AnswerKey; draft: DraftAnswers; planId: string | undefined }) {
  const say = useSay();
  const first = firstQuestions(draft);
  const index = first.findIndex((each) => each.id === id);
  const earlier = first[index - 1];
  if (index < 0) return null;
  // Before the radiator is known it is not known either whether its feed point must be asked.
  const of = Math.max(first.length, draft.radiator === undefined ? 4 : first.length);
  return (
    <div class="q">
      <p class="count">
        {say(ask.count, { number: index + 1, of })} <CountLine at={index} of={of} />
      </p>
      {earlier !== undefined && planId !== undefined && (
        <div class="earlier">
          <dl>
            <div>
              <dt>
                {index}. {questionWords(earlier.id).title}
              </dt>
              <dd>{answerText(earlier.id, draft, say.format) ?? say(ask.notSaid)}</dd>
            </div>
          </dl>
          <a
            class="btn"
            href={to.ask(planId, earlier.id)}
            aria-label={say(ask.changeOf, { what: questionWords(earlier.id).short })}
          >
            {say(ask.change)}
          </a>
        </div>
      )}
    </div>
  );
}

function CountLine({ at, of }: { at: number; of: number }) {
  const x = (index: number): number => 6 + (index * 100) / Math.max(of - 1, 1);
  return (
    <svg class="line" viewBox="0 0 112 20" aria-hidden="true">
      <path d="M6 10H106" stroke="currentColor" stroke-width="2.5" />
      {Array.from({ length: of }, (_, index) =>
        index === at ? (
          <path key={x(index)} d={`M${x(index)} 17 ${x(index) - 7} 4h14z`} fill="var(--mark)" />
        ) : (
          <circle
            key={x(index)}
            cx={x(index)}
            cy="10"
            r={index < at ? 5 : 4.5}
            fill={index < at ? 'currentColor' : 'var(--paper)'}
            stroke="currentColor"
            stroke-width="2.5"
          />
        ),
      )}
    </svg>
  );
}

function Unused({ id, answers }: { id: AnswerKey; answers: DraftAnswers }) {
  const say = useSay();
  const text = answerText(id, answers, say.format);
  return (
    <section class="stop">
      <h2>{say(ask.unusedHead)}</h2>
      {text !== null && <p>{text}</p>}
      <p>{say(ask.unused)}</p>
    </section>
  );
}
