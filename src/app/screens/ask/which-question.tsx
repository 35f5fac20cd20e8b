/** One of the few answers that decide which antenna comes first. "Not sure" is kept, and the comparison goes on without. */
import { useRef } from 'preact/hooks';
import { type Question, routeOf } from '../../../advice/route';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import { questionWords } from '../../../words/en/questions';
import { which } from '../../../words/en/which';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { FirstPicture } from '../../pictures/first-picture';
import { go } from '../../router';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import { useStores } from '../../stores/stores';
import { AskActions } from './ask-actions';
import type { BodyProps } from './body';
import { ChoicesBody } from './choices-body';
import { decisive } from './decisive';
import { QuantityBody } from './quantity-body';

interface QuestionProps {
  readonly plan: SavedPlan;
  readonly id: AnswerKey;
  /** Asked after this one; undefined when the comparison comes next. */
  readonly next: AnswerKey | undefined;
}

/** Before an antenna is chosen its room and height are on no route: they are asked here all the same. */
const questionOf = (id: AnswerKey, draft: DraftAnswers): Question =>
  routeOf(draft).find((each) => each.id === id) ?? { id, group: 'surer', kind: 'length', options: [] };

export function WhichQuestion({ plan, id, next }: QuestionProps) {
  const say = useSay();
  const { library } = useStores();
  const accept = useRef<() => boolean>(() => true);
  const draft = useEffective()(plan.answers);
  const question = questionOf(id, draft);
  const words = questionWords(id);
  const goOn = (): void => go(to.which(plan.id, next));
  const give = (answer: DraftAnswers, unsure = false): void =>
    library.edit(plan.id, { kind: 'answer', key: id, answer, unsure }, { kind: 'typed', field: id, text: '' });
  const onNext = (): void => {
    if (accept.current()) goOn();
  };
  const onNotSure = (): void => {
    give({}, true);
    goOn();
  };
  const body: BodyProps = {
    question,
    answers: plan.answers,
    draft,
    typed: (field) => plan.typed[field]?.text,
    onTyped: (field, text) => library.edit(plan.id, { kind: 'typed', field, text }),
    onAnswer: (answer) => give(answer),
    onAccept: (answer) => {
      give(answer);
      goOn();
    },
    onNext,
    onNotSure,
    accept,
  };
  const isChoice = question.kind !== 'length';
  return (
    <>
      <Top up={{ href: to.ask(plan.id, 'radiator'), words: questionWords('radiator').short }} />
      <main id="main" class="ask">
        <div class="ask-head">
          <SaveTrouble />
          <div class="question">
            <p class="asked-count">{say(which.count, { number: decisive.indexOf(id) + 1, of: decisive.length })}</p>
            <h1 id="question" tabIndex={-1}>
              {words.title}
            </h1>
            <p>{words.meaning}</p>
            <p class="small">{words.findOut}</p>
          </div>
        </div>
        <div class="ask-body">
          {isChoice ? <ChoicesBody {...body} words={words} picture={FirstPicture} /> : <QuantityBody {...body} />}
        </div>
      </main>
      <AskActions
        backHref={to.ask(plan.id, 'radiator')}
        onUnsure={onNotSure}
        onNext={onNext}
        missing={isChoice && plan.answers[id] === undefined ? id : null}
        last={false}
      />
    </>
  );
}
