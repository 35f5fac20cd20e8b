/** Every piece: cut length large, finished length and spare beside its name. */
import type { Plan } from '../../../plan/plan-schema';
import { capital } from '../../../words/capital';
import { planScreen } from '../../../words/en/plan-screen';
import { KeyLength } from '../../jobs/key-length';
import { Underway } from '../../jobs/underway';
import { Columned } from '../../parts/column-table';
import { to } from '../../routes';
import { useSay } from '../../say';
import { WorkingView } from './working-view';

/** Spare below this, m, is not told. */
const NO_SPARE_M = 0.005;

interface CutListProps {
  readonly plan: Plan;
  readonly planId: string;
  readonly isUnderway: boolean;
}

export function CutList({ plan, planId, isUnderway }: CutListProps) {
  const say = useSay();
  if (plan.cuts.length === 0) return null;
  return (
    <section aria-labelledby="cuts">
      <div class="head">
        <h2 id="cuts" tabIndex={-1}>
          {say(planScreen.cut)}
        </h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <Columned>
        <table class="cuts">
          <thead class="vh">
            <tr>
              <th scope="col">{say(planScreen.piece)}</th>
              <th scope="col">{say(planScreen.cutLength)}</th>
            </tr>
          </thead>
          <tbody>
            {plan.cuts.map((cut) => (
              <tr key={cut.piece}>
                <th scope="row">
                  {capital(cut.name)}
                  {cut.count > 1 && <span>{say(planScreen.times, { count: cut.count })}</span>}
                  {cut.cutM - cut.finishedM > NO_SPARE_M && (
                    <span>{say(planScreen.finished, { finishedM: cut.finishedM })}</span>
                  )}
                  {cut.legM !== null && cut.legM > cut.finishedM && (
                    <span>{say(planScreen.legUpTo, { legM: cut.legM })}</span>
                  )}
                </th>
                <td>
                  <KeyLength metres={cut.cutM} what={cut.name} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Columned>
      <details>
        <summary>{say(planScreen.cutFound)}</summary>
        {plan.fieldStudy?.lengths?.text.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <div class="group">
          {plan.cuts.map((cut) => (
            <div key={cut.piece}>
              <b>{capital(cut.name)}</b>
              <p>
                {say(planScreen.exact, { toleranceM: cut.toleranceM })} {cut.stopRule}
              </p>
              <WorkingView working={cut.working} what={cut.name} />
            </div>
          ))}
        </div>
      </details>
      <a class="btn tall" href={to.job(planId, 'cut')}>
        {say(planScreen.startCutting)}
      </a>
    </section>
  );
}
