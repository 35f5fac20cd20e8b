/** The site from above, to scale: the wire, what holds it, the coax with its chokes, and how far people stay away. */
import type { Vector } from '../geometry/layout';
import { FeedLine } from './feed-line';
import { Drawing, Grid, Hatch, Marker, path, px } from './figures';
import { DottedGround, KeepOut, type KeepOutBand, Measure } from './keep-out';
import { decidingPlace, groundZonesOf, type SiteKeepOut, type Zone, zonesOf } from './keep-out-zones';
import { type MapFrame, mapFrame } from './map-frame';
import type { Scale } from './scale';
import type { Site } from './site';

interface TopViewProps {
  readonly site: Site;
  readonly label: string;
  /** How far people stay from each part; null when no distance is known. */
  readonly keepOut: SiteKeepOut | null;
  readonly id: string;
}

const WIDTH = 324;
const MOST_HEIGHT = 300;
const MARGIN = 14;

export const topViewScale = (site: Site, keepOut: SiteKeepOut | null): Scale => frameOf(site, keepOut);

function frameOf(site: Site, keepOut: SiteKeepOut | null): MapFrame {
  const wire = site.arms.flat();
  const around = keepOut === null ? [] : [...zonesOf(site, keepOut), ...groundZonesOf(site, keepOut)];
  const others = [
    ...site.supports.map(({ foot }) => foot),
    ...site.coax.map(({ point }) => point),
    ...site.returns.flat(),
  ];
  const reach = (axis: 0 | 1): readonly [number, number] => {
    const kept = around.flatMap(({ points, metres }) =>
      points.flatMap((point) => [point[axis] - metres, point[axis] + metres]),
    );
    const all = [...wire.map((point) => point[axis]), ...kept, ...others.map((point) => point[axis])];
    return [Math.min(...all) - 1, Math.max(...all) + 1];
  };
  return mapFrame(reach, WIDTH, MOST_HEIGHT, MARGIN);
}

export function TopView({ site, label, keepOut, id }: TopViewProps) {
  const frame = frameOf(site, keepOut);
  const { at: place, height, squareM, pixelsPerM } = frame;
  const line = (points: readonly Vector[]): string => path(points.map(place));
  const [feedX, feedY] = place(site.feed);
  const bandsOf = (zones: readonly Zone[]): KeepOutBand[] =>
    zones.map(({ points, metres }) => ({
      d: points.length === 1 ? `${line(points)}h0` : line(points),
      bandPx: 2 * metres * pixelsPerM,
    }));
  const deciding = keepOut === null ? null : decidingPlace(site, keepOut);
  return (
    <Drawing width={WIDTH} height={height} label={label} kind="site">
      <Hatch id={id} />
      <Grid x0={feedX} y0={feedY} step={squareM * pixelsPerM} width={WIDTH} height={height} />
      {keepOut !== null && <KeepOut bands={bandsOf(zonesOf(site, keepOut))} id={id} />}
      {keepOut !== null && <DottedGround bands={bandsOf(groundZonesOf(site, keepOut))} id={id} />}
      {site.ropes.map(([from, to]) => (
        <path class="r" d={line([from, to])} />
      ))}
      {site.supports.map(({ foot }) => {
        const [x, y] = place(foot);
        return <circle class="o" cx={px(x)} cy={px(y)} r={5} />;
      })}
      {site.returns.map((points) => (
        <path class="s" d={line(points)} />
      ))}
      <FeedLine kind={site.line} points={site.coax.map(({ point }) => place(point))} />
      {site.arms.map((points) => (
        <path class="w" d={line(points)} />
      ))}
      {site.links.map((link) => {
        const [x, y] = place(link);
        return <circle class="o" cx={px(x)} cy={px(y)} r={3.5} />;
      })}
      <rect class="f" x={px(feedX - 4.5)} y={px(feedY - 4.5)} width={9} height={9} />
      {site.chokes.map(({ point }, index) => {
        const [x, y] = place(point);
        return (
          <>
            <rect class="tg" x={px(x - 5)} y={px(y - 5)} width={10} height={10} />
            <Marker x={x + (index % 2 === 0 ? 21 : -21)} y={y} number={index + 1} />
          </>
        );
      })}
      {deciding !== null && (
        <Measure from={place(deciding.at)} to={place([deciding.at[0], deciding.at[1] - deciding.metres, 0])} />
      )}
    </Drawing>
  );
}
