/** A count that was lost, or a winding begun without the phone: what is seen in the hole is typed. */
import { useState } from 'preact/hooks';
import { plainSigns, readNumber } from '../../../base/read-number';
import { windScreen } from '../../../words/en/wind-screen';
import type { Winding } from '../../jobs/windings';
import { useSay } from '../../say';

interface RecountProps {
  /** The one in hand, from 0. */
  readonly winding: number;
  readonly windings: readonly Winding[];
  /** Takes the turns over all windings. */
  readonly onCount: (total: number) => void;
}

export function Recount({ winding, windings, onCount }: RecountProps) {
  const say = useSay();
  const [text, setText] = useState('');
  const [isWrong, setWrong] = useState(false);
  const turns = windings[winding]?.turns ?? 0;
  const take = (): void => {
    const read = readNumber(plainSigns(text));
    const isCount = 'value' in read && Number.isInteger(read.value) && read.value >= 0 && read.value <= turns;
    setWrong(!isCount);
    if (!isCount) return;
    onCount(windings.slice(0, winding).reduce((sum, each) => sum + each.turns, read.value));
    setText('');
  };
  return (
    <details>
      <summary>{say(windScreen.wrongCount)}</summary>
      <form
        class="typed"
        onSubmit={(event) => {
          event.preventDefault();
          take();
        }}
      >
        <label for="seen">{say(windScreen.seen)}</label>
        <p id="seen-why">{say(windScreen.seenWhy)}</p>
        <input
          id="seen"
          type="text"
          inputMode="numeric"
          autoComplete="off"
          value={text}
          aria-describedby={isWrong ? 'seen-wrong' : 'seen-why'}
          onInput={({ currentTarget }) => {
            setText(currentTarget.value);
            setWrong(false);
          }}
        />
        {isWrong && (
          <p class="stop" role="alert" id="seen-wrong">
            {say(windScreen.notCount, { turns })}
          </p>
        )}
        <button type="submit" class="btn tall">
          {say(windScreen.setCount)}
        </button>
      </form>
    </details>
  );
}
