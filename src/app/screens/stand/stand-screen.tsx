/** For a group before one screen: the current on the coax with and without the choke, side by side, measured where a second person typed it. */
import { useState } from 'preact/hooks';
import { plainSigns, readNumber } from '../../../base/read-number';
import { shareOf } from '../../../base/share';
import type { Plan } from '../../../plan/plan-schema';
import { decimalText } from '../../../words/decimal';
import { bandName } from '../../../words/en/names';
import { shareText, stand } from '../../../words/en/stand-screen';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { useWakeLock } from '../../jobs/wake-lock';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type StandRoute, to } from '../../routes';
import { type Say, useSay } from '../../say';
import { useStores } from '../../stores/stores';
import '../../jobs/jobs.css';
import './stand.css';

type BandStudy = NonNullable<Plan['fieldStudy']>['bands'][number];

export function StandScreen({ route }: { route: StandRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Stand open={open} asked={route.band} />}</WithPlan>;
}

const readingKey = (band: string, what: Read): string => `stand ${band} ${what}`;
const reads = ['wire', 'without', 'with'] as const;
type Read = (typeof reads)[number];

/** The band asked for, else the one with most on the coax without a choke. */
function bandOf({ bands, fieldStudy }: Plan, asked: string): string {
  if (bands.some(({ band }) => band === asked)) return asked;
  const [worst] = [...(fieldStudy?.bands ?? [])].sort((a, b) => (b.noChoke?.entryMa ?? 0) - (a.noChoke?.entryMa ?? 0));
  return worst?.band ?? bands[0]?.band ?? '';
}

function Stand({
  open: { plan, saved, name, study: state },
  asked,
}: {
  readonly open: OpenPlan;
  readonly asked: string;
}) {
  const say = useSay();
  useWakeLock();
  const band = bandOf(plan, asked);
  const study = plan.fieldStudy?.bands.find((each) => each.band === band);
  const read = (what: Read): number | null => saved.readings[readingKey(band, what)]?.value ?? null;
  const wireMa = read('wire');
  const computedWireMa = study?.feedCurrentA == null ? null : study.feedCurrentA * 1000;
  const chokes = plan.chain.filter(({ device }) => device === 'choke').length;
  const isMeasured = read('without') !== null || read('with') !== null;
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }} />
      <main id="main" class="stand">
        <SaveTrouble />
        <div class="stand-head">
          <h1 tabIndex={-1}>{say(stand.title)}</h1>
          <nav class="segs wrap" aria-label={say(stand.band)}>
            {plan.bands.map((each) => (
              <a
                key={each.band}
                class={each.band === band ? 'seg on' : 'seg'}
                href={to.stand(saved.id, each.band)}
                aria-current={each.band === band ? 'true' : undefined}
              >
                <b>{bandName(each.band)}</b>
              </a>
            ))}
          </nav>
        </div>
        <div class="columns" aria-live="polite">
          <Column
            head={say(stand.without, { chokes })}
            measured={read('without')}
            computed={study?.noChoke?.entryMa ?? null}
            {...{ wireMa, computedWireMa }}
          />
          <Column
            head={say(stand.with, { chokes })}
            measured={read('with')}
            computed={study?.planned?.entryMa ?? null}
            {...{ wireMa, computedWireMa }}
          />
        </div>
        <Change without={read('without')} with={read('with')} />
        {study?.noChoke == null ? (
          <p role="status">{say(state.kind === 'working' ? stand.underway : stand.noneComputed)}</p>
        ) : (
          <Computed study={study} isMeasured={isMeasured} />
        )}
        <section aria-labelledby="type" class="stack">
          <h2 id="type">{say(stand.type)}</h2>
          <p>{say(stand.how)}</p>
          <p>
            <b>{say(stand.warning)}</b>
          </p>
          <div class="clamp-fields">
            {reads.map((what) => (
              <Milliamps
                key={`${band} ${what}`}
                planId={saved.id}
                reading={readingKey(band, what)}
                label={say(labels[what])}
              />
            ))}
          </div>
        </section>
      </main>
    </>
  );
}

const labels = { wire: stand.wire, without: stand.coaxWithout, with: stand.coaxWith } as const;

/** As it was typed, to three figures. */
const measuredText = (ma: number, say: Say): string => (ma < 1 ? say(stand.under) : say.format.number(ma, 3));
/** Two figures are all that a computation of a real site is good for. */
const computedText = (ma: number, say: Say): string => (ma < 1 ? say(stand.under) : say.format.number(ma, 2));

const MA_PER_A = 1000;

interface ColumnProps {
  readonly head: string;
  readonly measured: number | null;
  readonly wireMa: number | null;
  readonly computed: number | null;
  readonly computedWireMa: number | null;
}

/** Measured counts before computed, and the share is told of the wire's current of the same kind. */
function Column({ head, measured, wireMa, computed, computedWireMa }: ColumnProps) {
  const say = useSay();
  const ma = measured ?? computed;
  const wire = measured === null ? computedWireMa : wireMa;
  const isLarge = ma !== null && ma >= MA_PER_A;
  const text =
    ma === null ? null : (measured === null ? computedText : measuredText)(isLarge ? ma / MA_PER_A : ma, say);
  return (
    <section class="column">
      <h2>{head}</h2>
      {ma === null || text === null ? (
        <p class="figure none">{say(stand.notYet)}</p>
      ) : (
        <>
          <p class="amount">
            <Figure text={text} /> <b>{say(isLarge ? stand.amperes : stand.milliamps)}</b>
          </p>
          {wire !== null && wire > 0 && (
            <p class="share">{say(stand.ofWire, { share: shareText(shareOf(ma / wire)) })}</p>
          )}
          <p class="small">{say(measured === null ? stand.computed : stand.measured)}</p>
        </>
      )}
    </section>
  );
}

/** The fewer characters, the larger they stand. */
function Figure({ text }: { readonly text: string }) {
  if (text.length < 3) return <span class="figure huge">{text}</span>;
  return <span class={text.length === 3 ? 'figure large' : 'figure'}>{text}</span>;
}

function Change({ without, with: kept }: { readonly without: number | null; readonly with: number | null }) {
  const say = useSay();
  if (without === null || kept === null || without === 0) return null;
  if (kept >= without) return <p class="stop">{say(stand.noLess)}</p>;
  const db = say.format.number(Math.round(20 * Math.log10(without / Math.max(kept, without / 1000))));
  return <p class="change">{say(stand.change, { share: shareText(shareOf(kept / without)), db })}</p>;
}

interface ComputedProps {
  readonly study: BandStudy;
  /** The columns then hold something else than what is computed for the entry. */
  readonly isMeasured: boolean;
}

function Computed({ study: { noChoke, planned }, isMeasured }: ComputedProps) {
  const say = useSay();
  if (noChoke === null || planned === null) return null;
  const places = [
    ...(isMeasured ? [{ where: stand.atEntry, without: noChoke.entryMa, with: planned.entryMa }] : []),
    { where: stand.atFoot, without: noChoke.footMa, with: planned.footMa },
  ] as const;
  return (
    <>
      {!isMeasured && <p>{say(stand.computedHow)}</p>}
      {places.map(({ where, without, with: kept }) =>
        without === null || kept === null ? null : (
          <p key={where}>
            {say(stand.alsoComputed, { where, without: computedText(without, say), with: computedText(kept, say) })}
          </p>
        ),
      )}
    </>
  );
}

/** As it may be typed: no sign between thousands. */
const fieldText = (ma: number): string => decimalText(ma, Number.isInteger(ma) ? 0 : ma < 1 ? 2 : 1);

interface MilliampsProps {
  readonly planId: string;
  /** What it is kept under. */
  readonly reading: string;
  readonly label: string;
}

function Milliamps({ planId, reading, label }: MilliampsProps) {
  const say = useSay();
  const { library } = useStores();
  const [wrong, setWrong] = useState(false);
  const saved = library.planOf(planId);
  const value = saved?.readings[reading]?.value ?? null;
  const take = (typed: string): void => {
    const text = plainSigns(typed).trim();
    const read = text === '' ? { value: null } : readNumber(text);
    const isGood = 'value' in read && (read.value === null || (read.value >= 0 && read.value <= 100_000));
    setWrong(!isGood);
    if (!isGood) return;
    library.edit(
      planId,
      { kind: 'reading', key: reading, value: read.value },
      { kind: 'typed', field: reading, text: '' },
    );
  };
  const id = reading.replaceAll(' ', '-');
  return (
    <p class="milliamps">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        value={saved?.typed[reading]?.text ?? (value === null ? '' : fieldText(value))}
        onInput={({ currentTarget }) =>
          library.edit(planId, { kind: 'typed', field: reading, text: currentTarget.value })
        }
        onChange={({ currentTarget }) => take(currentTarget.value)}
      />
      {wrong && (
        <b role="alert" id={`${id}-wrong`}>
          {say(stand.wrong)}
        </b>
      )}
    </p>
  );
}
