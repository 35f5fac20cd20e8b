/** A standing-wave ratio as it is read: to a tenth while it is low, then whole; far up it is no more than an order of size. */
import { decimalText } from '../decimal';

const TENTHS_BELOW = 10;
const HIGHEST_TOLD = 99;

export function swrText(swr: number): string {
  if (swr > HIGHEST_TOLD) return `over ${HIGHEST_TOLD}`;
  return decimalText(swr, swr < TENTHS_BELOW ? 1 : 0);
}
