/**
 * Where an antenna sends, on the site drawing: a few spokes from the middle of the wire, as long as the share of the power that leaves that way,
 * with words where it points. From the side to the height above the horizon, from above round the horizon. No rings, no decibels.
 */
import type { Vector } from '../geometry/layout';
import { at, Drawing, Ground, path, px } from './figures';
import { scaleFor } from './scale';
import type { Site } from './site';

export interface Spoke {
  /** From the side: 0 on the right horizon, 90 straight up, 180 on the left. From above: 0 along the wire, 90 at a right angle to it. */
  readonly deg: number;
  /** Power that way, 1 for the strongest. */
  readonly share: number;
  /** Lines of words where it points; none for a spoke that speaks for itself. */
  readonly words: readonly string[];
}

interface SpokesProps {
  readonly site: Site;
  readonly spokes: readonly Spoke[];
  readonly label: string;
}

const WIDTH = 300;
/** Longest spoke, px; the rest is room for words. */
const SIDE_REACH = 72;
const TOP_REACH = 72;
/** The antenna in the middle of the drawing, px. */
const SITE_WIDE = 72;
const SITE_TALL = 34;

const toward = (x: number, y: number, deg: number, by: number): readonly [number, number] => [
  x + by * Math.cos((deg * Math.PI) / 180),
  y - by * Math.sin((deg * Math.PI) / 180),
];

/** Antennas are small beside where they send: the wire stands where the spokes begin, to its own scale. */
export function SideSpokes({ site, spokes, label }: SpokesProps) {
  const [cx, ground] = [WIDTH / 2, SIDE_REACH + 30];
  const wire = site.arms.flat();
  const xs = wire.map(([x]) => x);
  const [left, right, top] = [Math.min(...xs), Math.max(...xs), Math.max(...wire.map(([, , z]) => z))];
  const { pixelsPerM } = scaleFor(right - left, top, SITE_WIDE, SITE_TALL);
  const place = ([x, , z]: Vector): readonly [number, number] => [
    cx + (x - (left + right) / 2) * pixelsPerM,
    ground - z * pixelsPerM,
  ];
  return (
    <Drawing width={WIDTH} height={ground + 14} label={label} kind="site">
      <Ground y={ground} width={WIDTH} />
      <Fan spokes={spokes} x={cx} y={ground} reach={SIDE_REACH} />
      {site.arms.map((points) => (
        <path class="w" d={path(points.map(place))} />
      ))}
    </Drawing>
  );
}

export function TopSpokes({ site, spokes, label }: SpokesProps) {
  const [cx, cy] = [WIDTH / 2, TOP_REACH + 30];
  const wire = site.arms.flat();
  const middle = (axis: 0 | 1): number => {
    const all = wire.map((point) => point[axis]);
    return (Math.min(...all) + Math.max(...all)) / 2;
  };
  const span = (axis: 0 | 1): number => 2 * Math.max(...wire.map((point) => Math.abs(point[axis] - middle(axis))));
  const { pixelsPerM } = scaleFor(span(0), span(1), SITE_WIDE, SITE_WIDE);
  const place = ([x, y]: Vector): readonly [number, number] => [
    cx + (x - middle(0)) * pixelsPerM,
    cy - (y - middle(1)) * pixelsPerM,
  ];
  const [feedX, feedY] = place(site.feed);
  return (
    <Drawing width={WIDTH} height={2 * cy} label={label} kind="site">
      <Fan spokes={spokes} x={cx} y={cy} reach={TOP_REACH} />
      {site.arms.map((points) => (
        <path class="w" d={path(points.map(place))} />
      ))}
      <rect class="f" x={px(feedX - 4.5)} y={px(feedY - 4.5)} width={9} height={9} />
    </Drawing>
  );
}

const Fan = ({
  spokes,
  x,
  y,
  reach,
}: {
  readonly spokes: readonly Spoke[];
  readonly x: number;
  readonly y: number;
  readonly reach: number;
}) => (
  <>
    {spokes.map(({ deg, share, words }) => {
      const [ex, ey] = toward(x, y, deg, Math.max(reach * share, 3));
      const [rx, ry] = toward(x, y, deg, reach);
      const [wx, wy] = toward(x, y, deg, reach + 8);
      const lean = Math.cos((deg * Math.PI) / 180);
      const anchor = Math.abs(lean) < 0.3 ? 'middle' : lean > 0 ? 'start' : 'end';
      const up = Math.sin((deg * Math.PI) / 180);
      const first = up > 0.3 ? wy - 18 * (words.length - 1) : up < -0.3 ? wy + 14 : wy - 9 * (words.length - 1) + 5;
      return (
        <>
          {words.length > 0 && <path class="m" d={`M${at(x, y)}L${at(rx, ry)}`} />}
          <path class="w" d={`M${at(x, y)}L${at(ex, ey)}`} />
          <circle class="f" cx={px(ex)} cy={px(ey)} r={4} />
          {words.map((line, index) => (
            <text class="halo" x={px(wx)} y={px(first + 18 * index)} text-anchor={anchor}>
              {line}
            </text>
          ))}
        </>
      );
    })}
  </>
);
