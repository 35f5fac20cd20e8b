/** Where 100 W from the radio go on each wanted band, drawn side by side, under a heading that tells the worst of them. */
import { type PowerTape, PowerTapes } from '../../../drawing/power-tapes';
import type { Plan } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { wattsScreen } from '../../../words/en/watts-screen';
import { useSay } from '../../say';
import { budgetOf } from './budget';
import { useFold } from './fold';

export function WattsView({ bands }: { readonly bands: Plan['bands'] }) {
  const say = useSay();
  const fold = useFold('watts');
  const tapes = bands.flatMap((row): (PowerTape & { lineW: number; band: string })[] => {
    const budget = budgetOf(row, null);
    if (budget === null) return [];
    const { feedW, devicesW, lineW } = budget;
    const told = say(wattsScreen.watts, { watts: Math.round(feedW) });
    return [{ band: row.band, name: bandName(row.band), feedW, devicesW: devicesW ?? 0, lineW, told }];
  });
  const [worst] = tapes.toSorted((a, b) => a.feedW - b.feedW);
  if (worst === undefined) return null;
  const reaches = bands.every(({ deviceLossDb }) => deviceLossDb !== null) ? 'wire' : 'line';
  const parts = tapes.map(({ name, feedW, devicesW, lineW }) =>
    say(wattsScreen.part, {
      name,
      feedW: Math.round(feedW),
      devicesW: Math.round(devicesW),
      lineW: Math.round(lineW),
    }),
  );
  return (
    <details class="fold" {...fold}>
      <summary>
        <h3>{say(wattsScreen.head)}</h3>
        <span class="result">
          {say(wattsScreen.result, { reaches, watts: Math.round(worst.feedW), band: worst.name, bands: tapes.length })}
        </span>
      </summary>
      <figure>
        <PowerTapes tapes={tapes} label={say(wattsScreen.drawing, { parts: parts.join('; ') })} />
        <figcaption class="small">{say(wattsScreen.caption, { reaches })}</figcaption>
      </figure>
    </details>
  );
}
