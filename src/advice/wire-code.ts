/**
 * Thinnest wire that the US electrical code asks of an amateur transmitting antenna, American gauge: 14 for spans to 45 m (150 ft); above, 10
 * in hard-drawn copper and 12 in copper-clad steel or another strong metal. Other countries' codes differ. Source: antenna-wire-code.
 */
import type { Facts } from './facts';

const LONG_SPAN_M = 45;

export function codeAwg({ wire }: Facts, spanM: number): number {
  if (spanM <= LONG_SPAN_M) return 14;
  return wire.metal === 'copper-clad-steel' ? 12 : 10;
}
