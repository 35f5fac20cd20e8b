/** How far the fields of the candidates are worked out, and the buttons that stop it and put the list in order. */
import { which } from '../../../words/en/which';
import { useSay } from '../../say';
import type { Searching } from './use-search';

export function SearchNote({ search }: { readonly search: Searching }) {
  const say = useSay();
  const { state, moves } = search;
  if (state.shown === null && state.kind !== 'failed') return null;
  const progress = { done: state.done, of: state.shown?.length ?? 0 };
  const words = {
    working: say(which.solving, progress),
    stopped: say(which.stopped, progress),
    done: moves === 0 ? say(which.solvedSame) : say(which.solvedMoves, { moves }),
    failed: say(which.failed),
  };
  return (
    <section class="searching" role="status">
      <p>{state.isSettled && state.kind !== 'failed' ? say(which.settled) : words[state.kind]}</p>
      <div class="ways">
        {state.kind === 'working' && (
          <button type="button" class="btn tall" onClick={search.stop}>
            {say(which.stop)}
          </button>
        )}
        {state.kind === 'stopped' && (
          <button type="button" class="btn tall" onClick={search.goOn}>
            {say(which.goOn)}
          </button>
        )}
        {!state.isSettled && state.done > 0 && (state.kind === 'done' || state.kind === 'stopped') && (
          <button type="button" class="btn tall" onClick={search.settle}>
            {say(moves === 0 ? which.upToDate : which.again)}
          </button>
        )}
      </div>
    </section>
  );
}
