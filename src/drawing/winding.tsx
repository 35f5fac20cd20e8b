/**
 * A wound ring from the front. One strand across the face for each pass through the hole: strands drawn = turns to wind, some of them
 * numbered. The first wire is drawn plain, the second hollow, the third broken.
 */
import { at, Drawing, px } from './figures';
import { ENDS_PX, leadSpot, WindingEnds, type WindingNode } from './winding-ends';
import {
  around,
  CENTRE,
  INNER_PX,
  OUTER_PX,
  SLANT_DEG,
  type Strand,
  strandsOf,
  type WoundWire,
} from './winding-strands';

interface WindingProps {
  /** Wires of as many turns each are wound side by side as one; of different turns they are windings that touch nowhere. */
  readonly wires: readonly WoundWire[];
  /** Coax or a pair for a choke: half up one side, then across. Wire for a transformer: all round. */
  readonly isChoke: boolean;
  /** Turns from the start where the tap is soldered. */
  readonly tapAt?: number;
  /** What the ends of the wires are called, where there are several: first, second, third. */
  readonly names?: readonly string[];
  /** What joins what; left out where ends need no telling apart. */
  readonly nodes?: readonly WindingNode[];
  readonly label: string;
}

const WIDTH = 270;
const BARE_PX = 212;
/** Thinnest and thickest a wire is drawn; coax may be thicker. */
const WIRE_PX = 5;

export function Winding({ wires, isChoke, tapAt, names = [], nodes = [], label }: WindingProps) {
  const { strands, crossAfter, widthPx } = strandsOf(wires, isChoke);
  const width = px(isChoke && wires.length === 1 ? widthPx : Math.min(widthPx, WIRE_PX));
  const low = nodes.length > 0 || names.length > 0 ? ENDS_PX.leads : BARE_PX - 2;
  const tap = strands.find(({ turn }) => turn === tapAt);
  const ends = wires.map(({ turns, done }, wire) => {
    const own = strands.filter((strand) => strand.wire === wire);
    return { first: own[0], last: own.at(-1), isBegun: done > 0, isDone: done === turns, wire };
  });
  return (
    <Drawing width={WIDTH} height={heightOf(nodes, names)} label={label}>
      <circle class="tg" cx={CENTRE[0]} cy={CENTRE[1]} r={OUTER_PX} />
      <circle class="o" cx={CENTRE[0]} cy={CENTRE[1]} r={INNER_PX} />
      <Across strands={strands} after={crossAfter} width={width} />
      {strands.map((strand) => (
        <StrandLine strand={strand} width={width} />
      ))}
      {ends.map(({ first, last, isBegun, isDone, wire }) => (
        <>
          {first !== undefined && isBegun && (
            <Lead strand={first} width={width} x={leadSpot(wire, 'start', wires.length)} low={low} />
          )}
          {last !== undefined && isDone && (
            <Lead
              strand={last}
              width={width}
              x={leadSpot(wire, 'end', wires.length)}
              low={crossAfter === 0 ? low : 2}
            />
          )}
        </>
      ))}
      <Numbers strands={strands} turns={Math.max(...wires.map(({ turns }) => turns))} tapAt={tapAt} />
      {tap !== undefined && <path class="mk" d={pinAt(tap)} />}
      {(nodes.length > 0 || names.length > 0) && (
        <WindingEnds wires={wires.length} names={names} nodes={nodes} width={WIDTH} />
      )}
    </Drawing>
  );
}

function heightOf(nodes: readonly WindingNode[], names: readonly string[]): number {
  if (nodes.length > 0) return ENDS_PX.bottom(nodes);
  return names.length > 0 ? ENDS_PX.leads + 10 : BARE_PX;
}

/** Drawn so that three wires beside each other are told apart without colour. */
const looks = [
  { core: 0, dash: undefined },
  { core: 0.45, dash: undefined },
  { core: 0, dash: '5 3.5' },
] as const;

interface WireLineProps {
  readonly d: string;
  readonly width: number;
  readonly wire: number;
  /** What keeps neighbours apart. */
  readonly edge: string;
}

function WireLine({ d, width, wire, edge }: WireLineProps) {
  const { core, dash } = looks[wire] ?? looks[0];
  return (
    <g fill="none" stroke-linecap={dash === undefined ? 'round' : 'butt'} stroke-linejoin="round">
      <path d={d} stroke={edge} stroke-width={width + 3} />
      {dash !== undefined && <path d={d} stroke="var(--paper)" stroke-width={width} />}
      <path d={d} stroke="var(--ink)" stroke-width={width} stroke-dasharray={dash} />
      {core > 0 && <path d={d} stroke="var(--paper)" stroke-width={px(Math.max(width * core, 1.5))} />}
    </g>
  );
}

function StrandLine({
  strand: { inner, outer, wire, isOn },
  width,
}: {
  readonly strand: Strand;
  readonly width: number;
}) {
  const d = `M${at(...inner)}L${at(...outer)}`;
  return isOn ? (
    <WireLine d={d} width={width} wire={wire} edge="var(--tag)" />
  ) : (
    <path class="m" stroke-dasharray="2 4" d={d} />
  );
}

interface AcrossProps {
  readonly strands: readonly Strand[];
  readonly after: number;
  readonly width: number;
}

/** From the end of the first half to the start of the second, through the hole. */
function Across({ strands, after, width }: AcrossProps) {
  if (after === 0) return null;
  const pairs = strands.flatMap((from) => {
    const to = strands.find(({ wire, turn }) => wire === from.wire && turn === after + 1);
    return from.turn === after && to?.isOn === true ? [{ from, to }] : [];
  });
  return (
    <>
      {pairs.map(({ from, to }) => (
        <WireLine d={`M${at(...from.inner)}L${at(...to.inner)}`} width={width} wire={from.wire} edge="var(--paper)" />
      ))}
    </>
  );
}

interface LeadProps {
  readonly strand: Strand;
  readonly width: number;
  /** Where it comes out of the picture. */
  readonly x: number;
  readonly low: number;
}

function Lead({ strand, width, x, low }: LeadProps) {
  const [fromX, fromY] = strand.outer;
  const turn = fromY + (low - fromY) * 0.6;
  return (
    <WireLine
      d={`M${at(fromX, fromY)}Q${at(x, fromY + (low > fromY ? 4 : -4))} ${at(x, turn)}V${px(low)}`}
      width={width}
      wire={strand.wire}
      edge="var(--paper)"
    />
  );
}

interface NumbersProps {
  readonly strands: readonly Strand[];
  readonly turns: number;
  readonly tapAt: number | undefined;
}

const OUTSIDE_PX = OUTER_PX + 21;
const INSIDE_PX = INNER_PX - 20;

/** Every fifth and the tap outside the ring; the first and the last inside, since their wires come out there. */
function Numbers({ strands, turns, tapAt }: NumbersProps) {
  const longest = strands.find(({ turn }) => turn === turns)?.wire;
  const own = strands.filter(({ wire }) => wire === longest);
  const marks = [1, turns, ...(tapAt === undefined ? [] : [tapAt])];
  const told = own.filter(({ turn }) => {
    if (turn === 1) return tapAt === undefined || tapAt > 3;
    return marks.includes(turn) || (turn % 5 === 0 && marks.every((mark) => Math.abs(mark - turn) > 1));
  });
  return (
    <>
      {told.map(({ degrees, turn }) => {
        const isEnd = turn === 1 || turn === turns;
        const [x, y] = around(isEnd ? degrees : degrees + SLANT_DEG * 0.6, isEnd ? INSIDE_PX : OUTSIDE_PX);
        return (
          <text class="k halo" x={px(x)} y={px(y + 5.5)} text-anchor="middle">
            {turn}
          </text>
        );
      })}
    </>
  );
}

/** Red pencil in the hole, pointing out at a strand. */
function pinAt({ degrees }: Strand): string {
  const tip = around(degrees, INNER_PX - 9);
  const left = around(degrees - 16, INNER_PX - 25);
  const right = around(degrees + 16, INNER_PX - 25);
  return `M${at(...tip)}L${at(...left)}L${at(...right)}Z`;
}
