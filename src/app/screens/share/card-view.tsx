/** The summary card as a picture: shown as it will arrive, sent or kept by a tap. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import { SideView } from '../../../drawing/side-view';
import type { Plan } from '../../../plan/plan-schema';
import { card, shareScreen } from '../../../words/en/share-screen';
import { feetInchesText, metresText } from '../../../words/length-text';
import { cardContent, cardText } from '../../handover/card-content';
import { paintCard } from '../../handover/card-paint';
import type { QrDrawing } from '../../handover/qr-drawing';
import { canSendFile, fileNameOf, sendFile } from '../../handover/send-file';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { sitePictureOf } from '../plan/site-picture';
import { Way } from './way';

interface CardProps {
  readonly plan: Plan;
  readonly answers: Answers;
  readonly name: string;
  readonly code: QrDrawing | null;
}

type Made = { readonly file: File; readonly address: string } | 'making' | 'failed';

export function CardView({ plan, answers, name, code }: CardProps) {
  const say = useSay();
  const sketch = useRef<HTMLDivElement>(null);
  const [made, setMade] = useState<Made>('making');
  const content = cardContent(plan, name, say);
  const said = cardText(content);
  useEffect(() => {
    const job = { wanted: true };
    const words = {
      danger: say(card.danger).trim(),
      cut: say(card.cut),
      chokes: say(card.chokes),
      code: say(card.code),
    };
    paintCard({ content, words, drawing: sketch.current?.querySelector('svg') ?? null, code }).then(
      (blob) => job.wanted && setMade(fileOf(blob, name)),
      () => job.wanted && setMade('failed'),
    );
    return () => {
      job.wanted = false;
    };
  }, [said, code]);
  useEffect(() => (typeof made === 'string' ? undefined : () => URL.revokeObjectURL(made.address)), [made]);
  return (
    <Way head={shareScreen.pictureHead} why={shareScreen.pictureWhy}>
      <Sketch plan={plan} answers={answers} into={sketch} />
      {made === 'making' && <p role="status">{say(shareScreen.pictureLoading)}</p>}
      {made === 'failed' && <p class="stop">{say(shareScreen.pictureFailed)}</p>}
      {typeof made !== 'string' && (
        <>
          <img class="card" src={made.address} alt={say(card.alt, { text: said })} />
          <button type="button" class="btn tall" onClick={() => void sendFile(made.file, name)}>
            {say(canSendFile(made.file) ? shareScreen.sendPicture : shareScreen.keepPicture)}
          </button>
        </>
      )}
    </Way>
  );
}

function fileOf(blob: Blob, name: string): Made {
  return {
    file: new File([blob], fileNameOf(name, 'png'), { type: 'image/png' }),
    address: URL.createObjectURL(blob),
  };
}

/** The drawing that goes on the card; not shown here, since the card shows it. */
function Sketch({
  plan,
  answers,
  into,
}: Pick<CardProps, 'plan' | 'answers'> & { readonly into: { current: HTMLDivElement | null } }) {
  const metric = useStores().settings.units.value === 'metric';
  const picture = sitePictureOf(answers, plan);
  const height = (metres: number): readonly [string, string] =>
    metric ? [metresText(metres), feetInchesText(metres)] : [feetInchesText(metres), metresText(metres)];
  return (
    <div ref={into} class="on-paper" hidden>
      {picture !== null && <SideView site={picture.site} words={{ label: '', height }} id="stripes-card" />}
    </div>
  );
}
