/** A long plan's own table of contents: leads to a heading, opens what is folded under it and puts the focus there. */
import { planScreen } from '../../../words/en/plan-screen';
import { jumpTo } from '../../parts/jump-to';
import { useSay } from '../../say';

export interface JumpTarget {
  readonly id: string;
  readonly words: string;
}

export function JumpList({ targets }: { readonly targets: readonly JumpTarget[] }) {
  const say = useSay();
  return (
    <details class="jump">
      <summary>{say(planScreen.onThisPage)}</summary>
      <nav aria-label={say(planScreen.onThisPage)}>
        <ul>
          {targets.map(({ id, words }) => (
            <li key={id}>
              <button type="button" onClick={() => jumpTo(id)}>
                {words}
              </button>
            </li>
          ))}
        </ul>
      </nav>
    </details>
  );
}
