/** Every warning that an antenna has earned: stops first, then warnings, then notes, each group in the order of the rules. */
import type { Dimensions } from '../dimensions';
import type { Facts } from '../facts';
import type { FieldFacts } from '../field-facts';
import type { BandFinding, Caution, Exposure, Link, Severity, Warning } from '../finding';
import {
  chokeAtVoltageMaximum,
  chokesOnHand,
  lineShorterThanCounterpoise,
  lineUnderWire,
  plannedChokeShort,
} from './choke';
import { coreHeat } from './core-heat';
import { chokeWithoutReturn, lineDoesNotBelong, returnPathNeeded } from './feed-point';
import { outsideBand, powerLimit60m, unitDoubt } from './frequency';
import { lineLoss, lineOverrated, swrIsNotProof, wetLine } from './line';
import { lineTooShort } from './line-reach';
import { linksByHand, openPieceHalfWave } from './links';
import { peopleTooNear, powerAboveLicence } from './people';
import { powerLineTooNear } from './power-line';
import { fewRadials, radialSymmetry, staticDrain } from './return-path';
import { doesNotFit, indoors, lowHeight, thinWire, tooTall, wiresInteract } from './site';
import {
  currentTypeOffCentre,
  noFourToOneOnOpenWire,
  openWireNeedsChoke,
  twoInOneBox,
  wrongTransformer,
} from './transformer';
import { bandNotServed, harmonicsHigh, legPlusLine, offCentreNull, tunerRange, wireNearHalfWave } from './tuning';
import type { Rule } from './warning';
import { endOutOfReach } from './wire-reach';

const rules: readonly Rule[] = [
  powerLineTooNear,
  peopleTooNear,
  powerAboveLicence,
  unitDoubt,
  outsideBand,
  doesNotFit,
  tooTall,
  returnPathNeeded,
  chokeWithoutReturn,
  lineDoesNotBelong,
  openWireNeedsChoke,
  bandNotServed,
  offCentreNull,
  wireNearHalfWave,
  tunerRange,
  legPlusLine,
  wrongTransformer,
  currentTypeOffCentre,
  noFourToOneOnOpenWire,
  twoInOneBox,
  chokeAtVoltageMaximum,
  coreHeat,
  plannedChokeShort,
  chokesOnHand,
  lineUnderWire,
  lineTooShort,
  lineShorterThanCounterpoise,
  lineOverrated,
  lineLoss,
  fewRadials,
  lowHeight,
  endOutOfReach,
  powerLimit60m,
  indoors,
  openPieceHalfWave,
  linksByHand,
  harmonicsHigh,
  radialSymmetry,
  wiresInteract,
  swrIsNotProof,
  wetLine,
  staticDrain,
  thinWire,
];

const rank: Readonly<Record<Severity, number>> = { stop: 0, warn: 1, note: 2 };

/** What may be known beside the rules: a field solution, the cautions, which hold the distance from power lines, and how far people stay away. */
export interface Beside {
  readonly field?: FieldFacts | undefined;
  readonly cautions?: readonly Caution[] | undefined;
  readonly exposure?: readonly Exposure[] | undefined;
}

export function warningsOf(
  facts: Facts,
  dimensions: Dimensions,
  chain: readonly Link[],
  bands: readonly BandFinding[],
  { field, cautions, exposure }: Beside = {},
): Warning[] {
  const judged = { facts, dimensions, chain, bands, field, cautions, exposure };
  return rules.flatMap((rule) => rule(judged)).sort((a, b) => rank[a.severity] - rank[b.severity]);
}
