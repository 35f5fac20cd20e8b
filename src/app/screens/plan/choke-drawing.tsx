/** Resistance and reactance of the choke as planned, drawn; and what the drawing says in words. */
import { ChokeOhms, chokeSquareOhm, type OhmsPoint } from '../../../drawing/choke-ohms';
import type { ChainItem } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';
import { ohmsText } from './ohms-text';

type Figures = NonNullable<ChainItem['figures']>;

export function ChokeDrawing({ figures }: { readonly figures: Figures }) {
  const say = useSay();
  const curve = figures.curve.flatMap(({ atMHz, rOhm, xOhm }): OhmsPoint[] =>
    rOhm === null || xOhm === null ? [] : [{ atMHz, rOhm, xOhm }],
  );
  if (curve.length < 2) return null;
  const bands = figures.bands.flatMap(({ band, atMHz, rOhm }) =>
    rOhm === null ? [] : [{ name: bandName(band), atMHz, rOhm }],
  );
  const asked = new Set(figures.bands.map(({ neededOhm }) => neededOhm));
  const [neededOhm = null] = asked.size === 1 ? [...asked] : [];
  const parts = figures.bands.flatMap(({ band, rOhm, xOhm }) =>
    rOhm === null || xOhm === null
      ? []
      : [
          say(planScreen.chokeAtBand, {
            band: bandName(band),
            r: ohmsText(rOhm.nominal, say),
            x: ohmsText(xOhm.nominal, say),
          }),
        ],
  );
  return (
    <figure class="choke-ohms">
      <ChokeOhms
        curve={curve}
        bands={bands}
        neededOhm={neededOhm}
        words={{
          resistance: say(planScreen.resistance),
          reactance: say(planScreen.reactance),
          needed: neededOhm === null ? '' : say(planScreen.askedFor, { ohms: ohmsText(neededOhm, say) }),
        }}
        label={say(planScreen.chokeDrawing, { parts: parts.join('; ') })}
      />
      <figcaption class="small">
        {say(planScreen.chokeCaption, { square: ohmsText(chokeSquareOhm(curve), say) })}
      </figcaption>
    </figure>
  );
}
