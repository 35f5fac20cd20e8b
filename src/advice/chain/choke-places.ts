/**
 * Which chokes the system has, where each stands and how many ohms it needs.
 *
 * On coax: one at the antenna end against what comes out of the feed point, one before the building (portable: before the radio) against what
 * the cable picks up, and for end-feds, or where trouble is already there, one at the radio. On open-wire line: one where coax begins.
 */
import type { Working } from '../../base/working';
import type { Band } from '../../catalog/band-ids';
import { asSolved } from '../dimension';
import type { Dimensions } from '../dimensions';
import type { Facts } from '../facts';
import type { Place, Reason } from '../finding';
import { twinLeadMeetsCoax } from '../needs';
import { antennaChokeOhm, HIGH_OHM, isEndFed, radioChokeOhm } from './choke-minimum';
import { antennaChokeWhy } from './choke-why';
import { computed, practice, solvedHere } from './why-codes';

export type ChokeRole = 'antenna' | 'further' | 'entry' | 'radio' | 'line-end';

export interface ChokePlace {
  readonly role: ChokeRole;
  readonly at: Place;
  readonly distanceM: number;
  readonly working: Working | null;
  readonly minimumOhm: number;
  /** The wanted band on which the ohms are hardest to reach: the lowest. */
  readonly band: Band;
  readonly why: readonly Reason[];
}

/** Two chokes closer than this are one. */
const SAME_PLACE_M = 0.05;
/** Still at the feed point: the length of a box and its pigtail. */
const AT_FEED_POINT_M = 0.3;

export function chokePlacesOf(facts: Facts, dimensions: Dimensions): readonly ChokePlace[] {
  if (facts.lineKind === 'open-wire') return openWireChokes(facts);
  const coaxChokes = facts.lineKind === 'coax' ? antennaAndEntry(facts, dimensions) : [];
  const last = coaxChokes.at(-1);
  const radio = radioChoke(facts);
  const usual = radio === null || last?.at === 'radio' ? coaxChokes : [...coaxChokes, radio];
  return usual.map((place) => asChosen(place, dimensions)).concat(further(facts, dimensions));
}

/** With the ohms that a field solution chose for it. */
function asChosen(place: ChokePlace, { chosenChokes }: Dimensions): ChokePlace {
  const ohm = chosenChokes.find(({ role }) => role === place.role)?.ohm ?? place.minimumOhm;
  if (ohm <= place.minimumOhm) return place;
  return { ...place, minimumOhm: ohm, why: [...place.why, solvedHere('choke-ohms-solved', { ohm })] };
}

/** One choke more, where a field solution asks for it. */
const further = (facts: Facts, { chosenChokes }: Dimensions): readonly ChokePlace[] =>
  chosenChokes
    .filter(({ role }) => role === 'further')
    .map(({ distanceM, ohm }) => ({
      role: 'further',
      at: 'along-line',
      distanceM,
      working: asSolved(distanceM).working,
      minimumOhm: ohm,
      band: facts.bands[0].band,
      why: [solvedHere('choke-further', { ohm, distanceM })],
    }));

function antennaAndEntry(facts: Facts, { chokeAt, entryChokeAt }: Dimensions): readonly ChokePlace[] {
  const entry: ChokePlace[] =
    entryChokeAt === null ? [] : [entryChoke(facts, entryChokeAt.metres, entryChokeAt.working)];
  if (chokeAt === null) return entry;
  const antenna: ChokePlace = {
    role: 'antenna',
    at: chokeAt.metres < AT_FEED_POINT_M ? 'feed-point' : 'along-line',
    distanceM: chokeAt.metres,
    working: chokeAt.working,
    minimumOhm: antennaChokeOhm(facts),
    band: facts.bands[0].band,
    why: antennaChokeWhy(facts, chokeAt.metres),
  };
  const [last] = entry;
  if (last === undefined || last.distanceM - antenna.distanceM > SAME_PLACE_M) return [antenna, ...entry];
  return [{ ...last, why: [computed('choke-is-both'), ...antenna.why, ...last.why] }];
}

function entryChoke(facts: Facts, distanceM: number, working: Working): ChokePlace {
  const portable = facts.settled.station === 'portable';
  return {
    role: 'entry',
    at: portable ? 'radio' : 'building-entry',
    distanceM,
    working,
    minimumOhm: HIGH_OHM,
    band: facts.bands[0].band,
    why: [
      computed('entry-two-ways', { ohm: HIGH_OHM }),
      computed('entry-if-only-one'),
      portable ? practice('entry-portable') : computed('entry-earth-first'),
    ],
  };
}

function radioChoke(facts: Facts): ChokePlace | null {
  const { rfInShack, feedLineLengthM } = facts.settled;
  const endFed = isEndFed(facts.system) && facts.lineKind === 'coax';
  if (!rfInShack && !endFed) return null;
  const ohm = radioChokeOhm(facts);
  return {
    role: 'radio',
    at: 'radio',
    distanceM: facts.lineKind === 'none' ? 0 : feedLineLengthM,
    working: null,
    minimumOhm: ohm,
    band: facts.bands[0].band,
    why: [
      ...(endFed ? [computed('radio-end-fed', { ohm })] : []),
      ...(rfInShack ? [practice('radio-trouble', { ohm })] : []),
    ],
  };
}

function openWireChokes(facts: Facts): readonly ChokePlace[] {
  const { shackEnd, station, feedLineLengthM } = facts.settled;
  if (shackEnd === 'balanced-tuner') {
    const radio = radioChoke(facts);
    return radio === null ? [] : [radio];
  }
  const meetsTuner = shackEnd === 'wide-tuner' || shackEnd === 'wide-tuner-4to1';
  const first = practice(meetsTuner ? 'open-wire-meets-tuner' : 'open-wire-becomes-coax', { ohm: HIGH_OHM });
  const why = twinLeadMeetsCoax(facts)
    ? [practice('choke-behind-transformer', { ohm: HIGH_OHM })]
    : [first, computed('never-4to1')];
  const lineEnd: ChokePlace = {
    role: 'line-end',
    at: station === 'portable' ? 'radio' : 'building-entry',
    distanceM: feedLineLengthM,
    working: null,
    minimumOhm: HIGH_OHM,
    band: facts.bands[0].band,
    why,
  };
  const radio = radioChoke(facts);
  return radio === null || lineEnd.at === 'radio'
    ? [lineEnd]
    : [lineEnd, { ...radio, distanceM: feedLineLengthM + JUMPER_M }];
}

/** Coax between the choke at the wall and the tuner: as short as the room lets it be. */
export const JUMPER_M = 1;
