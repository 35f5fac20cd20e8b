/**
 * The ground on which mast, wire or rope can come down, from above and to scale: striped as far as every overhead line must stay from the
 * wire and what holds it. The nearest line the operator told of stands somewhere on a heavy outline, for nobody asked on which side.
 */
import type { Vector } from '../geometry/layout';
import { Drawing, Grid, Hatch, path, px } from './figures';
import { type MapFrame, mapFrame } from './map-frame';
import type { Scale } from './scale';
import type { Site } from './site';

interface FallPathProps {
  readonly site: Site;
  readonly distanceM: number;
  /** How far the nearest overhead line is; null when not told, or when it would lie outside the drawing (see isLineDrawn). */
  readonly lineM: number | null;
  readonly words: {
    readonly label: string;
    /** The distance, one unit to a line. */
    readonly distance: readonly [string, string];
  };
  readonly id: string;
}

const WIDTH = 324;
const MOST_HEIGHT = 300;
const MARGIN = 4;
const EDGE_PX = 2;
/** Keeps the wire apart from the stripes. */
const HALO_PX = 13;
const NOTE = { width: 104, height: 44, line: 19 } as const;

/** A line farther off than that would leave the antenna too small to see. */
const MOST_LINE_SHARE = 1.5;
const LINE_PX = 5;

export const isLineDrawn = (distanceM: number, lineM: number | null): boolean =>
  lineM !== null && lineM <= MOST_LINE_SHARE * distanceM;

const reachedM = (distanceM: number, lineM: number | null): number =>
  lineM !== null && isLineDrawn(distanceM, lineM) ? Math.max(distanceM, lineM) : distanceM;

/** What can fall: each wire and each support, as lines seen from above; a support is a line without length. */
const fallersOf = ({ arms, supports }: Site): readonly (readonly Vector[])[] => [
  ...arms,
  ...supports.map(({ foot }) => [foot, foot]),
];

export const fallPathScale = (site: Site, distanceM: number, lineM: number | null): Scale =>
  frameOf(fallersOf(site), reachedM(distanceM, lineM));

function frameOf(fallers: readonly (readonly Vector[])[], distanceM: number): MapFrame {
  const reach = (axis: 0 | 1): readonly [number, number] => {
    const all = fallers.flat().map((point) => point[axis]);
    return [Math.min(...all) - distanceM, Math.max(...all) + distanceM];
  };
  return mapFrame(reach, WIDTH, MOST_HEIGHT, MARGIN);
}

export function FallPath({ site, distanceM, lineM, words, id }: FallPathProps) {
  const fallers = fallersOf(site);
  const { at: place, height, squareM, pixelsPerM } = frameOf(fallers, reachedM(distanceM, lineM));
  const lines = fallers.map((points) => path(points.map(place)));
  const wires = site.arms.map((points) => path(points.map(place)));
  const [feedX, feedY] = place(site.feed);
  const reachPx = distanceM * pixelsPerM;
  const band = (stroke: string, width: number, of: readonly string[] = lines) =>
    of.map((d) => <path class="scaled" d={d} stroke={stroke} stroke-width={px(width)} />);
  return (
    <Drawing width={WIDTH} height={height} label={words.label} kind="site">
      <Hatch id={id} />
      <Grid x0={feedX} y0={feedY} step={squareM * pixelsPerM} width={WIDTH} height={height} />
      <g fill="none" stroke-linejoin="round" stroke-linecap="round">
        {band('currentColor', 2 * (reachPx + EDGE_PX))}
        {band('var(--paper)', 2 * reachPx)}
        {band(`url(#${id})`, 2 * reachPx)}
        {band('var(--paper)', HALO_PX)}
      </g>
      {lineM !== null && isLineDrawn(distanceM, lineM) && (
        <Outline id={`${id}-line`} lines={lines} reachPx={lineM * pixelsPerM} height={height} />
      )}
      {wires.map((d) => (
        <path class="w" d={d} />
      ))}
      {site.supports.map(({ foot }) => {
        const [x, y] = place(foot);
        return <circle class="o" cx={px(x)} cy={px(y)} r={5} />;
      })}
      <Distance from={lowestOf(fallers, place)} reachPx={reachPx} text={words.distance} />
    </Drawing>
  );
}

interface OutlineProps {
  readonly id: string;
  readonly lines: readonly string[];
  readonly reachPx: number;
  readonly height: number;
}

/** All places at one distance from what can fall: a mask takes the inside out, so that stripes show through. */
function Outline({ id, lines, reachPx, height }: OutlineProps) {
  const spread = (stroke: string, width: number) =>
    lines.map((d) => <path class="scaled" d={d} stroke={stroke} stroke-width={px(width)} />);
  return (
    <>
      <mask id={id} maskUnits="userSpaceOnUse" x={0} y={0} width={WIDTH} height={px(height)}>
        <g fill="none" stroke-linejoin="round" stroke-linecap="round">
          {spread('white', 2 * reachPx + LINE_PX)}
          {spread('black', Math.max(2 * reachPx - LINE_PX, 0))}
        </g>
      </mask>
      <rect class="f" width={WIDTH} height={px(height)} mask={`url(#${id})`} />
    </>
  );
}

/** The part of the antenna that stands lowest in the drawing, as near to its middle as there is one. */
function lowestOf(fallers: readonly (readonly Vector[])[], place: MapFrame['at']): readonly [number, number] {
  const offMiddle = ([x]: readonly [number, number]): number => Math.abs(x - WIDTH / 2);
  const places = fallers.flat().map(place);
  const lowest = Math.max(...places.map(([, y]) => y));
  const low = places.filter(([, y]) => y > lowest - 1).sort((a, b) => offMiddle(a) - offMiddle(b));
  return low[0] ?? [WIDTH / 2, 0];
}

interface DistanceProps {
  readonly from: readonly [number, number];
  readonly reachPx: number;
  readonly text: readonly [string, string];
}

/** A dimension line from the antenna to the edge of the stripes; its figures stand on paper of their own. */
function Distance({ from: [x, y], reachPx, text }: DistanceProps) {
  const edge = y + reachPx;
  const middle = (y + edge) / 2;
  const left = x > WIDTH - NOTE.width - 8 ? x - NOTE.width - 8 : x + 8;
  const line = `M${px(x)} ${px(y + 8)}V${px(edge)}M${px(x - 7)} ${px(edge)}H${px(x + 7)}`;
  return (
    <>
      <path class="scaled" d={line} fill="none" stroke="var(--paper)" stroke-width={9} />
      <path class="s" d={line} />
      <rect class="pp" x={px(left)} y={px(middle - NOTE.height / 2)} width={NOTE.width} height={NOTE.height} />
      {text.map((words, index) => (
        <text
          class={index === 0 ? 'k' : undefined}
          x={px(left + NOTE.width / 2)}
          y={px(middle - 4 + index * NOTE.line)}
          text-anchor="middle"
        >
          {words}
        </text>
      ))}
    </>
  );
}
