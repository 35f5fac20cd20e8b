/** A question whose answer cannot matter for this antenna. An answer given earlier is kept. */
import { ask } from '../../../words/en/screens';
import { useSay } from '../../say';

export function Unused({ text }: { text: string | null }) {
  const say = useSay();
  return (
    <section class="stop">
      <h2>{say(ask.unusedHead)}</h2>
      {text !== null && <p>{text}</p>}
      <p>{say(ask.unused)}</p>
    </section>
  );
}
