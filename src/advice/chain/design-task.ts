/**
 * What this antenna asks of its transformer and of each choke, in the terms of component physics.
 *
 * Power: the envelope peak, and the average over ten minutes as part of it. Housing: a closed box in the sun outdoors, free air indoors.
 * Loads: what the antenna shows on each wanted band by its field solution, or by rule; where that is unknown, or so far off that nobody would
 * work there, the impedance that the ratio is made for. Rules know a resonant antenna's SWR within a factor of two only, so a transformer is
 * not sized for more than SWR 2 by them: above it the wire is trimmed, or the radio turns its power down. The antenna-end choke always has a known source
 * (choke-source.ts), the one at the entry by likeness until the antenna is solved; any other only once it is.
 */
import { type Complex, complex, magnitude, scale } from '../../base/complex';
import { permeabilityRangeHz } from '../../catalog/ferrites';
import { lineDataOf } from '../../physics/catalogue-line';
import type { CommonModeSource } from '../../physics/choke';
import type { ChokeNeed } from '../../physics/choke-need';
import type { Housing } from '../../physics/core-heat';
import { gamma, impedanceOfGamma, inputImpedance, lineConstants, swr } from '../../physics/line';
import type { CoresOnHand, TransformerNeed } from '../../physics/transformer-need';
import { chokeConductors } from '../../physics/wound-conductor';
import { chokeSource, entryChokeSource } from '../choke-source';
import type { Dimensions } from '../dimensions';
import type { BandFacts, Facts } from '../facts';
import { feedPointOf } from '../feed-impedance';
import { type FieldFacts, fieldOf } from '../field-facts';
import type { Place } from '../finding';
import { REACH, SYSTEM_OHM } from '../line-run';
import { lineOhm, twinLeadMeetsCoax } from '../needs';
import { reactiveMinimumOhm } from './choke-minimum';
import type { ChokePlace } from './choke-places';
import { wideTunerSystems } from './shack-links';
import { balancedIn, windingOf } from './winding-kind';

/** A station that only listens still heats nothing; the physics wants some power. */
const LEAST_SHARE = 0.01;
/** Two places closer than a box are one. */
const SAME_PLACE_M = 0.3;
const SOLVED_AT_W = 100;

/** The nearest frequency that the permeability tables hold: an answer in another unit may lie far outside. */
export const tabled = (hz: number): number => Math.min(Math.max(hz, permeabilityRangeHz.low), permeabilityRangeHz.high);

export const averageFactorOf = ({ averageW, settled }: Facts): number =>
  Math.max(averageW / settled.powerW, LEAST_SHARE);

export function housingOf({ settled }: Facts, at: Place): Housing {
  const outdoors = settled.station === 'portable' || at !== 'radio';
  return settled.indoors || !outdoors ? 'free-air' : 'closed-box';
}

export interface TransformerTask {
  readonly need: TransformerNeed;
  /** What really hangs on it on each wanted band; null where nothing is known. */
  readonly loads: readonly (Complex | null)[];
  /** The antenna has the lower impedance: its side is the one with fewer turns. */
  readonly turned: boolean;
}

export function transformerTask(
  facts: Facts,
  dimensions: Dimensions,
  ratio: number,
  field: FieldFacts | undefined,
  onHand: readonly CoresOnHand[],
): TransformerTask {
  const turned = ratio < 1;
  const atLineEnd = twinLeadMeetsCoax(facts);
  const coaxOhm = atLineEnd ? SYSTEM_OHM : lineOhm(facts);
  const lowOhm = turned ? coaxOhm * ratio : coaxOhm;
  const nominal = complex(turned ? coaxOhm : coaxOhm * ratio);
  const loads = facts.bands.map((at) => (turned ? null : loadOn(facts, dimensions, at, field)));
  const points = facts.bands.map((at, i) => {
    const isSolved = fieldOf(field, at.band).feedPoint !== undefined;
    const most = isSolved || wideTunerSystems.includes(facts.system) ? REACH.wide : REACH.none;
    return { hz: tabled(at.focusMHz * 1e6), load: sizedFor(loads[i] ?? nominal, nominal.re, most) };
  });
  const need: TransformerNeed = {
    ratio: turned ? 1 / ratio : ratio,
    winding: windingOf(ratio, balancedIn(facts)) === 'transformer-two-windings' ? 'isolated' : 'auto',
    points,
    lineOhm: lowOhm,
    powerW: facts.settled.powerW,
    averageFactor: averageFactorOf(facts),
    housing: housingOf(facts, atLineEnd ? 'building-entry' : 'feed-point'),
    onHand,
  };
  return { need, loads, turned };
}

/** The load to size for: itself up to `mostSwr`, drawn in to that up to ten, and the nominal one beyond. */
function sizedFor(load: Complex, nominalOhm: number, mostSwr: number): Complex {
  const seen = swr(load, nominalOhm);
  if (seen <= mostSwr) return load;
  if (seen > REACH.wide) return complex(nominalOhm);
  const reflection = gamma(load, complex(nominalOhm));
  return impedanceOfGamma(scale(reflection, (mostSwr - 1) / (mostSwr + 1) / magnitude(reflection)), nominalOhm);
}

/** At the feed point, or carried down the twin lead to where the transformer stands. */
function loadOn(facts: Facts, dimensions: Dimensions, at: BandFacts, field: FieldFacts | undefined): Complex | null {
  const solved = fieldOf(field, at.band).feedPoint;
  const byRule = feedPointOf(facts, at, dimensions);
  const z = solved === undefined ? byRule?.z : complex(solved.r, solved.x);
  if (z === undefined || !(z.re > 0)) return null;
  const { line, settled } = facts;
  if (!twinLeadMeetsCoax(facts) || line === null) return z;
  return inputImpedance(lineConstants(lineDataOf(line), at.focusMHz * 1e6), settled.feedLineLengthM, z);
}

export interface ChokeTask {
  readonly need: ChokeNeed;
  /** Its heat is told by antennas like this one, until the antenna itself is solved. */
  readonly byLikeness: boolean;
}

export function chokeTask(
  facts: Facts,
  dimensions: Dimensions,
  place: ChokePlace,
  field: FieldFacts | undefined,
  onHand: readonly CoresOnHand[],
): ChokeTask {
  const { settled } = facts;
  const sources = facts.bands.map((at) => sourceOf(facts, dimensions, place, at, field));
  const onJumper = facts.lineKind === 'open-wire' && (place.role === 'radio' || twinLeadMeetsCoax(facts));
  const need: ChokeNeed = {
    minimumOhm: place.minimumOhm,
    reactiveMinimumOhm: Math.max(place.minimumOhm, reactiveMinimumOhm(facts)),
    points: facts.bands.map((at, i) => ({ hz: tabled(at.focusMHz * 1e6), source: sources[i]?.source ?? null })),
    powerW: settled.powerW,
    averageFactor: averageFactorOf(facts),
    housing: housingOf(facts, place.at),
    conductors: chokeConductors(onJumper ? 'none' : settled.feedLine),
    onHand,
  };
  return { need, byLikeness: sources.some((each) => each.byLikeness) };
}

interface Source {
  readonly source: CommonModeSource | null;
  readonly byLikeness: boolean;
}

function sourceOf(
  facts: Facts,
  dimensions: Dimensions,
  { role, distanceM }: ChokePlace,
  at: BandFacts,
  field: FieldFacts | undefined,
): Source {
  const { powerW } = facts.settled;
  const solved = fieldOf(field, at.band).chokeSources?.[role];
  const meetsAntenna = Math.abs((dimensions.chokeAt?.metres ?? Number.POSITIVE_INFINITY) - distanceM) < SAME_PLACE_M;
  if (facts.lineKind === 'coax' && (role === 'antenna' || meetsAntenna)) {
    return { source: chokeSource(facts, dimensions, at, powerW, solved), byLikeness: false };
  }
  if (solved !== undefined) {
    return { source: { ...solved, openV: solved.openV * Math.sqrt(powerW / SOLVED_AT_W) }, byLikeness: false };
  }
  const isEntry = facts.lineKind === 'coax' && role === 'entry';
  const source = isEntry ? entryChokeSource(facts, at, powerW) : null;
  return { source, byLikeness: source !== null };
}
