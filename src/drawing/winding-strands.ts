/**
 * Where the strands of a wound ring lie, seen from the front: one strand across the face for each pass of each wire through the hole. Wires
 * wound as one lie side by side; a second winding of fewer turns is spread between the turns of the first. Pixels of the drawing, degrees
 * clockwise from the right.
 */
export type Spot = readonly [number, number];

export interface WoundWire {
  readonly turns: number;
  /** Turns that are on already, while it is wound: the rest is still to come. */
  readonly done: number;
}

export interface Strand {
  /** Which of the wires, from 0. */
  readonly wire: number;
  /** Turn of that wire, from 1. */
  readonly turn: number;
  readonly degrees: number;
  readonly inner: Spot;
  readonly outer: Spot;
  readonly isOn: boolean;
}

export interface Strands {
  readonly strands: readonly Strand[];
  /** Turns after which the winding crosses the hole to the other side of the ring; 0 where it does not. */
  readonly crossAfter: number;
  /** Of one strand, px. */
  readonly widthPx: number;
}

export const CENTRE: Spot = [135, 104];
export const OUTER_PX = 76;
export const INNER_PX = 46;
/** How far a strand leans: the wire goes on round the ring from turn to turn. */
export const SLANT_DEG = 7;
const OVER_PX = 6;
const RAD = Math.PI / 180;

/** Where a winding all round starts and ends; and one wound half up each side. */
const ROUND: Spot = [125, 415];
const LEFT: Spot = [112, 248];
const RIGHT: Spot = [68, -68];
/** Fewer turns go on in one go. */
const LEAST_TO_CROSS = 4;

export const around = (degrees: number, radiusPx: number): Spot => [
  CENTRE[0] + radiusPx * Math.cos(degrees * RAD),
  CENTRE[1] + radiusPx * Math.sin(degrees * RAD),
];

interface Place {
  readonly degrees: number;
  readonly lean: number;
}

const row = (count: number, [from, to]: Spot): Place[] =>
  Array.from({ length: count }, (_, index) => ({
    degrees: count === 1 ? (from + to) / 2 : from + ((to - from) * index) / (count - 1),
    lean: Math.sign(to - from) * SLANT_DEG,
  }));

/** `isCrossed`: half the turns up one side, across the hole, then on up the other side, so that both ends come out apart. */
export function strandsOf(wires: readonly WoundWire[], isCrossed: boolean): Strands {
  const most = Math.max(...wires.map(({ turns }) => turns));
  const crossAfter = isCrossed && most >= LEAST_TO_CROSS ? Math.ceil(most / 2) : 0;
  const places = crossAfter === 0 ? row(most, ROUND) : [...row(crossAfter, LEFT), ...row(most - crossAfter, RIGHT)];
  const pitchDeg = crossAfter === 0 ? 290 / Math.max(most - 1, 1) : 136 / Math.max(crossAfter - 1, 1);
  const widthPx = Math.min(10, Math.max((pitchDeg * RAD * INNER_PX * 0.6) / wires.length - 1, 2));
  const apartDeg = (widthPx + 2.5) / (INNER_PX * RAD);
  const strands = wires.flatMap(({ turns, done }, wire) =>
    Array.from({ length: turns }, (_, index): Strand => {
      const place = turns === 1 ? 0 : Math.round((index * (most - 1)) / (turns - 1));
      const { degrees: middle, lean } = places[place] ?? { degrees: ROUND[0], lean: SLANT_DEG };
      const beside = ((wires.length - 1) / 2 - wire) * apartDeg;
      return {
        wire,
        turn: index + 1,
        degrees: middle + beside,
        inner: around(middle + beside, INNER_PX - OVER_PX),
        // As far apart outside as inside: wires that lie together stay together.
        outer: around(middle + lean + (beside * INNER_PX) / OUTER_PX, OUTER_PX + OVER_PX),
        isOn: index < done,
      };
    }),
  );
  return { strands, crossAfter, widthPx };
}
