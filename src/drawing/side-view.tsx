/**
 * The site from the side, to scale both ways on squared paper. Coax that leaves at a right angle is turned into the picture, away from the
 * wire, so that the places along it can be seen; the caption says so.
 */
import type { Vector } from '../geometry/layout';
import { FeedLine } from './feed-line';
import { at, Drawing, Grid, Ground, Hatch, Marker, Person, Pole, path, px, spread } from './figures';
import { Heights } from './heights';
import { KeepOut, Measure } from './keep-out';
import { decidingPlace, groundZonesOf, type SiteKeepOut, zonesOf } from './keep-out-zones';
import { type Scale, scaleFor } from './scale';
import type { Site } from './site';

export interface SideViewWords {
  readonly label: string;
  /** A height in both units, metric first or not, as two short lines. */
  height(metres: number): readonly [string, string];
}

interface SideViewProps {
  readonly site: Site;
  readonly words: SideViewWords;
  /** Names the stripes of this drawing; unique on its page. */
  readonly id: string;
  /** How far people stay from each part; left out where none is to be drawn. */
  readonly keepOut?: SiteKeepOut | null;
}

const WIDTH = 324;
const MOST_HEIGHT = 210;
const MARGIN = 14;
const ABOVE = 50;
const BELOW = 46;
const PERSON_M = 1.75;
const HOUSE_M = 2.6;

/** Across the picture, m: the wire's own axis, and coax that leaves it turned to the left. */
const acrossOf = (site: Site) => {
  const [x0] = site.feed;
  return ([x, y]: Vector): number => (Math.abs(y) > 1e-6 && site.coax.length > 0 ? x0 - y : x);
};

interface Frame extends Scale {
  x(point: Vector): number;
  across(metres: number): number;
  y(metres: number): number;
  readonly ground: number;
  readonly height: number;
}

export const sideViewScale = (site: Site, keepOut: SiteKeepOut | null = null): Scale => frameOf(site, keepOut);

function frameOf(site: Site, keepOut: SiteKeepOut | null): Frame {
  const across = acrossOf(site);
  const around = keepOut === null ? [] : [...zonesOf(site, keepOut), ...groundZonesOf(site, keepOut)];
  const kept = around.flatMap(({ points, metres }) =>
    points.flatMap((point) => [across(point) - metres, across(point) + metres]),
  );
  const flat = site.arms.flat().map(([x, , z]): Vector => [x, 0, z]);
  const held = [...site.supports.map(({ foot }) => foot[0]), ...site.ropes.map(([, to]) => to[0])];
  const run = site.coax.map(({ point }) => across(point));
  const laid = site.returns.flat().map(([x]) => x);
  const xs = [...flat.map(([x]) => x), ...kept, ...held, ...laid, ...run, site.feed[0]];
  const [least, most] = [Math.min(...xs) - 1.5, Math.max(...xs) + 1.5];
  const keptTop = (keepOut === null ? [] : zonesOf(site, keepOut)).flatMap(({ points, metres }) =>
    points.map(([, , z]) => z + metres),
  );
  const top = Math.max(...flat.map(([, , z]) => z), ...keptTop, ...site.supports.map(({ topM }) => topM), 3);
  const scale = scaleFor(most - least, top, WIDTH - 2 * MARGIN, MOST_HEIGHT);
  const spareM = (WIDTH - 2 * MARGIN) / scale.pixelsPerM - (most - least);
  const left = least - spareM / 2;
  const ground = ABOVE + top * scale.pixelsPerM;
  const place = (metres: number): number => MARGIN + (metres - left) * scale.pixelsPerM;
  return {
    ...scale,
    across: place,
    x: (point) => place(across(point)),
    y: (metres) => ground - metres * scale.pixelsPerM,
    ground,
    height: ground + (site.chokes.length > 0 ? BELOW : 20),
  };
}

export function SideView({ site, words, id, keepOut = null }: SideViewProps) {
  const frame = frameOf(site, keepOut);
  const { x, y, across, ground, height, pixelsPerM, squareM } = frame;
  const flat = (points: readonly Vector[]): string => path(points.map(([px0, , z]) => [across(px0), y(z)] as const));
  return (
    <Drawing width={WIDTH} height={height} label={words.label} kind="site">
      <Hatch id={id} />
      <Grid x0={across(site.feed[0])} y0={ground} step={squareM * pixelsPerM} width={WIDTH} height={height} />
      {keepOut !== null && <KeptAway site={site} frame={frame} keepOut={keepOut} id={id} />}
      <Ground y={ground} width={WIDTH} />
      {site.ends.map(([ex, , z]) => (
        <>
          <circle cx={px(across(ex))} cy={px(y(z))} r={12} fill={`url(#${id})`} />
          <circle class="pp" cx={px(across(ex))} cy={px(y(z))} r={6.5} />
        </>
      ))}
      {site.supports.map((support) =>
        support.kind === 'pole' ? (
          <Pole x={across(support.foot[0])} foot={ground} top={y(support.topM)} />
        ) : (
          <Tree x={across(support.foot[0])} foot={ground} top={y(support.topM)} />
        ),
      )}
      <Radio site={site} frame={frame} />
      {site.ropes.map(([from, to]) => (
        <path class="r" d={flat([from, to])} />
      ))}
      {site.returns.map((points) => (
        <path class="s" d={flat(points)} />
      ))}
      <FeedLine kind={site.line} points={site.coax.map(({ point }) => [x(point), y(point[2])] as const)} />
      {site.arms.map((points) => (
        <path class="w" d={flat(points)} />
      ))}
      {site.ends.map(([ex, , z]) => (
        <circle class="o" cx={px(across(ex))} cy={px(y(z))} r={3.5} />
      ))}
      {site.links.map(([lx, , z]) => (
        <circle class="o" cx={px(across(lx))} cy={px(y(z))} r={3.5} />
      ))}
      <rect class="f" x={px(across(site.feed[0]) - 4.5)} y={px(y(site.feed[2]) - 4.5)} width={9} height={9} />
      <Chokes site={site} frame={frame} />
      {keepOut !== null && <Deciding site={site} frame={frame} keepOut={keepOut} />}
      <WireHeights site={site} frame={frame} words={words} keepOut={keepOut} />
    </Drawing>
  );
}

interface KeptAwayProps {
  readonly site: Site;
  readonly frame: Frame;
  readonly keepOut: SiteKeepOut;
}

const STRIP_PX = 7;

/** The striped edge in the air, and the stretch of ground where nobody stands, striped below the ground line. */
function KeptAway({ site, frame, keepOut, id }: KeptAwayProps & { readonly id: string }) {
  const { x, y, ground, pixelsPerM } = frame;
  const spot = (point: Vector): readonly [number, number] => [x(point), y(point[2])];
  const bands = zonesOf(site, keepOut).map(({ points, metres }) => ({
    d: points.length === 1 ? `${path(points.map(spot))}h0` : path(points.map(spot)),
    bandPx: 2 * metres * pixelsPerM,
  }));
  const reach = groundZonesOf(site, keepOut).flatMap(({ points, metres }) =>
    points.flatMap((point) => [x(point) - metres * pixelsPerM, x(point) + metres * pixelsPerM]),
  );
  const [left, right] = [Math.min(...reach), Math.max(...reach)];
  return (
    <>
      <clipPath id={`${id}-air`}>
        <rect x={0} y={0} width={WIDTH} height={px(ground)} />
      </clipPath>
      <g clip-path={`url(#${id}-air)`}>
        <KeepOut bands={bands} id={id} />
      </g>
      {reach.length > 0 && (
        <rect x={px(left)} y={px(ground)} width={px(right - left)} height={STRIP_PX} fill={`url(#${id})`} />
      )}
    </>
  );
}

/** Down where there is room above the ground, else level away from a wire that runs to one side, else up. */
function Deciding({ site, frame: { x, y, pixelsPerM }, keepOut }: KeptAwayProps) {
  const place = decidingPlace(site, keepOut);
  if (place === null) return null;
  const { at: spot, metres } = place;
  const from = [x(spot), y(spot[2])] as const;
  const long = metres * pixelsPerM;
  const wire = site.arms.flat().map((point) => x(point) - from[0]);
  const isLeft = wire.every((away) => away > -1);
  const isRight = wire.every((away) => away < 1);
  if (spot[2] >= metres) return <Measure from={from} to={[from[0], from[1] + long]} />;
  if (isLeft || isRight) return <Measure from={from} to={[from[0] + (isLeft ? -long : long), from[1]]} />;
  return <Measure from={from} to={[from[0], from[1] - long]} />;
}

const Tree = ({ x, foot, top }: { readonly x: number; readonly foot: number; readonly top: number }) => {
  const tall = foot - top;
  const half = Math.min(tall / 3.2, 13);
  const crown = top + Math.min(tall * 0.55, half * 2.2);
  return (
    <>
      <path class="s" d={`M${at(x - 1.6, foot)}L${at(x - 1, crown)}M${at(x + 1.6, foot)}L${at(x + 1, crown)}`} />
      <path
        class="s"
        d={`M${at(x - half, crown)}C${at(x - half * 1.6, crown - half)} ${at(x - half, top)} ${at(x, top - 3)}C${at(
          x + half,
          top,
        )} ${at(x + half * 1.6, crown - half)} ${at(x + half, crown)}Z`}
      />
    </>
  );
};

/** The radio on its table with the operator beside it, in a house or under the sky. */
function Radio({ site, frame }: { readonly site: Site; readonly frame: Frame }) {
  const end = site.coax.at(-1)?.point;
  const before = site.coax.at(-2)?.point;
  if (end === undefined || before === undefined) return null;
  const { x, y, ground, pixelsPerM } = frame;
  const onward = x(end) < x(before) ? -1 : 1;
  const entry = site.coax.find(({ id }) => id === 'entry')?.point ?? end;
  const wall = x(entry);
  const far = x(end) + onward * 1.4 * pixelsPerM;
  const person = PERSON_M * pixelsPerM;
  const [left, right] = [Math.min(wall, far), Math.max(wall, far)];
  return (
    <>
      {site.home && (
        <path
          class="s"
          d={`M${at(left, ground)}V${px(y(HOUSE_M))}L${at((left + right) / 2, y(HOUSE_M + 1))}L${at(right, y(HOUSE_M))}V${px(ground)}`}
        />
      )}
      <rect class="f" x={px(x(end) - 3.5)} y={px(y(end[2]) - 3.5)} width={7} height={7} />
      <Person x={x(end) + onward * Math.max(0.7 * pixelsPerM, 7)} y={ground} height={person} />
    </>
  );
}

function Chokes({ site, frame }: { readonly site: Site; readonly frame: Frame }) {
  const { x, y, ground } = frame;
  const places = site.chokes.map(({ point }) => x(point));
  const row = ground + 26;
  const spots = spread(places, 26, 13, WIDTH - 13);
  return (
    <>
      {site.chokes.map(({ point }, index) => (
        <>
          <path class="m" d={`M${at(x(point), y(point[2]) + 5)}L${at(spots[index] ?? 0, row - 11)}`} />
          <rect class="tg" x={px(x(point) - 5)} y={px(y(point[2]) - 5)} width={10} height={10} />
          <Marker x={spots[index] ?? 0} y={row} number={index + 1} />
        </>
      ))}
    </>
  );
}

/** Above the wire, and above the stripes where there are any, px. */
const ABOVE_WIRE_PX = 32;
const ABOVE_STRIPES_PX = 24;

function WireHeights({ site, frame, words, keepOut }: Omit<SideViewProps, 'id'> & { readonly frame: Frame }) {
  const { x, across, y, ground } = frame;
  const place = ([wx, , z]: Vector) => [across(wx), y(z)] as const;
  // Ends of shorter pairs hang between those of the longest, too near to be told apart.
  const wire = site.arms.slice(0, 2).flat();
  const topM = Math.max(...wire.map(([, , z]) => z));
  const kept = keepOut == null ? [] : zonesOf(site, keepOut);
  const keptTopM = Math.max(topM, ...kept.flatMap(({ points, metres }) => points.map(([, , z]) => z + metres)));
  return (
    <Heights
      points={wire.map((point) => ({ x: across(point[0]), y: y(point[2]), metres: point[2] }))}
      overTop={Math.min(y(topM) - ABOVE_WIRE_PX, y(keptTopM) - ABOVE_STRIPES_PX)}
      wires={site.arms.map((points) => points.map(place))}
      others={[
        site.coax.map(({ point }) => [x(point), y(point[2])] as const),
        ...site.ropes.map((rope) => rope.map(place)),
        ...site.supports.map(({ foot, topM: top }) => [
          [across(foot[0]), ground] as const,
          [across(foot[0]), y(top)] as const,
        ]),
      ]}
      width={WIDTH}
      ground={ground}
      height={words.height}
    />
  );
}
