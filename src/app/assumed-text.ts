/** What a plan assumed, in the words of its questions: "Height: 8 m (26 ft)"; where no value was put in its place, what is done without: "Room: room enough". */
import { type AnswerKey, isAnswerKey } from '../design/answers';
import type { Plan } from '../plan/plan-schema';
import { questionWords } from '../words/en/questions';
import type { Format } from '../words/format';
import { render } from '../words/message';
import { answerText } from './answer-text';

export function assumedText({ key, value }: Plan['assumed'][number], format: Format): string {
  const { id, band } = assumedAnswer(key);
  return `${questionWords(id).short}: ${takenText(id, band === undefined ? value : { [band]: value }, format)}`;
}

/** What stands in for an answer: the plan's own value, else what is done without one. */
export function takenText(id: AnswerKey, value: unknown, format: Format): string {
  const text = value === undefined || value === 'not-told' ? null : answerText(id, { [id]: value }, format);
  return text ?? render(questionWords(id).taken, {}, format);
}

/** Which answer an assumption stands for; a frequency has its band behind it, `focusMHz.40m`. */
export function assumedAnswer(key: string): { readonly id: AnswerKey; readonly band: string | undefined } {
  const [id = '', band] = key.split('.');
  if (!isAnswerKey(id)) throw new RangeError(`${key} is no answer`);
  return { id, band };
}
