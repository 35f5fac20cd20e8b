/** A QR code on the page: dark on light by day and by night, since many cameras read no other. */
import { useEffect, useState } from 'preact/hooks';
import { shareScreen } from '../../words/en/share-screen';
import { useSay } from '../say';
import { type QrDrawing, qrDrawing } from './qr-drawing';

type Found = QrDrawing | 'making' | 'failed';

/** The code of a text; it keeps the last one while a new one is made. */
export function useQr(text: string): Found {
  const [found, setFound] = useState<Found>('making');
  useEffect(() => {
    let wanted = true;
    qrDrawing(text).then(
      (drawing) => wanted && setFound(drawing),
      () => wanted && setFound('failed'),
    );
    return () => {
      wanted = false;
    };
  }, [text]);
  return found;
}

export function QrCode({ code }: { readonly code: Found }) {
  const say = useSay();
  if (code === 'making') return <p class="qr wait">{say(shareScreen.codeLoading)}</p>;
  if (code === 'failed') return <p class="stop">{say(shareScreen.codeFailed)}</p>;
  return (
    <svg
      class="qr"
      viewBox={`0 0 ${code.size} ${code.size}`}
      role="img"
      aria-label={say(shareScreen.codeLabel)}
      shape-rendering="crispEdges"
    >
      <rect class="light" width={code.size} height={code.size} />
      <path class="dark" d={code.path} />
    </svg>
  );
}
