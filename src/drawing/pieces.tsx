/** Pictures of the cutting job: how many pieces are done, and where a piece is marked. */
import { at, Drawing, px } from './figures';

interface ProgressProps {
  readonly count: number;
  /** Pieces before this one are done; red pencil stands at it. */
  readonly now: number;
  readonly label: string;
}

const WIDTH = 328;

export function Progress({ count, now, label }: ProgressProps) {
  const x = (index: number): number => (count === 1 ? WIDTH / 2 : 14 + ((WIDTH - 28) * index) / (count - 1));
  const r = count > 12 ? 4.5 : 6;
  return (
    <Drawing width={WIDTH} height={28} label={label} kind="reading">
      <path class="w" d="M14 14H314" />
      {Array.from({ length: count }, (_, index) =>
        index === now ? (
          <path class="mk" d={`M${at(x(index), 24)}l-9 -18h18z`} />
        ) : (
          <circle class={index < now ? 'f' : 'o'} cx={px(x(index))} cy={14} r={r} />
        ),
      )}
    </Drawing>
  );
}

interface PieceProps {
  /** Whole piece, m. */
  readonly lengthM: number;
  readonly marksM: readonly number[];
  readonly rope: boolean;
  /** What the red pencil says, at each mark. */
  readonly words: readonly string[];
  readonly label: string;
}

/** The piece with red pencil at each mark. Places near an end are drawn a little inwards, so that they can be told from the end. */
export function Piece({ lengthM, marksM, rope, words, label }: PieceProps) {
  const x = (metres: number): number => 8 + Math.min(Math.max((312 * metres) / lengthM, 10), 302);
  return (
    <Drawing width={WIDTH} height={48} label={label}>
      <path class={rope ? 'r' : 'w'} d="M8 38H320" />
      <path class="m" d="M8 31v14M320 31v14" />
      {marksM.map((mark, index) => {
        const place = x(mark);
        const right = place > WIDTH / 2;
        return (
          <>
            <path class="mk" d={`M${at(place, 35)}l-8 -15h16z`} />
            <text
              class="k"
              x={px(right ? Math.min(place + 10, 320) : Math.max(place - 10, 8))}
              y={14}
              text-anchor={right ? 'end' : 'start'}
            >
              {words[index] ?? ''}
            </text>
          </>
        );
      })}
    </Drawing>
  );
}
