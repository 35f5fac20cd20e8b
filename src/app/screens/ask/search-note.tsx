/** How far the fields of the candidates are worked out, and the buttons that stop it and put the list in order. */
import { useRef } from 'preact/hooks';
import { which } from '../../../words/en/which';
import { useSay } from '../../say';
import type { Searching } from './use-search';

export function SearchNote({ search }: { readonly search: Searching }) {
  const say = useSay();
  const note = useRef<HTMLParagraphElement>(null);
  const { state, moves } = search;
  const { shown } = state;
  if (shown === null) return null;
  const stopped = shown.filter(({ score }) => score.stops > 0).length;
  const progress = { done: Math.max(state.done - stopped, 0), of: shown.length - stopped };
  const words = {
    working: say(which.solving, progress),
    stopped: say(which.stopped, progress),
    done: moves === 0 ? say(which.solvedSame) : say(which.solvedMoves, { moves }),
    failed: say(which.failed),
  };
  const canSettle = !state.isSettled && progress.done > 0 && (state.kind === 'done' || state.kind === 'stopped');
  const settle = (): void => {
    search.settle();
    note.current?.focus(); // the button goes
  };
  return (
    <section class="searching">
      <p role="status" ref={note} tabIndex={-1}>
        {state.isSettled && state.kind !== 'failed' ? say(which.settled) : words[state.kind]}
      </p>
      <div class="ways">
        {(state.kind === 'working' || state.kind === 'stopped') && (
          <button type="button" class="btn tall" onClick={state.kind === 'working' ? search.stop : search.goOn}>
            {say(state.kind === 'working' ? which.stop : which.goOn)}
          </button>
        )}
        {canSettle && (
          <button type="button" class="btn tall" onClick={settle}>
            {say(moves === 0 ? which.upToDate : which.again)}
          </button>
        )}
      </div>
    </section>
  );
}
