/** Where the antenna sends, band by band: one sentence with angle and gain, and the directions drawn on the site from the side and from above. */
import { SideSpokes, TopSpokes } from '../../../drawing/spokes';
import type { Plan } from '../../../plan/plan-schema';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { type Say, useSay } from '../../say';
import { Fold } from './fold';
import { oneHopKm, roundKm, shareAt, sideSpokes, topSpokes } from './sends';
import type { SitePicture } from './site-picture';

type BandStudy = NonNullable<Plan['fieldStudy']>['bands'][number];

interface SendsProps {
  readonly plan: Plan;
  readonly picture: SitePicture | null;
  readonly isUnderway: boolean;
}

export function SendsView({ plan, picture, isUnderway }: SendsProps) {
  const say = useSay();
  const rows = (plan.fieldStudy?.bands ?? []).filter(({ elevation }) => elevation !== null);
  if (rows.length === 0 && !isUnderway) return null;
  return (
    <Fold id="sends" head={say(planScreen.sends)} result={sendsText(rows, say)} isUnderway={rows.length === 0}>
      <div class="group">
        {rows.map((row) => (
          <details key={row.band}>
            <summary>{bandName(row.band)}</summary>
            <BandSends row={row} picture={picture} />
          </details>
        ))}
      </div>
    </Fold>
  );
}

/** Steeper than this it serves the neighbourhood rather than the distance. House position. */
const STEEP_DEG = 60;

function sendsText(rows: readonly BandStudy[], say: Say): string {
  const bands = (isUp: boolean): string =>
    rows
      .filter(({ takeOffDeg }) => takeOffDeg !== null && takeOffDeg >= STEEP_DEG === isUp)
      .map(({ band }) => bandName(band))
      .join(', ');
  const [up, low] = [bands(true), bands(false)];
  return up === '' && low === '' ? '' : say(planScreen.sendsResult, { up, low });
}

function BandSends({ row, picture }: { readonly row: BandStudy; readonly picture: SitePicture | null }) {
  const say = useSay();
  const { elevation, azimuth, gainDbi, takeOffDeg } = row;
  const km = (deg: number): number => roundKm(oneHopKm(Math.min(deg, 180 - deg)));
  const sideWords = (deg: number): readonly string[] =>
    deg === 90 ? [say(planScreen.overhead)] : deg === 30 || deg === 10 ? [say(planScreen.upToKm, { km: km(deg) })] : [];
  const topWords = (deg: number): readonly string[] =>
    deg % 180 === 0
      ? [say(planScreen.alongOne), say(planScreen.alongTwo)]
      : deg % 180 === 90
        ? [say(planScreen.acrossWire)]
        : [];
  const percent = (pattern: NonNullable<BandStudy['elevation']>, deg: number): string =>
    say.format.number(100 * shareAt(pattern, deg), 2);
  return (
    <div class="reasons">
      {row.text.slice(-1).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {takeOffDeg !== null && gainDbi !== null && (
        <p>
          {say(planScreen.angleAndGain, {
            km: km(takeOffDeg),
            isUp: takeOffDeg >= 75,
            gain: say.format.number(10 ** (gainDbi / 10), 2),
            dbi: say.format.number(gainDbi, 2),
          })}
        </p>
      )}
      {picture !== null && elevation !== null && (
        <figure class="plate">
          <SideSpokes
            site={picture.site}
            spokes={sideSpokes(elevation, sideWords)}
            label={say(planScreen.sideSpokes, {
              low: percent(elevation, 10),
              middle: percent(elevation, 30),
              up: percent(elevation, 90),
            })}
          />
          <figcaption>{say(planScreen.sideSpokesCaption)}</figcaption>
        </figure>
      )}
      {picture !== null && azimuth !== null && (
        <figure class="plate">
          <TopSpokes
            site={picture.site}
            spokes={topSpokes(azimuth, topWords)}
            label={say(planScreen.topSpokes, { along: percent(azimuth, 0), across: percent(azimuth, 90) })}
          />
          <figcaption>{say(planScreen.topSpokesCaption)}</figcaption>
        </figure>
      )}
    </div>
  );
}
