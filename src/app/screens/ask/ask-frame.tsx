/** What is around every question: where it stands, its words, what it changed, the answer so far, and the three actions. */
import type { ComponentType, JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { completeAnswers, type Question, routeOf, safeDefault } from '../../../advice/route';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import type { QuestionWords } from '../../../words/en/first-questions';
import { shell } from '../../../words/en/screens';
import { later } from '../../later';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { go, goInstead } from '../../router';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import type { NewEdit } from '../../stores/library';
import { usePlanUnits } from '../../stores/plan-units';
import { useStores } from '../../stores/stores';
import { AskActions } from './ask-actions';
import { addressAfter, addressBefore, firstQuestions } from './asked';
import type { BodyProps } from './body';
import { Where } from './where';
import './ask.css';

const SoFar = later(async () => (await import('./so-far')).SoFar);
const NotSurePanel = later(async () => (await import('./not-sure-panel')).NotSurePanel);
const ChangedStrip = later(async () => (await import('./changed-strip')).ChangedStrip);

export interface NoteProps {
  readonly id: AnswerKey;
  readonly draft: DraftAnswers;
}

interface FrameProps {
  /** Null before the first answer. */
  readonly plan: SavedPlan | null;
  readonly id: AnswerKey;
  readonly unsure: boolean;
  readonly words: QuestionWords;
  /** What stands under the meaning. */
  readonly note?: ComponentType<NoteProps>;
  /** How it is answered. */
  readonly body: ComponentType<BodyProps>;
  /** Where the top line leads when not to the plans. */
  readonly up?: { readonly href: string; readonly words: string };
  /** Shown instead when the answer cannot matter now. */
  readonly unused?: JSX.Element;
}

export function AskFrame({ plan, id, unsure, words, note: Note, body: Body, up, unused }: FrameProps) {
  const say = useSay();
  const { library } = useStores();
  const effective = useEffective();
  const accept = useRef<() => boolean>(() => true);
  const answers = plan?.answers ?? {};
  usePlanUnits(answers);
  const draft = effective(answers);
  const whole = completeAnswers(draft) !== null;
  const question = routeOf(draft).find((each) => each.id === id);
  const unsureHref = plan === null ? to.unsureAtOnce : to.unsure(plan.id, id);

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
    go(addressAfter(planId, id, effective(now)));
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
    onNotSure: () => go(unsureHref),
    accept,
  };
  return (
    <>
      <Top up={up ?? { href: to.plans, words: say(shell.plans) }} />
      <main id="main" class="ask">
        <div class="ask-head">
          <SaveTrouble />
          <Where id={id} draft={draft} planId={plan?.id} />
          <div class="question">
            <h1 id="question" tabIndex={-1}>
              {words.title}
            </h1>
            <p>{words.meaning}</p>
            {Note !== undefined && question !== undefined && <Note id={id} draft={draft} />}
          </div>
        </div>
        <div class="ask-body">{question === undefined ? unused : <Body key={id} {...body} question={question} />}</div>
        <div class="ask-beside">
          {unsure && question !== undefined && (
            <NotSurePanel
              id={id}
              draft={draft}
              words={words}
              onTake={takeDefault}
              keepHref={plan === null ? to.newPlan : to.ask(plan.id, id)}
              compareHref={id === 'radiator' && plan !== null ? to.which(plan.id) : undefined}
            />
          )}
          {plan?.lastEdit !== undefined && <ChangedStrip plan={plan} />}
          {plan !== null && firstQuestions(draft)[0]?.id !== id && (
            <SoFar planId={plan.id} draft={draft} whole={whole} />
          )}
        </div>
      </main>
      <AskActions
        backHref={plan === null ? to.plans : addressBefore(plan.id, id, draft)}
        unsureHref={unsureHref}
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
