/** A striped edge all round the antenna, at the distance people keep from each part of it, to scale; and the distance that decides, measured. */
import { at, px } from './figures';

/** A stretch in the drawing, and twice its distance. */
export interface KeepOutBand {
  readonly d: string;
  readonly bandPx: number;
}

interface KeepOutProps {
  readonly bands: readonly KeepOutBand[];
  /** Of the stripes. */
  readonly id: string;
}

/** A narrower band would be all edge. */
const LEAST_BAND_PX = 14;
const EDGE_PX = 10;

export const KeepOut = ({ bands, id }: KeepOutProps) => {
  const wide = bands.filter(({ bandPx }) => bandPx > LEAST_BAND_PX);
  return (
    <g fill="none" stroke-linejoin="round" stroke-linecap="round">
      {wide.map(({ d, bandPx }) => (
        <path class="scaled" d={d} stroke={`url(#${id})`} stroke-width={px(bandPx)} />
      ))}
      {wide.map(({ d, bandPx }) => (
        <path class="scaled" d={d} stroke="var(--paper)" stroke-width={px(Math.max(bandPx - EDGE_PX, 4))} />
      ))}
    </g>
  );
};

/** Ground that nobody stands on, seen from above: dotted. Where stretches overlap the dots are the same. */
export const DottedGround = ({ bands, id }: KeepOutProps) => (
  <>
    <defs>
      <pattern id={`${id}-dots`} width="7" height="7" patternUnits="userSpaceOnUse">
        <circle cx="3.5" cy="3.5" r="1.1" fill="currentColor" />
      </pattern>
    </defs>
    <g fill="none" stroke-linejoin="round" stroke-linecap="round">
      {bands.map(({ d, bandPx }) => (
        <path class="scaled" d={d} stroke={`url(#${id}-dots)`} stroke-width={px(bandPx)} />
      ))}
    </g>
  </>
);

interface MeasureProps {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

const TICK_PX = 5;

/** A measure from the deciding part to the edge of its stripes, upright or level; the caption has its number. */
export const Measure = ({ from: [x0, y0], to: [x1, y1] }: MeasureProps) => {
  const isLevel = Math.abs(x1 - x0) > Math.abs(y1 - y0);
  const tick = (x: number, y: number): string =>
    isLevel ? `M${at(x, y - TICK_PX)}V${px(y + TICK_PX)}` : `M${at(x - TICK_PX, y)}H${px(x + TICK_PX)}`;
  return <path class="s" d={`M${at(x0, y0)}L${at(x1, y1)}${tick(x0, y0)}${tick(x1, y1)}`} />;
};
