/** What hangs in the air, and where it is fed. Coordinates are those of the sketch; the feed points lie on its wire. */
import type { JSX } from 'preact';
import { isOpenWireLine } from '../../catalog/line-ids';
import { Box, Ground, Here, Ring, Sketch } from './sketch';

const poles: Readonly<Record<string, readonly string[]>> = {
  'straight-wire': ['M8 64L8.6 12H11.4L12 64', 'M108 64L108.6 12H111.4L112 64'],
  'inverted-v': ['M58 64L58.6 10H61.4L62 64'],
  sloper: ['M20 64L20.6 8H23.4L24 64'],
  vertical: [],
  'inverted-l': ['M12 64L12.6 10H15.4L16 64', 'M106 64L106.6 10H109.4L110 64'],
  loop: ['M8 64L8.6 8H11.4L12 64', 'M108 64L108.6 8H111.4L112 64'],
  'triangle-loop': ['M58 64L58.6 6H61.4L62 64'],
  'flat-loop': ['M36 26V52M84 26V52M104 42V64M16 42V64'],
  'flat-triangle-loop': ['M60 24V50M104 42V64M16 42V64'],
  'parallel-wires': ['M58 64L58.6 10H61.4L62 64'],
  'linked-wire': ['M58 64L58.6 10H61.4L62 64'],
  'folded-wire': ['M6 64L6.6 14H9.4L10 64', 'M110 64L110.6 14H113.4L114 64'],
  other: ['M24 64L24.6 16H27.4L28 64'],
  none: ['M58 64L58.6 10H61.4L62 64'],
};
const ropes: Readonly<Record<string, readonly string[]>> = {
  'straight-wire': ['M11 15L28 18', 'M109 15L92 18'],
  'inverted-v': ['M20 46L8 64', 'M100 46L112 64'],
  'linked-wire': ['M16 50L6 64', 'M104 50L114 64'],
  sloper: ['M92 50L110 64'],
  'inverted-l': ['M106 13L94 14', 'M15 12L24 14'],
  loop: ['M12 10L32 14', 'M108 10L88 14', 'M32 50L16 64', 'M88 50L104 64'],
  'triangle-loop': ['M22 52L10 64', 'M98 52L110 64'],
  'folded-wire': ['M10 18L20 20', 'M110 18L100 20'],
  other: ['M100 40L112 64'],
};
const wires: Readonly<Record<string, readonly string[]>> = {
  'straight-wire': ['M28 18Q60 23 92 18'],
  'inverted-v': ['M20 46L60 12L100 46'],
  sloper: ['M23 11L92 50'],
  vertical: ['M60 61L60 8'],
  'inverted-l': ['M24 60L24 14L94 14'],
  loop: ['M32 14H88V50H32Z'],
  'triangle-loop': ['M60 8L98 52H22Z'],
  'flat-loop': ['M36 28H84L104 44H16Z'],
  'flat-triangle-loop': ['M60 26L104 44H16Z'],
  'parallel-wires': ['M8 28L60 13L112 28', 'M20 40L60 13L100 40', 'M36 50L60 13L84 50'],
  'linked-wire': ['M16 50L60 12L104 50'],
  'folded-wire': ['M26.5 15H93.5a6.5 6.5 0 0 1 0 13H26.5a6.5 6.5 0 0 1 0 -13Z'],
  other: ['M26 20C46 6 50 48 66 34S84 14 100 40'],
};
const rings: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  'straight-wire': [
    [28, 18],
    [92, 18],
  ],
  'inverted-v': [
    [20, 46],
    [100, 46],
  ],
  'linked-wire': [
    [16, 50],
    [34, 34.5],
    [86, 34.5],
    [104, 50],
  ],
  sloper: [
    [92, 50],
    [25, 12],
  ],
  'inverted-l': [
    [94, 14],
    [24, 14],
  ],
  other: [[100, 40]],
};
const radials = 'M60 62L24 70M60 62L96 70M60 62L48 71M60 62L74 71';

const paths = (kind: string, list: readonly string[] = []): JSX.Element[] =>
  list.map((d) => <path key={d} class={kind} d={d} />);

function Antenna({ radiator, withRadials }: { radiator: string; withRadials: boolean }) {
  return (
    <>
      <Ground />
      {paths('s', poles[radiator])}
      {paths('r', ropes[radiator])}
      {paths('w', wires[radiator])}
      {withRadials && <path class="p" d={radials} />}
      {(rings[radiator] ?? []).map(([x, y]) => (
        <Ring key={`${x} ${y}`} x={x} y={y} />
      ))}
    </>
  );
}

type Point = readonly [x: number, y: number];
const straight = { centre: [60, 20.5], 'off-centre': [49, 20.2], end: [28, 18] } as const;
const feedPoints: Readonly<Record<string, Readonly<Record<string, Point>>>> = {
  'straight-wire': straight,
  'inverted-v': { centre: [60, 12], 'off-centre': [46.7, 23.3], end: [20, 46] },
  sloper: { centre: [57.5, 30.5], 'off-centre': [69, 37], end: [92, 50] },
  vertical: { base: [60, 61], end: [60, 61], centre: [60, 35] },
  'inverted-l': { base: [24, 60] },
  loop: { corner: [32, 50], 'side-middle': [60, 50] },
  'triangle-loop': { corner: [22, 52], 'side-middle': [60, 52] },
  'flat-loop': { corner: [16, 44], 'side-middle': [60, 44] },
  'flat-triangle-loop': { corner: [16, 44], 'side-middle': [60, 44] },
  'parallel-wires': { centre: [60, 13] },
  'linked-wire': { centre: [60, 12] },
  'folded-wire': { centre: [60, 28] },
  other: {
    centre: [60, 37],
    'off-centre': [48, 29],
    end: [26, 20],
    base: [26, 60],
    corner: [80, 26],
    'side-middle': [66, 34],
  },
};

export interface Drawn {
  readonly radiator?: string | undefined;
  readonly fedAt?: string | undefined;
  readonly loopPlane?: string | undefined;
  readonly loopShape?: string | undefined;
  readonly feedLine?: string | undefined;
}

/** A loop is drawn as it stands or lies. */
const drawnAs = ({ radiator = 'none', loopPlane, loopShape }: Drawn): string =>
  radiator === 'loop'
    ? `${loopPlane === 'flat' ? 'flat-' : ''}${loopShape === 'triangle' ? 'triangle-' : ''}loop`
    : radiator;

/** As much of an antenna as is known: a bare support, then its wire, then the line at its feed point, which is marked when it is asked for. */
export function AntennaSketch({ isMarked = false, ...drawn }: Drawn & { readonly isMarked?: boolean }) {
  const kind = drawnAs(drawn);
  const point = feedPoints[kind]?.[drawn.fedAt ?? ''];
  const [x, y] = point ?? [0, 0];
  const way = (at: number): string => (y > 58 ? `M${x} ${y + at}H112` : `M${x + at} ${y}V64`);
  return (
    <Sketch>
      <Antenna radiator={kind} withRadials={kind === 'vertical' && (drawn.fedAt ?? 'base') === 'base'} />
      {point !== undefined && (
        <>
          {isOpenWireLine(drawn.feedLine ?? null) ? (
            <path class="p" d={way(-3) + way(3)} />
          ) : (
            <path class="c" d={way(0)} />
          )}
          <Box x={x} y={y} w={8} h={8} />
        </>
      )}
      {point !== undefined && isMarked && <Here x={x} y={y - 2} />}
    </Sketch>
  );
}
