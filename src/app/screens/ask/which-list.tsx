/** The antennas that fit, best first, each with its drawing, the reasons for its place, and the way to open it as a plan. */
import { signal } from '@preact/signals';
import type { AnswerKey, DraftAnswers } from '../../../design/answers';
import { pick } from '../../../design/plan-edit';
import type { SavedPlan } from '../../../design/saved-plan';
import type { Candidate } from '../../../plan/candidate-points';
import { questionWords } from '../../../words/en/questions';
import { ask, shell } from '../../../words/en/screens';
import { which } from '../../../words/en/which';
import { answerText } from '../../answer-text';
import { Icon } from '../../parts/icon';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { go } from '../../router';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import type { NewEdit } from '../../stores/library';
import { useStores } from '../../stores/stores';
import { AnswerRow } from './answer-row';
import { goOnAddress } from './asked';
import { CandidateRow } from './candidate-row';
import { decisive } from './decisive';
import { SearchNote } from './search-note';
import { useSearch } from './use-search';
import './surer.css';

/** What a candidate answers; what was told of another antenna under these keys goes. */
const chosen: readonly AnswerKey[] = [
  'radiator',
  'fedAt',
  'lengthChoice',
  'wireLengthM',
  'feedLine',
  'feedLineLengthM',
  'heightM',
  'loopPlane',
];

/** What stood in a plan before a candidate was opened; known until the page is closed. */
const before = signal<ReadonlyMap<string, DraftAnswers>>(new Map());

const editsTo = (answers: DraftAnswers): NewEdit[] =>
  chosen.map((key) => ({ kind: 'answer', key, answer: pick(answers, key) }));

/** The answers without what the candidate that was opened last answered in their place. */
function siteAnswers({ id, answers }: SavedPlan): DraftAnswers {
  const stood = before.value.get(id);
  if (stood === undefined) return answers;
  const kept = Object.entries(answers).filter(([key]) => !chosen.some((each) => each === key));
  return Object.assign(Object.fromEntries(kept), ...chosen.map((key) => pick(stood, key)));
}

export function WhichList({ plan }: { readonly plan: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  const effective = useEffective();
  const draft = effective(siteAnswers(plan));
  const search = useSearch(draft);
  const { shown, kind } = search.state;
  const open = (candidate: Candidate): void => {
    before.value = new Map(before.value).set(plan.id, plan.answers);
    library.edit(plan.id, ...editsTo(candidate.answers));
    const now = library.planOf(plan.id)?.answers ?? {};
    go(goOnAddress(plan.id, effective(now)));
  };
  return (
    <>
      <Top up={{ href: to.ask(plan.id, 'radiator'), words: questionWords('radiator').short }} />
      <main id="main" class="two">
        <div class="stack">
          <SaveTrouble />
          <h1 tabIndex={-1}>{say(which.title)}</h1>
          <p>{say(which.meaning)}</p>
          <Taken plan={plan} />
          <SearchNote search={search} />
          <div>
            <RestsOn plan={plan} draft={draft} />
            <How />
          </div>
        </div>
        <section aria-label={say(which.title)}>
          {shown === null && kind === 'failed' && <p class="stop">{say(shell.planFailed)}</p>}
          {shown === null && kind === 'working' && <p role="status">{say(which.working)}</p>}
          {shown !== null && <Lists candidates={shown} onOpen={open} />}
        </section>
      </main>
    </>
  );
}

interface ListsProps {
  readonly candidates: readonly Candidate[];
  readonly onOpen: (candidate: Candidate) => void;
}

/** What cannot be built here is put away, each with what stops it. */
function Lists({ candidates, onOpen }: ListsProps) {
  const say = useSay();
  const row = (candidate: Candidate) => (
    <CandidateRow key={candidate.rank} candidate={candidate} onOpen={() => onOpen(candidate)} />
  );
  const buildable = candidates.filter(({ score }) => score.stops === 0);
  const others = candidates.filter(({ score }) => score.stops > 0);
  return (
    <>
      {buildable.length === 0 && <p>{say(which.noneFits)}</p>}
      <ol class="rows">{buildable.map(row)}</ol>
      {others.length > 0 && (
        <details>
          <summary>{say(which.others, { count: others.length })}</summary>
          <ol class="rows">{others.map(row)}</ol>
        </details>
      )}
    </>
  );
}

function How() {
  const say = useSay();
  return (
    <details>
      <summary>{say(which.howHead)}</summary>
      <ul class="out">
        {which.how.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

/** The answers the order rests on, a tap from being changed. */
function RestsOn({ plan, draft }: { readonly plan: SavedPlan; readonly draft: DraftAnswers }) {
  const say = useSay();
  return (
    <details>
      <summary>{say(which.restsOn)}</summary>
      <ul class="rows assumed">
        {decisive.map((key) => (
          <AnswerRow
            key={key}
            about={questionWords(key).short}
            text={answerText(key, draft, say.format)}
            href={to.which(plan.id, key)}
          />
        ))}
      </ul>
    </details>
  );
}

/** After coming back from a candidate: which one the plan is now, and the way to take it back. */
function Taken({ plan }: { readonly plan: SavedPlan }) {
  const say = useSay();
  const { library } = useStores();
  const stood = before.value.get(plan.id);
  if (stood === undefined) return null;
  const takeBack = (): void => {
    library.edit(plan.id, ...editsTo(stood));
    const rest = new Map(before.value);
    rest.delete(plan.id);
    before.value = rest;
  };
  return (
    <div class="changed" role="status">
      <p>{say(which.taken, { name: answerText('radiator', plan.answers, say.format) ?? say(ask.notSaid) })}</p>
      <button type="button" class="btn" onClick={takeBack}>
        <Icon name="undo" />
        {say(shell.undo)}
      </button>
    </div>
  );
}
