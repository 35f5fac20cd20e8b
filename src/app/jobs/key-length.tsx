/** A length that is acted on: both units stacked as one object. Tapped, it opens as a call-out that is legible across two metres. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { callOut } from '../../words/en/job-screens';
import { feetInchesText, metresText } from '../../words/length-text';
import { useSay } from '../say';
import { useStores } from '../stores/stores';
import { CallOut } from './call-out';

export function KeyLength({ metres, what }: { readonly metres: number; readonly what: string }) {
  const say = useSay();
  const [open, setOpen] = useState(false);
  const texts = [metresText(metres), feetInchesText(metres)];
  const [first, second] = useStores().settings.units.value === 'metric' ? texts : [...texts].reverse();
  return (
    <>
      <button type="button" class="len-key" onClick={() => setOpen(true)}>
        <span class="vh">{say(callOut.of, { what })}</span> <b>{first}</b> <span>{second}</span>{' '}
        <span class="vh">{say(callOut.enlarge)}</span>
      </button>
      {open && <Large metres={metres} what={what} onClose={() => setOpen(false)} />}
    </>
  );
}

function Large({
  metres,
  what,
  onClose,
}: {
  readonly metres: number;
  readonly what: string;
  readonly onClose: () => void;
}) {
  const say = useSay();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  return (
    <dialog ref={dialog} class="holding" aria-label={what} onClose={onClose}>
      <h2>{what}</h2>
      <div class="middle">
        <CallOut metres={metres} />
      </div>
      <button type="button" class="btn go" onClick={() => dialog.current?.close()}>
        {say(callOut.close)}
      </button>
    </dialog>
  );
}
