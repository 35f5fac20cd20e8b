/**
 * Watts of every 100 that a transformer turns into heat, from the lowest to the highest wanted frequency: the line is the part with the load
 * that its ratio is made for; at every wanted band an open ring for this antenna, in a bracket for how far real rings of core may lie, and
 * its watts above. Squares say how many watts; a loss of a few watts stays near the floor.
 */
import { at, bracket, Drawing, path, px, spread } from './figures';

export interface Watts {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

export interface LossAt {
  readonly atMHz: number;
  readonly watts: Watts;
}

interface LossCurveProps {
  readonly curve: readonly LossAt[];
  /** `told`: its watts, short. */
  readonly bands: readonly (LossAt & { readonly name: string; readonly told: string })[];
  readonly label: string;
}

const WIDTH = 280;
/** Room for a band's name or its watts, px. */
const NAME = 52;
const SIDE = 26;
const TOP = 30;
const TALL = 120;
/** Squares of less would make a good transformer look bad. */
const steps = [1, 2, 5, 10, 20] as const;
const FEWEST_SQUARES = 4;
const MOST_SQUARES = 6;

interface Frame {
  x(mhz: number): number;
  y(watts: number): number;
  readonly squareW: number;
  readonly mostW: number;
}

/** Watts to one square. */
export const lossSquareW = (props: Pick<LossCurveProps, 'curve' | 'bands'>): number => frameOf(props).squareW;

function frameOf({ curve, bands }: Pick<LossCurveProps, 'curve' | 'bands'>): Frame {
  const mhz = curve.map(({ atMHz }) => atMHz);
  const [from, to] = [Math.log(Math.min(...mhz)), Math.log(Math.max(...mhz))];
  const top = Math.max(...curve.map(({ watts }) => watts.nominal), ...bands.map(({ watts }) => watts.high));
  const squareW = steps.find((step) => top / step <= MOST_SQUARES) ?? 25;
  const mostW = Math.max(FEWEST_SQUARES, Math.ceil(top / squareW)) * squareW;
  return {
    x: (each) => SIDE + ((WIDTH - 2 * SIDE) * (Math.log(each) - from)) / Math.max(to - from, 1e-9),
    y: (watts) => TOP + (TALL * (mostW - watts)) / mostW,
    squareW,
    mostW,
  };
}

export function LossCurve({ curve, bands, label }: LossCurveProps) {
  const { x, y, squareW, mostW } = frameOf({ curve, bands });
  const rules: string[] = [];
  for (let watts = 0; watts <= mostW; watts += squareW) rules.push(`M${at(0, y(watts))}H${WIDTH}`);
  const told = toldOf(bands);
  const spots = spread(
    told.map(({ atMHz }) => x(atMHz)),
    NAME,
    NAME / 2,
    WIDTH - NAME / 2,
  );
  return (
    <Drawing width={WIDTH} height={TOP + TALL + 34} label={label}>
      <path class="q" d={rules.join('')} />
      <path class="s" d={`M${at(0, y(0))}H${WIDTH}`} />
      <path class="w" d={path(curve.map(({ atMHz, watts }) => [x(atMHz), y(watts.nominal)] as const))} />
      {bands.map(({ atMHz, watts }) => (
        <>
          <path class="m" d={bracket(x(atMHz), y(watts.low), y(watts.high))} />
          <circle class="o" cx={px(x(atMHz))} cy={px(y(watts.nominal))} r={6} />
        </>
      ))}
      {told.map(({ name, told: watts, atMHz, watts: { high } }, index) => (
        <>
          <path class="m" d={`M${at(spots[index] ?? 0, 21)}L${at(x(atMHz), Math.max(y(high) - 3, 24))}`} />
          <text class="k" x={px(spots[index] ?? 0)} y={16} text-anchor="middle">
            {watts}
          </text>
          <text class="k" x={px(spots[index] ?? 0)} y={TOP + TALL + 28} text-anchor="middle">
            {name}
          </text>
        </>
      ))}
    </Drawing>
  );
}

/** All bands that have room for their names; else the lowest, the one that loses most and the highest. */
function toldOf<B extends LossAt>(bands: readonly B[]): readonly B[] {
  if (bands.length * NAME <= WIDTH) return bands;
  const most = bands.reduce<B | undefined>(
    (worst, each) => (worst === undefined || each.watts.nominal > worst.watts.nominal ? each : worst),
    undefined,
  );
  return bands.filter((each, index) => index === 0 || index === bands.length - 1 || each === most);
}
