/**
 * The operator's antenna as a layout for the field solver: settled answers, the lengths of the plan, wire and coax of the catalogue. Null for an
 * antenna whose shape nobody told.
 *
 * More radials than the solver can take in reasonable time are laid as the most it can: beyond 16 on the ground the gain is small.
 */
import type { Dimensions } from '../advice/dimensions';
import { endSlopeOf } from '../advice/end-height';
import type { BandFacts, Facts } from '../advice/facts';
import { hangsAs } from '../advice/hanging';
import { needsOf } from '../advice/needs';
import { LINK_M, linkedLegs } from '../advice/wire-links';
import { coaxes } from '../catalog/lines';
import type { Wire } from '../catalog/wires';
import type { CoaxRun, Conductor, Layout } from '../geometry/layout';

export const MOST_RADIALS = 16;

/** `at`: the band whose links are set; without one a linked wire is laid out with every link closed. */
export function layoutOf(facts: Facts, dimensions: Dimensions, at?: BandFacts): Layout | null {
  const { settled, system } = facts;
  if (system === 'other' || settled.radiator === 'other') return null;
  const radials = dimensions.pieces.find(({ piece }) => piece === 'radial');
  const counterpoises = dimensions.pieces.filter(({ piece }) => piece === 'counterpoise');
  const worksAgainst = !facts.balanced && system !== 'off-centre-fed';
  return {
    radiator: hangsAs(settled),
    fedAt: settled.fedAt,
    heightM: settled.heightM,
    endHeightM: settled.endHeightM,
    endSlope: endSlopeOf(facts),
    supportHeightM: settled.supportHeightM,
    radiatorM: dimensions.radiator.metres,
    feedFraction: dimensions.feedFraction,
    riseM: dimensions.riseM,
    furtherPairsM: furtherPairsOf(facts, dimensions),
    links: linksOn(dimensions, at),
    loopShape: settled.loopShape,
    loopPlane: settled.loopPlane,
    wire: conductorOf(facts.wire),
    returnPath: worksAgainst ? settled.returnPath : 'none',
    radials:
      radials === undefined ? null : { count: Math.min(radials.count, MOST_RADIALS), lengthM: radials.length.metres },
    counterpoisesM: counterpoises.map(({ length }) => length.metres),
    shieldAtMidGap: system === 'off-centre-fed' && needsOf(facts).transformation !== null, // its 4:1 is a voltage type
    coax: coaxOf(facts),
  };
}

/** Legs of parallel dipoles beyond the longest pair, as whole lengths. */
function furtherPairsOf({ system }: Facts, { pieces }: Dimensions): readonly number[] {
  if (system !== 'parallel-dipoles') return [];
  return pieces
    .filter(({ piece }) => piece === 'leg')
    .slice(1)
    .map(({ length }) => 2 * length.metres);
}

/** Closed inside the band's own leg, open from its end outward. */
function linksOn(dimensions: Dimensions, at: BandFacts | undefined): Layout['links'] {
  const legs = linkedLegs(dimensions);
  const own = legs.findIndex(({ band }) => band === at?.band);
  return legs.slice(0, -1).map(({ legM }, index) => ({
    atM: legM,
    lengthM: LINK_M,
    open: own >= 0 && index >= own,
  }));
}

const conductorOf = ({ diameterM, conductivitySPerM, insulation }: Wire): Conductor => ({
  radiusM: diameterM.value / 2,
  conductivitySPerM: conductivitySPerM.value,
  insulation:
    insulation === null ? null : { epsilonR: insulation.epsilonR.value, thicknessM: insulation.thicknessM.value },
});

function coaxOf({ line, settled }: Facts): CoaxRun | null {
  if (line === null || line.kind !== 'coax') return null;
  return {
    lengthM: settled.feedLineLengthM,
    shieldRadiusM: coaxes[line.id].shieldRadiusM.value,
    route: settled.feedLineRoute,
    runHeightM: settled.runHeightM,
    entryDistanceM: Math.min(settled.entryDistanceM, settled.feedLineLengthM),
    houseEarth: settled.houseEarth,
  };
}
