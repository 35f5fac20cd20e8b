/** A plan that came as a link or a file. Nothing is kept before it is asked for, and what was refused says why. */
import { useEffect, useState } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import { newSavedPlan } from '../../../design/saved-plan';
import { readImport } from '../../../storage/export-file';
import { readLink } from '../../../storage/plan-link';
import { receive } from '../../../words/en/places';
import { shortProblemLine } from '../../../words/en/problems';
import { shell } from '../../../words/en/screens';
import { handedIn, openedFile, takeHandedIn } from '../../handed-in';
import { codeIn } from '../../handover/plan-address';
import { SaveNote, SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { AntennaSketch } from '../../pictures/radiators';
import { go, goInstead } from '../../router';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { type Stores, useStores } from '../../stores/stores';
import { PowerLines } from '../ask/so-far';
import { type ImportReport, Report } from './import-report';
import { kindOf } from './plan-line';
import './receive.css';

export function ReceiveScreen({ route }: { route: Extract<Route, { screen: 'receive' }> }) {
  const say = useSay();
  const stores = useStores();
  const [report, setReport] = useState<ImportReport | null>(null);
  const [nothing, setNothing] = useState(false);
  const shared = route.code === handedIn;
  useEffect(() => {
    if (shared) void takeShared(stores, setReport).then((found) => setNothing(!found));
  }, [shared]);
  useEffect(() => {
    const file = openedFile.value;
    openedFile.value = null;
    if (file !== null) void file.text().then((text) => takeText(text, stores).then(setReport));
  }, [openedFile.value]);
  const read = route.code === '' || shared ? null : readLink(route.code);
  if (read !== null && !('cut' in read) && !('problems' in read)) return <Found answers={read} />;
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }}>
        <SaveNote />
      </Top>
      <main id="main">
        <SaveTrouble />
        <h1 tabIndex={-1}>{say(receive.title)}</h1>
        {read === null ? <p>{say(receive.meaning)}</p> : <Refused read={read} />}
        {nothing && <p class="stop">{say(receive.notLink)}</p>}
        {report !== null && <Report report={report} />}
        <a class="btn tall" href={to.scan}>
          {say(receive.scan)}
        </a>
        <PasteLink />
        <section>
          <label class="btn tall file">
            {say(receive.file)}
            <input
              class="vh"
              type="file"
              accept=".json,application/json"
              onChange={(event) => {
                const input = event.currentTarget;
                const file = input.files?.[0];
                if (file !== undefined) void file.text().then((text) => takeText(text, stores).then(setReport));
                input.value = ''; // the same file can be chosen again
              }}
            />
          </label>
        </section>
      </main>
    </>
  );
}

/** What another app shared: a plan's link inside some text, or a file of plans. False when it is neither. */
async function takeShared(stores: Stores, tell: (report: ImportReport) => void): Promise<boolean> {
  const text = await takeHandedIn();
  if (text === null) return true; // taken before: the page was only loaded again
  const code = codeIn(text);
  if (code !== null) goInstead(to.receive(code));
  else if (text.trimStart().startsWith('{')) tell(await takeText(text, stores));
  return code !== null || text.trimStart().startsWith('{');
}

async function takeText(text: string, { library, parts }: Stores): Promise<ImportReport> {
  const read = readImport(text, {
    planHere: (id) => {
      const entry = library.entries.value.get(id);
      return entry === undefined ? undefined : entry.kind === 'good' ? entry.record : 'taken';
    },
    partHere: (id) =>
      parts.parts.value.some((part) => part.id === id) || parts.unreadable.value.some((found) => found.id === id),
    newId: () => crypto.randomUUID(),
    at: Date.now(),
  });
  if (typeof read === 'string') return { refusal: read };
  const written = read.plans.length === 0 || (await library.bring(read.plans));
  if (written) for (const part of read.parts) await parts.put(part);
  return { content: read, written };
}

/** Why a link gives no plan. */
function Refused({ read }: { read: Exclude<ReturnType<typeof readLink>, Answers> }) {
  const say = useSay();
  if ('cut' in read) return <p class="stop">{say(receive.cut)}</p>;
  return (
    <section class="stop">
      <p>{say(receive.wrong)}</p>
      <ul class="out">
        {read.problems.map((problem) => (
          <li key={problem.key}>{shortProblemLine(problem, say(receive.record))}</li>
        ))}
      </ul>
    </section>
  );
}

/** The plan of a link, looked at before it is kept. */
function Found({ answers }: { answers: Answers }) {
  const say = useSay();
  const { planner, library } = useStores();
  const plan = planner.planOf(answers);
  const keep = async (): Promise<void> => {
    const { schema: _schema, ...given } = answers;
    const saved = newSavedPlan(crypto.randomUUID(), Date.now(), given);
    if (await library.bring([saved])) go(to.plans);
  };
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }}>
        <SaveNote />
      </Top>
      <main id="main">
        <SaveTrouble />
        <h1 tabIndex={-1}>{say(receive.found)}</h1>
        <section>
          <div class="plate received">
            <AntennaSketch {...answers} />
          </div>
          <h2>{answers.name ?? kindOf(answers, plan, say)}</h2>
          {plan !== null && <PowerLines plan={plan} />}
          {plan !== null && <p>{plan.summary}</p>}
        </section>
      </main>
      <section class="act" aria-label={say(shell.actions)}>
        <a class="btn tall" href={to.plans}>
          {say(receive.leave)}
        </a>
        <button type="button" class="btn go" onClick={() => void keep()}>
          {say(receive.keep)}
        </button>
      </section>
    </>
  );
}

/** A link pasted whole, with or without the address before it. */
function PasteLink() {
  const say = useSay();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState(false);
  const open = (event: Event): void => {
    event.preventDefault();
    const code = codeIn(text);
    setWrong(code === null);
    if (code !== null) go(to.receive(code));
  };
  return (
    <form class="typed" onSubmit={open}>
      <label for="link">{say(receive.linkLabel)}</label>
      <input
        id="link"
        type="text"
        autoComplete="off"
        value={text}
        aria-describedby={wrong ? 'link-problem' : undefined}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      {wrong && (
        <p class="stop" id="link-problem" role="alert">
          {say(receive.notLink)}
        </p>
      )}
      <button type="submit" class="btn tall">
        {say(receive.readLink)}
      </button>
    </form>
  );
}
