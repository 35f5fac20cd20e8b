/** A plan that came as a link or a file. Nothing is kept before it is asked for, and what was refused says why. */
import { useState } from 'preact/hooks';
import type { Answers } from '../../../design/answers';
import { newSavedPlan } from '../../../design/saved-plan';
import { readImport } from '../../../storage/export-file';
import { readLink } from '../../../storage/plan-link';
import { receive } from '../../../words/en/places';
import { problemLine } from '../../../words/en/problems';
import { shell } from '../../../words/en/screens';
import { SaveNote, SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { RadiatorSketch } from '../../pictures/radiators';
import { go } from '../../router';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { type Stores, useStores } from '../../stores/stores';
import { PowerLines } from '../ask/so-far';
import { type ImportReport, Report } from './import-report';
import { kindOf } from './plan-line';
import './plans.css';

export function ReceiveScreen({ route }: { route: Extract<Route, { screen: 'receive' }> }) {
  const say = useSay();
  const stores = useStores();
  const [report, setReport] = useState<ImportReport | null>(null);
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }}>
        <SaveNote />
      </Top>
      <main id="main">
        <SaveTrouble />
        <h1 tabIndex={-1}>{say(receive.title)}</h1>
        {route.code !== '' ? <FromLink code={route.code} /> : <p>{say(receive.meaning)}</p>}
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
                if (file !== undefined) void takeFile(file, stores).then(setReport);
                input.value = ''; // the same file can be chosen again
              }}
            />
          </label>
          {report !== null && <Report report={report} />}
        </section>
      </main>
    </>
  );
}

async function takeFile(file: File, { library, parts }: Stores): Promise<ImportReport> {
  const read = readImport(await file.text(), {
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

function FromLink({ code }: { code: string }) {
  const say = useSay();
  const stores = useStores();
  const read = readLink(code);
  if ('cut' in read) return <p class="stop">{say(receive.cut)}</p>;
  if ('problems' in read) {
    return (
      <section class="stop">
        <p>{say(receive.wrong)}</p>
        <ul class="out">
          {read.problems.map((problem) => (
            <li key={problem.key}>{problemLine(problem, say(receive.record))}</li>
          ))}
        </ul>
      </section>
    );
  }
  return <Found answers={read} stores={stores} />;
}

function Found({ answers, stores }: { answers: Answers; stores: Stores }) {
  const say = useSay();
  const plan = stores.planner.planOf(answers);
  const keep = async (): Promise<void> => {
    const { schema: _schema, ...given } = answers;
    const saved = newSavedPlan(crypto.randomUUID(), Date.now(), given);
    if (await stores.library.bring([saved])) go(to.plans);
  };
  return (
    <section>
      <h2>{say(receive.found)}</h2>
      <div class="plate found">
        <RadiatorSketch radiator={answers.radiator ?? 'other'} />
      </div>
      <h3>{answers.name ?? kindOf(answers, plan, say)}</h3>
      {plan !== null && <PowerLines plan={plan} />}
      {plan !== null && <p>{plan.summary}</p>}
      <button type="button" class="btn go" onClick={() => void keep()}>
        {say(receive.keep)}
      </button>
    </section>
  );
}

/** A link pasted whole, with or without the address before it. */
function PasteLink() {
  const say = useSay();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState(false);
  const open = (event: Event): void => {
    event.preventDefault();
    const code = text.trim().split('#/receive/')[1] ?? (/^v\d+~\S+$/.test(text.trim()) ? text.trim() : '');
    setWrong(code === '');
    if (code !== '') go(to.receive(code));
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
