/** "Not sure" is an answer: how to find out, what is taken meanwhile. */

import { answering } from '../../../words/en/answering';
import type { QuestionWords } from '../../../words/en/first-questions';
import { useSay } from '../../say';

interface NotSureProps {
  readonly words: QuestionWords;
  readonly taken: string;
  readonly onTake: () => void;
  readonly keepHref: string;
}

export function NotSurePanel({ words, taken, onTake, keepHref }: NotSureProps) {
  const say = useSay();
  return (
    <section class="stop" aria-labelledby="not-sure">
      <h2 id="not-sure" tabIndex={-1} data-focus>
        {say(answering.notSureHead)}
      </h2>
      <p>{words.findOut}</p>
      <p>{say(answering.notSureTaken, { taken })}</p>
      <div class="ways">
        <button type="button" class="btn tall" onClick={onTake}>
          {say(answering.takeIt)}
        </button>
        <a class="btn tall" href={keepHref}>
          {say(answering.keepAnswer)}
        </a>
      </div>
    </section>
  );
}
