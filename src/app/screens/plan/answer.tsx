/** The answer in one sentence, its lengths and devices in bold. */
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';

/** Both units of a length, and what a device does: "49:1 transformer", "1:1 choke". */
const bold =
  /(\u2066?(?:[\d.,]+\u00a0m|\d+\u00a0ft(?:\u00a0[\d½]+\u00a0in)?|[\d½]+\u00a0in)\u2069? \([^)]*\)|\d+(?:\.\d+)?:\d+(?:\.\d+)? (?:current )?(?:transformer|choke))/;

export function Answer({ text }: { readonly text: string }) {
  const say = useSay();
  return (
    <section aria-label={say(planScreen.answer)}>
      <p class="answer">
        {text.split(bold).map((part, index) => (index % 2 === 1 ? <b key={part + String(index)}>{part}</b> : part))}
      </p>
    </section>
  );
}
