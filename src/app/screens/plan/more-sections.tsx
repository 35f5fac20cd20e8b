/** What follows the feed system on a plan: what is not needed, parts owned, people near, cautions, where people differ. */
import type { Answers } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { ruleSetName } from '../../../words/en/catalog-names';
import { cautionNames } from '../../../words/en/cautions';
import { onTheGround, placesWords } from '../../../words/en/exposure';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { verdictNames } from '../../../words/en/verdicts';
import { partText } from '../../answer-text';
import { PaperLinks } from '../../jobs/paper-links';
import { SourceNote } from '../../jobs/source-note';
import { type Say, useSay } from '../../say';
import { Fold } from './fold';
import { keepOutOf } from './keep-out';
import { PeopleTable } from './people-table';
import { PlacesView, RecalledLimits } from './places-view';
import { WorkingView } from './working-view';

type Caution = Plan['cautions'][number];

interface PlanProps {
  readonly plan: Plan;
}

export function NotNeeded({ plan }: PlanProps) {
  const say = useSay();
  if (plan.notNeeded.length === 0) return null;
  return (
    <Fold
      id="not-needed"
      head={say(planScreen.notNeeded)}
      result={say(planScreen.notNeededAll, { count: plan.notNeeded.length })}
    >
      <ul class="reasons">
        {plan.notNeeded.map(({ code, device, why, source }) => (
          <li key={code}>
            <b>{device}</b>
            <p>{why}</p>
            <SourceNote sources={[source]} />
          </li>
        ))}
      </ul>
    </Fold>
  );
}

export function Verdicts({ plan, answers }: PlanProps & { readonly answers: Answers }) {
  const say = useSay();
  if (plan.verdicts.length === 0) return null;
  const result = Object.entries(verdictNames)
    .map(([id, verdict]) => ({ verdict, count: plan.verdicts.filter((each) => each.verdict === id).length }))
    .filter(({ count }) => count > 0)
    .map((each) => say(planScreen.verdictResult, each))
    .join(', ');
  return (
    <Fold id="verdicts" head={say(planScreen.verdicts)} result={result}>
      <ul class="rows">
        {plan.verdicts.map(({ part, verdict, why }) => {
          const owned = answers.onHand?.[part];
          return (
            <li key={part} class="verdict-row">
              <p>
                <b>{owned === undefined ? '' : partText(owned, say.format)}</b>{' '}
                <span class="chip">{verdictNames[verdict]}</span>
              </p>
              <p>{why}</p>
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}

export function ExposureView({ plan, planId }: PlanProps & { readonly planId: string }) {
  const say = useSay();
  const [first] = plan.exposure;
  if (first === undefined) return null;
  const judged = (ok: boolean) => plan.exposure.filter(({ nearestPersonOk }) => nearestPersonOk === ok);
  const [good, over] = [judged(true), judged(false)];
  const names = (rows: readonly Plan['exposure'][number][]): string =>
    rows.map(({ band }) => bandName(band)).join(', ');
  const most = over.flatMap(({ powerAtNearestPersonW }) => powerAtNearestPersonW ?? []);
  return (
    <Fold id="people" head={say(planScreen.exposure)} result={nearestText(plan, say)}>
      <p>{say(planScreen.exposureIntro, { rules: ruleSetName(first.ruleSet) })}</p>
      <PeopleTable exposure={plan.exposure} />
      {good.length > 0 && <p>{say(planScreen.nearestOk, { bands: names(good) })}</p>}
      {over.length > 0 && (
        <p>
          <b>{say(planScreen.nearestNot, { bands: names(over), watts: say.format.number(Math.min(...most), 2) })}</b>
        </p>
      )}
      <PlacesView exposure={plan.exposure} />
      <RecalledLimits exposure={plan.exposure} />
      <details>
        <summary>{say(planScreen.decided)}</summary>
        <div class="reasons">
          {plan.exposure.map((entry) => (
            <Decided key={entry.band} entry={entry} />
          ))}
        </div>
      </details>
      <PaperLinks planId={planId} />
    </Fold>
  );
}

function Decided({ entry }: { readonly entry: Plan['exposure'][number] }) {
  const say = useSay();
  const { decidedBy, publicMWorking, method, groundKnowingM, groundPublicM, powerAtNearestPersonWWorking } = entry;
  const band = bandName(entry.band);
  return (
    <div>
      <p>
        <b>{band}.</b> {decidedBy}
      </p>
      {method === 'solved' && groundKnowingM !== null && groundPublicM !== null && (
        <p>{say(onTheGround, { groundKnowingM, groundPublicM })}</p>
      )}
      <WorkingView working={publicMWorking} what={band} />
      <WorkingView working={powerAtNearestPersonWWorking} what={say(placesWords.powerOn, { band })} />
    </div>
  );
}

/** The distance that holds on every band for people who were not told. */
function nearestText(plan: Plan, say: Say): string {
  const metres = keepOutOf(plan);
  return metres === null ? say(planScreen.nearestUnknown) : say(planScreen.nearestPerson, { metres });
}

const moments: readonly Caution['before'][] = ['site', 'up', 'launch', 'raise', 'transmit', 'links', 'leave', 'storm'];

export function CautionsView({ plan }: PlanProps) {
  const say = useSay();
  if (plan.cautions.length === 0) return null;
  return (
    <Fold id="cautions" head={say(planScreen.cautions)} result={say(planScreen.cautionsAll)}>
      <div class="group">
        {moments.map((before) => (
          <CautionsBefore
            key={before}
            before={before}
            cautions={plan.cautions.filter((each) => each.before === before)}
          />
        ))}
      </div>
    </Fold>
  );
}

function CautionsBefore({ before, cautions }: { readonly before: string; readonly cautions: readonly Caution[] }) {
  const say = useSay();
  if (cautions.length === 0) return null;
  return (
    <details class="moment">
      <summary>{say(planScreen.cautionsBefore, { before })}</summary>
      <ul class="reasons">
        {cautions.map((caution) => (
          <li key={caution.lines.join(' ')} class="reasons">
            <b>{cautionNames[caution.id]}</b>
            {caution.lineTexts.map(({ act, reason }) => (
              <p key={act}>
                {act} <span class="small">{reason}</span>
              </p>
            ))}
            <WorkingView working={caution.distanceMWorking} what={cautionNames[caution.id] ?? ''} />
          </li>
        ))}
      </ul>
      <SourceNote sources={cautions.flatMap(({ lineTexts }) => lineTexts.map(({ source }) => source))} />
    </details>
  );
}

export function DisputesView({ plan }: PlanProps) {
  const say = useSay();
  if (plan.disputes.length === 0) return null;
  return (
    <Fold
      id="disputes"
      head={say(planScreen.disputes)}
      result={say(planScreen.disputesAll, { count: plan.disputes.length })}
    >
      <div class="group">
        {plan.disputes.map((dispute) => (
          <details key={dispute.id} class="moment">
            <summary>{dispute.question}</summary>
            <DisputeBody dispute={dispute} />
          </details>
        ))}
      </div>
    </Fold>
  );
}

export function DisputeBody({ dispute }: { readonly dispute: Plan['disputes'][number] }) {
  const say = useSay();
  return (
    <dl class="dispute">
      <dt>{say(planScreen.oneSide)}</dt>
      <dd>{dispute.one}</dd>
      <dt>{say(planScreen.otherSide)}</dt>
      <dd>{dispute.other}</dd>
      <dt>{say(planScreen.settles)}</dt>
      <dd>
        {dispute.decides}
        <SourceNote sources={[dispute.source]} />
      </dd>
      <div class="house">
        <dt>{say(planScreen.house)}</dt>
        <dd>{dispute.house}</dd>
      </div>
    </dl>
  );
}
