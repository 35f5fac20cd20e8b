/** Which of the owned parts this plan may use. All of them until one is left out. */
import type { PartOnHand } from '../../../design/answers';
import { answering } from '../../../words/en/answering';
import { partText } from '../../answer-text';
import { Icon } from '../../parts/icon';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import type { BodyProps } from './body';

const same = (a: PartOnHand, b: PartOnHand): boolean => JSON.stringify(a) === JSON.stringify(b);

export function PartsBody({ answers, onAnswer, accept }: BodyProps) {
  const say = useSay();
  const owned = useStores().parts.parts.value.map(({ part }) => part);
  accept.current = () => true;
  const given = answers.onHand;
  // Parts the plan came with, from another phone, stay on its list.
  const listed = [...owned, ...(given ?? []).filter((part) => !owned.some((each) => same(each, part)))];
  const isIn = (part: PartOnHand): boolean => given === undefined || given.some((each) => same(each, part));
  const toggle = (part: PartOnHand): void => {
    const onHand = listed.filter((each) => (same(each, part) ? !isIn(part) : isIn(each)));
    onAnswer({ onHand });
  };
  return (
    <fieldset aria-labelledby="question">
      {listed.length === 0 && <p>{say(answering.noParts)}</p>}
      <ul class="choices long">
        {listed.map((part) => (
          <li key={JSON.stringify(part)}>
            <label class="choice wordy">
              <input type="checkbox" checked={isIn(part)} onChange={() => toggle(part)} />
              <span>{partText(part, say.format)}</span>
              <span class="on" aria-hidden="true">
                <Icon name="tick" />
              </span>
            </label>
          </li>
        ))}
      </ul>
      <p>
        <a class="btn tall" href={to.onHand}>
          {say(answering.toParts)}
        </a>
      </p>
    </fieldset>
  );
}
