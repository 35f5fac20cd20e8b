/** "The SWR climbs while I send": a core is hot. What to do, and with how much power to go on, two taps from anywhere on a plan. */
import type { Plan } from '../../../plan/plan-schema';
import { trimScreen } from '../../../words/en/trim-screen';
import { useSay } from '../../say';

/** What every wound device stands without pause in the plan's mode: the least of them; null where none is known. */
function steadyPowerW({ chain }: Plan): number | null {
  const each = chain.flatMap(({ figures }) => figures?.mostW ?? []);
  return each.length === 0 ? null : Math.min(...each);
}

/** What was on when it got hot. */
const poweredW = ({ chain }: Plan): number | null =>
  chain.map(({ figures }) => figures?.powerW ?? null).find((watts) => watts !== null) ?? null;

/** As far down as the computed limit, and by half at least: that it got hot shows that the limit lies lower. */
export function goOnW(plan: Plan): number | null {
  const [steadyW, onW] = [steadyPowerW(plan), poweredW(plan)];
  return steadyW === null || onW === null ? null : Math.min(steadyW, onW / 2);
}

export function HotCore({ plan }: { readonly plan: Plan }) {
  const say = useSay();
  const watts = goOnW(plan);
  if (watts === null) return null;
  return (
    <details>
      <summary>{say(trimScreen.climbs)}</summary>
      <ol class="checks">
        {say(trimScreen.climbsDo, { watts: say.format.number(watts, watts < 10 ? 1 : 2) })
          .split('|')
          .map((each) => (
            <li key={each}>{each}</li>
          ))}
      </ol>
    </details>
  );
}
