/** A caution whose lines are ticked one by one. At most three to a gate; ticking them and then Next is the deliberate confirmation. */
import type { SavedPlan } from '../../design/saved-plan';
import { cautionLines, cautionNames } from '../../words/en/cautions';
import { gateWords } from '../../words/en/job-screens';
import { Icon } from '../parts/icon';
import { clock, useSay } from '../say';
import { useStores } from '../stores/stores';
import { type Gate, lineKey, readAt } from './gates';
import { SourceNote } from './source-note';

/** The line that sends the reader to local codes; every screen with a caution ends with it. */
const LOCAL_CODES = 44;

export function GateView({ gate, saved }: { readonly gate: Gate; readonly saved: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  return (
    <>
      <section class="danger gate" aria-labelledby="gate">
        <h2 id="gate">{cautionNames[gate.id]}</h2>
        <ul>
          {gate.lines.map((line, index) => {
            const words = gate.lineTexts[index];
            const at = readAt(saved, gate, line);
            return (
              <li key={line}>
                <label class="check">
                  <input
                    type="checkbox"
                    checked={at !== null}
                    onChange={(event) =>
                      library.edit(saved.id, {
                        kind: 'caution-read',
                        key: lineKey(gate, line),
                        on: event.currentTarget.checked,
                      })
                    }
                  />
                  <span class="tickbox" aria-hidden="true">
                    <Icon name="tick" />
                  </span>
                  <span>
                    <b>{words?.act}</b>
                    <span class="why">{words?.reason}</span>
                    {at !== null && <span class="when">{say(gateWords.checked, { time: clock(at) })}</span>}
                  </span>
                </label>
              </li>
            );
          })}
        </ul>
        <SourceNote sources={gate.lineTexts.map(({ source }) => source)} />
      </section>
      <p class="small" id="left">
        {say(gateWords.how)}
      </p>
      <LocalCodes />
    </>
  );
}

export function LocalCodes() {
  const say = useSay();
  const line = cautionLines[LOCAL_CODES];
  return line === undefined ? null : <p class="small">{say(line.act)}</p>;
}
