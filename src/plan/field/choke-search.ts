/**
 * Chokes chosen for this antenna: places along its coax × standard chokes (resistive, 1 to 10 kΩ), so that the current at the entry is at most
 * 30 mA per 100 W on every wanted band.
 *
 * The house set stands first and stays when it meets the goal: two-choke results are good to 3 dB, so nothing is moved for less. Otherwise the
 * set that changes least: more ohms in the same place, one choke more, then the same with the antenna-end choke elsewhere. No choke falls below the house's ohms, which
 * hold back heat and noise too, and none of a set runs hotter than the house's or 10 W per 100 W.
 */
import type { ChokeChoice, ChokeSetResult, ChosenChoke, ShieldState } from '../../advice/field-facts';
import { complex } from '../../base/complex';
import type { Band } from '../../catalog/band-ids';
import type { PlacedChoke } from './field-site';

export const GOAL_MA = 30;
export const TEN_MA = 10;
const STANDARD_OHM = [1000, 2000, 5000, 10_000] as const;
const HEAT_LIMIT_W = 10;

/** The shield on one band with a set of chokes in place. */
export interface BandShield {
  readonly band: Band;
  with(chokes: readonly PlacedChoke[]): ShieldState | null;
}

export const resistive = (chokes: readonly { readonly distanceM: number; readonly ohm: number }[]): PlacedChoke[] =>
  chokes.map(({ distanceM, ohm }) => ({ distanceM, z: complex(ohm) }));

/** Worst of the bands; null where there is no coax. */
export function judgeSet(chokes: readonly ChosenChoke[], bands: readonly BandShield[]): ChokeSetResult | null {
  let worst: { readonly ma: number; readonly band: Band } | null = null;
  let heatW = 0;
  for (const { band, with: shieldWith } of bands) {
    const state = shieldWith(resistive(chokes));
    if (state === null) return null;
    if (worst === null || state.entryMa > worst.ma) worst = { ma: state.entryMa, band };
    heatW = Math.max(heatW, ...state.chokes.map((choke) => choke.heatW));
  }
  return worst === null ? null : { chokes, worstMa: worst.ma, worstBand: worst.band, heatW };
}

export interface SearchPlaces {
  /** Where the antenna-end choke may stand instead. */
  readonly antennaM: readonly number[];
  /** Where one choke more may stand. */
  readonly furtherM: readonly number[];
}

export function chooseChokes(
  house: readonly ChosenChoke[],
  places: SearchPlaces,
  bands: readonly BandShield[],
): ChokeChoice | null {
  const stands = judgeSet(house, bands);
  if (stands === null) return null;
  const coolEnough = Math.max(stands.heatW, HEAT_LIMIT_W);
  let best: ChokeSetResult = stands;
  let goal: ChokeSetResult | null = stands.worstMa <= GOAL_MA ? stands : null;
  let ten: ChokeSetResult | null = stands.worstMa <= TEN_MA ? stands : null;
  for (const set of setsBy(house, places)) {
    if (goal !== null && ten !== null) break;
    const result = judgeSet(set, bands);
    if (result === null || result.heatW > coolEnough * 1.001) continue;
    if (result.worstMa < best.worstMa) best = result;
    if (goal === null && result.worstMa <= GOAL_MA) goal = result;
    if (ten === null && result.worstMa <= TEN_MA) ten = result;
  }
  return { house: stands, chosen: goal ?? best, tenMa: ten, goalMet: goal !== null };
}

/** Sets in the order of how much they change: ohms, one choke more, the antenna end's place and all of that again. */
function* setsBy(
  house: readonly ChosenChoke[],
  { antennaM, furtherM }: SearchPlaces,
): Generator<readonly ChosenChoke[]> {
  const moved = antennaM.map((distanceM) =>
    house.map((choke) => (choke.role === 'antenna' ? { ...choke, distanceM } : choke)),
  );
  for (const set of [house, ...moved]) {
    yield* [set, ...raised(set)];
    for (const ohm of STANDARD_OHM) {
      for (const distanceM of furtherM) yield [...set, { role: 'further', distanceM, ohm }];
    }
  }
}

/** Steps up the row of standard chokes, all together: more ohms than that cost more than one choke more. */
const MOST_STEPS = 2;

/** The same places with more ohms, cheapest first by the number of steps up. */
export function raised(set: readonly ChosenChoke[]): readonly (readonly ChosenChoke[])[] {
  const choices = set.reduce<readonly { chokes: readonly ChosenChoke[]; steps: number }[]>(
    (all, choke) =>
      all.flatMap(({ chokes, steps }) =>
        [choke.ohm, ...STANDARD_OHM.filter((ohm) => ohm > choke.ohm)].map((ohm, step) => ({
          chokes: [...chokes, { ...choke, ohm }],
          steps: steps + step,
        })),
      ),
    [{ chokes: [], steps: 0 }],
  );
  return choices
    .filter(({ steps }) => steps > 0 && steps <= MOST_STEPS)
    .sort((a, b) => a.steps - b.steps)
    .map(({ chokes }) => chokes);
}
