/**
 * For an operator who has not chosen an antenna: what decides most is asked first, a tap each; then every kind is worked out and ranked, each
 * with its reasons. Opening one puts its answers into the plan; "back" leads here again, where it can be taken back.
 */
import type { Route } from '../../routes';
import { useStores } from '../../stores/stores';
import { decisive, isSettled } from './decisive';
import { NotHere, ReadOnly } from './not-here';
import { WhichList } from './which-list';
import { WhichQuestion } from './which-question';
import './ask.css';
import './which.css';

export function WhichScreen({ route }: { route: Extract<Route, { screen: 'which' }> }) {
  const entry = useStores().library.entries.value.get(route.planId);
  if (entry === undefined) return <NotHere />;
  if (entry.kind !== 'good') return <ReadOnly newer={entry.kind === 'newer'} />;
  const plan = entry.record;
  const open = decisive.filter((key) => !isSettled(plan, key));
  const asked = decisive.find((key) => key === route.question) ?? open[0];
  if (asked === undefined) return <WhichList plan={plan} />;
  const next = open.find((key) => key !== asked);
  return <WhichQuestion key={asked} plan={plan} id={asked} next={next} />;
}
