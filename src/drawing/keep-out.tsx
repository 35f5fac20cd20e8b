/** A striped edge all round the wire, at the distance people keep, to scale. */
import { px } from './figures';

interface KeepOutProps {
  /** The wire's stretches, as paths in the drawing. */
  readonly paths: readonly string[];
  /** Twice the distance, px. */
  readonly band: number;
  /** Of the stripes. */
  readonly id: string;
}

/** A narrower band would be all edge. */
export const LEAST_BAND_PX = 14;
const EDGE_PX = 10;

export const KeepOut = ({ paths, band, id }: KeepOutProps) => (
  <g fill="none" stroke-linejoin="round" stroke-linecap="round">
    {paths.map((d) => (
      <path class="scaled" d={d} stroke={`url(#${id})`} stroke-width={px(band)} />
    ))}
    {paths.map((d) => (
      <path class="scaled" d={d} stroke="var(--paper)" stroke-width={px(Math.max(band - EDGE_PX, 4))} />
    ))}
  </g>
);
