/** Each wanted band in words: SWR at the radio, whether a tuner is needed, what reaches the wire; the figures one tap further. */
import type { Harmonic } from '../../../advice/dimensions';
import type { Facts } from '../../../advice/facts';
import { Tape } from '../../../drawing/tape';
import type { Plan } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { useSay } from '../../say';

type BandRow = Plan['bands'][number];

interface BandsViewProps {
  readonly plan: Plan;
  readonly facts: Facts | null;
  readonly harmonics: readonly Harmonic[];
}

/** A dip nearer to the wanted frequency than this needs no picture. */
const NO_PICTURE = 0.003;
/** Above this the figure is no better than an order of size. */
const HIGH_SWR = 10;

export const swrText = (swr: number): string =>
  swr < HIGH_SWR ? swr.toFixed(1) : swr > 99 ? 'over 99' : swr.toFixed(0);

export function BandsView({ plan, facts, harmonics }: BandsViewProps) {
  const say = useSay();
  if (plan.bands.length === 0) return null;
  return (
    <section aria-labelledby="bands">
      <h2 id="bands" tabIndex={-1}>
        {say(planScreen.bands)}
      </h2>
      <ul class="rows band-rows">
        {plan.bands.map((row) => (
          <li key={row.band}>
            <h3>{bandName(row.band)}</h3>
            <p>{sentence(row, say)}</p>
            <BandTape row={row} facts={facts} harmonics={harmonics} />
            <Figures row={row} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function sentence(row: BandRow, say: ReturnType<typeof useSay>): string {
  const { swrAtRadio, tunerNeeded, lineLossDb, deviceLossDb } = row;
  if (swrAtRadio === null && tunerNeeded === null) return say(planScreen.unknownBand);
  const swr =
    swrAtRadio === null
      ? ''
      : say(tunerNeeded === true ? planScreen.bandSwrHigh : planScreen.bandSwr, { swr: swrText(swrAtRadio) });
  const tuner = tunerNeeded === null ? '' : say(tunerNeeded ? planScreen.tuner : planScreen.noTuner);
  const db = (lineLossDb ?? 0) + (deviceLossDb ?? 0);
  const loss =
    lineLossDb === null
      ? ''
      : say(deviceLossDb === null ? planScreen.lossLine : planScreen.loss, {
          db: say.format.number(db, 2),
          watts: Math.round(100 * 10 ** (-db / 10)),
        });
  return [swr, tuner, loss].filter((part) => part !== '').join(' ');
}

function BandTape({
  row,
  facts,
  harmonics,
}: {
  readonly row: BandRow;
  readonly facts: Facts | null;
  readonly harmonics: readonly Harmonic[];
}) {
  const say = useSay();
  const at = facts?.bands.find(({ band }) => band === row.band);
  const harmonic = harmonics.find(({ band }) => band === row.band);
  if (at === undefined || harmonic === undefined || Math.abs(harmonic.offset) < NO_PICTURE) return null;
  const number = (mhz: number): string => mhz.toFixed(2);
  const { lowMHz, highMHz } = at.edgesMHz;
  const name = bandName(row.band);
  const dip = number(harmonic.resonanceMHz);
  const aim = number(row.atMHz);
  return (
    <Tape
      band={{ lowMHz, highMHz, name }}
      marks={[
        { atMHz: harmonic.resonanceMHz, kind: 'now', words: [say(planScreen.dip), dip] },
        { atMHz: row.atMHz, kind: 'aim', words: [say(planScreen.yours), aim] },
      ]}
      label={say(planScreen.bandTape, { band: name, dip, aim, low: number(lowMHz), high: number(highMHz) })}
    />
  );
}

function Figures({ row }: { readonly row: BandRow }) {
  const say = useSay();
  const number = (value: number, figures = 2): string => say.format.number(value, figures);
  const lines = [
    row.feedPoint === null
      ? null
      : say(planScreen.feedPoint, { r: number(row.feedPoint.r), x: number(row.feedPoint.x) }),
    row.swrAtFeedPoint === null ? null : say(planScreen.swrAtFeedPoint, { swr: swrText(row.swrAtFeedPoint) }),
    row.lineLossDb === null ? null : say(planScreen.lineLoss, { db: number(row.lineLossDb) }),
    row.deviceLossDb === null ? null : say(planScreen.deviceLoss, { db: number(row.deviceLossDb) }),
    row.entryCurrentMa === null ? null : say(planScreen.entryCurrent, { ma: number(row.entryCurrentMa) }),
    row.shieldCurrentDb === null ? null : say(planScreen.shieldCurrent, { db: number(row.shieldCurrentDb) }),
    ...row.notes,
  ].filter((line) => line !== null);
  if (lines.length === 0) return null;
  return (
    <details>
      <summary aria-label={`${say(planScreen.figures)}: ${bandName(row.band)}`}>{say(planScreen.figures)}</summary>
      <div class="reasons">
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </details>
  );
}
