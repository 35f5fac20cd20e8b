/** Top right of a screen where something is written: saved and when, or not and why. */
import { shell, storageFailures } from '../../words/en/screens';
import { to } from '../routes';
import { clock, useSay } from '../say';
import { useStores } from '../stores/stores';
import { Icon } from './icon';

export function SaveNote() {
  const say = useSay();
  const state = useStores().light.state.value;
  return (
    <span class="saved" role="status">
      {state.kind === 'saved' && (
        <>
          <Icon name="tick" />
          {say(shell.saved, { time: clock(state.at) })}
        </>
      )}
      {state.kind === 'writing' && say(shell.saving)}
      {state.kind === 'failed' && <b class="chip">{say(shell.notSaved)}</b>}
    </span>
  );
}

/** The whole reason, as the first thing on the screen. */
export function SaveTrouble() {
  const say = useSay();
  const { light, library } = useStores();
  const state = light.state.value;
  if (state.kind !== 'failed') return null;
  return (
    <section class="stop" role="alert">
      <p>
        <b>{say(shell.notSaved)}.</b> {storageFailures[state.error.failure]}
      </p>
      <div class="ways">
        <button type="button" class="btn tall" onClick={() => void library.flush()}>
          {say(shell.tryAgain)}
        </button>
        <a class="btn tall" href={to.settings}>
          {say(shell.exportInstead)}
        </a>
      </div>
    </section>
  );
}
