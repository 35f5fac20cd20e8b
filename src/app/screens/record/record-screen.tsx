/** The exposure evaluation as a record: dated by the phone, to read, keep, send and print. The plan remembers when a copy was last kept. */
import type { SavedPlan } from '../../../design/saved-plan';
import { exposureRecord } from '../../../plan/exposure-record';
import { recordScreen } from '../../../words/en/record-screen';
import { assumedText } from '../../assumed-text';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type PlanRoute, to } from '../../routes';
import { clock, useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { PaperView } from './paper-view';

const KEPT = 'record:kept';

export function RecordScreen({ route }: { route: PlanRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <RecordPage key={open.saved.id} {...open} />}</WithPlan>;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** The same everywhere, so that a record reads alike in every country: 2026-11-25, by the phone's clock and zone. */
function isoDay(at: number): string {
  const date = new Date(at);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

function RecordPage({ saved, answers, plan, study, name }: OpenPlan) {
  const say = useSay();
  const { library } = useStores();
  const date = isoDay(Date.now());
  const assumed = plan.assumed.map((each) => assumedText(each, say.format));
  const paper = exposureRecord(answers, plan, { date, name, assumed, format: say.format });
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }} />
      <main id="main">
        {paper === null ? (
          <section class="stop">
            <h1 tabIndex={-1}>{say(recordScreen.none)}</h1>
            <p>{say(recordScreen.noneWhy)}</p>
            <a class="btn tall" href={to.plan(saved.id)}>
              {say(recordScreen.toPlan)}
            </a>
          </section>
        ) : (
          <PaperView
            paper={paper}
            fileName={`${name} ${recordScreen.title} ${date}`}
            how={recordScreen.how}
            kind="record"
            onKept={() => library.edit(saved.id, { kind: 'tick', key: KEPT, on: true })}
          >
            <SaveTrouble />
            <p role="status">{study.kind === 'working' && <b>{say(recordScreen.working)}</b>}</p>
            <KeptNote saved={saved} />
          </PaperView>
        )}
      </main>
    </>
  );
}

function KeptNote({ saved }: { readonly saved: SavedPlan }) {
  const say = useSay();
  const kept = saved.ticks[KEPT];
  const isOutdated = kept !== undefined && Object.values(saved.answeredAt).some((at) => at > kept.at);
  return (
    <p role="status">
      {kept !== undefined && say(recordScreen.keptAt, { date: isoDay(kept.at), time: clock(kept.at) })}{' '}
      {isOutdated && say(recordScreen.changedSince)}
    </p>
  );
}
