/** One field with its number pad, what it reads as, and the stop panel beside it when it cannot be read. */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { answering } from '../../../words/en/answering';
import { fieldProblems, waysOut } from '../../../words/en/fields';
import { quantityText } from '../../fields/quantity-text';
import { isGood, type Quantity, type Reading, type TakeValue } from '../../fields/reading';
import { NumberPad, usePad } from '../../parts/number-pad';
import { StopPanel, type Way } from '../../parts/stop-panel';
import { useSay } from '../../say';

interface TypedFieldProps {
  readonly label: string;
  /** Typed and not yet accepted. */
  readonly text: string | undefined;
  /** What the accepted answer looks like in the field; undefined with no answer. */
  readonly settledText: string | undefined;
  readonly hint?: string;
  readonly padUnits: readonly string[];
  readonly read: (text: string) => Reading;
  readonly onText: (text: string) => void;
  readonly onQuantity: (quantity: Quantity) => void;
  readonly onNext: () => void;
  readonly onNotSure: () => void;
  readonly accept: { current: () => boolean };
  readonly children?: JSX.Element;
}

export function TypedField(props: TypedFieldProps) {
  const { label, text, settledText, hint, padUnits, read, onText, onQuantity, onNext, onNotSure, accept } = props;
  const say = useSay();
  const pad = usePad();
  const input = useRef<HTMLInputElement>(null);
  /** The text that "Next" has refused: its problem stays in sight until the text changes. */
  const [refused, setRefused] = useState<string | null>(null);
  const shown = text ?? settledText ?? '';
  const reading = text === undefined && settledText !== undefined ? null : read(shown);

  accept.current = () => {
    if (reading === null) return true; // nothing typed over the answer that stands
    if (!isGood(reading)) {
      setRefused(shown);
      return false;
    }
    onQuantity(reading.quantity);
    return false; // accepting goes on by itself
  };
  const typeAgain = (): void => {
    setRefused(null);
    input.current?.focus();
    input.current?.select();
  };
  const wordsOf = ({ way, quantity }: TakeValue): string =>
    say(waysOut[way], { what: quantityText(quantity, say.format) });
  const ways = (take: readonly TakeValue[]): Way[] => [
    ...take.map((each) => ({ words: wordsOf(each), act: () => onQuantity(each.quantity) })),
    { words: say(waysOut.typeAgain), act: typeAgain },
    { words: say(waysOut.notSure), act: onNotSure },
  ];
  const problem = reading !== null && !isGood(reading) && refused === shown ? reading : null;

  return (
    <form
      class={pad.on ? 'typed with-keys' : 'typed'}
      onSubmit={(event) => {
        event.preventDefault();
        onNext();
      }}
    >
      <label for="field" class="vh">
        {label}
      </label>
      {props.children}
      <input
        id="field"
        ref={input}
        class="number"
        type="text"
        autoComplete="off"
        autocapitalize="off"
        spellcheck={false}
        inputMode={pad.on && matchMedia('(any-pointer: coarse)').matches ? 'none' : 'text'}
        value={shown}
        aria-describedby={problem === null ? 'reads' : 'problem reads'}
        aria-invalid={problem !== null}
        onFocus={(event) => {
          if (text === undefined) event.currentTarget.select();
        }}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      {problem !== null && (
        <StopPanel id="problem" words={say(fieldProblems[problem.problem], problem.data)} ways={ways(problem.take)} />
      )}
      <p class="small" id="reads" aria-live="polite">
        {reading !== null && isGood(reading)
          ? say(answering.reads, { text: quantityText(reading.quantity, say.format) })
          : hint}
      </p>
      <NumberPad units={padUnits} text={shown} settled={text === undefined} onText={onText} on={pad.on} />
      <button type="button" class="btn swap" onClick={pad.swap}>
        {say(pad.on ? answering.keyboard : answering.keypad)}
      </button>
    </form>
  );
}
