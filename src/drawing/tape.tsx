/** A measuring tape of megahertz for one band: where the band is, where the dip was and is, and where it should go. One message, no axis. */
import { at, Drawing, px, spread } from './figures';

export interface TapeMark {
  readonly atMHz: number;
  readonly kind: 'was' | 'now' | 'aim';
  /** Two short lines above the tape. */
  readonly words: readonly [string, string];
}

interface TapeProps {
  readonly band: { readonly lowMHz: number; readonly highMHz: number; readonly name: string };
  readonly marks: readonly TapeMark[];
  readonly label: string;
}

const WIDTH = 328;
const EDGE = 26;
const TOP = 72;
const HEIGHT = 28;
const WORD = 62;
/** Half a line of words, to each letter, px, and the least of it. */
const HALF_LETTER = 4.7;
const HALF_LINE = 28;

const steps = [0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5] as const;

export function Tape({ band, marks, label }: TapeProps) {
  const all = [band.lowMHz, band.highMHz, ...marks.map(({ atMHz }) => atMHz)];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const perMHz = (WIDTH - 2 * EDGE) / Math.max(high - low, 1e-6);
  const x = (mhz: number): number => EDGE + (mhz - low) * perMHz;
  const major = steps.find((step) => step * perMHz >= 54) ?? 10;
  const letters = Math.max(...marks.flatMap(({ words }) => words.map((line) => line.length)));
  const half = Math.max(HALF_LINE, HALF_LETTER * letters);
  const spots = spread(
    marks.map(({ atMHz }) => x(atMHz)),
    WORD,
    half,
    WIDTH - half,
  );
  return (
    <Drawing width={WIDTH} height={156} label={label}>
      <rect class="tg" x={0} y={TOP} width={WIDTH} height={HEIGHT} />
      <Ticks low={low} major={major} x={x} />
      <path class="s" d={`M${at(x(band.lowMHz), 126)}v8H${px(x(band.highMHz))}v-8`} />
      <text
        class="k"
        x={px(Math.min(Math.max((x(band.lowMHz) + x(band.highMHz)) / 2, 50), WIDTH - 50))}
        y={152}
        text-anchor="middle"
      >
        {band.name}
      </text>
      {marks.map((mark, index) => (
        <MarkOn mark={mark} x={x(mark.atMHz)} spot={spots[index] ?? 0} />
      ))}
    </Drawing>
  );
}

interface TicksProps {
  readonly low: number;
  readonly major: number;
  x(mhz: number): number;
}

function Ticks({ low, major, x }: TicksProps) {
  const minor = major / 5;
  const ticks: string[] = [];
  const labels: { readonly x: number; readonly text: string }[] = [];
  const from = Math.ceil((low - 20 / Math.max(x(1) - x(0), 1e-6)) / minor);
  for (let index = from; x(index * minor) <= WIDTH - 4; index++) {
    const place = x(index * minor);
    if (place < 4) continue;
    const whole = index % 5 === 0;
    ticks.push(`M${at(place, TOP)}v${whole ? 16 : 8}`);
    if (whole && place > 18 && place < WIDTH - 18)
      labels.push({ x: place, text: (index * minor).toFixed(major < 0.095 ? 2 : 1) });
  }
  return (
    <>
      <path class="m" d={ticks.join('')} />
      {labels.map((each) => (
        <text x={px(each.x)} y={119} text-anchor="middle">
          {each.text}
        </text>
      ))}
    </>
  );
}

/** `was`: a plain line. `now`: red pencil. `aim`: an open ring. The words stand above, pushed apart where marks are close. */
const MarkOn = ({ mark, x, spot }: { readonly mark: TapeMark; readonly x: number; readonly spot: number }) => (
  <>
    <path class="s" d={`M${at(spot, 45)}L${at(x, TOP - (mark.kind === 'now' ? 18 : 0))}`} />
    {mark.kind === 'now' && <path class="mk" d={`M${at(x, TOP)}l-9 -20h18z`} />}
    {mark.kind === 'aim' && <circle class="o" cx={px(x)} cy={62} r={6} />}
    <text class={mark.kind === 'now' ? 'k' : undefined} x={px(spot)} y={22} text-anchor="middle">
      {mark.words[0]}
    </text>
    <text class={mark.kind === 'now' ? 'k' : undefined} x={px(spot)} y={40} text-anchor="middle">
      {mark.words[1]}
    </text>
  </>
);
