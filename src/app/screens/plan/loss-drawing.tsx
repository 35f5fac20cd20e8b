/** What the transformer as planned turns into heat over the wanted bands, drawn; and what the drawing says in words. */
import { LossCurve, lossSquareW, type Watts } from '../../../drawing/loss-curve';
import type { ChainItem } from '../../../plan/plan-schema';
import { deviceScreen } from '../../../words/en/device-screen';
import { bandName } from '../../../words/en/names';
import { useSay } from '../../say';

type Figures = NonNullable<ChainItem['figures']>;
type Decibels = NonNullable<Figures['curve'][number]['lossDb']>;

/** Beyond it nobody works there, and the drawing would show nothing else. */
const MOST_SWR = 10;

const ofHundred = (lossDb: number): number => 100 * (1 - 10 ** (-lossDb / 10));
const wattsOf = ({ low, nominal, high }: Decibels): Watts => ({
  low: ofHundred(low),
  nominal: ofHundred(nominal),
  high: ofHundred(high),
});

export function LossDrawing({ figures }: { readonly figures: Figures }) {
  const say = useSay();
  const number = (watts: number): string => say.format.number(watts, watts < 1 ? 1 : 2);
  const curve = figures.curve.flatMap(({ atMHz, lossDb }) =>
    lossDb === null ? [] : [{ atMHz, watts: wattsOf(lossDb) }],
  );
  const bands = figures.bands.flatMap(({ band, atMHz, lossSpreadDb, swr }) => {
    if (lossSpreadDb === null || (swr ?? 1) > MOST_SWR) return [];
    const watts = wattsOf(lossSpreadDb);
    return [
      {
        band,
        name: bandName(band),
        atMHz,
        watts,
        told: say(deviceScreen.wattsShort, { watts: number(watts.nominal) }),
      },
    ];
  });
  const [worst] = bands.toSorted((a, b) => b.watts.nominal - a.watts.nominal);
  if (curve.length < 2 || worst === undefined) return null;
  const parts = bands.map(({ band, watts: { low, nominal, high } }) =>
    say(deviceScreen.lossAtBand, { band, watts: number(nominal), low: number(low), high: number(high) }),
  );
  return (
    <figure class="choke-ohms">
      <b>
        {worst.watts.nominal < 1
          ? say(deviceScreen.lossHeadSmall)
          : say(deviceScreen.lossHead, { band: worst.band, watts: number(worst.watts.nominal) })}
      </b>
      <LossCurve curve={curve} bands={bands} label={say(deviceScreen.lossDrawing, { parts: parts.join('; ') })} />
      <figcaption class="small">
        {say(deviceScreen.lossCaption, { square: say.format.number(lossSquareW({ curve, bands })) })}
      </figcaption>
    </figure>
  );
}
