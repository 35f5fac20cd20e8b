/**
 * A wound ring from the front. One strand across the face for each pass through the hole: strands drawn = turns to wind, some of them
 * numbered. Coax is wound half up one side, across the hole, then on up the other side, so that both ends come out apart.
 */
import { at, Drawing, px } from './figures';

export interface WindingProps {
  readonly turns: number;
  /** Coax for a choke, wire for a transformer. */
  readonly conductor: 'coax' | 'wire';
  /** Turns from the start where the tap is soldered. */
  readonly tapAt?: number;
  /** Turns that carry a second wire beside the first, drawn hollow. */
  readonly pairedTurns?: number;
  /** Turns that are on already, while it is wound: the rest is drawn as still to come. All, when left out. */
  readonly done?: number;
  readonly label: string;
}

const WIDTH = 300;
const HEIGHT = 212;
const CENTRE: readonly [number, number] = [150, 100];
const OUTER = 78;
const INNER = 47;
const RAD = Math.PI / 180;
/** Degrees round the ring, clockwise from the right: where a single winding starts and ends. */
const SINGLE: readonly [number, number] = [125, 415];
const LEFT: readonly [number, number] = [112, 248];
const RIGHT: readonly [number, number] = [68, -68];

const around = (degrees: number, radius: number): readonly [number, number] => [
  CENTRE[0] + radius * Math.cos(degrees * RAD),
  CENTRE[1] + radius * Math.sin(degrees * RAD),
];

interface Strand {
  readonly inner: readonly [number, number];
  readonly outer: readonly [number, number];
  readonly degrees: number;
  readonly number: number;
}

const SLANT = 7;

const row = (count: number, [from, to]: readonly [number, number], first: number): Strand[] =>
  Array.from({ length: count }, (_, index) => {
    const degrees = count === 1 ? (from + to) / 2 : from + ((to - from) * index) / (count - 1);
    const slant = Math.sign(to - from) * SLANT;
    return {
      inner: around(degrees, INNER - 6),
      outer: around(degrees + slant, OUTER + 6),
      degrees,
      number: first + index,
    };
  });

function strandsOf({ turns, conductor }: WindingProps): { readonly strands: Strand[]; readonly crossAfter: number } {
  if (conductor === 'wire' || turns < 4) return { strands: row(turns, SINGLE, 1), crossAfter: 0 };
  const left = Math.ceil(turns / 2);
  return { strands: [...row(left, LEFT, 1), ...row(turns - left, RIGHT, left + 1)], crossAfter: left };
}

/** Numbered: the first, the last, every fifth, and those that mark something. */
function isNumbered(number: number, { turns, tapAt, pairedTurns }: WindingProps): boolean {
  const marks = [1, turns, tapAt, pairedTurns];
  if (marks.includes(number)) return true;
  return number % 5 === 0 && marks.every((mark) => mark === undefined || Math.abs(mark - number) > 1);
}

export function Winding(props: WindingProps) {
  const { turns, tapAt, pairedTurns = 0, label, conductor, done = turns } = props;
  const { strands, crossAfter } = strandsOf(props);
  const gap =
    (conductor === 'coax' && crossAfter > 0 ? 136 / Math.max(crossAfter - 1, 1) : 290 / Math.max(turns - 1, 1)) *
    RAD *
    INNER;
  const width = px(Math.min(conductor === 'coax' ? 10 : 5, Math.max(gap * 0.5, 2)));
  const [first, last] = [strands[0], strands.at(-1)];
  const tap = strands[(tapAt ?? 0) - 1];
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={label}>
      <circle class="tg" cx={CENTRE[0]} cy={CENTRE[1]} r={OUTER} />
      <circle class="o" cx={CENTRE[0]} cy={CENTRE[1]} r={INNER} />
      {crossAfter > 0 && done > crossAfter && <Across strands={strands} after={crossAfter} width={width} />}
      {strands.map((strand) =>
        strand.number <= done ? (
          <StrandLine strand={strand} width={width} hollow={strand.number <= pairedTurns} />
        ) : (
          <StrandToCome strand={strand} />
        ),
      )}
      {first !== undefined && done > 0 && <Lead strand={first} width={width} down />}
      {last !== undefined && done === turns && <Lead strand={last} width={width} down={crossAfter === 0} />}
      {strands
        .filter(({ number }) => isNumbered(number, props))
        .map(({ degrees, number }) => {
          const [x, y] = around(degrees, INNER - 20);
          return (
            <text class="k halo" x={px(x)} y={px(y + 5.5)} text-anchor="middle">
              {number}
            </text>
          );
        })}
      {tap !== undefined && <path class="mk" d={pinAt(tap)} />}
    </Drawing>
  );
}

/** The strand has an edge in the ring's colour, so that neighbours stay apart; a second wire beside it is drawn hollow. */
const StrandLine = ({
  strand,
  width,
  hollow,
}: {
  readonly strand: Strand;
  readonly width: number;
  readonly hollow: boolean;
}) => {
  const d = `M${at(...strand.inner)}L${at(...strand.outer)}`;
  const beside = `M${at(...around(strand.degrees + 4.5, INNER - 4))}L${at(...around(strand.degrees + 4.5 + SLANT, OUTER + 4))}`;
  return (
    <g fill="none" stroke-linecap="round">
      <path d={d} stroke="var(--tag)" stroke-width={width + 4} />
      <path d={d} stroke="var(--ink)" stroke-width={width} />
      {hollow && <path d={beside} stroke="var(--ink)" stroke-width={width + 1} />}
      {hollow && <path d={beside} stroke="var(--paper)" stroke-width={Math.max(width - 2, 1.5)} />}
    </g>
  );
};

const StrandToCome = ({ strand }: { readonly strand: Strand }) => (
  <path class="m" stroke-dasharray="2 4" d={`M${at(...strand.inner)}L${at(...strand.outer)}`} />
);

/** From the end of the first half to the start of the second, through the hole. */
const Across = ({
  strands,
  after,
  width,
}: {
  readonly strands: readonly Strand[];
  readonly after: number;
  readonly width: number;
}) => {
  const [from, to] = [strands[after - 1], strands[after]];
  if (from === undefined || to === undefined) return null;
  const d = `M${at(...from.inner)}L${at(...to.inner)}`;
  return (
    <g fill="none" stroke-linecap="round">
      <path d={d} stroke="var(--paper)" stroke-width={width + 4} />
      <path d={d} stroke="var(--ink)" stroke-width={width} />
    </g>
  );
};

const Lead = ({ strand, width, down }: { readonly strand: Strand; readonly width: number; readonly down: boolean }) => {
  const [x, y] = strand.outer;
  const end = down ? HEIGHT - 2 : 2;
  const away = x + (x < CENTRE[0] ? -6 : 6);
  return (
    <path
      d={`M${at(x, y)}Q${at(away, y)} ${at(away, (y + end) / 2)}V${px(end)}`}
      fill="none"
      stroke="var(--ink)"
      stroke-width={width}
      stroke-linecap="round"
    />
  );
};

/** Red pencil at the outer end of a strand, pointing at it from outside. */
function pinAt({ degrees }: Strand): string {
  const tip = around(degrees + SLANT, OUTER + 12);
  const left = around(degrees + SLANT - 6, OUTER + 28);
  const right = around(degrees + SLANT + 6, OUTER + 28);
  return `M${at(...tip)}L${at(...left)}L${at(...right)}Z`;
}
