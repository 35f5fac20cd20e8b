/** A tap with a wet finger can reach the glass twice. The second of two that no hand makes so quickly is none. */
import { useRef } from 'preact/hooks';

/** The quickest fingers tap about seven times a second; a drop bounces sooner. */
const QUICKEST_MS = 120;

/** Whether a tap at this moment of the page's clock, ms, is one of its own after the last that was. */
export const isFirm = (atMs: number, lastMs: number): boolean => atMs - lastMs >= QUICKEST_MS;

/** For `onClick`. A key that presses the button always counts. */
export function useFirmTap(act: () => void): (event: MouseEvent) => void {
  const last = useRef(Number.NEGATIVE_INFINITY);
  return ({ timeStamp, detail }) => {
    if (detail > 0 && !isFirm(timeStamp, last.current)) return;
    last.current = timeStamp;
    act();
  };
}
