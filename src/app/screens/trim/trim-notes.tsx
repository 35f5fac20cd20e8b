/** Beside the trimming: how much wire is in use, and the touch test. */
import { useState } from 'preact/hooks';
import { isLengthProblem, readLength } from '../../../base/read-length';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { trimScreen } from '../../../words/en/trim-screen';
import { Underway } from '../../jobs/underway';
import { Icon } from '../../parts/icon';
import { Length } from '../../parts/length';
import { moment, useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { boxAtFeedPoint } from '../plan/feed-box';
import { isSameWire, ownWireText, wireAsReadM, wireField } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface WireInUseProps {
  readonly saved: SavedPlan;
  readonly target: TrimTarget;
  readonly targets: readonly TrimTarget[];
  readonly wireM: number;
  /** It is the planned length, which may still move. */
  readonly isUnderway: boolean;
}

export function WireInUse({ saved, target, targets, wireM, isUnderway }: WireInUseProps) {
  const readWithM = wireAsReadM(saved, target, targets);
  const say = useSay();
  const { library, settings } = useStores();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState(false);
  const tell = (metres: number): boolean => {
    const own = ownWireText(saved, target, targets, metres);
    if (own !== null) library.edit(saved.id, { kind: 'typed', field: wireField(target), text: own });
    return own !== null;
  };
  const take = (): void => {
    const read = readLength(text, settings.units.value === 'metric' ? 'm' : 'ft');
    if (!isLengthProblem(read) && tell(read.metres)) setText('');
    else setWrong(true);
  };
  return (
    <section class="in-use" aria-labelledby="in-use">
      <div class="head">
        <h2 id="in-use">
          {say(trimScreen.inUse)}: <Length metres={wireM} />
        </h2>
        <Underway isUnderway={isUnderway} />
      </div>
      {!isSameWire(readWithM, wireM) && (
        <div class="trim-was">
          <p>{say(trimScreen.inUseWas, { metres: readWithM })}</p>
          <button type="button" class="btn" onClick={() => tell(readWithM)}>
            <Icon name="undo" />
            {say(trimScreen.undo)}
          </button>
        </div>
      )}
      <details>
        <summary>{say(trimScreen.inUseChange)}</summary>
        <form
          class="typed"
          onSubmit={(event) => {
            event.preventDefault();
            take();
          }}
        >
          <label for="wire-in-use">{say(trimScreen.inUse)}</label>
          <input
            id="wire-in-use"
            type="text"
            autoComplete="off"
            value={text}
            aria-describedby={wrong ? 'wire-wrong' : undefined}
            onInput={(event) => {
              setText(event.currentTarget.value);
              setWrong(false);
            }}
          />
          {wrong && (
            <p class="stop" role="alert" id="wire-wrong">
              {say(trimScreen.inUseWrong, { text })}
            </p>
          )}
          <button type="submit" class="btn tall">
            {say(trimScreen.inUseTake)}
          </button>
        </form>
      </details>
    </section>
  );
}

const TOUCH = 'trim:touch';
/** At the feed point itself no distance is told. */
const AT_FEED_POINT_M = 0.05;

/** On: passed. Off, once judged: failed. */
export function TouchTest({ saved, plan }: { readonly saved: SavedPlan; readonly plan: Plan }) {
  const say = useSay();
  const { library } = useStores();
  const mark = saved.ticks[TOUCH];
  const judge = (on: boolean): void => library.edit(saved.id, { kind: 'tick', key: TOUCH, on });
  return (
    <section aria-labelledby="touch">
      <h2 id="touch">{say(trimScreen.touch)}</h2>
      <p>{say(trimScreen.touchHow)}</p>
      <div class="ways">
        <button type="button" class="btn tall" aria-pressed={mark?.on === true} onClick={() => judge(true)}>
          {say(trimScreen.steady)}
        </button>
        <button type="button" class="btn tall" aria-pressed={mark?.on === false} onClick={() => judge(false)}>
          {say(trimScreen.moves)}
        </button>
      </div>
      <div role="status">
        {mark?.on === true && <p>{say(trimScreen.touchPassed, { time: moment(mark.at) })}</p>}
        {mark?.on === false && (
          <div class="stop">
            <p>
              <b>{say(trimScreen.touchFailed)}</b>
            </p>
            <ChokesBelong plan={plan} />
          </div>
        )}
      </div>
    </section>
  );
}

function ChokesBelong({ plan }: { readonly plan: Plan }) {
  const say = useSay();
  const chokes = plan.chain.flatMap(({ device, name, at, distanceM }) =>
    device === 'choke' && distanceM !== null && at !== 'radio' ? [{ name, metres: distanceM }] : [],
  );
  if (chokes.length === 0) return null;
  const hasBox = boxAtFeedPoint(plan);
  return (
    <>
      <p>{say(trimScreen.belongs)}</p>
      <ul>
        {chokes.map(({ name, metres }) => (
          <li key={metres}>
            {metres < AT_FEED_POINT_M
              ? say(planScreen.chokeAtFeed, { name })
              : say(planScreen.chokeAt, { name, metres, hasBox })}
          </li>
        ))}
      </ul>
    </>
  );
}
