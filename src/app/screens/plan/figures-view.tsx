/** What a designed device does, band by band, drawn and in sentences. */
import type { ChainItem } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { ColumnTable } from '../../parts/column-table';
import { type Say, useSay } from '../../say';
import { ChokeDrawing } from './choke-drawing';
import { DeviceWorkings } from './device-workings';
import { LossDrawing } from './loss-drawing';
import { ohmsText } from './ohms-text';

type Figures = NonNullable<ChainItem['figures']>;
type Row = Figures['bands'][number];

export function FiguresView({ item, figures }: { readonly item: ChainItem; readonly figures: Figures }) {
  const say = useSay();
  const isChoke = item.device === 'choke';
  return (
    <div class="reasons">
      <h4>{say(planScreen.whatItDoes)}</h4>
      {isChoke ? <ChokeRows rows={figures.bands} /> : <LossRows rows={figures.bands} />}
      {isChoke ? <ChokeDrawing figures={figures} /> : <LossDrawing figures={figures} />}
      {figures.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      <DeviceWorkings name={item.name} figures={figures} />
    </div>
  );
}

/** One row for each wanted band: the ohms it has and what tolerances leave, enough or short by how many, and its heat. */
function ChokeRows({ rows }: { readonly rows: readonly Row[] }) {
  const say = useSay();
  return (
    <ColumnTable
      class="device-rows"
      heads={[say(planScreen.band), say(planScreen.ohmsColumn), say(planScreen.neededColumn)]}
      rows={rows.map((row) => ({
        key: row.band,
        name: bandName(row.band),
        cells: [<OhmsItHas key="has" {...row} />, <OhmsAskedFor key="asked" {...row} />],
      }))}
    />
  );
}

function OhmsItHas({ ohm }: Row) {
  const say = useSay();
  if (ohm === null) return <>{say(planScreen.notKnown)}</>;
  return (
    <>
      <b>{ohmsText(ohm.nominal, say)}</b>
      <span class="second">
        {say(planScreen.ohmsAre, { least: ohmsText(ohm.low, say), most: ohmsText(ohm.high, say) })}
      </span>
    </>
  );
}

function OhmsAskedFor({ ohm, neededOhm, heatW }: Row) {
  const say = useSay();
  return (
    <>
      {verdict(ohm?.nominal ?? null, neededOhm, say)}
      {heatW !== null && <span class="second">{say(planScreen.heatIs, { watts: say.format.number(heatW, 2) })}</span>}
    </>
  );
}

function verdict(nominal: number | null, neededOhm: number | null, say: Say): string {
  if (neededOhm === null) return say(planScreen.notKnown);
  const ohms = ohmsText(neededOhm, say);
  if (nominal === null) return ohms;
  return nominal >= neededOhm
    ? say(planScreen.enough, { ohms })
    : say(planScreen.shortBy, { ohms, by: ohmsText(neededOhm - nominal, say) });
}

function LossRows({ rows }: { readonly rows: readonly Row[] }) {
  const say = useSay();
  return (
    <ColumnTable
      class="device-rows"
      heads={[say(planScreen.band), say(planScreen.lossColumn), say(planScreen.heatColumn)]}
      rows={rows.map(({ band, lossDb, heatW }) => ({
        key: band,
        name: bandName(band),
        cells: [
          say(planScreen.dbIs, { db: say.format.number(lossDb, 2) }),
          heatW === null ? say(planScreen.notKnown) : say(planScreen.wattsIs, { watts: say.format.number(heatW, 2) }),
        ],
      }))}
    />
  );
}
