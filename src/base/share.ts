/** A ratio as people say it across a field: the nearest plain fraction, or "less than" one. No number that nobody hears. */
export type Share =
  | { readonly kind: 'more' }
  | { readonly kind: 'about'; readonly of: number; readonly parts: number }
  | { readonly kind: 'less'; readonly parts: number };

const FRACTIONS: readonly (readonly [of: number, parts: number])[] = [
  [1, 1],
  [3, 4],
  [2, 3],
  [1, 2],
  [1, 3],
  [1, 4],
  [1, 5],
  [1, 6],
  [1, 8],
  [1, 10],
];
const LESS_THAN = [10, 20, 50, 100, 200, 500, 1000] as const;
/** Farther above one than a clamp meter reads wrong. */
const MORE = 1.2;
/** Nearer to a tenth than to the next step down. */
const STILL_A_TENTH = 0.09;

export function shareOf(ratio: number): Share {
  if (ratio > MORE) return { kind: 'more' };
  if (ratio < STILL_A_TENTH) return { kind: 'less', parts: LESS_THAN.findLast((parts) => ratio <= 1 / parts) ?? 10 };
  const off = ([of, parts]: readonly [number, number]): number => Math.abs(Math.log(of / parts / ratio));
  const [of, parts] = FRACTIONS.reduce((best, each) => (off(each) < off(best) ? each : best));
  return { kind: 'about', of, parts };
}
