/**
 * Heights of a wire in the side view: the highest first and above the stripes, none said twice. The others stand where they cover least of the
 * wire, of each other and of what else is drawn.
 */
import { px } from './figures';

type Spot = readonly [number, number];

export interface HeightPoint {
  readonly x: number;
  readonly y: number;
  readonly metres: number;
}

interface HeightsProps {
  readonly points: readonly HeightPoint[];
  /** Lowest line for the first of the two lines of the highest, px: above the stripes. */
  readonly overTop: number;
  /** What is not to be covered, the worst first: wire, then coax, supports and ropes. */
  readonly wires: readonly (readonly Spot[])[];
  readonly others: readonly (readonly Spot[])[];
  readonly width: number;
  readonly ground: number;
  height(metres: number): readonly [string, string];
}

/** Nearer to each other than this, m, two heights are one. */
const SAME_M = 0.3;
/** Room for two lines of text: half its width, how far it reaches above the first line's foot and below it, px. */
const HALF_PX = 42;
const ABOVE_PX = 14;
const BELOW_PX = 22;
const LINE_PX = 17;

/** From the point to the foot of the first line: above and outward, above, beside, below. */
const tries = (outward: number): readonly Spot[] => [
  [30 * outward, -32],
  [0, -32],
  [56 * outward, -4],
  [-56 * outward, -4],
  [56 * outward, -30],
  [-56 * outward, -30],
  [56 * outward, 24],
  [-56 * outward, 24],
];

export function Heights({ height, ...drawn }: HeightsProps) {
  const spots = spotsOf(drawn);
  return (
    <>
      {spots.map(({ x, y, metres }) => {
        const [first, second] = height(metres);
        return (
          <>
            <text class="k halo" x={px(x)} y={px(y)} text-anchor="middle">
              {first}
            </text>
            <text class="halo" x={px(x)} y={px(y + LINE_PX)} text-anchor="middle">
              {second}
            </text>
          </>
        );
      })}
    </>
  );
}

function spotsOf(drawn: Omit<HeightsProps, 'height'>): readonly HeightPoint[] {
  const { points, overTop, width } = drawn;
  const topM = Math.max(...points.map(({ metres }) => metres));
  const middle = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const inside = (x: number): number => Math.min(Math.max(x, HALF_PX + 6), width - HALF_PX - 6);
  const taken: HeightPoint[] = [];
  for (const level of levelsOf(points)) {
    const [metres, most] = [level[0]?.metres ?? 0, taken.length < 2 ? COVERED : CROWDED];
    const isTop = topM - metres <= SAME_M;
    const [best] = level
      .flatMap(({ x, y }) =>
        isTop
          ? [{ x: inside(x), y: overTop, metres, cost: 0 }]
          : tries(x < middle - 1 ? -1 : 1).map(([dx, dy], order) => {
              const spot = { x: inside(x + dx), y: y + dy, metres };
              return { ...spot, cost: costOf(spot, taken, drawn) + order };
            }),
      )
      .sort((one, other) => one.cost - other.cost);
    if (best !== undefined && best.cost < most) taken.push({ x: best.x, y: best.y, metres });
  }
  return taken;
}

/** Points of one height together: the highest, then the lowest, then what lies between them and is told where room is left. */
function levelsOf(points: readonly HeightPoint[]): readonly (readonly HeightPoint[])[] {
  const levels: HeightPoint[][] = [];
  for (const point of [...points].sort((a, b) => b.metres - a.metres)) {
    const level = levels.find(([first]) => Math.abs((first?.metres ?? 0) - point.metres) <= SAME_M);
    if (level !== undefined) level.push(point);
    else if (point.metres > SAME_M) levels.push([point]);
  }
  return [...levels.slice(0, 1), ...levels.slice(1).slice(-1), ...levels.slice(1, -1)];
}

/** No height is set on top of another or into the ground: it is left out. So is one between highest and lowest that would hide the wire. */
const COVERED = 1000;
const CROWDED = 130;
const WIRE_COST = 6;
const OTHER_COST = 2;

function costOf(
  spot: HeightPoint,
  taken: readonly HeightPoint[],
  { wires, others, ground }: Pick<HeightsProps, 'wires' | 'others' | 'ground'>,
): number {
  const onAnother = taken.some(
    (other) => Math.abs(other.x - spot.x) < 2 * HALF_PX && Math.abs(other.y - spot.y) < ABOVE_PX + BELOW_PX + 2,
  );
  const isInGround = spot.y + BELOW_PX > ground + 2;
  return (
    (onAnother || isInGround ? COVERED : 0) + WIRE_COST * covered(spot, wires) + OTHER_COST * covered(spot, others)
  );
}

const STEP_PX = 4;

/** How many steps of the lines lie under the text. */
const covered = ({ x, y }: HeightPoint, lines: readonly (readonly Spot[])[]): number =>
  lines
    .flatMap((line) => line.slice(1).flatMap((to, index) => stepsOf(line[index] ?? to, to)))
    .filter(([px0, py]) => Math.abs(px0 - x) < HALF_PX && py > y - ABOVE_PX && py < y + BELOW_PX).length;

function stepsOf([x0, y0]: Spot, [x1, y1]: Spot): readonly Spot[] {
  const count = Math.max(Math.ceil(Math.hypot(x1 - x0, y1 - y0) / STEP_PX), 1);
  return Array.from({ length: count + 1 }, (_, i) => [x0 + ((x1 - x0) * i) / count, y0 + ((y1 - y0) * i) / count]);
}
