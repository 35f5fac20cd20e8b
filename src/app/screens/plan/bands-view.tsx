/** Each wanted band in one line: SWR at the radio and whether a tuner is needed; under it what leaves as radio, what runs on the coax, figures. */
import type { ComponentChildren } from 'preact';
import type { Facts } from '../../../advice/facts';
import { roughly } from '../../../advice/field-figures';
import type { Plan } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { swrText } from '../../../words/en/swr';
import { Underway } from '../../jobs/underway';
import { ColumnTable } from '../../parts/column-table';
import { type Say, useSay } from '../../say';
import { BandTape } from './band-tape';
import { budgetOf } from './budget';
import { useFold } from './fold';
import { WattsView } from './watts-view';

type BandRow = Plan['bands'][number];
type BandStudy = NonNullable<Plan['fieldStudy']>['bands'][number];

interface BandsViewProps {
  readonly plan: Plan;
  readonly facts: Facts | null;
  /** Solved numbers are on the way. */
  readonly isUnderway: boolean;
}

export function BandsView({ plan, facts, isUnderway }: BandsViewProps) {
  const say = useSay();
  if (plan.bands.length === 0) return null;
  const atHouse = facts !== null && (facts.settled.station === 'home' || facts.settled.indoors);
  return (
    <section aria-labelledby="bands">
      <div class="head">
        <h2 id="bands" tabIndex={-1}>
          {say(planScreen.bands)}
        </h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <ul class="rows">
        {plan.bands.map((row) => {
          const study = plan.fieldStudy?.bands.find(({ band }) => band === row.band) ?? null;
          const edgesMHz = facts?.bands.find(({ band }) => band === row.band)?.edgesMHz;
          return (
            <li key={row.band}>
              <BandFold row={row} isBeyondTuner={isBeyondTuner(plan, facts, row.band)}>
                <p>
                  {swrSentence(row, say)} {lossSentence(row, study, say)}
                </p>
                {row.entryCurrentMa !== null && <EntryCurrent row={row} study={study} atHouse={atHouse} />}
                {edgesMHz !== undefined && (row.swrSweep !== null || isUnderway) && (
                  <BandTape row={row} edgesMHz={edgesMHz} />
                )}
                <Figures row={row} study={study} />
              </BandFold>
            </li>
          );
        })}
      </ul>
      <WattsView bands={plan.bands} />
    </section>
  );
}

const isBeyondTuner = ({ warnings }: Plan, facts: Facts | null, band: BandRow['band']): boolean =>
  facts !== null &&
  facts.settled.shackEnd !== 'radio' &&
  warnings.some(({ id, bands }) => id === 'tuner-range' && bands.includes(band));

interface BandFoldProps {
  readonly row: BandRow;
  readonly isBeyondTuner: boolean;
  readonly children: ComponentChildren;
}

/** One line for a band, the same height whatever is still being worked out. */
function BandFold({ row, isBeyondTuner, children }: BandFoldProps) {
  const say = useSay();
  const { band, swrAtRadio, tunerNeeded } = row;
  const result = say(planScreen.bandResult, {
    swr: swrAtRadio === null ? '' : swrText(swrAtRadio),
    tuner: isBeyondTuner ? 'beyond' : (tunerNeeded ?? ''),
  });
  return (
    <details class="fold line" {...useFold(`band ${band}`)}>
      <summary>
        <h3>{bandName(band)}</h3>
        <span class="result">{result}</span>
      </summary>
      <div class="reasons">{children}</div>
    </details>
  );
}

function swrSentence({ swrAtRadio, tunerNeeded }: BandRow, say: Say): string {
  if (swrAtRadio === null && tunerNeeded === null) return say(planScreen.unknownBand);
  const swr =
    swrAtRadio === null
      ? ''
      : say(tunerNeeded === true ? planScreen.bandSwrHigh : planScreen.bandSwr, { swr: swrText(swrAtRadio) });
  const tuner = tunerNeeded === null ? '' : say(tunerNeeded ? planScreen.tuner : planScreen.noTuner);
  return `${swr} ${tuner}`.trim();
}

function lossSentence(row: BandRow, study: BandStudy | null, say: Say): string {
  const budget = budgetOf(row, study);
  if (budget === null) return '';
  const watts = Math.round(budget.feedW);
  if (budget.radiatedW !== null) {
    return say(planScreen.radiated, { watts, radiatedW: Math.round(budget.radiatedW) });
  }
  return say(row.deviceLossDb === null ? planScreen.lossLine : planScreen.loss, { watts });
}

/** With chokes at both ends currents are good to 3 dB, else to 6 dB: as factors. */
const factorOf = (chokes: number): number => (chokes >= 2 ? 10 ** (3 / 20) : 10 ** (6 / 20));

interface EntryCurrentProps {
  readonly row: BandRow;
  readonly study: BandStudy | null;
  readonly atHouse: boolean;
}

function EntryCurrent({ row, study, atHouse }: EntryCurrentProps) {
  const say = useSay();
  const ma = row.entryCurrentMa ?? 0;
  const factor = factorOf(study?.planned?.chokes.length ?? 0);
  const text = (value: number): string => say.format.number(roughly(value), 2);
  return (
    <p>
      {ma < 1
        ? say(planScreen.hardlyAny, { atHouse })
        : say(planScreen.onTheCoax, { ma: text(ma), least: text(ma / factor), most: text(ma * factor), atHouse })}
    </p>
  );
}

function Figures({ row, study }: { readonly row: BandRow; readonly study: BandStudy | null }) {
  const say = useSay();
  const number = (value: number, figures = 2): string => say.format.number(value, figures);
  const budget = budgetOf(row, study);
  const losses: readonly (readonly [string, number | null])[] =
    budget === null
      ? []
      : [
          [planScreen.inLine, budget.lineW],
          [planScreen.inDevices, budget.devicesW],
          [planScreen.inGround, budget.nearW],
          [planScreen.asRadio, budget.radiatedW],
        ];
  const lines = [
    row.feedPoint === null
      ? null
      : say(planScreen.feedPoint, { r: number(row.feedPoint.r), x: number(row.feedPoint.x) }),
    row.swrAtFeedPoint === null ? null : say(planScreen.swrAtFeedPoint, { swr: swrText(row.swrAtFeedPoint) }),
    row.lineLossDb === null ? null : say(planScreen.lineLoss, { db: number(row.lineLossDb) }),
    row.deviceLossDb === null ? null : say(planScreen.deviceLoss, { db: number(row.deviceLossDb) }),
    row.shieldCurrentDb === null ? null : say(planScreen.shieldCurrent, { db: number(row.shieldCurrentDb) }),
    ...row.notes,
  ].filter((line) => line !== null);
  const told = losses.flatMap(([name, watts]) => (watts === null ? [] : [{ name, watts }]));
  if (lines.length + told.length === 0) return null;
  return (
    <details>
      <summary aria-label={`${say(planScreen.figures)}: ${bandName(row.band)}`}>{say(planScreen.figures)}</summary>
      <div class="reasons">
        {told.length > 0 && (
          <ColumnTable
            class="device-rows long"
            heads={[say(planScreen.ofHundred), say(planScreen.wattsColumn)]}
            rows={told.map(({ name, watts }) => ({
              key: name,
              name,
              cells: [say(planScreen.wattsIs, { watts: number(watts) })],
            }))}
          />
        )}
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </details>
  );
}
