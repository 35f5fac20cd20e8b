/** Warnings name the effect, its number and the cure. What stops the plan stands in a panel of its own with the ways out as buttons. */
import { routeOf } from '../../../advice/route';
import { type DraftAnswers, isAnswerKey } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { questionWords } from '../../../words/en/questions';
import { answerText } from '../../answer-text';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { useFold } from './fold';
import { answersFor } from './ways-to-answers';
import './ways-out.css';

type Warning = Plan['warnings'][number];

interface WarningsProps {
  readonly warnings: readonly Warning[];
  readonly answers: DraftAnswers;
  readonly planId: string;
}

/** Warnings of harm to people: they stand open before the stops, whatever else is folded. */
const harms = ['people-too-near', 'power-line-too-near'];
const isHarm = ({ id }: Warning): boolean => harms.includes(id);
const isFirst = (warning: Warning): boolean => warning.severity === 'stop' || isHarm(warning);

export function Stops({ warnings, answers, planId }: WarningsProps) {
  const say = useSay();
  return (
    <>
      {[...warnings.filter(isHarm), ...warnings.filter((each) => isFirst(each) && !isHarm(each))].map(
        (warning, index) => (
          <section
            class="stop"
            key={`${warning.id} ${index}`}
            aria-label={`${say(warning.severity === 'stop' ? planScreen.stop : planScreen.danger)}: ${warning.text}`}
          >
            <h2>{warning.text}</h2>
            <p>{warning.why}</p>
            <WaysOut warning={warning} answers={answers} planId={planId} />
          </section>
        ),
      )}
    </>
  );
}

/** Each warning is one line that names the effect with its number, cause and cure under it; notes wait under one heading. */
export function WarningsView({ warnings, answers, planId }: WarningsProps) {
  const say = useSay();
  const open = warnings.filter((warning) => warning.severity === 'warn' && !isFirst(warning));
  const notes = warnings.filter(({ severity }) => severity === 'note');
  const fold = useFold('notes');
  if (open.length + notes.length === 0) return null;
  return (
    <section aria-labelledby="warnings">
      <h2 id="warnings" tabIndex={-1}>
        {say(planScreen.warnings)}
      </h2>
      <Notes warnings={open} answers={answers} planId={planId} />
      {notes.length > 0 && (
        <details class="moment" {...fold}>
          <summary>{say(planScreen.notesAll, { count: notes.length })}</summary>
          <div class="stack">
            <Notes warnings={notes} answers={answers} planId={planId} />
          </div>
        </details>
      )}
    </section>
  );
}

const Notes = ({ warnings, answers, planId }: WarningsProps) => (
  <>
    {warnings.map((warning, index) => (
      <Note key={`${warning.id} ${index}`} warning={warning} answers={answers} planId={planId} />
    ))}
  </>
);

function Note({ warning, answers, planId }: WayProps) {
  return (
    <details class="note" {...useFold(`warning ${warning.id} ${warning.bands.join(' ')}`)}>
      <summary>
        <h3>{warning.text}</h3>
      </summary>
      <div class="reasons">
        <p>{warning.why}</p>
        <WaysOut warning={warning} answers={answers} planId={planId} />
      </div>
    </details>
  );
}

type WayProps = { readonly warning: Warning } & Omit<WarningsProps, 'warnings'>;

function WaysOut({ warning, answers, planId }: WayProps) {
  const say = useSay();
  const asked = routeOf(answers).map(({ id }) => id);
  const changed = warning.wayAnswers.flatMap((change) => Object.keys(change ?? {}));
  const keys = answersFor(warning.id).filter((key) => asked.includes(key) && !changed.includes(key));
  return (
    <>
      {warning.waysOut.length > 0 && (
        <ul class="ways-out" aria-label={say(planScreen.waysOut)}>
          {warning.waysOut.map((way, index) => {
            const change = warning.wayAnswers[index] ?? null;
            return (
              <li key={way} class={change === null ? undefined : 'one-tap'}>
                {change === null ? way : <OneTap way={way} change={change} planId={planId} />}
              </li>
            );
          })}
        </ul>
      )}
      {keys.length > 0 && (
        <div class="ways">
          {keys.map((key) => (
            <a key={key} class="btn" href={to.ask(planId, key)}>
              {say(planScreen.changeAnswer, { what: questionWords(key).short.toLowerCase() })}
            </a>
          ))}
        </div>
      )}
    </>
  );
}

interface OneTapProps {
  readonly way: string;
  readonly change: DraftAnswers;
  readonly planId: string;
}

/** A way out that is a changed answer: the button says what will be set, the strip above what that changed. */
function OneTap({ way, change, planId }: OneTapProps) {
  const say = useSay();
  const { library } = useStores();
  const [key] = Object.keys(change).filter(isAnswerKey);
  if (key === undefined) return <>{way}</>;
  return (
    <button type="button" class="btn" onClick={() => library.answer(planId, key, change, { pointOut: true })}>
      <span>{way}</span>
      <span class="set">
        {say(planScreen.sets, { what: questionWords(key).short, value: answerText(key, change, say.format) ?? '' })}
      </span>
    </button>
  );
}
