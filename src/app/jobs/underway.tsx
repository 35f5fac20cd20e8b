/** Beside numbers that are being worked out: they stay, and may still move. */
import { planScreen } from '../../words/en/plan-screen';
import { useSay } from '../say';

export function Underway({ isUnderway }: { readonly isUnderway: boolean }) {
  const say = useSay();
  return isUnderway ? <span class="underway">{say(planScreen.underway)}</span> : null;
}
