/** Resistance and reactance as an analyser shows them. The keys write into the one tapped last. */
import { useState } from 'preact/hooks';
import { answering } from '../../../words/en/answering';
import { fieldProblems, waysOut } from '../../../words/en/fields';
import { ask } from '../../../words/en/screens';
import { readOhms } from '../../fields/number-fields';
import type { Reading } from '../../fields/reading';
import { NumberPad, usePad } from '../../parts/number-pad';
import { StopPanel } from '../../parts/stop-panel';
import { useSay } from '../../say';
import type { BodyProps } from './body';

type Part = 'r' | 'x';
const parts: readonly Part[] = ['r', 'x'];
/** Only a reactance can be below zero. */
const padSigns: Readonly<Record<Part, readonly string[]>> = { r: [], x: ['−'] };

export function OhmsBody({ answers, typed, onTyped, onAccept, onNotSure, onNext, accept }: BodyProps) {
  const say = useSay();
  const pad = usePad();
  const [refused, setRefused] = useState<Part | null>(null);
  const [at, setAt] = useState<Part>('r');
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
      class={pad.on ? 'typed with-keys' : 'typed'}
      onSubmit={(event) => {
        event.preventDefault();
        onNext();
      }}
    >
      <div class="ohms-pair">
        {parts.map((part) => (
          <div key={part} class="typed">
            <label for={`ohms-${part}`}>{say(part === 'r' ? answering.resistance : answering.reactance)}</label>
            <input
              id={`ohms-${part}`}
              class={part === at ? 'number filling' : 'number'}
              type="text"
              autoComplete="off"
              inputMode={pad.on && matchMedia('(any-pointer: coarse)').matches ? 'none' : 'text'}
              value={textOf(part)}
              aria-invalid={refused === part}
              aria-describedby={refused === part ? 'problem' : undefined}
              onFocus={() => setAt(part)}
              onInput={(event) => onTyped(`feedImpedance.${part}`, event.currentTarget.value)}
            />
          </div>
        ))}
      </div>
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
      <NumberPad
        units={padSigns[at]}
        text={textOf(at)}
        settled={typed(`feedImpedance.${at}`) === undefined}
        onText={(text) => onTyped(`feedImpedance.${at}`, text)}
        on={pad.on}
      />
      <button type="button" class="btn swap" onClick={pad.swap}>
        {say(pad.on ? answering.keyboard : answering.keypad)}
      </button>
      <button type="submit" class="vh" tabIndex={-1}>
        {say(ask.next)}
      </button>
    </form>
  );
}
