/** Top right of a screen where something is written: saved and when, or not and why. */
import { shell } from '../../words/en/screens';
import { later } from '../later';
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

export const SaveTrouble = later(async () => (await import('./save-trouble')).SaveTrouble);
