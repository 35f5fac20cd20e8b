/** What a plan assumed, in the words of its questions: "Height: 8 m (26 ft)"; where no value was put in its place, what is done without: "Room: room enough". */
import type { AnswerKey } from '../design/answers';
import type { Plan } from '../plan/plan-schema';
import { questionWords } from '../words/en/questions';
import type { Format } from '../words/format';
import { render } from '../words/message';
import { answerText } from './answer-text';

export function assumedText({ key, value }: Plan['assumed'][number], format: Format): string {
  const [id = '', band] = key.split('.');
  const given = band === undefined ? value : { [band]: value };
  const text = value === 'not-told' ? null : answerText(id as AnswerKey, { [id]: given }, format);
  const { short, taken } = questionWords(id);
  return `${short}: ${text ?? render(taken, {}, format)}`;
}
