/** A transformer's or choke's windings as they are drawn: a wire for each that passes the hole, and what its ends are joined to. */
import type { WindingNode, WindingPost } from '../../drawing/winding-ends';
import type { ChainItem } from '../../plan/plan-schema';
import { wireNames } from '../../words/en/devices';
import { drawings } from '../../words/en/drawings';
import type { Say } from '../say';

type Build = NonNullable<ChainItem['build']>;

export interface WindingPicture {
  /** Turns of each wire. */
  readonly turns: readonly number[];
  readonly tapAt: number | null;
  /** Of wires wound as one. */
  readonly names: readonly string[];
  readonly nodes: readonly WindingNode[];
  readonly label: string;
}

/** One picture for each ring that is wound by itself; none for a device that is not wound. */
export function windingPictures(item: ChainItem, say: Say): readonly WindingPicture[] {
  const { build } = item;
  if (build === null || build.turns === null) return [];
  if (item.device === 'choke') return chokePictures(build, say);
  if (build.secondaryTurns === null) return [];
  const [turns, second] = [build.turns, build.secondaryTurns];
  if ((build.strands ?? 1) > 1) return [together(item, build.strands ?? 1, Math.min(turns, second), say)];
  return [item.ports?.in === 'balanced' ? apart(turns, second, say) : tapped(turns, second, say)];
}

/** A choke of two windings in a row has a ring, and a drawing, for each. */
function chokePictures({ turns, secondaryTurns, count, strands }: Build, say: Say): readonly WindingPicture[] {
  const rings = [turns, secondaryTurns].filter((each) => each !== null);
  const cores = rings.length > 1 ? 1 : (count ?? 1);
  const wires = strands ?? 1;
  return rings.map((each) => ({
    turns: Array.from({ length: wires }, () => each),
    tapAt: null,
    names: [],
    nodes: [],
    label: say(wires > 1 ? drawings.chokePair : drawings.choke, { turns: each, cores }),
  }));
}

const start = (wire: number): WindingPost => ({ wire, end: 'start' });
const end = (wire: number): WindingPost => ({ wire, end: 'end' });

/** Shield at the start; the side of the lower impedance at the tap. */
function tapped(coaxTurns: number, antennaTurns: number, say: Say): WindingPicture {
  const [most, least] = [Math.max(coaxTurns, antennaTurns), Math.min(coaxTurns, antennaTurns)];
  const [atTap, atEnd] = sides(coaxTurns <= antennaTurns, say);
  const shield = say(drawings.toShield);
  return {
    turns: [most],
    tapAt: least,
    names: [],
    nodes: [
      { posts: [start(0)], words: shield },
      { posts: [], words: atTap },
      { posts: [end(0)], words: atEnd },
    ],
    label: say(drawings.tapped, { turns: most, tap: least, start: shield, atTap, end: atEnd }),
  };
}

const sides = (isAntennaHigh: boolean, say: Say): readonly [string, string] => {
  const [coax, wire] = [say(drawings.toCoax), say(drawings.toWire)];
  return isAntennaHigh ? [coax, wire] : [wire, coax];
};

/** The end of each wire joined to the start of the next: shield, first joint, free end; or the shield at the joint, for both sides alike. */
function together({ build, ports }: ChainItem, wires: number, turns: number, say: Say): WindingPicture {
  const isBalanced = ports?.in === 'balanced';
  const [atJoint, atEnd] = sides((build?.turns ?? 0) <= (build?.secondaryTurns ?? 0), say);
  const last = wires - 1;
  const joints = Array.from({ length: last }, (_, wire) => ({
    posts: [end(wire), start(wire + 1)],
    words: wire > 0 ? '' : isBalanced ? say(drawings.toShield) : atJoint,
  }));
  return {
    turns: Array.from({ length: wires }, () => turns),
    tapAt: null,
    names: wireNames.slice(0, wires),
    nodes: [
      { posts: [start(0)], words: say(isBalanced ? drawings.toAntenna : drawings.toShield) },
      ...joints,
      { posts: [end(last)], words: isBalanced ? say(drawings.toAntennaAndCoax) : atEnd },
    ],
    label: say(drawings.together, { turns, wires }),
  };
}

function apart(coaxTurns: number, antennaTurns: number, say: Say): WindingPicture {
  const antenna = say(drawings.toAntenna);
  return {
    turns: [coaxTurns, antennaTurns],
    tapAt: null,
    names: [],
    nodes: [
      { posts: [start(0)], words: say(drawings.toShield) },
      { posts: [end(0)], words: say(drawings.toCoax) },
      { posts: [start(1)], words: antenna },
      { posts: [end(1)], words: antenna },
    ],
    label: say(drawings.twoWindings, { turns: coaxTurns, second: antennaTurns }),
  };
}
