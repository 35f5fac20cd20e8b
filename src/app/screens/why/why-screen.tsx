/** Why a choke: the three roads of a coax with and without one, in two columns readable from three metres; then where people differ. */

import { useEffect } from 'preact/hooks';
import { completeAnswers } from '../../../advice/route';
import { sources } from '../../../catalog/sources';
import { CoaxRoads, PartAtWork } from '../../../drawing/coax-roads';
import { drawings } from '../../../words/en/drawings';
import { planScreen } from '../../../words/en/plan-screen';
import { plans } from '../../../words/en/screens';
import { whyScreen } from '../../../words/en/why-screen';
import { SourceNote } from '../../jobs/source-note';
import { Top } from '../../parts/top';
import { type Route, to } from '../../routes';
import { useSay } from '../../say';
import { useEffective } from '../../stores/effective-answers';
import { useStores } from '../../stores/stores';
import { DisputeBody } from '../plan/more-sections';
import '../../jobs/jobs.css';
import '../plan/plan.css';
import '../plan/plan-print.css';
import './why.css';

/** Current at the building entry, worst case, mA at 100 W; the dipole's own is 1.3 A. Own field computations. */
const OUT_MA = 197;
const IN_MA = 15;
const ANTENNA_MA = 1300;

export function WhyScreen({ route }: { route: Extract<Route, { screen: 'why' }> }) {
  const say = useSay();
  const [planId] = route.rest;
  const { library } = useStores();
  const open = planId === undefined ? undefined : library.planOf(planId);
  const shown = open ?? library.plans.value[0];
  const name = open?.answers.name ?? plans.unnamed;
  return (
    <>
      <Top {...(open === undefined ? {} : { up: { href: to.plan(open.id), words: name } })} />
      <main id="main">
        <div class="stack three-roads">
          <h1 tabIndex={-1}>{say(whyScreen.title)}</h1>
          <ol class="key3">
            <Road name={say(whyScreen.one)} is={say(whyScreen.oneIs)} />
            <Road name={say(whyScreen.two)} is={say(whyScreen.twoIs)} />
            <Road name={say(whyScreen.three)} is={say(whyScreen.threeIs)} />
          </ol>
        </div>
        <div class="panels">
          <Panel choked={false} milliamperes={OUT_MA} />
          <Panel choked milliamperes={IN_MA} />
        </div>
        <div class="stack">
          <p class="small">{say(whyScreen.how)}</p>
          {shown !== undefined && (
            <a class="btn tall" href={to.stand(shown.id)}>
              {say(whyScreen.standFor, { name: shown.answers.name ?? plans.unnamed })}
            </a>
          )}
          <SourceNote sources={[{ id: 'own-field-solutions', ...sources['own-field-solutions'] }]} />
        </div>
        <TwoParts />
        <Disputes planId={planId} />
      </main>
    </>
  );
}

const Road = ({ name, is }: { readonly name: string; readonly is: string }) => (
  <li>
    <span>
      <b>{name}</b> {is}
    </span>
  </li>
);

function Panel({ choked, milliamperes }: { readonly choked: boolean; readonly milliamperes: number }) {
  const say = useSay();
  const id = choked ? 'choke-in' : 'choke-out';
  const percent = say.format.number((100 * milliamperes) / ANTENNA_MA, milliamperes > 100 ? 2 : 1);
  return (
    <section class="panel" aria-labelledby={id}>
      <h2 id={id}>
        <span>{say(choked ? whyScreen.in : whyScreen.out)}</span>{' '}
        <b>
          {milliamperes}
          <small>&nbsp;{say(whyScreen.unit)}</small>
        </b>
      </h2>
      <div class="pic">
        <CoaxRoads
          outsideShare={choked ? 0.06 : 0.65}
          choke={choked ? say(whyScreen.choke) : null}
          wire={say(whyScreen.wire)}
          radio={say(whyScreen.radio)}
          label={say(choked ? drawings.roadsChoked : drawings.roadsOpen)}
        />
      </div>
      <p class="share">
        {milliamperes} {say(whyScreen.unit)} {say(choked ? whyScreen.inIs : whyScreen.outIs, { percent })}
      </p>
    </section>
  );
}

function TwoParts() {
  const say = useSay();
  return (
    <section aria-labelledby="parts">
      <h2 id="parts">{say(whyScreen.parts)}</h2>
      <div class="both">
        <div class="what">
          <h3>{say(whyScreen.transformer)}</h3>
          <PartAtWork
            kind="transformer"
            name={say(whyScreen.two49)}
            left={say(whyScreen.wireOhms)}
            right={say(whyScreen.coaxOhms)}
            label={say(drawings.transformer)}
          />
          <p>{say(whyScreen.transformerIs)}</p>
        </div>
        <div class="what">
          <h3>{say(whyScreen.chokeIs)}</h3>
          <PartAtWork kind="choke" name={say(whyScreen.one1)} left="" right="" label={say(drawings.chokeAtWork)} />
          <p>{say(whyScreen.chokeDoes)}</p>
        </div>
      </div>
    </section>
  );
}

/** Disputes carry the numbers of a plan: the one asked for, else the one touched last. */
function Disputes({ planId }: { readonly planId: string | undefined }) {
  const say = useSay();
  const { library, planner } = useStores();
  const effective = useEffective();
  useEffect(() => void planner.fetch(), [planner]);
  const saved = planId === undefined ? library.plans.value[0] : library.planOf(planId);
  const answers = saved === undefined ? null : completeAnswers(effective(saved.answers));
  const plan = planner.planOf(answers);
  const disputes = plan?.disputes ?? [];
  const data = { name: saved?.answers.name ?? plans.unnamed };
  return (
    <section aria-labelledby="differ">
      <h2 id="differ">{say(whyScreen.differ)}</h2>
      <p>
        {disputes.length > 0
          ? say(whyScreen.differFor, data)
          : plan != null
            ? say(whyScreen.differNotHere, data)
            : say(answers === null ? whyScreen.differNone : planScreen.underway)}
      </p>
      {disputes.map((dispute) => (
        <details key={dispute.id}>
          <summary>{dispute.question}</summary>
          <DisputeBody dispute={dispute} />
        </details>
      ))}
    </section>
  );
}
