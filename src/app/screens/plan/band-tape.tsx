/** The SWR over one band as a tape. While it is being worked out the tape stands with the frequency alone, so that nothing moves when it comes. */
import { dipOf, goodStretches, SwrTape } from '../../../drawing/swr-tape';
import type { Plan } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';

interface BandTapeProps {
  readonly row: Plan['bands'][number];
  readonly edgesMHz: { readonly lowMHz: number; readonly highMHz: number };
}

export function BandTape({ row, edgesMHz: { lowMHz, highMHz } }: BandTapeProps) {
  const say = useSay();
  const { swrSweep: sweep, atMHz, band } = row;
  const megahertz = (mhz: number): string => say.format.number(mhz, 4);
  const good = sweep === null ? null : goodStretches(sweep);
  const dip = sweep === null ? null : dipOf(sweep);
  const below = good === null ? planScreen.underway : good.length === 0 ? planScreen.nowhereGood : planScreen.thickGood;
  const data = {
    band: bandName(band),
    aim: megahertz(atMHz),
    dip: dip?.kind === 'at' ? megahertz(dip.mhz) : (dip?.kind ?? ''),
    low: megahertz(lowMHz),
    high: megahertz(highMHz),
    good: (good ?? []).map(([from, to]) => `${megahertz(from)}–${megahertz(to)}`).join(', '),
    known: good !== null,
  };
  return (
    <SwrTape
      lowMHz={lowMHz}
      highMHz={highMHz}
      aimMHz={atMHz}
      dipMHz={dip === null ? null : dip.kind === 'at' ? dip.mhz : dip.kind === 'lower' ? lowMHz : highMHz}
      good={good}
      words={{
        aim: say(planScreen.tapeAim, data),
        dip: dip === null ? '' : say(planScreen[`tapeDip_${dip.kind}`], data),
        below: say(below),
        ends: [data.low, data.high],
      }}
      label={say(planScreen.swrTape, data)}
    />
  );
}
