/** Danger first: what can kill, before any length. At most three lines, each opening with its name. */
import { dangerFirst } from '../../../plan/plain-text';
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';

export function Danger({ plan }: { readonly plan: Plan }) {
  const say = useSay();
  const told = dangerFirst(plan);
  if (told.length === 0) return null;
  return (
    <section class="danger" aria-labelledby="danger">
      <h2 id="danger">{say(planScreen.danger)}</h2>
      <ul>
        {told.map(({ name, short }) => (
          <li key={name}>
            <b>{name}.</b> {short}
          </li>
        ))}
      </ul>
    </section>
  );
}
