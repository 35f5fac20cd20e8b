/** SWR as typed, "1.3", "1,3" or "1.3:1". */
import { plainSigns, readNumber } from '../../base/read-number';

/** Undefined when left empty, null when it is none. */
export function readSwr(typed: string): number | undefined | null {
  const text = plainSigns(typed).replace(/:1$/, '').trim();
  if (text === '') return undefined;
  const read = readNumber(text);
  return 'value' in read && read.value >= 1 && read.value <= 1000 ? read.value : null;
}
