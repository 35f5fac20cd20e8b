/** What weight, wind and ice do to the wire, folded up: sag, pulls, code size, rope, guys, ladder. */
import type { Plan } from '../../../plan/plan-schema';
import { mechanicsScreen } from '../../../words/en/mechanics';
import { useSay } from '../../say';
import { Fold } from './fold';
import { WorkingView } from './working-view';

export function MechanicsView({ plan }: { readonly plan: Plan }) {
  const say = useSay();
  const { mechanics } = plan;
  if (mechanics === null) return null;
  const [first] = mechanics.spans;
  const result = first === undefined ? '' : say(mechanicsScreen.result, { sagM: first.sagM, restN: first.rest.newton });
  return (
    <Fold id="mechanics" head={say(mechanicsScreen.head)} result={result}>
      {mechanics.text.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {mechanics.spans.map(({ id, rest, wind, ice }) => (
        <div key={id}>
          <WorkingView working={rest.working} what={say(mechanicsScreen.rest)} />
          <WorkingView working={wind.working} what={say(mechanicsScreen.wind)} />
          <WorkingView working={ice.working} what={say(mechanicsScreen.ice)} />
        </div>
      ))}
    </Fold>
  );
}
