/** Resistance and reactance as an analyser shows them. */
import { useState } from 'preact/hooks';
import { answering } from '../../../words/en/answering';
import { fieldProblems, waysOut } from '../../../words/en/fields';
import { ask } from '../../../words/en/screens';
import { readOhms } from '../../fields/number-fields';
import type { Reading } from '../../fields/reading';
import { StopPanel } from '../../parts/stop-panel';
import { useSay } from '../../say';
import type { BodyProps } from './body';

type Part = 'r' | 'x';
const parts: readonly Part[] = ['r', 'x'];

export function OhmsBody({ answers, typed, onTyped, onAccept, onNotSure, onNext, accept }: BodyProps) {
  const say = useSay();
  const [refused, setRefused] = useState<Part | null>(null);
  const settled = answers.feedImpedance;
  const textOf = (part: Part): string =>
    typed(`feedImpedance.${part}`) ?? (settled === undefined ? '' : String(settled[part]));
  const read = (part: Part): number | Reading => readOhms(textOf(part), part === 'x');

  accept.current = () => {
    const wrong = parts.find((part) => typeof read(part) !== 'number');
    setRefused(wrong ?? null);
    if (wrong !== undefined) return false;
    onTyped('feedImpedance.r', '');
    onAccept({ feedImpedance: { r: Number(read('r')), x: Number(read('x')) } }, 'feedImpedance.x');
    return false;
  };
  const problem = refused === null ? null : read(refused);
  return (
    <form
      class="typed"
      onSubmit={(event) => {
        event.preventDefault();
        onNext();
      }}
    >
      {parts.map((part) => (
        <div key={part} class="typed">
          <label for={`ohms-${part}`}>{say(part === 'r' ? answering.resistance : answering.reactance)}</label>
          <input
            id={`ohms-${part}`}
            class="number"
            type="text"
            autoComplete="off"
            value={textOf(part)}
            aria-invalid={refused === part}
            aria-describedby={refused === part ? 'problem' : undefined}
            onInput={(event) => onTyped(`feedImpedance.${part}`, event.currentTarget.value)}
          />
        </div>
      ))}
      {problem !== null && typeof problem !== 'number' && 'problem' in problem && (
        <StopPanel
          id="problem"
          words={say(fieldProblems[problem.problem], problem.data)}
          ways={[
            {
              words: say(waysOut.typeAgain),
              act: () => document.getElementById(`ohms-${refused}`)?.focus(),
            },
            { words: say(waysOut.notSure), act: onNotSure },
          ]}
        />
      )}
      <button type="submit" class="vh" tabIndex={-1}>
        {say(ask.next)}
      </button>
    </form>
  );
}
