/** Things on the print sheet: where they stand, what is cut, what is bought, what is made. */
import type { Answers } from '../../../design/answers';
import type { SavedPlan } from '../../../design/saved-plan';
import type { ChainItem, Plan } from '../../../plan/plan-schema';
import { capital } from '../../../words/capital';
import { placeNames } from '../../../words/en/devices';
import { planScreen } from '../../../words/en/plan-screen';
import { sheet } from '../../../words/en/share-screen';
import { shopScreen } from '../../../words/en/shop-screen';
import { isBought, partRows, shelves } from '../../jobs/part-rows';
import { Length } from '../../parts/length';
import { useSay } from '../../say';
import { BuildView } from '../plan/build-view';
import { boxAtFeedPoint } from '../plan/feed-box';
import { SiteFigure } from '../plan/site-figure';
import { sitePictureOf } from '../plan/site-picture';
import { Box } from './box';

interface PlanProps {
  readonly plan: Plan;
}

export function SheetDrawing({ plan, answers }: PlanProps & { readonly answers: Answers }) {
  const picture = sitePictureOf(answers, plan);
  return picture === null ? null : <SiteFigure picture={picture} plan={plan} />;
}

/** Nearer than this, m, a device stands at its named place and needs no distance. */
const AT_PLACE_M = 0.05;

export function ChainTable({ plan }: PlanProps) {
  const say = useSay();
  if (plan.chain.length === 0) return null;
  const hasBox = boxAtFeedPoint(plan);
  return (
    <section>
      <h2>{say(planScreen.chain)}</h2>
      <table class="devices">
        <thead>
          <tr>
            <th scope="col">{say(sheet.device)}</th>
            <th scope="col">{say(sheet.where)}</th>
          </tr>
        </thead>
        <tbody>
          {plan.chain.map((item, index) => (
            <tr key={`${item.device} ${index}`}>
              <th scope="row">{capital(item.name)}</th>
              <td>
                <Place item={item} hasBox={hasBox} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Place({ item, hasBox }: { readonly item: ChainItem; readonly hasBox: boolean }) {
  const say = useSay();
  if (item.device === 'line') return item.lengthM === null ? null : <Length metres={item.lengthM} />;
  const away = item.distanceM !== null && item.distanceM > AT_PLACE_M && item.device !== 'radio';
  return (
    <>
      {capital(placeNames[item.at] ?? '')}
      {away && item.distanceM !== null && <>. {say(planScreen.counted, { metres: item.distanceM, hasBox })}</>}
    </>
  );
}

export function CutTable({ plan }: PlanProps) {
  const say = useSay();
  if (plan.cuts.length === 0) return null;
  return (
    <section>
      <h2>{say(planScreen.cut)}</h2>
      <ul class="cut-list">
        {plan.cuts.map((cut) => (
          <li key={cut.piece} class="whole">
            <p class="cut-line">
              <Box />
              <b>
                {cut.count > 1 ? `${cut.count} × ` : ''}
                {capital(cut.name)}
              </b>
              <span class="cut-m">
                {say(sheet.cutAt)} <Length metres={cut.cutM} />
              </span>
            </p>
            <p class="more">
              {say(sheet.finished)} <Length metres={cut.finishedM} />.{' '}
              {cut.marksM.length > 0 && (
                <>
                  {say(sheet.mark)} {cut.marksM.map((mark) => say.format.length(mark)).join(', ')}.{' '}
                </>
              )}
              {cut.toleranceM > 0 && (
                <>
                  {say(sheet.offBy)} {say.format.length(cut.toleranceM)}.{' '}
                </>
              )}
              {cut.stopRule} {cut.note}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function PartsTable({ plan, saved }: PlanProps & { readonly saved: SavedPlan }) {
  const say = useSay();
  const rows = partRows(plan);
  if (rows.length === 0) return null;
  return (
    <section class="listed">
      <h2>{say(sheet.parts)}</h2>
      {shelves.map((shelf) => {
        const here = rows.filter(({ where }) => where === shelf);
        if (here.length === 0) return null;
        return (
          <div key={shelf} class="shelf-part">
            <h3>{say(shopScreen[shelf])}</h3>
            <ul>
              {here.map((row) => (
                <li key={row.id} class="whole tick">
                  <Box />
                  <b class="count">
                    {row.unit === 'metre' ? say.format.length(row.quantity) : say.format.number(row.quantity)}
                  </b>
                  <span>
                    {row.name}
                    {isBought(saved, row) && ` (${say(sheet.have)})`}
                    {row.substitute !== '' && (
                      <span class="more">
                        {' '}
                        <b>{say(shopScreen.or)}</b> {row.substitute}
                      </span>
                    )}
                  </span>
                </li>
              ))}
            </ul>
          </div>
        );
      })}
    </section>
  );
}

export function MakeList({ plan }: PlanProps) {
  const say = useSay();
  const made = plan.chain.flatMap((item) => (item.build === null ? [] : [{ item, build: item.build }]));
  if (made.length === 0) return null;
  return (
    <section>
      <h2>{say(sheet.make)}</h2>
      {made.map(({ item, build }, index) => (
        <div key={`${item.device} ${index}`} class="whole">
          <h3>{capital(item.name)}</h3>
          <BuildView item={item} build={build} />
        </div>
      ))}
    </section>
  );
}
