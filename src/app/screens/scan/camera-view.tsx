/** What the camera sees, looked through for a code four times a second until one holds a plan. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { scanScreen as words } from '../../../words/en/share-screen';
import { useSay } from '../../say';
import { CameraError, type CameraTrouble, startCamera, stopCamera } from './camera';
import { codeReader } from './read-code';
import type { Trouble } from './scan-screen';

const BETWEEN_LOOKS_MS = 250;

const troubles: Readonly<Record<CameraTrouble, Trouble>> = {
  none: { message: words.noCamera },
  refused: { message: words.refused },
  failed: { message: words.cameraFailed },
};

interface CameraViewProps {
  /** True when the text was a plan: the camera is then done. */
  onText(text: string): boolean;
  tell(trouble: Trouble | null): void;
}

export function CameraView({ onText, tell }: CameraViewProps) {
  const say = useSay();
  const video = useRef<HTMLVideoElement>(null);
  const [on, setOn] = useState(false);
  useEffect(() => {
    const view = video.current;
    if (!on || view === null) return undefined;
    const look = lookThrough(view, onText);
    look.done.catch((error: unknown) => {
      tell(error instanceof CameraError ? troubles[error.trouble] : { message: words.readerFailed });
      setOn(false);
    });
    return look.stop;
  }, [on]);
  if (!on) {
    return (
      <section class="camera">
        <button
          type="button"
          class="btn go"
          onClick={() => {
            tell(null);
            setOn(true);
          }}
        >
          {say(words.start)}
        </button>
        <p class="small">{say(words.asks)}</p>
      </section>
    );
  }
  return (
    <section class="camera">
      <video ref={video} playsInline muted aria-label={say(words.view)} />
      <p role="status">{say(words.looking)}</p>
      <button type="button" class="btn tall" onClick={() => setOn(false)}>
        {say(words.stop)}
      </button>
    </section>
  );
}

function lookThrough(view: HTMLVideoElement, onText: (text: string) => boolean) {
  let open = true;
  let stream: MediaStream | null = null;
  const end = (): void => {
    open = false;
    if (stream !== null) stopCamera(stream);
  };
  const run = async (): Promise<void> => {
    const reader = await codeReader();
    stream = await startCamera(view);
    let told = '';
    while (open) {
      const text = await reader.read(view, false);
      // A foreign code that stays in the picture is told once.
      if (open && text !== null && text !== told && onText(text)) break;
      told = text ?? told;
      await new Promise((resolve) => setTimeout(resolve, BETWEEN_LOOKS_MS));
    }
    end();
  };
  const done = run();
  done.catch(end);
  return { done, stop: end };
}
