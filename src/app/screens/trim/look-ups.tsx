/** What is needed in a hurry when something is wrong: each a foldout, two taps from any screen of a plan, with steps in their order. */
import { factsOf, isNoSystem } from '../../../advice/facts';
import { type LookUp, lookUpsOf } from '../../../advice/look-ups';
import { sources } from '../../../catalog/sources';
import type { Answers } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { lookUpScreen, lookUpSteps, lookUps } from '../../../words/en/look-ups';
import { SourceNote } from '../../jobs/source-note';
import { jumpTo } from '../../parts/jump-to';
import { useSay } from '../../say';
import { HotCore } from './hot-core';

interface LookUpsProps {
  readonly answers: Answers;
  readonly plan: Plan;
}

const LOOK_UPS = 'look-ups';

/** At the top of a long screen: who is in a hurry does not look for them. */
export function ToLookUps() {
  const say = useSay();
  return (
    <button type="button" class="btn" onClick={() => jumpTo(LOOK_UPS)}>
      {say(lookUpScreen.jump)}
    </button>
  );
}

export function LookUps({ answers, plan }: LookUpsProps) {
  const say = useSay();
  return (
    <section class="look-ups" aria-labelledby={LOOK_UPS}>
      <h2 id={LOOK_UPS} tabIndex={-1}>
        {say(lookUpScreen.head)}
      </h2>
      <HotCore plan={plan} />
      {lookUpsIn(answers, plan).map((lookUp) => (
        <OneLookUp key={lookUp.id} {...lookUp} />
      ))}
    </section>
  );
}

function lookUpsIn(answers: Answers, { chain }: Plan): readonly LookUp[] {
  if (answers.radiator === undefined || answers.fedAt === undefined) return [];
  const facts = factsOf(answers);
  return isNoSystem(facts)
    ? []
    : lookUpsOf(
        facts,
        chain.filter(({ device }) => device === 'choke'),
      );
}

function OneLookUp({ id, steps }: LookUp) {
  const say = useSay();
  const words = lookUps[id];
  return (
    <details>
      <summary>{say(words.title)}</summary>
      <div class="danger">
        <p>{say(words.danger)}</p>
      </div>
      <ol class="checks">
        {steps.map(({ code, data }) => (
          <Step key={code} code={code} data={data} />
        ))}
      </ol>
      {words.last !== undefined && <p>{say(words.last)}</p>}
      <SourceNote sources={steps.map(({ source }) => ({ id: source, ...sources[source] }))} />
    </details>
  );
}

function Step({ code, data }: Pick<LookUp['steps'][number], 'code' | 'data'>) {
  const say = useSay();
  const words = lookUpSteps[code];
  if (words === undefined) throw new Error(`no words for ${code}`);
  return (
    <li>
      <b>{say(words.act, data)}</b>
      <p>{say(words.means, data)}</p>
    </li>
  );
}
