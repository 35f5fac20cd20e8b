/** The plan: danger first, then the answer in one sentence, then everything it rests on, each reason one tap away. */
import { useEffect, useRef } from 'preact/hooks';
import { type Facts, factsOf, isNoSystem } from '../../../advice/facts';
import type { Answers } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { measured } from '../../../words/en/measured';
import { mechanicsScreen } from '../../../words/en/mechanics';
import { planScreen } from '../../../words/en/plan-screen';
import { shell } from '../../../words/en/screens';
import { shareScreen } from '../../../words/en/share-screen';
import { LocalCodes } from '../../jobs/gate';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { PhotosOfPlan } from '../../photos/photos';
import { type JobRoute, to } from '../../routes';
import { useSay } from '../../say';
import { ChangedStrip } from '../ask/changed-strip';
import { Answer } from './answer';
import { AssumedView } from './assumed-view';
import { BandsView } from './bands-view';
import { ChainView } from './chain-view';
import { CutList } from './cut-list';
import { Danger } from './danger';
import { JumpList, type JumpTarget } from './jump-list';
import { MeasuredView } from './measured-view';
import { MechanicsView } from './mechanics-view';
import { CautionsView, DisputesView, ExposureView, NotNeeded, Verdicts } from './more-sections';
import { OutsideView } from './outside-view';
import { SendsView } from './sends-view';
import { SiteFigure } from './site-figure';
import { sitePictureOf } from './site-picture';
import { StudyNote } from './study-note';
import { Stops, WarningsView } from './warnings-view';
import '../../jobs/jobs.css';
import './plan.css';
import './plan-print.css';

export function PlanScreen({ route }: { route: JobRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <PlanPage {...open} />}</WithPlan>;
}

function knownOf(answers: Answers): Facts | null {
  if (answers.radiator === undefined || answers.fedAt === undefined) return null;
  const facts = factsOf(answers);
  return isNoSystem(facts) ? null : facts;
}

function PlanPage({ saved, answers, plan, name, study }: OpenPlan) {
  const say = useSay();
  const picture = sitePictureOf(answers, plan);
  const isUnderway = study.kind === 'working';
  return (
    <>
      <Top up={{ href: to.plans, words: shell.plans }} />
      <main id="main" class="two plan-page">
        <div class="stack">
          <h1 tabIndex={-1}>{name}</h1>
          <p class="on-paper-only small">{say(planScreen.paperHint)}</p>
          <SaveTrouble />
          <Danger plan={plan} />
          <Stops warnings={plan.warnings} answers={answers} planId={saved.id} />
          <Answer text={plan.summary} />
          <WhatChanged saved={saved} />
          <StudyNote study={study} plan={plan} answers={answers} />
          <JumpList targets={targetsOf(plan, saved)} />
          {picture !== null && <SiteFigure picture={picture} plan={plan} />}
          {plan.chain.length > 0 && (
            <ChainView plan={plan} answers={answers} planId={saved.id} isUnderway={isUnderway} />
          )}
        </div>
        <div class="stack">
          <CutList plan={plan} planId={saved.id} isUnderway={isUnderway} />
          <WarningsView warnings={plan.warnings} answers={answers} planId={saved.id} />
          <BandsView plan={plan} facts={knownOf(answers)} isUnderway={isUnderway} />
          <div class="folded">
            <ExposureView plan={plan} planId={saved.id} />
            <SendsView plan={plan} picture={picture} isUnderway={isUnderway} />
            <OutsideView plan={plan} answers={answers} isUnderway={isUnderway} planId={saved.id} />
            <Verdicts plan={plan} answers={answers} />
            <NotNeeded plan={plan} />
            <MechanicsView plan={plan} />
            <AssumedView plan={plan} planId={saved.id} />
            <DisputesView plan={plan} />
            <CautionsView plan={plan} />
          </div>
          <MeasuredView saved={saved} />
          <PhotosOfPlan planId={saved.id} />
          <LocalCodes />
          <Onward planId={saved.id} />
        </div>
      </main>
    </>
  );
}

/** Takes the focus when an answer was changed on this page: whatever was tapped may be gone with the change, or stand far below. */
function WhatChanged({ saved }: { readonly saved: OpenPlan['saved'] }) {
  const place = useRef<HTMLDivElement>(null);
  const changedAt = saved.lastEdit?.at ?? 0;
  const known = useRef(changedAt);
  useEffect(() => {
    const here = place.current;
    if (known.current === changedAt || here === null) return;
    known.current = changedAt;
    if (!document.hasFocus()) return; // another tab's doing
    here.focus({ preventScroll: true });
    const bring = (): boolean => {
      if (here.firstElementChild === null) return false;
      here.scrollIntoView({ block: 'center' });
      return true;
    };
    if (changedAt === 0 || bring()) return; // taken back: the strip goes, and nothing moves
    const watch = new MutationObserver(() => bring() && watch.disconnect());
    watch.observe(here, { childList: true });
    return () => watch.disconnect();
  }, [changedAt]);
  return (
    <div ref={place} class="what-changed" tabIndex={-1}>
      <ChangedStrip plan={saved} />
    </div>
  );
}

/** Where a plan leads besides the jobs of the bar. */
function Onward({ planId }: { readonly planId: string }) {
  const say = useSay();
  const links = [
    [to.share(planId), shareScreen.title],
    [to.sheet(planId), planScreen.onPaper],
    [to.surer(planId), planScreen.surer],
    [`${to.why}/${planId}`, planScreen.whyScreen],
  ] as const;
  return (
    <nav class="ways" aria-label={say(planScreen.onward)}>
      {links.map(([href, words]) => (
        <a key={href} class="btn tall" href={href}>
          {say(words)}
        </a>
      ))}
    </nav>
  );
}

function targetsOf(plan: Plan, saved: OpenPlan['saved']): JumpTarget[] {
  const all: readonly (readonly [string, string, boolean])[] = [
    ['chain', planScreen.chain, plan.chain.length > 0],
    ['cuts', planScreen.cut, plan.cuts.length > 0],
    ['warnings', planScreen.warnings, plan.warnings.some(({ severity }) => severity !== 'stop')],
    ['bands', planScreen.bands, plan.bands.length > 0],
    ['people', planScreen.exposure, plan.exposure.length > 0],
    ['sends', planScreen.sends, plan.fieldStudy?.bands.some(({ elevation }) => elevation !== null) === true],
    ['outside', planScreen.outside, plan.fieldStudy?.bands.some(({ planned }) => planned !== null) === true],
    ['verdicts', planScreen.verdicts, plan.verdicts.length > 0],
    ['not-needed', planScreen.notNeeded, plan.notNeeded.length > 0],
    ['mechanics', mechanicsScreen.head, plan.mechanics !== null],
    ['assumed', planScreen.assumed, plan.assumed.length > 0],
    ['disputes', planScreen.disputes, plan.disputes.length > 0],
    ['cautions', planScreen.cautions, plan.cautions.length > 0],
    ['measured', measured.head, saved.measurements.length > 0],
  ];
  return all.filter(([, , there]) => there).map(([id, words]) => ({ id, words }));
}
