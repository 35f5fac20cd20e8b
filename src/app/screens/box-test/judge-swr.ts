/** How good a wound box is by the SWR read with a resistor on it. Limits are common practice without a source. */
export type BoxVerdict = 'good' | 'usable' | 'bad';

/** Above it most radios turn their power down. */
export const USABLE_SWR = 2;
/** What resistor and instrument may add to what the design itself expects. */
const READING_PART = 1.1;

export function judgeSwr(measured: number, goodSwr: number, expected: number): BoxVerdict {
  const good = Math.max(goodSwr, expected * READING_PART);
  if (measured <= good) return 'good';
  return measured <= Math.max(USABLE_SWR, good) ? 'usable' : 'bad';
}
