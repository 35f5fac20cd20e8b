/** The ground that must be free of overhead lines, drawn beside the caution that asks for it. */
import type { Answers } from '../../../design/answers';
import { FallPath, fallPathScale, isLineDrawn } from '../../../drawing/fall-path';
import type { Plan } from '../../../plan/plan-schema';
import { drawings } from '../../../words/en/drawings';
import { raiseScreen } from '../../../words/en/raise-screen';
import { feetInchesText, metresText } from '../../../words/length-text';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { sitePictureOf } from '../plan/site-picture';

interface FallFigureProps {
  readonly plan: Plan;
  readonly answers: Answers;
}

export function FallFigure({ plan, answers }: FallFigureProps) {
  const say = useSay();
  const metric = useStores().settings.units.value === 'metric';
  const site = sitePictureOf(answers, plan)?.site;
  const distanceM = plan.cautions.find((caution) => caution.distanceM !== null)?.distanceM;
  if (site === undefined || distanceM == null) return null;
  const lineM = answers.nearestPowerLineM ?? null;
  const told = lineM === null ? {} : { lineM, drawn: isLineDrawn(distanceM, lineM), near: lineM < distanceM };
  const [metres, feet] = [metresText(distanceM), feetInchesText(distanceM)];
  return (
    <figure class="plate">
      <FallPath
        site={site}
        distanceM={distanceM}
        lineM={lineM}
        words={{
          label: say(drawings.fall, { distanceM, ...told }),
          distance: metric ? [metres, feet] : [feet, metres],
        }}
        id="stripes-fall"
      />
      <figcaption>
        {say(raiseScreen.fallCaption, {
          distanceM,
          squareM: fallPathScale(site, distanceM, lineM).squareM,
          ...told,
        })}
      </figcaption>
    </figure>
  );
}
