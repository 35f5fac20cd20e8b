/** One of the first four questions. The address names plan and question, so every way back leads to the same place. */
import type { AnswerKey } from '../../../design/answers';
import { firstQuestions, isFirstQuestion } from '../../../words/en/first-questions';
import { later } from '../../later';
import { FirstPicture } from '../../pictures/first-picture';
import type { Route } from '../../routes';
import { useStores } from '../../stores/stores';
import { AskFrame } from './ask-frame';
import type { BodyProps } from './body';
import { ChoicesBody } from './choices-body';
import { Unused } from './unused';

const NotHere = later(async () => (await import('./not-here')).NotHere);
const ReadOnly = later(async () => (await import('./not-here')).ReadOnly);

export function AskScreen({ route }: { route: Extract<Route, { screen: 'ask' | 'new' }> }) {
  const { library } = useStores();
  if (route.screen === 'new') {
    return <AskFrame plan={null} id="bands" unsure={route.unsure} words={firstQuestions.bands} body={FirstBody} />;
  }
  const entry = library.entries.value.get(route.planId);
  if (entry === undefined) return <NotHere />;
  if (entry.kind !== 'good') return <ReadOnly newer={entry.kind === 'newer'} />;
  const id: AnswerKey = isFirstQuestion(route.question) ? route.question : 'bands';
  return (
    <AskFrame
      plan={entry.record}
      id={id}
      unsure={route.unsure}
      words={firstQuestions[isFirstQuestion(route.question) ? route.question : 'bands']}
      body={FirstBody}
      unused={<Unused text={null} />}
    />
  );
}

function FirstBody(props: BodyProps) {
  const { id } = props.question;
  return <ChoicesBody {...props} words={firstQuestions[isFirstQuestion(id) ? id : 'bands']} picture={FirstPicture} />;
}
