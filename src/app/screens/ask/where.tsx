/** Which question this is, and the one before it with its answer. */
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import { firstQuestions as firstWords, isFirstQuestion } from '../../../words/en/first-questions';
import { ask } from '../../../words/en/screens';
import { firstAnswerText } from '../../first-answer-text';
import { to } from '../../routes';
import { useSay } from '../../say';
import { firstQuestions } from './asked';

export function Where({ id, draft, planId }: { id: AnswerKey; draft: DraftAnswers; planId: string | undefined }) {
  const say = useSay();
  const first = firstQuestions(draft);
  const index = first.findIndex((each) => each.id === id);
  const earlier = first[index - 1];
  if (index < 0) return null;
  // Before the radiator is known it is not known either whether its feed point must be asked.
  const of = Math.max(first.length, draft.radiator === undefined ? 4 : first.length);
  return (
    <div class="asked-where">
      <p class="asked-count">
        {say(ask.count, { number: index + 1, of })} <CountLine at={index} of={of} />
      </p>
      {earlier !== undefined && isFirstQuestion(earlier.id) && planId !== undefined && (
        <div class="asked-earlier">
          <dl>
            <div>
              <dt>
                {index}. {firstWords[earlier.id].title}
              </dt>
              <dd>{firstAnswerText(earlier.id, draft) ?? say(ask.notSaid)}</dd>
            </div>
          </dl>
          <a
            class="btn"
            href={to.ask(planId, earlier.id)}
            aria-label={say(ask.changeOf, { what: firstWords[earlier.id].short })}
          >
            {say(ask.change)}
          </a>
        </div>
      )}
    </div>
  );
}

function CountLine({ at, of }: { at: number; of: number }) {
  const x = (index: number): number => 6 + (index * 100) / Math.max(of - 1, 1);
  return (
    <svg class="reading" viewBox="0 0 112 20" aria-hidden="true">
      <path d="M6 10H106" stroke="currentColor" stroke-width="2.5" />
      {Array.from({ length: of }, (_, index) =>
        index === at ? (
          <path key={x(index)} d={`M${x(index)} 17 ${x(index) - 7} 4h14z`} fill="var(--mark)" />
        ) : (
          <circle
            key={x(index)}
            cx={x(index)}
            cy="10"
            r={index < at ? 5 : 4.5}
            fill={index < at ? 'currentColor' : 'var(--paper)'}
            stroke="currentColor"
            stroke-width="2.5"
          />
        ),
      )}
    </svg>
  );
}
