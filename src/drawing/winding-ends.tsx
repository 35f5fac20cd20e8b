/**
 * The ends of a winding below its ring and what joins what: starts to the left, ends to the right, a line between two that are joined, each
 * node with the word for what else goes there. Lines that only cross are not joined: a joint has its dots.
 */
import { at, px } from './figures';

export type WireEnd = 'start' | 'end';

export interface WindingPost {
  /** Which of the wires, from 0. */
  readonly wire: number;
  readonly end: WireEnd;
}

export interface WindingNode {
  /** One free end, or two that are joined; the tap where there is none. */
  readonly posts: readonly WindingPost[];
  /** What goes there; empty where nothing does. */
  readonly words: string;
}

/** Where the leads stop, and the rows below them, px of the drawing. */
const LEADS_PX = 214;
const FIRST_JOINT_PX = 232;
const ROW_PX = 22;

const isJoint = ({ posts }: WindingNode): boolean => posts.length > 1;
const joints = (nodes: readonly WindingNode[]): number => nodes.filter(isJoint).length;
const wordsRow = (nodes: readonly WindingNode[]): number =>
  joints(nodes) === 0 ? LEADS_PX + 22 : FIRST_JOINT_PX + (joints(nodes) - 1) * ROW_PX + 26;

export const ENDS_PX = {
  leads: LEADS_PX,
  /** Of the whole drawing. */
  bottom: (nodes: readonly WindingNode[]): number => wordsRow(nodes) + (freeRows(nodes) - 1) * ROW_PX + 8,
} as const;

/** Two windings that touch nowhere have two free ends to a side, and a row of words for each. */
const freeRows = (nodes: readonly WindingNode[]): number =>
  Math.max(
    1,
    ...(['start', 'end'] as const).map(
      (side) => nodes.filter((node) => !isJoint(node) && node.posts[0]?.end === side).length,
    ),
  );

/** Where along the bottom a wire comes out, px. */
export function leadSpot(wire: number, end: WireEnd, wires: number): number {
  if (wires === 1) return end === 'start' ? 66 : 204;
  const apart = wires === 2 ? 42 : 27;
  return end === 'start' ? 26 + wire * apart : 244 - (wires - 1 - wire) * apart;
}

interface WindingEndsProps {
  readonly wires: number;
  readonly names: readonly string[];
  readonly nodes: readonly WindingNode[];
  readonly width: number;
}

export function WindingEnds({ wires, names, nodes, width }: WindingEndsProps) {
  const joined = nodes.filter(isJoint);
  const free = nodes.filter((node) => !isJoint(node));
  const spot = ({ wire, end }: WindingPost): number => leadSpot(wire, end, wires);
  return (
    <>
      {joined.map(({ posts, words }, row) => (
        <Joint from={posts.map(spot)} y={FIRST_JOINT_PX + row * ROW_PX} middle={width / 2} words={words} />
      ))}
      {free.map((node) => {
        const [post] = node.posts;
        if (post === undefined) return <TapWords words={node.words} y={LEADS_PX} width={width} />;
        const row = free.filter(({ posts: [other] }) => other?.end === post.end).indexOf(node);
        return (
          <FreeEnd x={spot(post)} end={post.end} y={wordsRow(nodes) + row * ROW_PX} words={node.words} width={width} />
        );
      })}
      {names.flatMap((name, wire) =>
        (['start', 'end'] as const).map((end) => (
          <text class="k halo" x={px(leadSpot(wire, end, wires))} y={px(LEADS_PX - 3)} text-anchor="middle">
            {name}
          </text>
        )),
      )}
    </>
  );
}

interface JointProps {
  readonly from: readonly number[];
  readonly y: number;
  /** Between the leads of both sides. */
  readonly middle: number;
  readonly words: string;
}

function Joint({ from, y, middle, words }: JointProps) {
  const [left, right] = [Math.min(...from), Math.max(...from)];
  return (
    <>
      <path class="s" d={`M${at(left, LEADS_PX)}V${px(y)}H${px(right)}V${px(LEADS_PX)}`} />
      {from.map((x) => (
        <circle class="f" cx={px(x)} cy={px(y)} r={4} />
      ))}
      {words !== '' && (
        <text class="halo" x={px(middle)} y={px(y + 5.5)} text-anchor="middle">
          {words}
        </text>
      )}
    </>
  );
}

interface FreeEndProps {
  readonly x: number;
  readonly end: WireEnd;
  readonly y: number;
  readonly words: string;
  readonly width: number;
}

/** As wide as the words may be before they would leave the drawing at its edge; longer ones are set against it. */
const CENTRED_PX = 26;

function FreeEnd({ x, end, y, words, width }: FreeEndProps) {
  const isLeft = end === 'start';
  const edge = isLeft ? Math.max(x - CENTRED_PX, 0) : Math.min(x + CENTRED_PX, width);
  return (
    <>
      <path class="s" d={`M${at(x, LEADS_PX)}V${px(y - 16)}`} />
      <text class="halo" x={px(edge)} y={px(y)} text-anchor={isLeft ? 'start' : 'end'}>
        {words}
      </text>
    </>
  );
}

/** Between the two leads, with red pencil pointing up as it does in the ring. */
const TapWords = ({ words, y, width }: { readonly words: string; readonly y: number; readonly width: number }) => (
  <>
    <path class="mk" d={`M${at(width / 2, y - 25)}l-6 11h12Z`} />
    <text class="halo" x={px(width / 2)} y={px(y + 1)} text-anchor="middle">
      {words}
    </text>
  </>
);
