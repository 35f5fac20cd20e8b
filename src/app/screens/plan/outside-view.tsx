/** The third conductor: what runs on the outside of the coax on each band, without chokes, as planned and with what is owned; and where the chokes went. */
import { roughly } from '../../../advice/field-figures';
import type { Answers, PartOnHand } from '../../../design/answers';
import type { Plan } from '../../../plan/plan-schema';
import { chokeSetText, placedText } from '../../../words/en/field';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { stand } from '../../../words/en/stand-screen';
import { partText } from '../../answer-text';
import { ColumnTable } from '../../parts/column-table';
import { to } from '../../routes';
import { type Say, useSay } from '../../say';
import { boxAtFeedPoint } from './feed-box';
import { Fold } from './fold';

type Study = NonNullable<Plan['fieldStudy']>;
type BandStudy = Study['bands'][number];
type State = NonNullable<BandStudy['planned']>;

interface OutsideProps {
  readonly plan: Plan;
  readonly answers: Answers;
  readonly isUnderway: boolean;
  readonly planId: string;
}

export function OutsideView({ plan, answers, isUnderway, planId }: OutsideProps) {
  const say = useSay();
  const study = plan.fieldStudy;
  const rows = (study?.bands ?? []).filter(({ noChoke, planned }) => noChoke !== null || planned !== null);
  if (rows.length === 0 && !isUnderway) return null;
  return (
    <Fold id="outside" head={say(planScreen.outside)} result={mostText(rows, say)} isUnderway={rows.length === 0}>
      {study !== null && rows.length > 0 && (
        <>
          <p>
            {say(planScreen.outsideIntro, {
              hasRadio: rows.some(({ noChoke, planned }) => isBeyondEntry(planned ?? noChoke)),
            })}
          </p>
          <Currents rows={rows} />
          <a class="btn tall" href={to.stand(planId)}>
            {say(stand.open)}
          </a>
          <ChokePlaces study={study} hasBox={boxAtFeedPoint(plan)} onHand={answers.onHand ?? []} />
          <Noise rows={rows} isPortable={answers.station === 'portable'} />
          <Decibels rows={rows} />
          {study.confidence.map((line) => (
            <p class="small" key={line}>
              {line}
            </p>
          ))}
        </>
      )}
    </Fold>
  );
}

/** The band with the most current where the coax enters, as planned. */
function mostText(rows: readonly BandStudy[], say: Say): string {
  const [most] = rows
    .flatMap(({ band, planned }) => (planned === null ? [] : [{ band, ma: planned.entryMa }]))
    .sort((a, b) => b.ma - a.ma);
  return most === undefined ? '' : say(planScreen.outsideMost, { ma: milliamps(most.ma, say), band: most.band });
}

const columnsOf = (rows: readonly BandStudy[]) =>
  (['noChoke', 'planned', 'owned'] as const).filter((column) => rows.some((row) => row[column] !== null));

function Currents({ rows }: { readonly rows: readonly BandStudy[] }) {
  const say = useSay();
  const columns = columnsOf(rows);
  return (
    <ColumnTable
      class="device-rows"
      heads={[say(planScreen.band), ...columns.map((column) => say(planScreen[`outside_${column}`]))]}
      rows={rows.map((row) => ({
        key: row.band,
        name: bandName(row.band),
        cells: columns.map((column) => <Current key={column} state={row[column]} />),
      }))}
    />
  );
}

/** Milliamps to the digit and a half they are good for. */
const milliamps = (ma: number, say: Say): string =>
  ma < 1 ? say(planScreen.underOneMa) : say(planScreen.maIs, { ma: say.format.number(roughly(ma), 2) });

/** Where the coax ends at the entry there is no radio beyond it. */
const isBeyondEntry = (state: State | null): boolean => state !== null && state.radioDb !== null;

function Current({ state }: { readonly state: State | null }) {
  const say = useSay();
  if (state === null) return <>{say(planScreen.notKnown)}</>;
  return (
    <>
      <b>{milliamps(state.entryMa, say)}</b>
      {isBeyondEntry(state) && (
        <span class="second">{say(planScreen.radioMa, { ma: milliamps(state.radioMa, say) })}</span>
      )}
    </>
  );
}

interface PlacesProps {
  readonly study: Study;
  readonly hasBox: boolean;
  readonly onHand: readonly PartOnHand[];
}

function ChokePlaces({ study, hasBox, onHand }: PlacesProps) {
  const say = useSay();
  const { chokes } = study;
  if (chokes === null) return null;
  const owned = ownedText(study, hasBox, onHand, say);
  const textOf = ({ chokes: places }: typeof chokes.house): string =>
    places.length === 0 ? say(planScreen.noChokeAtAll) : chokeSetText(places, hasBox, say.format);
  const isUsual = textOf(chokes.chosen) === textOf(chokes.house);
  const sets = isUsual
    ? [{ name: planScreen.usualPlaces, set: chokes.house }]
    : [
        { name: planScreen.usualPlaces, set: chokes.house },
        { name: planScreen.chosenPlaces, set: chokes.chosen },
      ];
  return (
    <>
      <dl class="dispute">
        {sets.map(({ name, set }) => (
          <div key={name}>
            <dt>{say(name)}</dt>
            <dd>
              {say(planScreen.setIs, {
                set: textOf(set),
                ma: milliamps(set.worstMa, say),
                band: set.worstBand,
              })}
            </dd>
          </div>
        ))}
        {!isUsual && (
          <div>
            <dt>{say(planScreen.difference)}</dt>
            <dd>
              {Math.abs(chokes.differenceDb) < 0.5
                ? say(planScreen.noDifference)
                : say(planScreen.differenceIs, {
                    db: say.format.number(Math.abs(chokes.differenceDb), 2),
                    isLess: chokes.differenceDb < 0,
                  })}
            </dd>
          </div>
        )}
        {chokes.built !== null && (
          <div>
            <dt>{say(planScreen.asWound)}</dt>
            <dd>
              {say(planScreen.woundIs, { ma: milliamps(chokes.built.worstMa, say), band: chokes.built.worstBand })}
            </dd>
          </div>
        )}
        {owned !== null && (
          <div>
            <dt>{say(planScreen.ownedPlaces)}</dt>
            <dd>{owned}</dd>
          </div>
        )}
      </dl>
      {chokes.text.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

/** Where the operator's own chokes do most, and what they leave on the worst band; null when none is owned. */
function ownedText({ bands }: Study, hasBox: boolean, onHand: readonly PartOnHand[], say: Say): string | null {
  const [worst] = bands
    .flatMap(({ band, owned }) => (owned === null ? [] : [{ band, owned }]))
    .sort((a, b) => b.owned.entryMa - a.owned.entryMa);
  if (worst === undefined) return null;
  const placed = worst.owned.places.flatMap(({ part, distanceM }) => {
    const own = onHand[part];
    return own === undefined ? [] : [{ name: partText(own, say.format), distanceM }];
  });
  const set = placedText(placed, hasBox, say.format);
  return say(planScreen.setIs, { set, ma: milliamps(worst.owned.entryMa, say), band: worst.band });
}

interface NoiseProps {
  readonly rows: readonly BandStudy[];
  readonly isPortable: boolean;
}

/** By reciprocity: what comes in by the coax, against no choke. Nothing to say without a choke. */
function Noise({ rows, isPortable }: NoiseProps) {
  const say = useSay();
  const heard = rows.filter(({ planned, reception }) => reception !== null && (planned?.chokes.length ?? 0) > 0);
  if (heard.length === 0) return null;
  return (
    <>
      <p>{say(planScreen.noiseIntro)}</p>
      <ColumnTable
        class="device-rows"
        heads={[
          say(planScreen.band),
          ...noiseColumns.map((column) => say(planScreen[`noise_${column}`], { isPortable })),
        ]}
        rows={heard.map((row) => ({
          key: row.band,
          name: bandName(row.band),
          cells: noiseColumns.map((column) => <Weaker key={column} row={row} column={column} />),
        }))}
      />
    </>
  );
}

const noiseColumns = ['fromHouseDb', 'outdoorsDb'] as const;

function Weaker({ row, column }: { readonly row: BandStudy; readonly column: (typeof noiseColumns)[number] }) {
  const say = useSay();
  return (
    <>
      <b>{weaker(row.reception?.[column], say)}</b>
      {row.receptionOwned !== null && (
        <span class="second">{say(planScreen.noiseOwned, { weaker: weaker(row.receptionOwned[column], say) })}</span>
      )}
    </>
  );
}

function weaker(db: number | null | undefined, say: Say): string {
  if (db == null) return say(planScreen.notKnown);
  const whole = Math.round(db);
  return whole === 0
    ? say(planScreen.noWeaker)
    : say(planScreen.weakerIs, { db: say.format.number(Math.abs(whole), 3), isWeaker: whole > 0 });
}

function Decibels({ rows }: { readonly rows: readonly BandStudy[] }) {
  const say = useSay();
  const db = (value: number): string => say.format.number(Math.round(value), 3);
  return (
    <details>
      <summary>{say(planScreen.inDecibels)}</summary>
      <ul class="reasons">
        {rows.map((row) => (
          <li key={row.band}>
            <b>{bandName(row.band)}</b>{' '}
            {columnsOf([row])
              .flatMap((column) => {
                const state = row[column];
                if (state === null) return [];
                return [
                  say(planScreen.decibelsIs, {
                    what: say(planScreen[`outside_${column}`]).toLowerCase(),
                    entry: db(state.entryDb),
                    radio: state.radioDb === null ? '' : db(state.radioDb),
                  }),
                ];
              })
              .join('; ')}
          </li>
        ))}
      </ul>
      <p class="small">{say(planScreen.decibelsOf)}</p>
    </details>
  );
}
