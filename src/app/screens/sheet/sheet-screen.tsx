/**
 * The whole plan on paper, for a clipboard: danger first, then what is cut, bought, made and done, with boxes to tick and room for what is
 * measured. One flow that breaks between parts; the screen shows it as it prints.
 */
import { useEffect, useRef } from 'preact/hooks';
import { shareScreen, sheet } from '../../../words/en/share-screen';
import { planAddress } from '../../handover/plan-address';
import { QrCode, useQr } from '../../handover/qr-code';
import { LocalCodes } from '../../jobs/gate';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { Top } from '../../parts/top';
import { type PlanRoute, to } from '../../routes';
import { day, useSay } from '../../say';
import { Answer } from '../plan/answer';
import { Danger } from '../plan/danger';
import { MeasuredView } from '../plan/measured-view';
import { AssumedList, BandTable, MeasuredTable, MindList, PeopleList, StepList } from './doings';
import { ChainTable, CutTable, MakeList, PartsTable, SheetDrawing } from './things';
import '../../jobs/jobs.css';
import '../plan/plan.css';
import '../../handover/qr-code.css';
import '../share/share.css';
import './sheet.css';

export function SheetScreen({ route }: { route: PlanRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Sheet key={open.saved.id} {...open} />}</WithPlan>;
}

function Sheet({ saved, answers, plan, name }: OpenPlan) {
  const say = useSay();
  const code = useQr(planAddress(answers, location.href));
  const paper = useRef<HTMLElement>(null);
  // Paper cannot be tapped: every foldout is open.
  useEffect(() => {
    for (const foldout of paper.current?.querySelectorAll('details') ?? []) foldout.open = true;
  });
  return (
    <>
      <Top up={{ href: to.share(saved.id), words: shareScreen.title }} />
      <main id="main">
        <div class="no-print ways">
          <button type="button" class="btn go" onClick={() => print()}>
            {say(sheet.print)}
          </button>
          <p class="small">{say(sheet.how)}</p>
        </div>
        <article ref={paper} class="sheet on-paper">
          <header>
            <h1 tabIndex={-1}>{name}</h1>
            <p>{say(sheet.made, { date: day(Date.now()) })}</p>
          </header>
          <Danger plan={plan} />
          <MindList plan={plan} severity="stop" />
          <Answer text={plan.summary} />
          <SheetDrawing plan={plan} answers={answers} />
          <ChainTable plan={plan} />
          <CutTable plan={plan} />
          <PartsTable plan={plan} saved={saved} />
          <MakeList plan={plan} />
          <StepList plan={plan} />
          <div class="pair">
            <BandTable plan={plan} />
            <PeopleList plan={plan} />
          </div>
          <MeasuredView saved={saved} />
          <MeasuredTable plan={plan} />
          <MindList plan={plan} severity="other" />
          <AssumedList plan={plan} />
          <section class="whole scan-it">
            <QrCode code={code} />
            <div>
              <LocalCodes />
              <p>{say(sheet.code)}</p>
            </div>
          </section>
        </article>
      </main>
    </>
  );
}
