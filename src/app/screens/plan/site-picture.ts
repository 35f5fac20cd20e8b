/** The antenna of a plan laid out in space, for its drawings. Null where its shape is not known. */
import { type Dimensions, dimensionsOf } from '../../../advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../../advice/facts';
import type { Answers } from '../../../design/answers';
import { type Site, siteOf } from '../../../drawing/site';
import type { Layout } from '../../../geometry/layout';
import type { Plan } from '../../../plan/plan-schema';

export interface SitePicture {
  readonly site: Site;
  readonly runM: number;
  readonly square: boolean;
  /** The chokes of the drawing, numbered in this order. */
  readonly chokes: readonly { readonly name: string; readonly metres: number }[];
}

export function sitePictureOf(answers: Answers, plan: Plan): SitePicture | null {
  if (answers.radiator === undefined || answers.fedAt === undefined || plan.system === null) return null;
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return null;
  const dimensions = dimensionsOf(facts);
  const chokes = plan.chain.flatMap(({ device, distanceM, name }) =>
    device === 'choke' && distanceM !== null ? [{ name, metres: distanceM }] : [],
  );
  const { station, indoors, feedLineRoute } = facts.settled;
  const options = { home: station === 'home' || indoors, chokesM: chokes.map(({ metres }) => metres) };
  const site = siteOf(layoutOf(facts, dimensions), options);
  const square = feedLineRoute === 'square';
  return site === null ? null : { site, runM: dimensions.runM, square, chokes: site.coax.length > 0 ? chokes : [] };
}

/** Open-wire line is drawn as the coax it becomes: straight to the radio. */
function layoutOf({ settled, wire, system, lineKind }: Facts, dimensions: Dimensions): Layout {
  const radiators = dimensions.pieces.filter(({ piece }) => piece === 'leg');
  return {
    radiator: settled.radiator,
    fedAt: settled.fedAt,
    heightM: settled.heightM,
    endHeightM: settled.endHeightM,
    supportHeightM: settled.supportHeightM,
    radiatorM: dimensions.radiator.metres,
    feedFraction: system === 'off-centre-fed' ? settled.feedFraction : 0.5,
    riseM: dimensions.riseM,
    furtherPairsM: system === 'parallel-dipoles' ? radiators.slice(1).map(({ length }) => 2 * length.metres) : [],
    loopShape: settled.loopShape,
    loopPlane: settled.loopPlane,
    wire: { radiusM: wire.diameterM.value / 2, conductivitySPerM: 0, insulation: null },
    returnPath: settled.returnPath,
    radials: null,
    counterpoisesM: [],
    shieldAtMidGap: false,
    coax:
      lineKind === 'none'
        ? null
        : {
            lengthM: settled.feedLineLengthM,
            shieldRadiusM: 0,
            route: settled.feedLineRoute,
            runHeightM: settled.runHeightM,
            entryDistanceM: settled.entryDistanceM,
            houseEarth: settled.houseEarth,
          },
  };
}
