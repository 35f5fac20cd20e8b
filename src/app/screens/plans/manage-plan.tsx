/** Copy, rename, delete, and the link. Deleting asks nothing, because it can be undone. */
import { useState } from 'preact/hooks';
import { completeAnswers } from '../../../advice/route';
import type { SavedPlan } from '../../../design/saved-plan';
import { linkText } from '../../../storage/plan-link';
import { plans as words } from '../../../words/en/screens';
import { to } from '../../routes';
import { useSay } from '../../say';
import { effectiveDraft } from '../../stores/effective-answers';
import { useStores } from '../../stores/stores';
import { planName } from './plan-line';
import '../../styles/fields.css';

interface ManageProps {
  readonly plan: SavedPlan;
  readonly onDeleted: (id: string) => void;
}

export function ManagePlan({ plan, onDeleted }: ManageProps) {
  const say = useSay();
  const { library } = useStores();
  const [renaming, setRenaming] = useState(false);
  const name = planName(plan, say);
  return (
    <>
      <div class="ways">
        <button
          type="button"
          class="btn"
          onClick={() => library.copy(plan.id, say(words.copyName, { name }).slice(0, 80))}
        >
          {say(words.copy)}
        </button>
        <button type="button" class="btn" aria-expanded={renaming} onClick={() => setRenaming(!renaming)}>
          {say(words.rename)}
        </button>
        <button
          type="button"
          class="btn"
          onClick={() => {
            library.edit(plan.id, { kind: 'deleted', on: true });
            onDeleted(plan.id);
          }}
        >
          {say(words.remove)}
        </button>
      </div>
      {renaming && <Rename plan={plan} onDone={() => setRenaming(false)} />}
      <ShareLink plan={plan} />
    </>
  );
}

function Rename({ plan, onDone }: { plan: SavedPlan; onDone: () => void }) {
  const say = useSay();
  const { library } = useStores();
  const field = `rename-${plan.id}`;
  const text = plan.typed.name?.text ?? plan.answers.name ?? '';
  return (
    <form
      class="typed"
      onSubmit={(event) => {
        event.preventDefault();
        const name = text.trim();
        // An empty name takes the name away: the plan is then called by what it is.
        library.edit(
          plan.id,
          { kind: 'answer', key: 'name', answer: name === '' ? {} : { name: name.slice(0, 80) } },
          { kind: 'typed', field: 'name', text: '' },
        );
        onDone();
      }}
    >
      <label for={field}>{say(words.renameLabel)}</label>
      <input
        id={field}
        type="text"
        autoComplete="off"
        maxLength={80}
        value={text}
        onInput={(event) => library.edit(plan.id, { kind: 'typed', field: 'name', text: event.currentTarget.value })}
      />
      <button type="submit" class="btn tall">
        {say(words.renameDone)}
      </button>
    </form>
  );
}

/** The plan's answers as a link. Shown whole, so that it can also be copied by hand. */
function ShareLink({ plan }: { plan: SavedPlan }) {
  const say = useSay();
  const { settings, parts } = useStores();
  const [copied, setCopied] = useState<boolean | null>(null);
  const answers = completeAnswers(effectiveDraft(plan.answers, settings.settings.value, parts.parts.value));
  if (answers === null) return null;
  const { onHand: _mine, ...theirs } = answers;
  const link = new URL(to.receive(linkText(theirs)), location.href).href;
  const copy = (): void => {
    navigator.clipboard.writeText(link).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  };
  return (
    <div class="typed">
      <label for={`link-${plan.id}`}>{say(words.linkLabel)}</label>
      <input
        id={`link-${plan.id}`}
        type="text"
        readOnly
        value={link}
        onFocus={(event) => event.currentTarget.select()}
      />
      <button type="button" class="btn tall" onClick={copy}>
        {say(words.shareLink)}
      </button>
      <p role="status">{copied !== null && say(copied ? words.linkCopied : words.linkNotCopied)}</p>
    </div>
  );
}
