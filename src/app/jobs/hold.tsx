/** Rain and pockets: covers everything but the number. Let go with A, then B, in opposite corners; nothing else answers, not even "back". */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { hold } from '../../words/en/job-screens';
import { useSay } from '../say';
import { recalled, remember } from '../tab-memory';

export function HoldButton({ onHold }: { readonly onHold: () => void }) {
  const say = useSay();
  return (
    <button type="button" class="btn" onClick={onHold}>
      <svg viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2.5">
        <path d="M3 12h18M8 12c0-5 8-5 8 0s-8 5-8 0" />
      </svg>
      {say(hold.hold)}
    </button>
  );
}

export function Holding({ onLetGo, children }: { readonly onLetGo: () => void; readonly children: ComponentChildren }) {
  const say = useSay();
  const [first, setFirst] = useState(false);
  const dialog = useRef<HTMLDialogElement>(null);
  const isFree = useRef(false);
  useStay();
  useEffect(() => {
    dialog.current?.showModal();
    dialog.current?.scrollTo(0, 0); // A has the focus, and what is held begins at its top
  }, []);
  /** Closed before it goes, so that the browser gives the focus back to the button that opened it. */
  const letGo = (): void => {
    isFree.current = true;
    dialog.current?.close();
    onLetGo();
  };
  return (
    <dialog
      ref={dialog}
      class="holding"
      aria-label={say(hold.held)}
      onCancel={(event) => event.preventDefault()}
      onKeyDown={(event) => event.key === 'Escape' && event.preventDefault()}
      // A phone's "back" closes a dialog when it is asked for twice.
      onClose={() => isFree.current || dialog.current?.showModal()}
      // A brush of A is forgotten with the next touch that is not B.
      onClick={({ target }) => target instanceof Element && target.closest('button') === null && setFirst(false)}
    >
      <div class="row">
        <p>
          <b>{say(hold.held)}.</b> {say(hold.letGo)}
        </p>
      </div>
      <div class="middle">{children}</div>
      <div class="row">
        <button
          type="button"
          class={first ? 'btn ab pressed' : 'btn ab'}
          aria-pressed={first}
          onClick={() => setFirst(true)}
        >
          A
        </button>
        <button
          type="button"
          class={first ? 'btn ab' : 'btn ab wait'}
          onClick={() => (first ? letGo() : setFirst(false))}
        >
          B
        </button>
      </div>
    </dialog>
  );
}

const key = 'halyard-held';

/** Held or not. A phone that is short of memory drops a page in a pocket and loads it anew: what was held comes back held, with this tab. */
export function useHeld(): [held: boolean, hold: (held: boolean) => void] {
  const [held, setHeld] = useState(() => recalled(key) === location.hash);
  const hold = (to: boolean): void => {
    remember(key, to ? location.hash : null);
    setHeld(to);
  };
  return [held, hold];
}

/** While it is held, "back" stays on the page: it finds the same address once more. */
function useStay(): void {
  useEffect(() => {
    const stay = (): void => history.pushState({ held: true }, '', location.href);
    if (history.state?.held !== true) stay(); // else the page was loaded anew while it was held
    addEventListener('popstate', stay);
    return () => {
      removeEventListener('popstate', stay);
      history.back();
    };
  }, []);
}
