/**
 * What stands on a site, from an antenna laid out in space: wire, what holds it up, coax and the places on it. Metres; x along the wire,
 * y at a right angle to it, z up. Supports are a guess of ours, good for a picture: a pole under every peak, a support a little beyond a high
 * end, a rope to a stake from a low one.
 */
import { type CoaxPoint, coaxPath } from '../geometry/coax-path';
import { type CoaxRun, distance, type Layout, plus, type Vector } from '../geometry/layout';
import { armsOf, feedPointOf, linkPlacesOf } from '../geometry/radiator-wires';
import { siteWires } from '../geometry/site-wires';

export interface Support {
  readonly foot: Vector;
  readonly topM: number;
  readonly kind: 'pole' | 'tree';
}

export interface SitePlace {
  /** Along the coax from the feed point, m. */
  readonly alongM: number;
  readonly point: Vector;
}

export interface Site {
  readonly feed: Vector;
  readonly arms: readonly (readonly Vector[])[];
  /** Free ends of the wire, where the volts are. */
  readonly ends: readonly Vector[];
  /** Links in the wire, where plugs join it. */
  readonly links: readonly Vector[];
  readonly supports: readonly Support[];
  readonly ropes: readonly (readonly [Vector, Vector])[];
  /** Radials and counterpoise wires. */
  readonly returns: readonly (readonly Vector[])[];
  /** The line from the feed point to the radio, whatever it is. */
  readonly coax: readonly CoaxPoint[];
  readonly line: 'coax' | 'open-wire';
  readonly chokes: readonly SitePlace[];
  readonly home: boolean;
}

/** An end below this, m, is tied to a stake; a higher one to a support of its own. */
const LOW_END_M = 3.6;
const ROPE_M = 2.5;
const MARK_M = 0.3;

export interface SiteOptions {
  readonly home: boolean;
  readonly chokesM: readonly number[];
  /** Where open-wire line runs; no part of the layout, since nothing flows on an outside of it. */
  readonly openWire?: CoaxRun | null;
}

/** Null for an antenna whose shape is not known. */
export function siteOf(layout: Layout, { home, chokesM, openWire = null }: SiteOptions): Site | null {
  const arms = armsOf(layout)?.map(({ points }) => points);
  if (arms === undefined) return null;
  const feed = feedPointOf(layout);
  const closed = layout.radiator === 'loop' || layout.radiator === 'folded-wire';
  const ends = closed ? [] : arms.flatMap((points) => points.slice(-1));
  const held = closed ? closedHolds(layout, arms) : openHolds(layout, arms);
  const leansOut = layout.radiator === 'vertical' && layout.fedAt === 'centre';
  const run = layout.coax ?? openWire;
  const coax = run === null ? [] : coaxPath(feed, run, leansOut);
  return {
    feed,
    arms,
    ends: layout.fedAt === 'end' && !closed ? [feed, ...ends] : ends,
    links: linkPlacesOf(layout),
    ...held,
    returns: returnsOf(layout),
    coax,
    line: layout.coax === null && openWire !== null ? 'open-wire' : 'coax',
    chokes: chokesM.flatMap((alongM) => placeOn(coax, alongM)),
    home,
  };
}

/** Each stretch by itself: radials leave from one point, a counterpoise wire bends where it meets the ground. */
const returnsOf = (layout: Layout): readonly (readonly Vector[])[] =>
  (siteWires(layout)?.wires ?? []).flatMap(({ id, from, to }) =>
    /^(hub$|radial|counterpoise)/.test(id) ? [[from, to]] : [],
  );

interface Holds {
  readonly supports: readonly Support[];
  readonly ropes: readonly (readonly [Vector, Vector])[];
}

const pole = (at: Vector): Support => ({ foot: [at[0], at[1], 0], topM: at[2], kind: 'pole' });

function openHolds({ radiator }: Layout, arms: readonly (readonly Vector[])[]): Holds {
  const supports: Support[] = [];
  const ropes: [Vector, Vector][] = [];
  const longest = arms.slice(0, 2);
  for (const peak of peaksOf(longest)) supports.push(pole(peak));
  for (const points of longest) {
    const end = points.at(-1);
    const before = points.at(-2);
    if (end === undefined || before === undefined) continue;
    if (radiator === 'vertical') {
      if (end[2] > before[2]) supports.push({ foot: [end[0] - MARK_M, end[1], 0], topM: end[2], kind: 'pole' });
      continue;
    }
    const hold = holdOf(end, before);
    ropes.push([end, hold.to]);
    if (hold.support !== null) supports.push(hold.support);
  }
  return { supports, ropes };
}

/** Beyond the end, level: a support for a high one, a stake for a low one. */
function holdOf(end: Vector, before: Vector): { readonly to: Vector; readonly support: Support | null } {
  const level = Math.hypot(end[0] - before[0], end[1] - before[1]) || 1;
  const out: Vector = [(end[0] - before[0]) / level, (end[1] - before[1]) / level, 0];
  if (end[2] < LOW_END_M) {
    const stake = plus(end, out, Math.max(end[2], 1));
    return { to: [stake[0], stake[1], 0], support: null };
  }
  const tie = plus(end, out, ROPE_M);
  return { to: tie, support: { foot: [tie[0], tie[1], 0], topM: tie[2] + 1, kind: 'tree' } };
}

/** Corners of the wire, the feed point among them, that stand above what they join: something must hold them. */
function peaksOf(arms: readonly (readonly Vector[])[]): Vector[] {
  const [first, second] = arms;
  if (first === undefined) return [];
  const whole = second === undefined ? first : [...[...second].reverse().slice(0, -1), ...first];
  return whole.slice(1, -1).filter((point, index) => {
    const [left, right] = [whole[index], whole[index + 2]];
    if (left === undefined || right === undefined) return false;
    const [l, r] = [point[2] - left[2], point[2] - right[2]];
    return l > -0.01 && r > -0.01 && Math.max(l, r) > 0.5;
  });
}

function closedHolds({ radiator, loopPlane, fedAt }: Layout, arms: readonly (readonly Vector[])[]): Holds {
  const ring = (arms[0] ?? []).slice(0, -1);
  const corners = radiator === 'loop' && fedAt !== 'corner' ? ring.slice(1) : ring;
  if (radiator === 'folded-wire') {
    const wide = [...corners].sort((a, b) => a[0] - b[0]);
    const tied = [wide[0], wide.at(-1)].flatMap((end) => (end === undefined ? [] : [end]));
    const holds = tied.map((end) => ({ end, hold: holdOf(end, [0, 0, end[2]]) }));
    return {
      supports: holds.flatMap(({ hold }) => (hold.support === null ? [] : [hold.support])),
      ropes: holds.map(({ end, hold }) => [end, hold.to] as const),
    };
  }
  const top = Math.max(...corners.map(([, , z]) => z));
  const held = loopPlane === 'flat' ? corners : corners.filter(([, , z]) => z > top - 0.1);
  return { supports: held.map(pole), ropes: [] };
}

function placeOn(coax: readonly CoaxPoint[], alongM: number): SitePlace[] {
  for (let index = 1; index < coax.length; index++) {
    const [start, end] = [coax[index - 1], coax[index]];
    if (start === undefined || end === undefined || alongM > end.alongM + 1e-6) continue;
    const whole = distance(start.point, end.point) || 1;
    const part = Math.max(alongM - start.alongM, 0) / whole;
    const step: Vector = [end.point[0] - start.point[0], end.point[1] - start.point[1], end.point[2] - start.point[2]];
    return [{ alongM, point: plus(start.point, step, part) }];
  }
  const last = coax.at(-1);
  return last === undefined ? [] : [{ alongM, point: last.point }];
}
