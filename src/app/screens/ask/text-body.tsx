/** A name, or a country from the list. */
import { useState } from 'preact/hooks';
import { answering } from '../../../words/en/answering';
import { fieldProblems, waysOut } from '../../../words/en/fields';
import { CountrySelect } from '../../parts/country-select';
import { StopPanel } from '../../parts/stop-panel';
import { useSay } from '../../say';
import type { BodyProps } from './body';

export function CountryBody({ answers, onAnswer, accept }: BodyProps) {
  const say = useSay();
  accept.current = () => true;
  return (
    <div class="typed">
      <label for="country">{say(answering.countryLabel)}</label>
      <CountrySelect
        id="country"
        country={answers.country}
        none={say(answering.countryNone)}
        onCountry={(country) => onAnswer(country === undefined ? {} : { country })}
      />
    </div>
  );
}

const mostLetters = 80;

export function NameBody({ answers, typed, onTyped, onAccept, onNotSure, onNext, accept }: BodyProps) {
  const say = useSay();
  const [refused, setRefused] = useState(false);
  const text = typed('name');
  const shown = text ?? answers.name ?? '';
  const name = shown.trim();
  accept.current = () => {
    if (text === undefined && answers.name !== undefined) return true;
    const bad = name === '' || name.length > mostLetters;
    setRefused(bad);
    if (!bad) onAccept({ name }, 'name');
    return false;
  };
  return (
    <form
      class="typed"
      onSubmit={(event) => {
        event.preventDefault();
        onNext();
      }}
    >
      <label for="name">{say(answering.nameLabel)}</label>
      <input
        id="name"
        type="text"
        autoComplete="off"
        value={shown}
        aria-invalid={refused}
        aria-describedby={refused ? 'problem' : undefined}
        onInput={(event) => {
          setRefused(false);
          onTyped('name', event.currentTarget.value);
        }}
      />
      {refused && (
        <StopPanel
          id="problem"
          words={say(name === '' ? fieldProblems.empty : fieldProblems['name-long'])}
          ways={[
            { words: say(waysOut.typeAgain), act: () => document.getElementById('name')?.focus() },
            { words: say(waysOut.notSure), act: onNotSure },
          ]}
        />
      )}
    </form>
  );
}
