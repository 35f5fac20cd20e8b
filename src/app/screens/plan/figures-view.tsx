/** What a designed device does: in sentences, band by band, and what other rings would change. */
import type { ChainItem } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { type Say, useSay } from '../../say';

type Figures = NonNullable<ChainItem['figures']>;
type Row = Figures['bands'][number];

export function FiguresView({ item }: { readonly item: ChainItem }) {
  const say = useSay();
  const { figures, alternatives, name } = item;
  if (figures === null) return null;
  return (
    <>
      {figures.shortfalls.map((shortfall) => (
        <p key={shortfall}>
          <b>{shortfall}</b>
        </p>
      ))}
      <details>
        <summary aria-label={`${say(planScreen.whatItDoes)}: ${name}`}>{say(planScreen.whatItDoes)}</summary>
        <div class="reasons">
          {figures.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          {item.device === 'choke' ? <ChokeRows rows={figures.bands} /> : <LossRows rows={figures.bands} />}
        </div>
      </details>
      {alternatives.length > 0 && (
        <details class="other-rings">
          <summary aria-label={`${say(planScreen.alternatives)}: ${name}`}>{say(planScreen.alternatives)}</summary>
          <ul class="reasons">
            {alternatives.map((other) => (
              <li key={other.id}>
                <b>{other.name}</b> {other.isPlanned && <span class="chip">{say(planScreen.planned)}</span>}
                <p>{other.changes}</p>
                {other.shortfalls.map((shortfall) => (
                  <p key={shortfall}>{shortfall}</p>
                ))}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

const ohmsText = (ohms: number, { format }: Say): string =>
  ohms >= 1000 ? `${format.number(ohms / 1000, 2)}\u00a0kΩ` : `${format.number(ohms, 2)}\u00a0Ω`;

/** One row for each wanted band: the ohms tolerances leave, and enough, or short by how many. */
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
        {rows.map(({ band, ohm, neededOhm }) => (
          <tr key={band}>
            <th scope="row">{bandName(band)}</th>
            <td>
              {ohm === null
                ? say(planScreen.notKnown)
                : say(planScreen.ohmsAre, { least: ohmsText(ohm.low, say), most: ohmsText(ohm.high, say) })}
            </td>
            <td>{needed(ohm?.nominal ?? null, neededOhm, say)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function needed(nominal: number | null, neededOhm: number | null, say: Say): string {
  if (neededOhm === null) return say(planScreen.notKnown);
  if (nominal === null) return ohmsText(neededOhm, say);
  const verdict =
    nominal >= neededOhm
      ? say(planScreen.enough)
      : say(planScreen.shortBy, { ohms: ohmsText(neededOhm - nominal, say) });
  return `${ohmsText(neededOhm, say)}: ${verdict}`;
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
