/** One of a few or several of many, each with its drawing. A tap is an answer: it is saved at once and can be tapped away again. */
import type { ComponentType } from 'preact';
import { bandIds } from '../../../catalog/band-ids';
import { capital } from '../../../words/capital';
import type { QuestionWords } from '../../../words/en/first-questions';
import { Icon } from '../../parts/icon';
import type { PictureProps } from '../../pictures/first-picture';
import { answerOf } from './asked';
import type { BodyProps } from './body';

type Option = string | number | boolean;

const long: readonly string[] = ['feedLine', 'wire', 'ground', 'ruleSet', 'region', 'houseEarth', 'returnPath'];
/** No drawing tells one set of limits from another. */
const wordy: readonly string[] = ['ruleSet'];

interface ChoicesProps extends BodyProps {
  readonly words: QuestionWords;
  readonly picture: ComponentType<PictureProps>;
}

export function ChoicesBody({ question, answers, draft, onAnswer, accept, words, picture: Picture }: ChoicesProps) {
  const { id, kind } = question;
  const options: readonly Option[] = kind === 'yes-no' ? [true, false] : question.options;
  const many = kind === 'many-of';
  const chosen = many ? (answers.bands ?? []) : answers[id];
  const isChosen = (option: Option): boolean =>
    Array.isArray(chosen) ? chosen.includes(option as never) : chosen === option;
  accept.current = () => options.some(isChosen);

  const choose = (option: Option): void => {
    if (!many) {
      onAnswer(answerOf(id, option));
      return;
    }
    const bands = bandIds.filter((band) => (band === option ? !isChosen(band) : isChosen(band)));
    onAnswer(bands.length === 0 ? {} : { bands });
  };
  const layout = many ? 'choices bands' : long.includes(id) ? 'choices long' : 'choices';
  const odd = layout === 'choices' && options.length % 2 === 1;
  return (
    <fieldset role={many ? undefined : 'radiogroup'} aria-labelledby="question">
      <ul class={layout}>
        {options.map((option, index) => (
          <li key={String(option)} class={odd && index === options.length - 1 ? 'last' : undefined}>
            <label class={wordy.includes(id) ? 'choice wordy' : 'choice'}>
              <input
                type={many ? 'checkbox' : 'radio'}
                name={id}
                value={String(option)}
                checked={isChosen(option)}
                onChange={() => choose(option)}
              />
              <Picture question={id} option={String(option)} draft={draft} />
              <OptionText text={capital(words.options?.[String(option)] ?? String(option))} />
              <span class="on" aria-hidden="true">
                <Icon name="tick" />
              </span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

/** What stands in brackets behind a name gets a line of its own: "10 mm coax" over "(RG-213 size)". */
function OptionText({ text }: { readonly text: string }) {
  const [, name, aside] = /^(.+?) (\(.+\))$/.exec(text) ?? [null, text];
  return (
    <span>
      {name}
      {aside !== undefined && <span class="aside">{aside}</span>}
    </span>
  );
}
