/** What a designed device does, band by band, drawn and in sentences. */
import type { ChainItem } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
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
    <table class="device-rows">
      <thead>
        <tr>
          <th scope="col">{say(planScreen.band)}</th>
          <th scope="col">{say(planScreen.ohmsColumn)}</th>
          <th scope="col">{say(planScreen.neededColumn)}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ band, ohm, neededOhm, heatW }) => (
          <tr key={band}>
            <th scope="row">{bandName(band)}</th>
            <td>
              {ohm === null ? say(planScreen.notKnown) : <b>{ohmsText(ohm.nominal, say)}</b>}
              {ohm !== null && (
                <span class="second">
                  {say(planScreen.ohmsAre, { least: ohmsText(ohm.low, say), most: ohmsText(ohm.high, say) })}
                </span>
              )}
            </td>
            <td>
              {verdict(ohm?.nominal ?? null, neededOhm, say)}
              {heatW !== null && (
                <span class="second">{say(planScreen.heatIs, { watts: say.format.number(heatW, 2) })}</span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
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
    <table class="device-rows">
      <thead>
        <tr>
          <th scope="col">{say(planScreen.band)}</th>
          <th scope="col">{say(planScreen.lossColumn)}</th>
          <th scope="col">{say(planScreen.heatColumn)}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ band, lossDb, heatW }) => (
          <tr key={band}>
            <th scope="row">{bandName(band)}</th>
            <td>{say(planScreen.dbIs, { db: say.format.number(lossDb, 2) })}</td>
            <td>
              {heatW === null
                ? say(planScreen.notKnown)
                : say(planScreen.wattsIs, { watts: say.format.number(heatW, 2) })}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
