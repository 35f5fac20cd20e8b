/** One of the questions that make a plan surer. */
import { type AnswerKey, isAnswerKey } from '../../../design/answers';
import { answering } from '../../../words/en/answering';
import { surer } from '../../../words/en/places';
import { questions, questionWords } from '../../../words/en/questions';
import { answerText } from '../../answer-text';
import { ChoicePicture } from '../../pictures/choice-picture';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { AskFrame, type NoteProps } from './ask-frame';
import type { BodyProps } from './body';
import { ChoicesBody } from './choices-body';
import { FrequencyBody } from './frequency-body';
import { NotHere, ReadOnly } from './not-here';
import { OhmsBody } from './ohms-body';
import { PartsBody } from './parts-body';
import { QuantityBody } from './quantity-body';
import { useTaken } from './taken';
import { CountryBody, NameBody } from './text-body';
import { Unused } from './unused';
import './surer.css';

export function SurerQuestionScreen({ route }: { route: Extract<Route, { screen: 'ask' }> }) {
  const say = useSay();
  const entry = useStores().library.entries.value.get(route.planId);
  const id = route.question;
  if (entry === undefined || !isAnswerKey(id) || !(id in questions)) return <NotHere />;
  if (entry.kind !== 'good') return <ReadOnly newer={entry.kind === 'newer'} />;
  return (
    <AskFrame
      plan={entry.record}
      id={id}
      unsure={route.unsure}
      words={questionWords(id)}
      note={Taken}
      body={SurerBody}
      up={{ href: to.surer(entry.record.id), words: say(surer.title) }}
      unused={<Unused text={answerText(id, entry.record.answers, say.format)} />}
    />
  );
}

/** What shows by itself what is taken: every part is ticked, the list says "not told", a plan goes without a name, a band names its middle. */
const plainly: readonly AnswerKey[] = ['onHand', 'country', 'name', 'focusMHz'];

function Taken({ id, draft }: NoteProps) {
  const say = useSay();
  const taken = useTaken(id, draft);
  if (draft[id] !== undefined || plainly.includes(id)) return null;
  return <p class="small">{say(answering.takenNow, { taken })}</p>;
}

function SurerBody(props: BodyProps) {
  switch (props.question.kind) {
    case 'many-of':
    case 'one-of':
    case 'yes-no':
      return <ChoicesBody {...props} words={questionWords(props.question.id)} picture={ChoicePicture} />;
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
