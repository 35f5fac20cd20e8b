/** One way of handing a plan over: what it is, what it is good for, its button. */
import type { ComponentChildren } from 'preact';
import type { Message } from '../../../words/message';
import { useSay } from '../../say';

interface WayProps {
  readonly head: Message;
  readonly why: Message;
  readonly children: ComponentChildren;
}

export function Way({ head, why, children }: WayProps) {
  const say = useSay();
  const title = say(head);
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      <p>{say(why)}</p>
      <div class="ways">{children}</div>
    </section>
  );
}
