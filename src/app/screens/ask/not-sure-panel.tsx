/** "Not sure" is an answer: how to find out, what is taken meanwhile. */
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import { answering } from '../../../words/en/answering';
import type { QuestionWords } from '../../../words/en/first-questions';
import { which } from '../../../words/en/which';
import { useSay } from '../../say';
import { useTaken } from './taken';

interface NotSureProps {
  readonly id: AnswerKey;
  readonly draft: DraftAnswers;
  readonly words: QuestionWords;
  readonly onTake: () => void;
  readonly keepHref: string;
  /** Where this answer is found by comparing; undefined where nothing can be compared. */
  readonly compareHref: string | undefined;
}

export function NotSurePanel({ id, draft, words, onTake, keepHref, compareHref }: NotSureProps) {
  const say = useSay();
  const taken = useTaken(id, draft);
  return (
    <section class="stop" aria-labelledby="not-sure">
      <h2 id="not-sure" tabIndex={-1} data-focus>
        {say(answering.notSureHead)}
      </h2>
      <p>{words.findOut}</p>
      {compareHref !== undefined && (
        <>
          <p>{say(which.compareWhy)}</p>
          <div class="ways">
            <a class="btn go" href={compareHref}>
              {say(which.compare)}
            </a>
          </div>
        </>
      )}
      <p>{say(answering.notSureTaken, { taken })}</p>
      <div class="ways">
        <button type="button" class="btn tall" onClick={onTake}>
          {say(answering.takeIt)}
        </button>
        <a class="btn tall" href={keepHref}>
          {say(draft[id] === undefined ? answering.backToQuestion : answering.keepAnswer)}
        </a>
      </div>
    </section>
  );
}
