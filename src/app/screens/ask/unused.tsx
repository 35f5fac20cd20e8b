/** A question whose answer cannot matter for this antenna. An answer given earlier is kept. */
import { answering } from '../../../words/en/answering';
import { useSay } from '../../say';

export function Unused({ text }: { text: string | null }) {
  const say = useSay();
  return (
    <section class="stop">
      <h2>{say(answering.unusedHead)}</h2>
      {text !== null && <p>{text}</p>}
      <p>{say(text === null ? answering.unusedYet : answering.unused)}</p>
    </section>
  );
}
