/** One answer in a list: what it is about, what it is, why it matters, and the way to change it. */
import { ask } from '../../../words/en/screens';
import { useSay } from '../../say';

interface AnswerRowProps {
  /** What the answer is about, in a word or two. */
  readonly about: string;
  readonly text: string | null;
  readonly why?: string | undefined;
  readonly href: string;
}

export function AnswerRow({ about, text, why, href }: AnswerRowProps) {
  const say = useSay();
  return (
    <li>
      <div>
        <p>
          {about}: <b>{text ?? say(ask.notSaid)}</b>
        </p>
        {why !== undefined && <p class="small">{why}</p>}
      </div>
      <a class="btn" href={href} aria-label={say(ask.changeOf, { what: about })}>
        {say(ask.change)}
      </a>
    </li>
  );
}
