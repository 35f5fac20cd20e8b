/**
 * Where 100 W from the radio go, one tape of 100 W for each band: filled as far as what is left at the feed point, open for what turns into heat on
 * the way. A tick in the open part stands between devices (left of it) and line. The watts left stand at the end.
 */
import { at, Drawing, px } from './figures';

export interface PowerTape {
  readonly name: string;
  /** Of 100 W: left at the feed point, and lost in transformer and chokes; the rest is lost in the line. */
  readonly feedW: number;
  readonly devicesW: number;
  /** The watts left, short. */
  readonly told: string;
}

interface PowerTapesProps {
  readonly tapes: readonly PowerTape[];
  readonly label: string;
}

const WIDTH = 328;
const FROM = 58;
const PX_PER_W = 2;
const ROW = 36;
const HEIGHT = 20;
/** Less than this is no room for a tick between two parts, W. */
const LEAST_PART_W = 2;

export const PowerTapes = ({ tapes, label }: PowerTapesProps) => (
  <Drawing width={WIDTH} height={tapes.length * ROW} label={label}>
    {tapes.map(({ name, feedW, devicesW, told }, row) => {
      const top = row * ROW + (ROW - HEIGHT) / 2;
      const x = (watts: number): number => FROM + PX_PER_W * watts;
      const parts = devicesW >= LEAST_PART_W && 100 - feedW - devicesW >= LEAST_PART_W;
      return (
        <g key={name}>
          <text class="k" x={0} y={px(top + 15.5)}>
            {name}
          </text>
          <rect class="tg" x={FROM} y={px(top)} width={100 * PX_PER_W} height={HEIGHT} />
          <rect class="f" x={FROM} y={px(top)} width={px(PX_PER_W * feedW)} height={HEIGHT} />
          {parts && <path class="s" d={`M${at(x(feedW + devicesW), top)}v${HEIGHT}`} />}
          <text class="k" x={WIDTH} y={px(top + 15.5)} text-anchor="end">
            {told}
          </text>
        </g>
      );
    })}
  </Drawing>
);
