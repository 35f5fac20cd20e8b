/** Hands text over: the phone's own share sheet where there is one, else the clipboard, else the text itself to mark and copy. */
import { useState } from 'preact/hooks';
import { sendWords } from '../../words/en/job-screens';
import type { Message } from '../../words/message';
import { useSay } from '../say';

interface SendTextProps {
  readonly title: string;
  text(): string;
  /** Fills the row as its main action. */
  readonly main: boolean;
  /** What the button says, where the text is something other than text. */
  readonly words?: { readonly send: Message; readonly copy: Message };
}

type Sent = 'no' | 'copied' | 'by-hand';

export function SendText({ title, text, main, words = sendWords }: SendTextProps) {
  const say = useSay();
  const [sent, setSent] = useState<Sent>('no');
  const share = (navigator as { share?: (data: ShareData) => Promise<void> }).share?.bind(navigator);
  const copy = (): void => {
    const clipboard = (navigator as { clipboard?: Clipboard }).clipboard;
    if (clipboard === undefined) {
      setSent('by-hand');
      return;
    }
    clipboard.writeText(text()).then(
      () => setSent('copied'),
      () => setSent('by-hand'),
    );
  };
  const send = (): void => {
    if (share === undefined) {
      copy();
      return;
    }
    share({ title, text: text() }).catch((error: unknown) => {
      // Closed by the person: nothing is wrong. Anything else: the text is copied instead.
      if (!(error instanceof DOMException && error.name === 'AbortError')) copy();
    });
  };
  return (
    <>
      <button type="button" class={main ? 'btn go' : 'btn tall'} onClick={send}>
        {say(share === undefined ? words.copy : words.send)}
      </button>
      <span class="vh" role="status">
        {sent === 'copied' && say(sendWords.copied)}
      </span>
      {sent === 'copied' && <p class="small sent">{say(sendWords.copied)}</p>}
      {sent === 'by-hand' && (
        <label class="by-hand">
          {say(sendWords.byHand)}
          <textarea readOnly rows={8} value={text()} />
        </label>
      )}
    </>
  );
}
