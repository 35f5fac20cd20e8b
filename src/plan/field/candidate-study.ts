/**
 * The short study of one antenna among several: its wires with coax and chokes over the operator's ground, solved at the focus of each wanted
 * band and nowhere else. It gives field facts for the same plan as the whole study, without SWR over the bands, near fields and disputes.
 *
 * The chokes are the house's; only where they leave more than the goal at the entry are others searched, as the whole study does. Lengths are
 * solved too, except where a search would lay out radials on the ground for each length it tries: there the rule's length stands.
 */
import { type Dimensions, dimensionsOf } from '../../advice/dimensions';
import { type Facts, factsOf, isNoSystem } from '../../advice/facts';
import type { BandField, ChokeChoice, ChosenChoke, FieldFacts } from '../../advice/field-facts';
import { knowing } from '../../advice/solved-facts';
import type { Band } from '../../catalog/band-ids';
import type { Answers } from '../../design/answers';
import type { Solution } from '../../solver/geometry';
import { bandShield, prepareBand } from './band-study';
import { houseChokes, searchPlaces } from './choke-places';
import { chooseChokes, GOAL_MA, resistive } from './choke-search';
import { geometryOf } from './field-site';
import type { FieldInstrument } from './instrument';
import { POWER_W } from './shield-currents';
import { sitesOn } from './sites-on';
import { solveLengths } from './solved-lengths';
import { onEach, orNull, type StudyOptions, watch } from './watched';

/** Mean power towards the heights of far and of near contacts, of what is radiated (solver/pattern). */
type ZoneGain = NonNullable<Solution['pattern']>['zoneGain'];

export interface ShortStudy {
  readonly field: FieldFacts;
  readonly zones: Readonly<Partial<Record<Band, ZoneGain>>>;
}

/** Null when there is nothing to solve, or the solver takes none of it. */
export async function studyCandidate(
  answers: Answers,
  instrument: FieldInstrument,
  options: Pick<StudyOptions, 'isCancelled'> = {},
): Promise<ShortStudy | null> {
  const asked = factsOf(answers);
  if (isNoSystem(asked)) return null;
  const watched = watch(instrument, options);
  const lengths = isQuicklySearched(asked) ? await orNull(solveLengths(asked, dimensionsOf(asked), watched)) : null;
  const solved = lengths === null ? {} : { lengths };
  const facts = knowing(asked, solved.lengths);
  const dimensions = dimensionsOf(facts, solved);
  const house = houseChokes(facts, dimensions);
  const byHouse = await solveWith(facts, dimensions, house, watched);
  const chokes = worstMa(byHouse) > GOAL_MA ? await searchChokes(facts, dimensions, house, watched) : null;
  const bands = chokes === null ? byHouse : await solveWith(facts, dimensions, chokes.chosen.chokes, watched);
  if (bands.length === 0) return null;
  return {
    field: { bands: recordOf(bands, ({ field }) => field), ...solved, ...(chokes === null ? {} : { chokes }) },
    zones: recordOf(bands, ({ zoneGain }) => zoneGain),
  };
}

const isQuicklySearched = ({ system, settled }: Facts): boolean =>
  system !== 'non-resonant-vertical' || settled.returnPath !== 'ground-radials';

interface OneBand {
  readonly band: Band;
  readonly field: BandField;
  readonly zoneGain: ZoneGain;
}

const recordOf = <T>(bands: readonly OneBand[], of: (one: OneBand) => T): Partial<Record<Band, T>> =>
  Object.fromEntries(bands.map((one) => [one.band, of(one)]));

const worstMa = (bands: readonly OneBand[]): number =>
  Math.max(0, ...bands.map(({ field }) => field.entryCurrentMa ?? 0));

async function solveWith(
  facts: Facts,
  dimensions: Dimensions,
  chokes: readonly ChosenChoke[],
  instrument: FieldInstrument,
): Promise<readonly OneBand[]> {
  const portsM = chokes.map(({ distanceM }) => distanceM);
  const siteOn = sitesOn(facts, dimensions, portsM);
  if (siteOn === null) return [];
  const all = await onEach(
    facts.bands,
    (at) => instrument.solve({ ...geometryOf(siteOn(at), at.focusMHz, resistive(chokes)), pattern: true }),
    instrument.rest,
  );
  return all.flatMap(({ at, found }) => {
    const { pattern } = found;
    return pattern === undefined || !(found.impedance.r > 0)
      ? []
      : [{ band: at.band, field: bandFieldOf(found), zoneGain: pattern.zoneGain }];
  });
}

function bandFieldOf({ impedance, probes, powerShare, gainDbi, gainThetaDeg }: Solution): BandField {
  const feedCurrentA = Math.sqrt(POWER_W / impedance.r);
  const entry = probes.find(({ id }) => id === 'entry')?.magnitude;
  return {
    feedPoint: impedance,
    feedCurrentA,
    efficiency: powerShare.radiated,
    gainDbi,
    takeOffDeg: 90 - gainThetaDeg,
    ...(entry === undefined ? {} : { entryCurrentMa: 1000 * entry * feedCurrentA }),
  };
}

async function searchChokes(
  facts: Facts,
  dimensions: Dimensions,
  house: readonly ChosenChoke[],
  instrument: FieldInstrument,
): Promise<ChokeChoice | null> {
  const places = searchPlaces(facts, house);
  const portsM = [...house.map(({ distanceM }) => distanceM), ...places.antennaM, ...places.furtherM];
  const siteOn = sitesOn(facts, dimensions, portsM);
  if (siteOn === null) return null;
  const ready = await onEach(facts.bands, (at) => prepareBand(instrument, siteOn(at), at), instrument.rest);
  const shields = ready.map(({ found }) => bandShield(found));
  return chooseChokes(house, places, shields);
}
