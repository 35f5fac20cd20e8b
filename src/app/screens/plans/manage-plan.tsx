/** Copy, rename, delete, hand over. Deleting asks nothing, because it can be undone. */
import { useState } from 'preact/hooks';
import { completeAnswers } from '../../../advice/route';
import type { SavedPlan } from '../../../design/saved-plan';
import { keptPlans } from '../../../words/en/kept-plans';
import { shareScreen } from '../../../words/en/share-screen';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
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
  const isWhole = completeAnswers(useEffective()(plan.answers)) !== null;
  const [renaming, setRenaming] = useState(false);
  const name = planName(plan, say);
  return (
    <>
      <div class="ways">
        <button
          type="button"
          class="btn"
          onClick={() => library.copy(plan.id, say(keptPlans.copyName, { name }).slice(0, 80))}
        >
          {say(keptPlans.copy)}
        </button>
        <button type="button" class="btn" aria-expanded={renaming} onClick={() => setRenaming(!renaming)}>
          {say(keptPlans.rename)}
        </button>
        <button
          type="button"
          class="btn"
          onClick={() => {
            library.edit(plan.id, { kind: 'deleted', on: true });
            onDeleted(plan.id);
          }}
        >
          {say(keptPlans.remove)}
        </button>
        {isWhole && (
          <a class="btn" href={to.share(plan.id)}>
            {say(shareScreen.title)}
          </a>
        )}
      </div>
      {renaming && <Rename plan={plan} onDone={() => setRenaming(false)} />}
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
      <label for={field}>{say(keptPlans.renameLabel)}</label>
      <input
        id={field}
        type="text"
        autoComplete="off"
        maxLength={80}
        value={text}
        onInput={(event) => library.edit(plan.id, { kind: 'typed', field: 'name', text: event.currentTarget.value })}
      />
      <button type="submit" class="btn tall">
        {say(keptPlans.renameDone)}
      </button>
    </form>
  );
}
