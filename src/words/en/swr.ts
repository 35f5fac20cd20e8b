/**
 * A standing-wave ratio as it is read: to a tenth while it is low, then whole; far up it is no more than an order of size. Just above 2, where a
 * tuner is asked for, one figure more, lest it read as the 2 that needs none.
 */
import { decimalText } from '../decimal';

const TENTHS_BELOW = 10;
const HIGHEST_TOLD = 99;
const TUNER_ABOVE = 2;

export function swrText(swr: number): string {
  if (swr > HIGHEST_TOLD) return `over ${HIGHEST_TOLD}`;
  if (swr > TUNER_ABOVE && swr < TUNER_ABOVE + 0.05) return decimalText(swr, 2);
  return decimalText(swr, swr < TENTHS_BELOW ? 1 : 0);
}
