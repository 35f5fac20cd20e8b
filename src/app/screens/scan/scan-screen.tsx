/** Takes a plan from another phone's screen: camera after a tap, or a photo, or the link pasted. What was read opens on Receive. */
import { useRef, useState } from 'preact/hooks';
import { shell } from '../../../words/en/screens';
import { scanScreen as words } from '../../../words/en/share-screen';
import type { Message } from '../../../words/message';
import { codeIn } from '../../handover/plan-address';
import { Top } from '../../parts/top';
import { go } from '../../router';
import { to } from '../../routes';
import { useSay } from '../../say';
import { CameraView } from './camera-view';
import { codeReader } from './read-code';
import './scan.css';

export interface Trouble {
  readonly message: Message;
  readonly text?: string;
}

/** True when the text held a plan, which is then opened. */
function open(text: string, tell: (trouble: Trouble) => void): boolean {
  const code = codeIn(text);
  if (code === null) tell({ message: words.otherCode, text: text.slice(0, 120) });
  else go(to.receive(code));
  return code !== null;
}

async function readPhoto(file: File, tell: (trouble: Trouble) => void): Promise<void> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (picture === null) return tell({ message: words.notPicture });
  const reader = await codeReader().catch(() => null);
  if (reader === null) return tell({ message: words.readerFailed });
  const text = await reader.read(picture, true);
  if (text === null) tell({ message: words.noCode });
  else open(text, tell);
}

export function ScanScreen() {
  const say = useSay();
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const photo = useRef<HTMLInputElement>(null);
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }}>{''}</Top>
      <main id="main" class="scan">
        <h1 tabIndex={-1}>{say(words.title)}</h1>
        <p>{say(words.how)}</p>
        <CameraView onText={(text) => open(text, setTrouble)} tell={setTrouble} />
        <div role="alert">
          {trouble !== null && (
            <p class="stop">{say(trouble.message, trouble.text === undefined ? {} : { text: trouble.text })}</p>
          )}
        </div>
        <div class="ways">
          <label class="btn tall file">
            {say(words.photo)}
            <input
              ref={photo}
              class="vh"
              type="file"
              accept="image/*"
              onChange={(event) => {
                const input = event.currentTarget;
                const file = input.files?.[0];
                setTrouble(null);
                if (file !== undefined) void readPhoto(file, setTrouble);
                input.value = ''; // the same photo can be chosen again
              }}
            />
          </label>
          <a class="btn tall" href={to.receive()}>
            {say(words.paste)}
          </a>
        </div>
      </main>
    </>
  );
}
