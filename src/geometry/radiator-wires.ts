/** The radiator as straight stretches: each arm from the feed point outwards, or once round a loop. Sag is left out. */
import { goesOverSupport, reachedM, STEEPEST } from '../design/wire-slope';
import { distance, GROUND_WIRE_M, type Layout, plus, type Vector } from './layout';

/** Stretches in order; the first begins at the feed point unless `inwards`, when the last ends there. */
export interface Arm {
  readonly id: string;
  readonly points: readonly Vector[];
}

export const feedPointOf = (layout: Layout): Vector => [0, 0, feedHeightM(layout)];

/** An upright wire fed in its middle cannot hang lower than half its length. */
function feedHeightM({ radiator, fedAt, heightM, radiatorM }: Layout): number {
  const lowest = radiator === 'vertical' && fedAt === 'centre' ? radiatorM / 2 + 0.1 : GROUND_WIRE_M + 0.05;
  return Math.max(heightM, lowest);
}

/** Arms from the feed point, the driven one first; null for an antenna of the operator's own, whose shape is not known. */
export function armsOf(layout: Layout): readonly Arm[] | null {
  const feed = feedPointOf(layout);
  switch (layout.radiator) {
    case 'other':
      return null;
    case 'vertical':
      return uprightArms(layout, feed);
    case 'inverted-l':
      return [{ id: 'wire', points: invertedL(layout, feed) }];
    case 'loop':
      return [{ id: 'loop', points: loop(layout, feed) }];
    case 'folded-wire':
      return [{ id: 'folded', points: folded(layout, feed) }];
    default:
      return layout.fedAt === 'end'
        ? [{ id: 'wire', points: endFed(layout, feed) }]
        : [...linked(pair(layout, feed, layout.radiatorM, layout.feedFraction), layout), ...furtherPairs(layout, feed)];
  }
}

function uprightArms({ fedAt, radiatorM }: Layout, feed: Vector): readonly Arm[] {
  if (fedAt !== 'centre') return [{ id: 'wire', points: [feed, plus(feed, [0, 0, radiatorM])] }];
  return [
    { id: 'arm2', points: [feed, plus(feed, [0, 0, radiatorM / 2])] },
    { id: 'arm1', points: [feed, plus(feed, [0, 0, -radiatorM / 2])] },
  ];
}

/** A point `lengthM` away whose height is `toHeightM` or as near to it as the steepest slope allows. */
function slanted(from: Vector, sign: 1 | -1, lengthM: number, toHeightM: number, steepest = STEEPEST): Vector {
  const wantedM = Math.max(toHeightM, GROUND_WIRE_M);
  const toM = reachedM({ fromM: from[2], lengthM, wantedM, steepest });
  return [from[0] + sign * Math.sqrt(lengthM ** 2 - (toM - from[2]) ** 2), from[1], toM];
}

/** Two legs: level, drooping to both ends, or sloping through the feed point. */
function pair(
  { radiator, endHeightM, endSlope, supportHeightM }: Layout,
  feed: Vector,
  wholeM: number,
  shortPart: number,
): readonly Arm[] {
  const shortM = wholeM * shortPart;
  const longM = wholeM - shortM;
  const far = slanted(feed, 1, longM, endHeightM, endSlope);
  const highEndM = Math.max(supportHeightM, feed[2] + (feed[2] - far[2]) * (shortM / longM));
  const near =
    radiator === 'sloper' ? slanted(feed, -1, shortM, highEndM) : slanted(feed, -1, shortM, endHeightM, endSlope);
  return [
    { id: 'arm2', points: [feed, far] },
    { id: 'arm1', points: [feed, near] },
  ];
}

/** Legs up to their first open link, then the pieces that hang on beyond it, joined to nothing. */
function linked(legs: readonly Arm[], { links }: Layout): readonly Arm[] {
  if (!links.some(({ open }) => open)) return legs;
  const stretches = legs.map((leg) => stretchesOf(leg, links));
  return [...stretches.flatMap((all) => all.slice(0, 1)), ...stretches.flatMap((all) => all.slice(1))];
}

function stretchesOf({ id, points }: Arm, links: Layout['links']): readonly Arm[] {
  const [from, to] = points;
  if (from === undefined || to === undefined) return [];
  const legM = distance(from, to);
  const gaps = links.filter(({ open, atM, lengthM }) => open && atM + lengthM < legM);
  const startsM = [0, ...gaps.map(({ atM, lengthM }) => atM + lengthM)];
  const endsM = [...gaps.map(({ atM }) => atM), legM];
  return startsM.map((startM, index) => ({
    id: index === 0 ? id : `${id}-open${index}`,
    points: [startM, endsM[index] ?? legM].map((metres) => along({ from, to }, metres / legM)),
  }));
}

const along = ({ from, to }: { readonly from: Vector; readonly to: Vector }, share: number): Vector =>
  plus(from, plus(to, from, -1), share);

/** Places of the links of both legs, open or closed. */
export const linkPlacesOf = (layout: Layout): readonly Vector[] =>
  layout.links.length === 0
    ? []
    : pair(layout, feedPointOf(layout), layout.radiatorM, layout.feedFraction).flatMap(({ points: [from, to] }) =>
        from === undefined || to === undefined
          ? []
          : layout.links.map(({ atM, lengthM }) => along({ from, to }, (atM + lengthM / 2) / distance(from, to))),
      );

/** Ends of a shorter pair hang that far below the wire above them, m, or by that part of their leg where it is short. */
const SPREAD_M = 1;
const SPREAD_PART = 0.2;

/** Shorter legs on the same feed point, each pair fanned out below the one before it. */
function furtherPairs({ furtherPairsM, radiatorM, endHeightM, endSlope }: Layout, feed: Vector): readonly Arm[] {
  let slope = (slanted(feed, 1, radiatorM / 2, endHeightM, endSlope)[2] - feed[2]) / (radiatorM / 2);
  return furtherPairsM.flatMap((wholeM, index): readonly Arm[] => {
    const legM = wholeM / 2;
    slope -= Math.min(SPREAD_M / legM, SPREAD_PART);
    const endM = feed[2] + slope * legM;
    return [
      { id: `arm2-${index + 2}`, points: [feed, slanted(feed, 1, legM, endM)] },
      { id: `arm1-${index + 2}`, points: [feed, slanted(feed, -1, legM, endM)] },
    ];
  });
}

/** One wire from its fed end; over a support in its middle when that stands higher than both ends. */
function endFed(
  { radiator, radiatorM, endHeightM, endSlope, supportHeightM }: Layout,
  feed: Vector,
): readonly Vector[] {
  const peak = radiator === 'inverted-v' && goesOverSupport({ heightM: feed[2], endHeightM, supportHeightM });
  if (!peak) return [feed, slanted(feed, 1, radiatorM, endHeightM, endSlope)];
  const top = slanted(feed, 1, radiatorM / 2, supportHeightM);
  return [feed, top, slanted(top, 1, radiatorM / 2, endHeightM, endSlope)];
}

function invertedL({ radiatorM, riseM }: Layout, feed: Vector): readonly Vector[] {
  const corner = plus(feed, [0, 0, riseM]);
  return [feed, corner, plus(corner, [radiatorM - riseM, 0, 0])];
}

/** Once round from the feed point back to it; fed at a lower corner or in the middle of the lower side. */
function loop({ radiatorM, loopShape, loopPlane, fedAt }: Layout, feed: Vector): readonly Vector[] {
  const sides = loopShape === 'square' ? 4 : 3;
  const side = radiatorM / sides;
  const up: Vector = loopPlane === 'upright' ? [0, 0, 1] : [0, 1, 0];
  const corners: readonly Vector[] =
    sides === 4
      ? [[0, 0, 0], [side, 0, 0], plus([side, 0, 0], up, side), plus([0, 0, 0], up, side)]
      : [[0, 0, 0], [side, 0, 0], plus([side / 2, 0, 0], up, side * Math.sqrt(0.75))];
  const [first = [0, 0, 0], ...others] = corners;
  const at: Vector = fedAt === 'corner' ? first : [side / 2, 0, 0];
  const ring = fedAt === 'corner' ? [first, ...others, first] : [at, ...others, first, at];
  return ring.map((point) => plus(plus(feed, point), at, -1));
}

/** Distance between the two wires of a folded dipole, m: common practice for wire with spacers. */
export const FOLD_SPACING_M = 0.1;

function folded({ radiatorM }: Layout, feed: Vector): readonly Vector[] {
  const half = radiatorM / 2;
  const up: Vector = [0, 0, FOLD_SPACING_M];
  const right = plus(feed, [half, 0, 0]);
  const left = plus(feed, [-half, 0, 0]);
  return [feed, right, plus(right, up), plus(left, up), left, feed];
}
