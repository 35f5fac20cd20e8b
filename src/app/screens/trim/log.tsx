/** What was measured, the newest first: each can be removed and comes back on Undo. Under it, how the antenna hung at the last reading. */
import { useRef, useState } from 'preact/hooks';
import type { Measurement, SavedPlan } from '../../../design/saved-plan';
import { measured as words } from '../../../words/en/measured';
import { trimScreen } from '../../../words/en/trim-screen';
import { Icon } from '../../parts/icon';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { MeasuredReading } from './measured-reading';
import { measuredText, newestFirst } from './measured-text';

export function Log({ saved }: { readonly saved: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  const [removed, setRemoved] = useState<Measurement | null>(null);
  const list = newestFirst(saved.measurements);
  const [last] = list;
  if (last === undefined && removed === null) return null;
  const remove = (measurement: Measurement): void => {
    library.edit(saved.id, { kind: 'unmeasured', id: measurement.id });
    setRemoved(measurement);
  };
  const putBack = (measurement: Measurement): void => {
    library.edit(saved.id, { kind: 'measured', measurement });
    setRemoved(null);
  };
  return (
    <section aria-labelledby="log">
      <h2 id="log">{say(words.head)}</h2>
      {removed !== null && (
        <Was text={say(words.removed, { what: measuredText(removed, say) })} onUndo={() => putBack(removed)} />
      )}
      <ul class="rows log">
        {list.map((measurement) => (
          <li key={measurement.id}>
            <MeasuredReading measurement={measurement} />
            <button
              type="button"
              class="btn"
              aria-label={say(words.remove, { what: measuredText(measurement, say) })}
              onClick={() => remove(measurement)}
            >
              {say(words.removeShort)}
            </button>
          </li>
        ))}
      </ul>
      {last !== undefined && <HungNote key={last.id} planId={saved.id} measurement={last} />}
    </section>
  );
}

interface WasProps {
  readonly text: string;
  onUndo(): void;
}

function Was({ text, onUndo }: WasProps) {
  const say = useSay();
  return (
    <div class="trim-was" role="status">
      <p>{text}</p>
      <button type="button" class="btn" onClick={onUndo}>
        <Icon name="undo" />
        {say(trimScreen.undo)}
      </button>
    </div>
  );
}

/** A few lines: more belongs on paper. */
const MOST_CHARACTERS = 300;

interface HungNoteProps {
  readonly planId: string;
  readonly measurement: Measurement;
}

/** Kept as it is typed. What stood there when the screen was opened can be had back. */
function HungNote({ planId, measurement }: HungNoteProps) {
  const say = useSay();
  const { library } = useStores();
  const note = measurement.note ?? '';
  const { current: before } = useRef(note);
  const write = (text: string): void => library.edit(planId, { kind: 'noted', id: measurement.id, note: text });
  return (
    <div class="typed">
      <label for="hung">{say(words.noteLabel)}</label>
      <textarea
        id="hung"
        rows={2}
        autoComplete="off"
        maxLength={MOST_CHARACTERS}
        value={note}
        aria-describedby="hung-with"
        onInput={(event) => write(event.currentTarget.value)}
      />
      <p class="small" id="hung-with">
        {say(words.noteOf, { what: measuredText(measurement, say) })}
      </p>
      {before !== '' && note !== before && (
        <Was text={say(words.noteWas, { note: before })} onUndo={() => write(before)} />
      )}
    </div>
  );
}
