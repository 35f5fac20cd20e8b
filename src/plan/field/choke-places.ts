/** The house's chokes as the study takes them, and the other places along the coax where it tries them. */
import { type ChokePlace, chokePlacesOf } from '../../advice/chain/choke-places';
import type { Dimensions } from '../../advice/dimensions';
import type { Facts } from '../../advice/facts';
import type { ChosenChoke } from '../../advice/field-facts';
import type { SearchPlaces } from './choke-search';

/** Only coax has an outside that carries current. */
export const houseChokes = (facts: Facts, dimensions: Dimensions): readonly ChosenChoke[] =>
  facts.lineKind === 'coax' ? chokePlacesOf(facts, dimensions).map(asChosen) : [];

const asChosen = ({ role, distanceM, minimumOhm }: ChokePlace): ChosenChoke => ({ role, distanceM, ohm: minimumOhm });

/** Room needed between two chokes before one more is of use, m. */
const APART_M = 1;

/**
 * End-feds: 0.05 and 0.1 λ of the lowest band. Off-centre: 0.3 to 1 m. Elsewhere the feed point itself. One choke more: at the foot of the drop, or
 * half-way along the run.
 */
export function searchPlaces(facts: Facts, house: readonly ChosenChoke[]): SearchPlaces {
  const antenna = house.find(({ role }) => role === 'antenna');
  if (antenna === undefined) return { antennaM: [], furtherM: [] };
  const lastM = house.find(({ role }) => role !== 'antenna')?.distanceM ?? facts.settled.feedLineLengthM;
  const fits = (metres: number): boolean => metres < lastM - APART_M;
  const footM = facts.settled.heightM - facts.settled.runHeightM;
  const further = [footM, (antenna.distanceM + lastM) / 2].filter(
    (metres) => fits(metres) && metres > antenna.distanceM + APART_M,
  );
  return { antennaM: otherAntennaPlaces(facts, antenna.distanceM).filter(fits), furtherM: further };
}

function otherAntennaPlaces({ system, bands }: Facts, houseM: number): readonly number[] {
  if (system === 'off-centre-fed') return [0.3];
  if (system !== 'end-fed-half-wave' || houseM === 0) return [];
  return [0.1 * bands[0].wavelengthM];
}
