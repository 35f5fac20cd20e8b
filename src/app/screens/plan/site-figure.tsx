/** The site from the side and from above, with what the numbers in it stand for. */
import { SideView, sideViewScale } from '../../../drawing/side-view';
import { TopView, topViewScale } from '../../../drawing/top-view';
import type { Plan } from '../../../plan/plan-schema';
import { drawings } from '../../../words/en/drawings';
import { partName } from '../../../words/en/exposure';
import { planScreen } from '../../../words/en/plan-screen';
import { feetInchesText, metresText } from '../../../words/length-text';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { boxAtFeedPoint } from './feed-box';
import { keepOutOf, keepOutZonesOf } from './keep-out';
import type { SitePicture } from './site-picture';

/** Nearer than this a choke sits at the feed point. */
const AT_FEED_POINT_M = 0.05;

interface SiteFigureProps {
  readonly picture: SitePicture;
  readonly plan: Plan;
}

export function SiteFigure({ picture, plan }: SiteFigureProps) {
  const say = useSay();
  const metric = useStores().settings.units.value === 'metric';
  const { site, runM, square, chokes } = picture;
  const wire = site.arms.flat().map(([, , z]) => z);
  const keepOutM = keepOutOf(plan);
  const keepOut = keepOutZonesOf(plan);
  const hasBox = boxAtFeedPoint(plan);
  const line = { lineM: site.coax.at(-1)?.alongM ?? 0, isCoax: site.line === 'coax' };
  const label = say(drawings.side, {
    feedM: site.feed[2],
    topM: Math.max(...wire),
    lowM: Math.min(...wire),
    ...line,
    chokes: chokes
      .map(({ metres }) => say(drawings.chokeThere, { metres, atFeed: metres < AT_FEED_POINT_M }))
      .join(', '),
  });
  const height = (metres: number): readonly [string, string] =>
    metric ? [metresText(metres), feetInchesText(metres)] : [feetInchesText(metres), metresText(metres)];
  const topLabel = say(drawings.top, { runM, ...line, square, keepOutM: keepOutM ?? 0 });
  return (
    <section aria-label={say(planScreen.site)} id="site">
      <figure class="plate">
        <SideView site={site} words={{ label, height }} id="stripes-side" keepOut={keepOut} />
        <figcaption>
          <p>{say(planScreen.sideScale, { squareM: sideViewScale(site, keepOut).squareM })}</p>
        </figcaption>
      </figure>
      <div class="folds">
        <details>
          <summary>{say(planScreen.sideOpen)}</summary>
          {chokes.length > 0 && (
            <ol class="legend">
              {chokes.map(({ name, metres }) => (
                <li key={metres}>
                  {say(metres < AT_FEED_POINT_M ? planScreen.chokeAtFeed : planScreen.chokeAt, {
                    name,
                    metres,
                    hasBox,
                  })}
                </li>
              ))}
            </ol>
          )}
          <p>
            {say(planScreen.sideCaption, { hasEnds: site.ends.length > 0 })}{' '}
            {square && site.coax.length > 0 && say(planScreen.lineTurned)} {say(planScreen.supportsGuessed)}
          </p>
          {keepOut !== null && (
            <p>
              {keepOut.decides !== null &&
                say(drawings.decides, { part: partName(keepOut.decides), keepOutM: keepOutM ?? 0 })}{' '}
              {keepOut.groundM > 0 && say(drawings.groundStrip, { groundM: keepOut.groundM })}
            </p>
          )}
        </details>
        <details>
          <summary>{say(planScreen.fromAbove)}</summary>
          <figure class="plate">
            <TopView site={site} label={topLabel} keepOut={keepOut} id="stripes-top" />
            <figcaption>
              {say(planScreen.topCaption, { squareM: topViewScale(site, keepOut).squareM })}{' '}
              {keepOutM !== null && say(planScreen.topKeepOut, { keepOutM })}{' '}
              {(keepOut?.groundM ?? 0) > 0 && say(drawings.groundDots)}
            </figcaption>
          </figure>
        </details>
      </div>
    </section>
  );
}
