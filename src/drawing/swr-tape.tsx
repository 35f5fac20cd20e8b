/** One band as a tape: thick where the SWR at the radio is under 2:1, red pencil at the dip, an open ring at the operator's frequency. No axis, no curve. */
import { at, Drawing, px, spread } from './figures';

export interface SweepPoint {
  readonly mhz: number;
  readonly swr: number;
}

interface SwrTapeProps {
  readonly lowMHz: number;
  readonly highMHz: number;
  readonly aimMHz: number;
  /** Null while the dip is not known, or where it lies outside the band. */
  readonly dipMHz: number | null;
  /** Null while the SWR over the band is being worked out. */
  readonly good: readonly Stretch[] | null;
  readonly words: SwrTapeWords;
  readonly label: string;
}

export interface SwrTapeWords {
  readonly aim: string;
  readonly dip: string;
  /** Below the tape: what the thick part means, or that there is none. */
  readonly below: string;
  readonly ends: readonly [string, string];
}

export type Stretch = readonly [fromMHz: number, toMHz: number];

export const GOOD_SWR = 2;

/** Where the SWR is under 2:1, by straight lines between the points. */
export function goodStretches(sweep: readonly SweepPoint[]): readonly Stretch[] {
  const stretches: [number, number][] = [];
  for (let index = 1; index < sweep.length; index++) {
    const [a, b] = [sweep[index - 1], sweep[index]];
    if (a === undefined || b === undefined || Math.min(a.swr, b.swr) >= GOOD_SWR) continue;
    const crossing = a.mhz + ((GOOD_SWR - a.swr) / (b.swr - a.swr || 1)) * (b.mhz - a.mhz);
    const from = a.swr < GOOD_SWR ? a.mhz : crossing;
    const to = b.swr < GOOD_SWR ? b.mhz : crossing;
    const last = stretches.at(-1);
    if (last !== undefined && Math.abs(last[1] - from) < 1e-9) last[1] = to;
    else stretches.push([from, to]);
  }
  return stretches;
}

export type Dip =
  | { readonly kind: 'at'; readonly mhz: number }
  /** The SWR still falls at that edge. */
  | { readonly kind: 'lower' | 'higher' };

export function dipOf(sweep: readonly SweepPoint[]): Dip | null {
  const [first] = sweep;
  if (first === undefined) return null;
  const least = sweep.reduce((best, point) => (point.swr < best.swr ? point : best), first);
  if (least === first) return { kind: 'lower' };
  return least === sweep.at(-1) ? { kind: 'higher' } : { kind: 'at', mhz: least.mhz };
}

const WIDTH = 328;
const EDGE = 8;
const TOP = 44;
const HEIGHT = 22;
/** Room for the words of a mark. */
const WORD = 92;

export function SwrTape({ lowMHz, highMHz, aimMHz, dipMHz, good, words, label }: SwrTapeProps) {
  const perMHz = (WIDTH - 2 * EDGE) / Math.max(highMHz - lowMHz, 1e-6);
  const x = (mhz: number): number => EDGE + (Math.min(Math.max(mhz, lowMHz), highMHz) - lowMHz) * perMHz;
  const marks = dipMHz === null ? [aimMHz] : [aimMHz, dipMHz];
  const [aimSpot = 0, dipSpot = 0] = spread(marks.map(x), WORD, 46, WIDTH - 46);
  return (
    <Drawing width={WIDTH} height={90} label={label}>
      <path
        class="s"
        d={`M${at(EDGE, TOP)}v${HEIGHT}M${at(WIDTH - EDGE, TOP)}v${HEIGHT}M${at(EDGE, TOP + HEIGHT / 2)}H${WIDTH - EDGE}`}
      />
      {(good ?? []).map(([from, to]) => (
        <rect class="f" x={px(x(from))} y={TOP + 2} width={px(Math.max(x(to) - x(from), 2))} height={HEIGHT - 4} />
      ))}
      <path class="m" d={`M${at(aimSpot, 21)}L${at(x(aimMHz), TOP - 12)}V${TOP + HEIGHT}`} />
      <circle class="o" cx={px(x(aimMHz))} cy={TOP - 8} r={6} />
      <text x={px(aimSpot)} y={16} text-anchor="middle">
        {words.aim}
      </text>
      {dipMHz !== null && (
        <>
          <path class="m" d={`M${at(dipSpot, 21)}L${at(x(dipMHz), TOP - 14)}`} />
          <path class="mk" d={`M${at(x(dipMHz), TOP + 2)}l-8 -17h16z`} />
          <text class="k" x={px(dipSpot)} y={16} text-anchor="middle">
            {words.dip}
          </text>
        </>
      )}
      <text x={0} y={86}>
        {words.ends[0]}
      </text>
      <text x={WIDTH / 2} y={86} text-anchor="middle">
        {words.below}
      </text>
      <text x={WIDTH} y={86} text-anchor="end">
        {words.ends[1]}
      </text>
    </Drawing>
  );
}
