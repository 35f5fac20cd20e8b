/** The antenna of a plan laid out in space, for its drawings, with the lengths the plan tells. Null where its shape is not known. */
import { dimensionsOf } from '../../../advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../../advice/facts';
import type { Answers } from '../../../design/answers';
import { type Site, siteOf } from '../../../drawing/site';
import type { CoaxRun } from '../../../geometry/layout';
import { layoutOf } from '../../../plan/layout-of';
import type { Plan } from '../../../plan/plan-schema';
import { solvedIn } from '../../../plan/solved-in';

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
  const dimensions = dimensionsOf(facts, solvedIn(plan));
  const layout = layoutOf(facts, dimensions);
  if (layout === null) return null;
  const chokes = plan.chain.flatMap(({ device, distanceM, name }) =>
    device === 'choke' && distanceM !== null ? [{ name, metres: distanceM }] : [],
  );
  const { station, indoors, feedLineRoute } = facts.settled;
  const site = siteOf(layout, {
    home: station === 'home' || indoors,
    chokesM: chokes.map(({ metres }) => metres),
    openWire: openWireOf(facts),
  });
  const square = feedLineRoute === 'square';
  return site === null ? null : { site, runM: dimensions.runM, square, chokes: site.coax.length > 0 ? chokes : [] };
}

/** Open-wire line takes the way coax would. */
function openWireOf({ settled, lineKind }: Facts): CoaxRun | null {
  if (lineKind === 'none' || lineKind === 'coax') return null;
  return {
    lengthM: settled.feedLineLengthM,
    shieldRadiusM: 0,
    route: settled.feedLineRoute,
    runHeightM: settled.runHeightM,
    entryDistanceM: Math.min(settled.entryDistanceM, settled.feedLineLengthM),
    houseEarth: settled.houseEarth,
  };
}
