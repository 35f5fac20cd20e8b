/** One of the questions that make a plan surer. */
import { isAnswerKey } from '../../../design/answers';
import { surer } from '../../../words/en/places';
import { questions, questionWords } from '../../../words/en/questions';
import { answerText } from '../../answer-text';
import { ChoicePicture } from '../../pictures/choice-picture';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { AskFrame } from './ask-frame';
import type { BodyProps } from './body';
import { ChoicesBody } from './choices-body';
import { FrequencyBody } from './frequency-body';
import { NotHere, ReadOnly } from './not-here';
import { OhmsBody } from './ohms-body';
import { PartsBody } from './parts-body';
import { QuantityBody } from './quantity-body';
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
      body={SurerBody}
      up={{ href: to.surer(entry.record.id), words: say(surer.title) }}
      unused={<Unused text={answerText(id, entry.record.answers, say.format)} />}
    />
  );
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
