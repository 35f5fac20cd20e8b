/** Why the last answers are not on the phone, as the first thing on the screen. */
import { shell } from '../../words/en/screens';
import { storageFailures } from '../../words/en/storage-failures';
import { to } from '../routes';
import { useSay } from '../say';
import { useStores } from '../stores/stores';

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
