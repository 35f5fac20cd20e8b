/** Large keys under a field for gloves and thumbs. Shown on touch screens; the phone's own keyboard is one tap away. */
import { useState } from 'preact/hooks';
import { answering } from '../../words/en/answering';
import { useSay } from '../say';
import { Icon } from './icon';

interface PadProps {
  /** What the keys at the right write: units, or signs. At most four. */
  readonly units: readonly string[];
  readonly text: string;
  /** True while the field shows an accepted answer: the first key then starts anew. */
  readonly settled: boolean;
  readonly onText: (text: string) => void;
  readonly on: boolean;
}

const rows = [
  ['1', '2', '3'],
  ['4', '5', '6'],
  ['7', '8', '9'],
] as const;

export function NumberPad({ units, text, settled, onText, on }: PadProps) {
  const say = useSay();
  const base = settled ? '' : text;
  const unit = (index: number) => {
    const written = units[index];
    if (written === undefined) return <span />;
    return (
      <button type="button" class="btn key unit" onClick={() => onText(withUnitKey(text, written))}>
        {written}
      </button>
    );
  };
  return (
    <section class={on ? 'keys on' : 'keys'} aria-label={say(answering.keys)}>
      {rows.map((digits, row) => [
        ...digits.map((digit) => (
          <button key={digit} type="button" class="btn key" onClick={() => onText(base + digit)}>
            {digit}
          </button>
        )),
        unit(row),
      ])}
      <button type="button" class="btn key" aria-label={say(answering.point)} onClick={() => onText(`${base}.`)}>
        . ,
      </button>
      <button type="button" class="btn key" onClick={() => onText(`${base}0`)}>
        0
      </button>
      <button
        type="button"
        class="btn key"
        aria-label={say(answering.erase)}
        onClick={() => onText(text.slice(0, -1).trimEnd())}
      >
        <Icon name="erase" />
      </button>
      {unit(3)}
    </section>
  );
}

/** A unit stands apart from its number, a sign right at it. */
const withUnitKey = (text: string, unit: string): string => {
  if (unit === '−') return text.startsWith('-') ? text.slice(1) : `-${text}`;
  if (unit === '/') return `${text}/`;
  return `${text.trimEnd()} ${unit}${unit === 'ft' ? ' ' : ''}`;
};

/** Whether the pad or the phone's keyboard is used; one choice for all fields until the page is closed. */
export function usePad(): { readonly on: boolean; readonly swap: () => void } {
  const [on, setOn] = useState(padOn);
  return {
    on,
    swap: () => {
      padOn = !padOn;
      setOn(padOn);
    },
  };
}
let padOn = true;
