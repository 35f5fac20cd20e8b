/** Hands the plan over: as text, on paper, as a file that another phone can open. */
import type { SavedPlan } from '../../../design/saved-plan';
import { planAsText } from '../../../plan/plain-text';
import type { Plan } from '../../../plan/plan-schema';
import { exportText } from '../../../storage/export-file';
import { planScreen } from '../../../words/en/plan-screen';
import { SendText } from '../../jobs/send-text';
import { useSay } from '../../say';

interface ShareProps {
  readonly plan: Plan;
  readonly saved: SavedPlan;
  readonly name: string;
}

export function Share({ plan, saved, name }: ShareProps) {
  const say = useSay();
  const keep = (): void => {
    const file = new Blob([exportText({ plans: [saved], parts: [] }, Date.now())], { type: 'application/json' });
    const address = URL.createObjectURL(file);
    const link = document.createElement('a');
    link.href = address;
    link.download = `${name.replace(/[^\p{L}\p{N}]+/gu, '-').toLowerCase()}.json`;
    link.click();
    URL.revokeObjectURL(address);
  };
  return (
    <section aria-labelledby="share" class="share">
      <h2 id="share" tabIndex={-1}>
        {say(planScreen.share)}
      </h2>
      <div class="ways">
        <SendText title={name} text={() => planAsText(plan, { name, format: say.format })} main={false} />
        <button type="button" class="btn tall" onClick={() => print()}>
          {say(planScreen.print)}
        </button>
        <button type="button" class="btn tall" onClick={keep}>
          {say(planScreen.saveFile)}
        </button>
      </div>
    </section>
  );
}
