/** What is done and minded on the print sheet: steps with their cautions, bands, what is measured, people, what was assumed. */
import type { Plan } from '../../../plan/plan-schema';
import { ruleSetName } from '../../../words/en/catalog-names';
import { cautionNames } from '../../../words/en/cautions';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { sheet } from '../../../words/en/share-screen';
import { stepNames } from '../../../words/en/steps';
import { assumedText } from '../../assumed-text';
import { gatesOf } from '../../jobs/gates';
import { ColumnTable } from '../../parts/column-table';
import { useSay } from '../../say';
import { PeopleTable } from '../plan/people-table';
import { Box } from './box';

interface PlanProps {
  readonly plan: Plan;
}

/** Each caution is printed once, before the first step that it belongs to. */
export function StepList({ plan }: PlanProps) {
  const say = useSay();
  if (plan.steps.length === 0) return null;
  const told = new Set<string>();
  return (
    <section>
      <h2>{say(sheet.steps)}</h2>
      <ol class="listed">
        {plan.steps.map((step) => {
          const fresh = gatesOf(plan, step).filter((caution) => {
            const key = `${caution.id} ${caution.before}`;
            if (told.has(key)) return false;
            told.add(key);
            return true;
          });
          return (
            <li key={step.id}>
              {fresh.length > 0 && (
                <div class="danger">
                  {fresh.map((caution) => (
                    <Caution key={`${caution.id} ${caution.before}`} caution={caution} />
                  ))}
                </div>
              )}
              <p class="whole tick">
                <Box />
                <span>
                  <b>{stepNames[step.id]}.</b> {step.text}
                </span>
              </p>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Caution({ caution }: { readonly caution: Plan['cautions'][number] }) {
  const say = useSay();
  return (
    <div class="whole">
      <h3>{say(sheet.checkFirst, { name: cautionNames[caution.id] ?? '' })}</h3>
      <ul>
        {caution.lineTexts.map(({ act, reason }) => (
          <li key={act} class="tick">
            <Box />
            <span>
              <b>{act}</b> {reason}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}

export function BandTable({ plan }: PlanProps) {
  const say = useSay();
  if (plan.bands.length === 0) return null;
  const tuner = (needed: boolean | null): string =>
    needed === null ? say(planScreen.notKnown) : say(needed ? sheet.yes : sheet.no);
  const swr = (value: number | null): string =>
    value === null ? say(planScreen.notKnown) : say(sheet.toOne, { swr: say.format.number(value, 2) });
  return (
    <section class="whole">
      <h2>{say(planScreen.bands)}</h2>
      <ColumnTable
        heads={[planScreen.band, sheet.swrAtRadio, sheet.loss, sheet.tuner].map((head) => say(head))}
        rows={plan.bands.map(({ band, swrAtRadio, lineLossDb, deviceLossDb, tunerNeeded }) => ({
          key: band,
          name: bandName(band),
          cells: [
            swr(swrAtRadio),
            lineLossDb === null
              ? say(planScreen.notKnown)
              : say(sheet.db, { db: say.format.number(lineLossDb + (deviceLossDb ?? 0), 2) }),
            tuner(tunerNeeded),
          ],
        }))}
      />
    </section>
  );
}

/** Empty cells for a pencil. */
export function MeasuredTable({ plan }: PlanProps) {
  const say = useSay();
  if (plan.bands.length === 0) return null;
  return (
    <section class="whole">
      <h2>{say(sheet.measured)}</h2>
      <table class="write">
        <thead>
          <tr>
            {[planScreen.band, sheet.dip, sheet.swr, sheet.folded].map((head) => (
              <th key={head} scope="col">
                {say(head)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {plan.bands.map(({ band }) => (
            <tr key={band}>
              <th scope="row">{bandName(band)}</th>
              <td />
              <td />
              <td />
            </tr>
          ))}
          <tr>
            <th scope="row">{say(sheet.notes)}</th>
            <td colSpan={3} />
          </tr>
        </tbody>
      </table>
    </section>
  );
}

export function MindList({ plan, severity }: PlanProps & { readonly severity: 'stop' | 'other' }) {
  const say = useSay();
  const warnings = plan.warnings.filter((warning) => (warning.severity === 'stop') === (severity === 'stop'));
  if (warnings.length === 0) return null;
  return (
    <section class={severity === 'stop' ? undefined : 'listed'}>
      <h2>{say(severity === 'stop' ? planScreen.stop : planScreen.warnings)}</h2>
      {warnings.map(({ id, text, why, waysOut }, index) => (
        <div key={`${id} ${index}`} class="mind whole">
          <h3>{text}</h3>
          <p>{why}</p>
          <ul>
            {waysOut.map((way) => (
              <li key={way}>{way}</li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

export function PeopleList({ plan }: PlanProps) {
  const say = useSay();
  const [first] = plan.exposure;
  if (first === undefined) return null;
  return (
    <section class="whole">
      <h2>{say(planScreen.exposure)}</h2>
      <p>{say(planScreen.exposureIntro, { rules: ruleSetName(first.ruleSet) })}</p>
      <PeopleTable exposure={plan.exposure} />
    </section>
  );
}

export function AssumedList({ plan }: PlanProps) {
  const say = useSay();
  if (plan.assumed.length === 0) return null;
  return (
    <section>
      <h2>{say(planScreen.assumed)}</h2>
      <ul class="listed">
        {plan.assumed.map((assumption) => (
          <li key={assumption.key}>{assumedText(assumption, say.format)}</li>
        ))}
      </ul>
    </section>
  );
}
