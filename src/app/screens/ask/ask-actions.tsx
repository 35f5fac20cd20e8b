/** Back, Not sure, Next: always the same three, always at the bottom. */
import { useState } from 'preact/hooks';
import type { AnswerKey } from '../../../design/answers';
import { ask, shell } from '../../../words/en/screens';
import { Icon } from '../../parts/icon';
import { useSay } from '../../say';

interface ActionsProps {
  readonly backHref: string;
  /** Where "not sure" leads, or what it does at once. */
  readonly unsureHref?: string;
  readonly onUnsure?: () => void;
  readonly onNext: () => void;
  /** The question whose choice is missing; null when "Next" can go on. */
  readonly missing: AnswerKey | null;
  readonly last: boolean;
}

export function AskActions({ backHref, unsureHref, onUnsure, onNext, missing, last }: ActionsProps) {
  const say = useSay();
  const [asked, setAsked] = useState<AnswerKey | null>(null);
  const waits = missing !== null;
  const press = (): void => {
    setAsked(missing);
    if (!waits) onNext();
  };
  return (
    <section class="act last" aria-label={say(shell.actions)}>
      {waits && asked === missing && (
        <p class="missing" role="alert">
          {say(missing === 'bands' ? ask.chooseBand : ask.chooseOne)}
        </p>
      )}
      <a class="btn tall" href={backHref} aria-label={say(ask.back)}>
        <Icon name="back" />
        <span class="back-word">{say(ask.back)}</span>
      </a>
      {unsureHref === undefined ? (
        <button type="button" class="btn tall unsure" onClick={onUnsure}>
          {say(ask.notSure)}
        </button>
      ) : (
        <a class="btn tall unsure" href={unsureHref}>
          {say(ask.notSure)}
        </a>
      )}
      <button type="button" class={waits ? 'btn go wait' : 'btn go'} onClick={press}>
        {say(waits ? ask.missingChoice : last ? ask.done : ask.next)}
        {!waits && <Icon name="next" />}
      </button>
    </section>
  );
}
